/** Writes names as they are spoken: lower-case words, numbers spelt out, no punctuation. */

const units = [
  'zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve', 'thirteen',
  'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen',
] as const; // prettier-ignore
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'] as const;

/** A whole number from 0 to 999,999 in words ("a hundred and four" is said "one hundred and four"). */
export function numberWords(value: number): string[] {
  if (value < 20) return [units[value] ?? 'zero'];
  if (value < 100) {
    const rest = value % 10;
    return [tens[Math.floor(value / 10)] ?? '', ...(rest ? numberWords(rest) : [])];
  }
  if (value < 1000) {
    const rest = value % 100;
    return [
      ...numberWords(Math.floor(value / 100)),
      'hundred',
      ...(rest ? ['and', ...numberWords(rest)] : []),
    ];
  }
  const rest = value % 1000;
  const joint = rest > 0 && rest < 100 ? ['and'] : [];
  return [...numberWords(Math.floor(value / 1000)), 'thousand', ...joint, ...(rest ? numberWords(rest) : [])];
}

/** "Grandad's Elbow" → grandad's elbow; "Mist bench 1" → mist bench one; accents and other signs are dropped. */
export function spokenWords(text: string): string[] {
  const plain = text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[‘’`´]/g, "'")
    .replace(/&/g, ' and ')
    .toLowerCase();
  return (plain.match(/[a-z]+(?:'[a-z]+)*'?|\d+/g) ?? []).flatMap((word) => {
    if (!/^\d/.test(word)) return [word.replace(/'$/, '')];
    return word.length > 6
      ? [...word].flatMap((digit) => numberWords(Number(digit)))
      : numberWords(Number(word));
  });
}

/** A label as it is spelt aloud: "CL12" → c l twelve. */
export function spelledLabel(label: string): string[] {
  return (label.toLowerCase().match(/[a-z]|\d+/g) ?? []).flatMap((part) =>
    /\d/.test(part) ? numberWords(Math.min(Number(part), 999_999)) : [part],
  );
}
