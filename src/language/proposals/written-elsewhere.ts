/** What a book, a forum or an old diary says, and not the grower: "guy on the forum: pinch at six leaves". */
import { addDays } from '../../calendar/day.js';
import { firstDay } from '../../calendar/span.js';
import { localDay } from '../../calendar/zone.js';
import { wordAt } from '../grammar/rule.js';
import type { Note } from '../note.js';
import { anyOf, within } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { lineOf, type Sentence } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

const SOURCE = within`
  handbook|handbuch|manual|leaflet|magazine|article|newsletter|catalogue|encyclopa?edia|almanac|packet|sachet
  forum|website|internet|google|video|youtube|podcast|blog
  advice|(top|handy) tips?|rule of thumb|instructions|care (card|sheet|tag|label)
  (book|guide|column|programme|page|chapter) … (says|said|stands|states|reads|has|it|tells)
`;
/** Of the grower's own. */
const OWN = /\b(?:label|labels|back of|found|scribbled|scrawled|my notes?|my diary|my notebook)\b/;
const RECORD = within`
  (?!my |our )\w+('s|s')? (old )?${anyOf`
    diary|diaries|journals?|notebooks?|daybook|garden book|letters?|ledger
  `}
`;
/** Older than any ledger. */
const LONG_AGO = 25 * 365;
/** Before any cuttings that are still of interest. */
const LAST_YEAR = 500;

/** Whether a sentence only passes on what stands somewhere else. */
export function isWrittenElsewhere(sentence: Sentence, utterance: Utterance, note: Note): boolean {
  return (
    isFromSource(sentence.pieces, utterance) ||
    isLongAgo(sentence.pieces, note) ||
    isQuotedRecord(sentence, utterance)
  );
}

/** "In my handbook stands: …". */
function isFromSource(pieces: readonly Piece[], utterance: Utterance): boolean {
  const colon = pieces.findIndex((piece) => piece.is === 'break');
  const mark = pieces[colon];
  if (mark?.is !== 'break' || mark.mark !== ':' || colon > 12) return false;
  const source = lineOf(pieces.slice(0, colon), utterance);
  if (!SOURCE.test(source) || OWN.test(source) || wordAt(pieces, 0) === 'did') return false;
  return SPEAKS.test(source) || isNamedAlone(source) || !isDeed(pieces, colon + 1);
}

/** Somebody or something there speaks: "guy on the forum", "the magazine says". */
const SPEAKS = within`
  guys?|fella|fellow|chap|bloke|lad|lady|woman|man|somebody|someone|people|folk
  user|member|poster|experts?|author|presenter|post|thread|article|comment
  says|said|say|stands|states|reads|tells|told|reckons|claims|according|tips?|thumb
`;
/** "On the forum", "my handbook": nothing said but where. */
const isNamedAlone = (source: string): boolean =>
  source
    .split(' ')
    .slice(0, -1)
    .every((word) =>
      /^(?:on|in|from|off|at|the|a|an|my|our|old|that|this|some|gardening|garden)$/.test(word),
    );

/** "Forum meet today: sold five": a deed of the grower's own, told in the past. */
function isDeed(pieces: readonly Piece[], from: number): boolean {
  let at = from;
  while (/^(?:i|we|i've|we've|also|then|just|finally|have)$/.test(wordAt(pieces, at))) at++;
  const verb = pieces[at];
  return (
    verb?.is === 'word' &&
    verb.verb?.form === 'past' &&
    pieces.slice(at).some(({ is }) => is === 'plant') &&
    !pieces.slice(at).some((_, n) => /^(?:his|her|their|he|she|they)$/.test(wordAt(pieces, at + n)))
  );
}

/** "14 March 1961: …", "in 1987 we lost the lot"; sooner where no plant is named ("the year before last I took 50"). */
function isLongAgo(pieces: readonly Piece[], note: Note): boolean {
  const days = pieces.flatMap((piece) =>
    piece.is === 'when' && piece.when.past !== undefined && piece.when.past !== 'ask'
      ? [firstDay(piece.when.past)]
      : [],
  );
  if (days.length === 0) return false;
  const named = pieces.some(({ is }) => is === 'plant');
  const eldest = addDays(localDay(note.now, note.zone), named ? -LONG_AGO : -LAST_YEAR);
  const tells = named || pieces.some((piece) => piece.is === 'word' && piece.verb?.form === 'past');
  return tells && days.some((day) => day < eldest);
}

/** Inside quotation marks behind "Grandad's diary". */
function isQuotedRecord({ pieces }: Sentence, { tokens, text }: Utterance): boolean {
  const start = tokens[pieces[0]?.from ?? 0]?.start ?? 0;
  const before = text.slice(0, start);
  const open = before.search(/["\u201c\u2018]|(?<![\p{L}\d])'(?=\p{L})/u);
  if (open < 0 || !RECORD.test(before.slice(0, open).toLowerCase())) return false;
  return !/["\u201d\u2019]|(?<=[.!?,])'/u.test(before.slice(open + 1));
}
