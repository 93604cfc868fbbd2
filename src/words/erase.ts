/** Erasing all that is known of a grower: the question before, and what went. */
import { many } from './speech.js';

export const eraseQuestion =
  'This erases every ledger of yours, your messages and the copies in the backups, for good; nobody can bring it back, and you would have to be let in anew. Take your ledger along first?';
export const eraseButtons = ['Take it along first', 'Erase everything', 'Keep it'] as const;
export const eraseBegun = 'Erasing …';
export const eraseNothing = 'All right, everything stays.';
export const eraseInGroup =
  'This ledger belongs to the group, and nothing here can erase it for all. Ask me in a chat of your own to erase what is yours.';

export interface Erased {
  readonly ledgers: number;
  readonly lines: number;
  readonly copiesRewritten: number;
  readonly copiesDropped: number;
}

export function erasedWords({ ledgers, lines, copiesRewritten, copiesDropped }: Erased): string {
  const copies =
    copiesRewritten === 0
      ? ''
      : ` ${many(copiesRewritten, 'backup was', 'backups were')} written anew without it.`;
  const dropped =
    copiesDropped === 0
      ? ''
      : ` ${many(copiesDropped, 'backup that could not be read was', 'backups that could not be read were')} deleted.`;
  return `Erased: ${many(ledgers, 'ledger')} with ${many(lines, 'line')}, and your messages.${copies}${dropped} A backup restored later is cleaned likewise.`;
}
