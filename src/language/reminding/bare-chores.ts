/** Chores in their plain form beside a day to come, with no word that tells them to be a plan: "tomorrow pot on …", "Friday: feed …". */
import { type findRemind, isPlantSale } from '../grammar/remind.js';
import { wordAt } from '../grammar/rule.js';
import { whole, within } from '../phrases.js';
import type { Piece, When } from '../pieces/pieces.js';
import type { Sentence } from '../sentences/sentences.js';
import { isToCome } from '../mood/yet-to-be.js';

const CHORES = whole`
  take|strike|stick|cut|sow|prick|pot|repot|transplant|plant|pinch|stop|pick|harden
  mist|water|feed|vent|open|close|shade|cover|uncover|check|look|clean|label
  move|shift|bring|put|load|sell|give|send|dispatch|deliver|order|buy|collect|get|book|ring|call
  do|start|finish
`;

/** Days to come, or a weekday, which may be. */
const AHEAD = new RegExp(
  within`
    tomorrow|next|coming|tonight|later|week today|weekend
    in (a|\w+) (days?|weeks?|fortnight|months?|hours?)
    (mon|tues|wednes|thurs|fri|satur|sun)day|mon|tues?|weds?|thu|thurs?|fri|sat|sun
  `,
  'i',
);

const BEGUN = /^(?:kicked|began|started|begun|finished|complete|completed|done)$/;

/** Where the plant and number that stand before `at` begin; what is told begins there too. */
function named(pieces: readonly Piece[], at: number): { from: number; to: number } {
  let from = at;
  while (from > 0 && /^(?:count|plant|break)$/.test(pieces[from - 1]?.is ?? '')) from--;
  return { from, to: from };
}

/** "Tomorrow pot on Bitter Tom": a future day and the plain form of a chore. */
export function bareTomorrow(pieces: readonly Piece[]): ReturnType<typeof findRemind> {
  const when = pieces.findIndex((piece) => piece.is === 'when' && isFutureOnly(piece.when));
  const going = toGo(pieces);
  if (going) return going;
  if (when < 0) return hopedFor(pieces);
  // "Tomorrow: cuttings of Salt Harrier".
  if (
    isToCome(pieces[0]) &&
    pieces[1]?.is === 'break' &&
    pieces.some(({ is }) => is === 'plant') &&
    !pieces.some((piece) => piece.is === 'word' && piece.verb !== undefined && piece.verb.form !== 's')
  )
    return { rule: { name: '<day>: <chore>', words: [], beforeVerb: true }, from: 2, to: 2 };
  // "Potted on 20, another 20 to do Thursday".
  const left = pieces.findIndex(
    ({ is }, at) =>
      is === 'count' &&
      at < when &&
      pieces[at - 1]?.is === 'break' &&
      /^to (?:do|go)$/.test(`${wordAt(pieces, at + 1)} ${wordAt(pieces, at + 2)}`),
  );
  if (left > 0)
    return { rule: { name: '<count> to do <day>', words: [], beforeVerb: true }, from: left, to: left };
  const begun = pieces.findLastIndex((piece) => piece.is === 'word' && BEGUN.test(piece.text));
  for (let at = 0; at < pieces.length; at++) {
    const piece = pieces[at];
    if (isGoingTo(pieces, at))
      return { rule: { name: "<day> I'm <chore>ing", words: [], beforeVerb: true }, from: at, to: at };
    if (piece?.is !== 'word' || !piece.verb) continue;
    const before = pieces[at - 1];
    // "60 going to the farm shop tomorrow".
    if (
      piece.text === 'going' &&
      /^(?:to|out|off)$/.test(wordAt(pieces, at + 1)) &&
      (before?.is === 'count' || before?.is === 'plant')
    )
      return {
        rule: { name: '<count> going to <someone> <day>', words: [], beforeVerb: true },
        ...named(pieces, at),
      };
    // "Ember Fox getting moved to the cold frame next Monday".
    if (/^(?:getting|being)$/.test(piece.text) && before?.is === 'plant' && isPastVerb(pieces[at + 1]))
      return {
        rule: { name: '<plant> getting <done> <day>', words: [], beforeVerb: true },
        ...named(pieces, at),
      };
    const open =
      at === 0 ||
      before?.is === 'when' ||
      before?.is === 'break' ||
      /^(?:and|then|please|to|job|jobs|plan)$/.test(wordAt(pieces, at - 1)) ||
      // "FU29 check roots Fri 21st".
      (at === 1 && before?.is === 'plant' && isToCome(pieces[when]));
    if (
      open &&
      at >= begun &&
      !isPlantSale(pieces, at) &&
      !/^(?:note|of)$/.test(wordAt(pieces, at + 1)) &&
      CHORES.test(piece.verb.lemma) &&
      (piece.verb.form === 'base' || piece.verb.form === 'ing')
    )
      return { rule: { name: '<day>: <chore>', words: [], beforeVerb: true }, from: at, to: at };
    // "Tomorrow we are pinching …".
    if (piece.verb.form === 'past' && !isGoingTo(pieces, at + 1)) return undefined;
  }
  return undefined;
}

/** "Tomorrow I'm potting on …", "tomorrow's job is potting on …". */
function isGoingTo(pieces: readonly Piece[], at: number): boolean {
  const stem = /^(.+)ing$/.exec(wordAt(pieces, at))?.[1] ?? '';
  if (![stem, `${stem}e`, stem.slice(0, -1)].some((chore) => CHORES.test(chore))) return false;
  let lead = at - 1;
  while (/^(?:just|finally|also|definitely|probably|only)$/.test(wordAt(pieces, lead))) lead--;
  const be = wordAt(pieces, lead);
  const who = wordAt(pieces, lead - 1);
  return (
    /^(?:i'm|im|we're)$/.test(be) ||
    (be === 'am' && who === 'i') ||
    (be === 'are' && who === 'we') ||
    (be === 'is' && /^(?:job|jobs|plan|task|chore)$/.test(who))
  );
}

/** "Two Salt Harrier to go to Brenda on Friday". */
function toGo(pieces: readonly Piece[]): ReturnType<typeof findRemind> {
  const at = pieces.findIndex(
    (_, n) =>
      /^(?:plant|count)$/.test(pieces[n - 1]?.is ?? '') &&
      /^to (?:go|be) (?:to|out|off|over|round|in|into|on|up|potted|planted|moved|pinched)$/.test(
        `${wordAt(pieces, n)} ${wordAt(pieces, n + 1)} ${wordAt(pieces, n + 2)}`,
      ),
  );
  const isAhead = pieces.some(({ is }, n) => n > at && is === 'when');
  return at > 0 && isAhead
    ? {
        rule: { name: '<count> to go to <someone> <day>', words: [], beforeVerb: true },
        ...named(pieces, at),
      }
    : undefined;
}

/** "Salt Harrier out on the bank holiday, all being well": plants, what is to become of them, and on what it hangs. */
function hopedFor(pieces: readonly Piece[]): ReturnType<typeof findRemind> {
  const plant = pieces.findIndex(({ is }) => is === 'plant');
  const isPlan =
    plant >= 0 &&
    plant < 4 &&
    /^(?:out|in|up|on|into|onto|to|off|potted|planted|moved|pinched|fed|sold|hardened)$/.test(
      wordAt(pieces, plant + 1),
    ) &&
    pieces.some(
      (piece) => piece.is === 'when' && piece.when.future !== undefined && piece.when.future !== 'ask',
    ) &&
    HANGS_ON.test(pieces.map((_, at) => wordAt(pieces, at)).join(' '));
  return isPlan
    ? { rule: { name: '<plant> out <day>, all being well', words: [], beforeVerb: true }, from: 0, to: 0 }
    : undefined;
}

const HANGS_ON =
  /\b(?:being well|weather permitting|god willing|please god|with (?:any|a bit of) luck|fingers crossed|hopefully|if (?:it|the weather) (?:stays|holds|keeps|is)|touch wood)\b/;

const isPastVerb = (piece: Piece | undefined): boolean => piece?.is === 'word' && piece.verb?.form === 'past';

function isFutureOnly(when: When): boolean {
  return AHEAD.test(when.words) && !/\b(?:last|gone|past|ago|yesterday|since)\b/i.test(when.words);
}

const LIST =
  /\b(?:jobs?|to do|todo|tasks?|chores|list|plans?|planned|outstanding|next up|on the cards|agenda|priorit(?:y|ies)|still to do)\b/;

/** "Jobs: pot on Salt Harrier, pinch Tallow Bell": a heading and what is to be done under it, with no day to come. */
export function isToDoList({ pieces, line }: Sentence): boolean {
  const colon = pieces.findIndex((piece) => piece.is === 'break');
  const mark = pieces[colon];
  if (mark?.is !== 'break' || !/^[:\u2013\u2014-]$/.test(mark.mark) || colon > 8 || !LIST.test(line))
    return false;
  const heading = pieces.slice(0, colon);
  const first = pieces.slice(colon + 1).find((piece) => piece.is === 'word' && piece.verb !== undefined);
  return (
    heading.some((_, at) => LIST.test(wordAt(heading, at)) || wordAt(heading, at) === 'do') &&
    !heading.some((_, at) => /^(?:done|finished|completed)$/.test(wordAt(heading, at))) &&
    first?.is === 'word' &&
    (first.verb?.form === 'base' || first.verb?.form === 'ing') &&
    !pieces.some((piece) => piece.is === 'when' && isFutureOnly(piece.when))
  );
}
