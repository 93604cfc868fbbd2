/** Keeps what is dear to work out, by what it was worked out from; it may be dropped at any time. */

export interface Keeper {
  /** What stands under `key`, else what `work` gives, which is then kept. The key must name everything that `work` depends on. */
  recall<T>(key: string, work: () => T): T;
}

/** Keeps the `limit` values that were asked for last. */
export function memoryKeeper(limit = 2000): Keeper {
  const kept = new Map<string, unknown>();
  return {
    recall<T>(key: string, work: () => T): T {
      const has = kept.has(key);
      const value = has ? (kept.get(key) as T) : work();
      kept.delete(key);
      kept.set(key, value);
      if (!has && kept.size > limit) kept.delete(kept.keys().next().value!);
      return value;
    },
  };
}
