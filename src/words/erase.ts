/** Erasing all that is known of a grower: the question before, and what went. */
import type { Erased } from '../ledger/erasure.js';
import { many } from './speech.js';

export const eraseQuestion =
  'This erases every ledger of yours, your messages and the copies in the backups, for good; nobody can bring it back, and you would have to be let in anew. Take your ledger along first?';
export const eraseButtons = ['Take it along first', 'Erase everything', 'Keep it'] as const;
export const eraseBegun = 'Erasing …';
export const eraseNothing = 'All right, everything stays.';
export const eraseSharedQuestion =
  'This erases the group’s ledger for everyone in it, what was said of it and the copies in the backups, for good; nobody can bring it back. Take it along first?';

/** `owner` is who may erase the group's ledger. */
export function eraseInGroup(owner: string | null): string {
  const who = owner === null ? 'nobody here may erase it' : `only ${owner} may erase it`;
  return `This ledger belongs to the group, and ${who}. Ask me in a chat of your own to erase what is yours.`;
}

export function erasedWords(
  { ledgers, lines, copiesRewritten, copiesDropped }: Erased,
  shared: boolean,
): string {
  const copies =
    copiesRewritten === 0
      ? ''
      : ` ${many(copiesRewritten, 'backup was', 'backups were')} written anew without it.`;
  const dropped =
    copiesDropped === 0
      ? ''
      : ` ${many(copiesDropped, 'backup that could not be read was', 'backups that could not be read were')} deleted.`;
  const said = shared ? 'what was said of it' : 'your messages';
  return `Erased: ${many(ledgers, 'ledger')} with ${many(lines, 'line')}, and ${said}.${copies}${dropped} A backup restored later is cleaned likewise.`;
}
