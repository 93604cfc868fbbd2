/** "3 of the 24/4 Salt Harrier": two numbers right before a plant, or its lot, that are the day on which such a batch was struck. */
import type { Note } from '../note.js';
import type { When } from '../pieces/pieces.js';
import type { Token } from './tokens.js';

/** Where such days stand; `nameAt` is the variety that begins at a token. */
export function struckDays(
  tokens: readonly Token[],
  { context, dateOrder }: Note,
  nameAt: (at: number) => string | undefined,
): readonly { readonly from: number; readonly to: number; readonly when: When }[] {
  return tokens.flatMap((token, at) => {
    const [first, second] = [tokens[at - 1], tokens[at + 1]];
    if (!/^[/.]$/.test(token.text) || first?.is !== 'number' || second?.is !== 'number') return [];
    const variety = nameAt(at + 2);
    const isLot = /^(?:lots?|ones?|batch|cuttings)$/.test(tokens[at + 2]?.text ?? '');
    if (variety === undefined && !isLot) return [];
    const [day, month] = dateOrder === 'MDY' ? [second, first] : [first, second];
    const struck = (context?.batches ?? []).find(
      (batch) =>
        batch.struck?.slice(5) === `${month.text.padStart(2, '0')}-${day.text.padStart(2, '0')}` &&
        (isLot || batch.variety === variety),
    )?.struck;
    const words = `${first.text}/${second.text}`;
    return struck === undefined
      ? []
      : [{ from: at - 1, to: at + 2, when: { past: struck, future: undefined, words } }];
  });
}
