/** Slots taken from an entry. */

/** The entry without these slots; the rest as it was. */
export function withoutSlots<T extends object>(entry: T, ...slots: readonly string[]): T {
  return Object.fromEntries(Object.entries(entry).filter(([slot]) => !slots.includes(slot))) as T;
}
