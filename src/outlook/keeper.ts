/** Keeps what is dear to work out, by what it was worked out from; it may be dropped at any time. */
import { createHash } from 'node:crypto';

/** What was learnt from a history is large (some 200 kB) and shared by many batches; what is foreseen of one is small. */
export type Shelf = 'learnt' | 'foreseen';

export interface Keeper {
  /** What stands under `key`, else what `work` gives, which is then kept. The key must name everything that `work` depends on. */
  recall<T>(shelf: Shelf, key: string, work: () => T): T;
}

/** Keeps the values that were asked for last, so many on each shelf. */
export function memoryKeeper(
  limits: Readonly<Record<Shelf, number>> = { learnt: 60, foreseen: 20_000 },
): Keeper {
  const shelves = { learnt: new Map<string, unknown>(), foreseen: new Map<string, unknown>() };
  return {
    recall<T>(shelf: Shelf, key: string, work: () => T): T {
      const kept = shelves[shelf];
      const has = kept.has(key);
      const value = has ? (kept.get(key) as T) : work();
      kept.delete(key);
      kept.set(key, value);
      if (!has && kept.size > limits[shelf]) kept.delete(kept.keys().next().value!);
      return value;
    },
  };
}

/** So short a text is its own name. */
const SHORT = 120;

/** A short name for a long text, the same for the same text alone. */
export function fingerprint(text: string): string {
  if (text.length <= SHORT) return text;
  return createHash('sha256').update(text).digest('base64').slice(0, 22);
}
