/** Corrections among the growers of a group: of one's own note, and to whom they are said. */
import type { Ledger } from '../../ledger/ledger.js';
import type { Line } from '../../ledger/posting.js';
import type { Sitting } from '../sitting.js';

/** "Mine was two", of what each of the group told: the line of the speaker's own last note. */
export function ownLast({ ledger, origin }: Sitting): readonly Line[] {
  const own = ledger.standing.findLast(({ journal }) => journal.by === origin.by);
  return own ? [own.line] : [];
}

/** "They were Tin Parson, Pat" without the one of the group to whom it is said. */
export function withoutListener(ledger: Ledger, words: string): string {
  const [, rest = '', name = ''] = /^(.+?),? (\p{Lu}[\p{L}'’-]+)$/u.exec(words) ?? [];
  const isOfGroup = name !== '' && ledger.standing.some(({ journal }) => journal.by === name);
  const isPlant = [...ledger.varieties.keys()].some((each) => each.endsWith(` ${name}`));
  // "It was Pat" tells who had them.
  return isOfGroup && !isPlant && rest.includes(' ') && !/\b(?:was|were|is|are|to|for)$/i.test(rest)
    ? rest
    : words;
}

/** So long after a note is its grower told that it is wrong. */
const LATELY_MS = 3_600_000;

/** "No Enid, it was three": the line of the last note of the one to whom it is said; null where it is said to nobody. */
export function saidTo({ ledger, origin, text }: Sitting): readonly Line[] | null {
  const [, name] = /^(?:(?:no|nah|nope|sorry|oi|hey),? )?(\p{Lu}[\p{L}'’-]+)[, ]/u.exec(text.trim()) ?? [];
  const own = ledger.standing.findLast(
    ({ journal }) => journal.by === name && origin.at - journal.at <= LATELY_MS,
  );
  return own && own.journal.by !== origin.by ? [own.line] : null;
}
