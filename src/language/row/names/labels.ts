/** Labels of batches, however their letters and digits are set apart. */
import { type FoundName, plain } from './known.js';
import type { NoteContext } from '../../note.js';
import { oncePerLedger } from '../once-per-ledger.js';
import { numberAt } from '../../pieces/numbers.js';
import type { Token } from '../tokens.js';

/** Labels by their letters and digits alone. */
const labelsOf = oncePerLedger(
  (context): ReadonlyMap<string, string> =>
    new Map((context.batches ?? []).map(({ label }) => [plain(label), label])),
);

/** Every label of the context. */
export function findLabels(tokens: readonly Token[], context: NoteContext): FoundName[] {
  const finds: FoundName[] = [];
  const labels = labelsOf(context);
  if (labels.size === 0) return finds;
  const parts = tokens.map(({ raw }) => plain(raw));
  for (let at = 0; at < tokens.length; at++) {
    let joined = '';
    for (let to = at + 1; to <= Math.min(at + 4, tokens.length); to++) {
      const token = tokens[to - 1];
      if (!token || (token.is === 'mark' && !(token.raw === '-' && token.glued))) break;
      const part = parts[to - 1] ?? '';
      if (part === '') break;
      if (token.raw !== tokens[to - 2]?.raw || token.start !== tokens[to - 2]?.start) joined += part;
      const label = labels.get(joined);
      // A label of letters alone must stand in capitals, or any word could be one.
      if (label !== undefined && (/\d/.test(joined) || token.raw === token.raw.toUpperCase()))
        finds.push({ from: at, to, label, slips: 0 });
    }
    const spelt = speltAt(tokens, parts, at, labels);
    if (spelt) finds.push(spelt);
  }
  return finds;
}

/** "O s twenty two": letter by letter, two at least, and the number in words. */
function speltAt(
  tokens: readonly Token[],
  parts: readonly string[],
  at: number,
  labels: ReadonlyMap<string, string>,
): FoundName | undefined {
  let to = at;
  while (to < at + 4 && /^[a-z]$/.test(parts[to] ?? '')) to++;
  if (to < at + 2) return undefined;
  const letters = parts.slice(at, to).join('');
  if (/^(?:oh|zero|nought)$/.test(parts[to] ?? '')) to++;
  const number = numberAt(tokens, to);
  if (!number || number.collective) return undefined;
  const label =
    labels.get(`${letters}${number.value}`) ??
    labels.get(`${letters}${String(number.value).padStart(2, '0')}`);
  return label === undefined ? undefined : { from: at, to: number.to, label, slips: 0 };
}
