/** "I got them the wrong way round", "the other way round, 7 Herons and 10 Regents": two of the last note's entries, swapped. */
import { anyOf } from '../../language/phrases.js';
import type { LoggedEntry } from '../../ledger/entry.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import { putRightBy } from './amending.js';
import { standingOn } from '../batches/deeds.js';
import { lastNote, type Slots } from './entry-meant.js';
import { readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import { LONGEST, withoutDoubts, withoutNoise } from './doubts.js';
import { tellsAgain } from './telling-again.js';

/** A note told longer ago than this is put right by its plants. */
const WITHIN_MS = 24 * 3_600_000;

const THEM = anyOf`
  (them|those|these)( two| both)?|it|that|both|the (two|numbers|names|counts|labels|plants|varieties)( of them)?
`;

const ROUND = new RegExp(
  String.raw`^(?:${anyOf`
    ((i|we)( have|['’]ve|['’]d| had)? )?((had|got|put|said|wrote|told you|done|did|have|mixed|muddled) )?(${THEM} )?(the )?(wrong|other) way (round|around|about)
    ((it|that|those|they|these)(['’]s|['’]re| is| are| was| were)|should (be|have been)) (the )?(wrong|other) way (round|around|about)
    ((i|we)( have|['’]ve|['’]d| had)? )?(mixed|muddled|got|had) ${THEM} (up|muddled|mixed up|muddled up|swapped|back to front)
    (can you |please )?(swap|switch|swop) ${THEM}( round| around| over| about)?( please)?
    (the )?(numbers|counts) (are|were) (swapped|the wrong way round|mixed up)
  `})(?:[.!]*$|[.!]*[,:;.–—-]+ *|[.!]* (?=it |that |i |we |\d))`,
  'i',
);

/** What the entries of a note were told by, so that the numbers alone can be read again. */
const VERBS: Readonly<Partial<Record<LoggedEntry['kind'], string>>> = {
  strike: 'took',
  loss: 'lost',
  potOn: 'potted on',
  pinch: 'pinched',
  plantOut: 'planted out',
  check: 'rooted:',
  dispatch: 'gave',
  receive: 'received',
};

/** Whether the text turns round what the last note told of two plants, and that is put right. */
export function turnsRound(sitting: Sitting, text: string): boolean {
  const whole = withoutNoise(text);
  if (whole.length > LONGEST) return false;
  // "Wrong way round": its "wrong" is no doubt before it.
  const words = ROUND.test(whole) ? whole : withoutDoubts(whole);
  const found = ROUND.exec(words);
  if (!found) return false;
  const told = lastNote(sitting.ledger);
  const [first, second, another] = told;
  if (!first || !second || another || first.entry.kind !== second.entry.kind) return false;
  if (sitting.origin.at - first.journal.at > WITHIN_MS) return false;
  const rest = words
    .slice(found[0].length)
    .replace(
      /^(?:so |and )?(?:(?:it|that)(?:['’]s| was| is| should be| should have been)|should (?:be|have been)|i (?:meant|mean|took)) /i,
      '',
    )
    .trim();
  if (rest === '') return swapped(sitting, first, second);
  const verb = VERBS[first.entry.kind as LoggedEntry['kind']];
  const again = verb === undefined ? null : readIn(sitting, `${verb} ${inFull(rest, [first, second])}`);
  return again !== null && tellsAgain(sitting, `wrong way round, ${rest}`, again);
}

/** "7 Herons and 10 Regents": by their whole names, though other plants of the ledger share a word with one of the two. */
function inFull(words: string, entries: readonly StandingEntry[]): string {
  const names = entries.flatMap(({ entry }) => ('variety' in entry && entry.variety ? [entry.variety] : []));
  return names.reduce((text, name) => {
    if (text.toLowerCase().includes(name.toLowerCase())) return text;
    const others = names.filter((other) => other !== name).map((other) => other.toLowerCase().split(' '));
    const own = name
      .split(' ')
      .find((word) => word.length > 3 && !others.flat().includes(word.toLowerCase()));
    return own !== undefined && /^[\p{L}’']+$/u.test(own)
      ? text.replace(new RegExp(`(?<!\\p{L})${own}s?(?!\\p{L})`, 'iu'), name)
      : text;
  }, words);
}

/** What two entries may have of each other's. */
const OWN = ['count', 'rooted', 'to', 'place'] as const;

/** Gives each of the two what the other had, where they differ in one thing beside their plant. */
function swapped(sitting: Sitting, first: StandingEntry, second: StandingEntry): boolean {
  const [one, other] = [first.entry, second.entry] as unknown as [Slots, Slots];
  const [slot, another] = OWN.filter((each) => one[each] !== other[each]);
  // "Six in the border, two by the gate", of one plant: its numbers are swapped.
  const isOne = first.touched.join() === second.touched.join() && slot === 'count';
  if (slot === undefined || (another !== undefined && !isOne)) return false;
  const [had, has] = [one[slot], other[slot]];
  if (had === undefined || has === undefined) return false;
  const turned = new Map([
    [first.entry, { ...first.entry, [slot]: has }],
    [second.entry, { ...second.entry, [slot]: had }],
  ]);
  putRightBy(
    sitting,
    [...new Set([first.line, second.line])].map((line) => ({
      amends: line,
      entries: standingOn(sitting.ledger, [line]).map(
        ({ entry }) => (turned.get(entry) ?? entry) as StandingEntry['entry'],
      ),
    })),
  );
  return true;
}
