/** "Planted out everything": of all that live; "pinched both", where `fitting` are two. */
export function meansEverything(text: string, fitting: number): boolean {
  return (
    /\b(?:everything|every one of them|the whole lot|every (?:last|single) one|both (?:kinds|sorts|varieties))\b/i.test(
      text,
    ) ||
    (fitting === 2 && /\bboth\b/i.test(text))
  );
}
