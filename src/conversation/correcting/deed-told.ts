/** “Make that 55 sold”, “the gift was four”: which of several entries is put right, by the word for what was done. */
import { kindDone } from '../../language/grammar/entry-words.js';
import type { Posting } from '../../ledger/posting.js';
import type { StandingEntry } from '../../ledger/ledger.js';

const BEHIND =
  /^(?:(?:no|sorry|oh|actually)[, ]+)*(?:only |just )?[\p{L}\d]+ [^,.;:!?]{2,50}? (lost|sold|pinched|moved|potted(?: on| up)?|planted(?: out)?|rooted|died|dead)(?:,| not\b)/iu;

/** "Three Salt Harrier lost, not four": the kind of the deed behind what it was done to; of "11 cuttings" a strike. */
export function kindBehind(text: string): Posting['kind'] | undefined {
  const verb = BEHIND.exec(text)?.[1]?.toLowerCase() ?? '';
  const kind = verb === 'rooted' ? 'check' : verb === 'dead' ? 'loss' : kindDone(verb);
  return kind ?? (/\bcuttings\b/i.test(text) ? 'strike' : undefined);
}

type Fits = (each: StandingEntry['entry']) => boolean;

const went =
  (manner: string): Fits =>
  (entry) =>
    entry.kind === 'dispatch' && entry.how === manner;
const isKind =
  (kind: StandingEntry['entry']['kind']): Fits =>
  (entry) =>
    entry.kind === kind;

const DEEDS: readonly (readonly [RegExp, Fits])[] = [
  [/\b(?:sold|sales?)\b/i, went('sold')],
  [/\b(?:given(?: away)?|gave|gifts?|giveaways?)\b/i, went('given')],
  [/\b(?:swapped|swaps?)\b/i, went('swapped')],
  [/\b(?:lost|dead|died|loss(?:es)?|binned|chucked|rotted)\b/i, isKind('loss')],
  [/\b(?:rooted|roots?)\b/i, isKind('check')],
  [/\bpotted\b/i, isKind('potOn')],
  [/\bplanted\b/i, isKind('plantOut')],
  [/\bpinched\b/i, isKind('pinch')],
  [/\b(?:taken|struck|cuttings)\b/i, isKind('strike')],
];

/** Those that the words name by one deed; all where they name none, several, or one that is not among them. */
export function ofDeedTold(text: string, entries: readonly StandingEntry[]): readonly StandingEntry[] {
  const [only, another] = DEEDS.filter(([words]) => words.test(text));
  if (!only || another || entries.length < 2) return entries;
  const fitting = entries.filter(({ entry }) => only[1](entry));
  return fitting.length > 0 ? fitting : entries;
}
