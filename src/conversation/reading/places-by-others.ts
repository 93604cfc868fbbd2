/** “With the others”, “next to the Marble Wren”, “same spot as last time”, “back where they were”: places told by what stands, or stood, there. */
import { type Batch, placeOf } from '../../ledger/batch.js';
import { type Ledger, liveBatches } from '../../ledger/ledger.js';
import { withoutNames } from '../answers/plants-named.js';
import { OTHER_MS, spokenOfLast } from '../batches/pointing.js';
import { readIn } from './reading.js';
import type { Sitting } from '../sitting.js';

/** Nothing is set down where nothing of this is said: a remark may liken one plant to the one beside it. */
const SET_DOWN =
  /\b(?:took|taken|take|struck|stuck|cuttings|put|popped|placed|set|stood|moved|shifted|tucked|squeezed|back|they['’]re|they are|these are|it['’]s|(?:are|is) now)\b/i;
/** What has not happened, or is asked. */
const NOT_DONE =
  /\?|n['’]t\b|['’]ll\b|\b(?:not|never|will|should|shall|might|could|would|going to|need|want|remind|hope|maybe|tomorrow|next week)\b/i;

const AT = String.raw`(?:right |just )?(?:next to|beside|alongside|in with|in beside|with|(?:in |on |at )?(?:the )?same (?:place|spot|shelf|bench|mat|sill|windowsill|frame) as)`;
/** Where the phrase may end: nothing else is told of the plants that it names. */
const END = String.raw`(?=\s*(?:$|[.,;!]|too\b|as well\b|also\b|for now\b|today\b|and (?:took|potted|watered|misted)\b))`;
const BY_OTHERS = new RegExp(
  String.raw`\b${AT} (?:(?:all|all of) )?(?:the|my) (?:others?|rest|other ones)${END}`,
  'iu',
);
const BY_PLANT = new RegExp(
  String.raw`\b(?<lead>${AT}) (?:(?:the|my) )?(?<whom>[\p{L}'’ -]{3,40}?)${END}`,
  'iu',
);
const THEM_BEFORE = /\b(?:them|those|these|they['’]re|they are|it|it['’]s)(?: all| both| in)? $/i;
const SAME =
  /\b(?:in |on |at )?(?:the )?same (?<what>place|spot|(?:window ?)?sill|shelf|bench|mat|heat mat|propagator|frame|cold frame|greenhouse|tunnel|table|rack|room|house)(?: as (?:last time|before|usual|ever|the (?:others?|rest|last lot|last ones)))?(?=\s*(?:$|[.,;!]|again\b|too\b|for))/i;
const BACK =
  /\b(?:they(?:['’]?ve| have) (?:all |both )?gone )?back (?:to )?where (?:they|it) (?:were|was|came from|lived|stood)(?: before)?(?=\s*(?:$|[.,;!]))/i;

/** The text with such a phrase as the place that it means; as it was where that is not one place for certain. */
export function withPlacesByOthers(sitting: Sitting, text: string): string {
  const bare = withoutNames(sitting.ledger, text);
  if (!SET_DOWN.test(bare)) return text;
  return backWhereTheyWere(sitting, nextToPlant(sitting, withOthers(sitting, asBefore(sitting, text))));
}

function withOthers({ ledger }: Sitting, text: string): string {
  const said = BY_OTHERS.exec(text);
  // "In the lean-to with the rest": the place is told.
  if (!said || /\b(?:in|on|at|under) (?:the|my) [\p{L}-]+(?: [\p{L}-]+)? $/iu.test(text.slice(0, said.index)))
    return text;
  const named = varietiesIn(ledger, text);
  const lots = liveBatches(ledger);
  const own = lots.filter(({ variety }) => named.includes(variety ?? ''));
  return replaced(text, said, onlyPlace(own) ?? onlyPlace(lots));
}

/** "Took six Moss Cardinal, next to the Marble Wren"; "with" names another plant of the same deed, save behind "them". */
function nextToPlant({ ledger }: Sitting, text: string): string {
  const said = BY_PLANT.exec(text);
  const { lead = '', whom = '' } = said?.groups ?? {};
  const [only, another] = varietiesIn(ledger, whom);
  if (!said || only === undefined || another !== undefined || only.length < whom.length - 2) return text;
  if (lead.toLowerCase() === 'with' && !THEM_BEFORE.test(text.slice(0, said.index))) return text;
  return replaced(text, said, onlyPlace(liveBatches(ledger).filter(({ variety }) => variety === only)));
}

/** The last place told of plants, where it is one of that kind. */
function asBefore(sitting: Sitting, text: string): string {
  const { ledger } = sitting;
  const said = SAME.exec(text);
  // "And another 5 Moss Cardinal, same place" says the last note again.
  if (!said || /^(?:and|also|plus|then|another)\b/i.test(text.trim())) return text;
  // "6 Moss Cardinal in the porch, 8 Marble Wren same place": the place that the note itself told last.
  if (readIn(sitting, text.slice(0, said.index)).entries.some(({ entry }) => 'place' in entry)) return text;
  const what = (said.groups?.['what'] ?? '').toLowerCase().replace(/^window ?/, '');
  const stood = ledger.standing.findLast(
    ({ entry }) =>
      'place' in entry &&
      entry.place !== undefined &&
      /^(?:strike|receive|move|potOn|stock)$/.test(entry.kind),
  )?.entry as { readonly place?: string } | undefined;
  const isKind = /^(?:place|spot)$/.test(what) || (stood?.place ?? '').toLowerCase().endsWith(what);
  return replaced(text, said, isKind ? stood?.place : undefined);
}

/** The place before the last that a lot was carried to. */
function backWhereTheyWere(sitting: Sitting, text: string): string {
  const said = BACK.exec(text);
  if (!said) return text;
  const { ledger } = sitting;
  const named = varietiesIn(ledger, text);
  const spoken = spokenOfLast(sitting, OTHER_MS);
  const lots = liveBatches(ledger).filter(({ variety, label }) =>
    named.length > 0 ? named.includes(variety ?? '') : spoken.includes(label),
  );
  const [only, another] = new Set(
    lots.map(({ label }) => {
      const places = ledger.standing.flatMap(({ entry, touched }) =>
        touched.includes(label) && 'place' in entry && entry.place && !/^(?:tend|reading)$/.test(entry.kind)
          ? [entry.place]
          : [],
      );
      const now = places.at(-1);
      return places.findLast((place) => place !== now);
    }),
  );
  const [lot, second] = lots;
  // "They've gone back where they were".
  const isTold = /^they/i.test(said[0]);
  const lead = isTold ? `put the ${lot?.variety ?? ''} back in the` : 'back to the';
  const place = another === undefined && !(isTold && (second || lot?.variety == null)) ? only : undefined;
  return replaced(text, said, place, lead);
}

function varietiesIn({ varieties }: Ledger, text: string): readonly string[] {
  const words = ` ${text.toLowerCase().replace(/[^\p{L}\d'’-]+/gu, ' ')} `;
  return [...varieties.keys()].filter((name) => words.includes(` ${name.toLowerCase()} `));
}

/** The one place where all of these stand that stand anywhere. */
function onlyPlace(lots: readonly Batch[]): string | undefined {
  const [only, another] = new Set(lots.flatMap((batch) => placeOf(batch) ?? []));
  return another === undefined ? only : undefined;
}

function replaced(
  text: string,
  { 0: { length }, index }: RegExpExecArray,
  place: string | undefined,
  lead = 'in the',
): string {
  // Only what is said in the same sentence tells whether it was done.
  const from = Math.max(...['.', '!', '?', ';'].map((mark) => text.lastIndexOf(mark, index - 1))) + 1;
  const behind = text.slice(index + length);
  const end = /[.!?;]/.exec(behind)?.index ?? behind.length;
  if (place === undefined || NOT_DONE.test(text.slice(from, index + length + end + 1))) return text;
  return `${text.slice(0, index)}${lead} ${place}${behind}`;
}
