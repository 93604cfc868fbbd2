/** Labels of batches, however their letters and digits are set apart. */
import { type FoundName, plain } from './known.js';
import type { NoteContext } from '../note.js';
import type { Token } from '../tokens.js';

/** Every label of the context. */
export function findLabels(tokens: readonly Token[], context: NoteContext): FoundName[] {
  const finds: FoundName[] = [];
  const labels = new Map((context.batches ?? []).map(({ label }) => [plain(label), label]));
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
  }
  return finds;
}
