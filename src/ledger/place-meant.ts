/** Which of several stand at a place that is named in full or by its noun alone. */

/** Those at the place of that name, else those at one that ends in it ("windowsill" of "kitchen windowsill"). */
export function standingAt<T>(
  all: readonly T[],
  placeOf: (each: T) => string | null | undefined,
  name: string,
): readonly T[] {
  const wanted = name.toLowerCase();
  const exact = all.filter((each) => placeOf(each)?.toLowerCase() === wanted);
  return exact.length > 0
    ? exact
    : all.filter((each) => placeOf(each)?.toLowerCase().endsWith(` ${wanted}`) ?? false);
}
