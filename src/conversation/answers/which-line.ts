/** "The Ember Fox", "the one on the sill", "EF2": which of several entries an answer means. */
import type { StandingEntry } from '../../ledger/ledger.js';

/** Which of the entries the words name, by label, else by place, else by plant; -1 where they name none, or several. */
export function lineNamed(standing: readonly StandingEntry[], text: string): number {
  const lower = text.toLowerCase();
  const says = (name: string | undefined): boolean =>
    name !== undefined && lower.includes(name.toLowerCase());
  const named = (of: (each: StandingEntry) => boolean): number => {
    const [only, another] = standing.filter(of);
    return only && !another ? standing.indexOf(only) : -1;
  };
  const slotsOf = ({ entry }: StandingEntry) =>
    entry as { readonly variety?: string; readonly place?: string };
  const byLabel = named(({ touched }) => touched.some(says));
  if (byLabel >= 0) return byLabel;
  const byPlace = named((each) => says(slotsOf(each).place));
  return byPlace >= 0 ? byPlace : named((each) => says(slotsOf(each).variety));
}
