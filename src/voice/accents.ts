/** How else a word is said, by accents that the dictionary and the machine's own pronunciations do not write. */

interface Shift {
  readonly heard: RegExp;
  readonly as: string;
}

/** What many Americans say: “cot” for “caught”, though not before an r, and a t between vowels like a d. */
const american: readonly Shift[] = [
  { heard: /\bAO\b(?! R)/g, as: 'AA' },
  { heard: /(?<=\b(?:[AEIOU][A-Z]|R) )T(?= (?:AH|IH|IY|ER)\b)/g, as: 'D' },
];

/**
 * What a recogniser of American speech makes of a Briton's vowels, by which way of saying a word fitted best where the words
 * were known: “lantern” with an open ah, “gate” near “guy”, “took” near “toke”, the l of “twelve” as a vowel.
 */
const british: readonly Shift[] = [
  { heard: /\bAE\b/g, as: 'AA' },
  { heard: /\bEY\b/g, as: 'AY' },
  { heard: /\bUH\b/g, as: 'OW' },
  { heard: /\bEH L(?= [BDFGKMNPSTVZ])/g, as: 'EH OW' },
];

/** A way of saying a word as a relaxed American has it; the same where nothing differs. */
export function asAmerican(phones: string): string {
  return shifted(phones, american);
}

/** A way of saying a word that has lost its r's already, as an American listener hears it from a Briton. */
export function asBritish(phones: string): string {
  return shifted(phones, british);
}

/** espeak-ng's mnemonics with the vowel of “up” as open as that of “palm”: once it is a phone, it looks like any faint vowel. */
export function withOpenUp(mnemonics: string): string {
  return mnemonics.replace(/V(?!R)/g, 'A:');
}

function shifted(phones: string, shifts: readonly Shift[]): string {
  return shifts.reduce((said, { heard, as }) => said.replace(heard, as), phones);
}
