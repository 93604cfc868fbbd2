/** Turns the phoneme mnemonics that espeak-ng prints into the phone set of the CMU pronouncing dictionary. */

/** How a voice treats an r that no vowel follows: British voices drop it, American ones sound it. */
export type Accent = 'british' | 'american';

/**
 * espeak-ng's English mnemonics (as `espeak-ng -x` prints them; docs/phonemes.md of that project) beside the CMU phones
 * that lie nearest. R in brackets is sounded by American voices only, a schwa in its place by British ones where `/AH`.
 */
const phonesOfMnemonic = new Map(
  Object.entries({
    'aI@3': 'AY (ER/AH)', 'aI@': 'AY (ER/AH)', aI3: 'AY (ER/AH)', 'aU@': 'AW (ER/AH)', aU3: 'AW (ER/AH)',
    'i@3': 'IH (R/AH)', 'i@': 'IY AH', 'e@': 'EH (R)', 'U@': 'AO (R)', 'A@': 'AA (R)', 'O@': 'AO (R)', 'o@': 'AO (R)',
    '@L': 'AH L', '3:': 'ER', '3': '(ER/AH)', IR: 'IH R', VR: 'AH R',
    '@': 'AH', '@2': 'AH', '@5': 'AH', a: 'AE', aa: 'AE', 'a#': 'AH', a2: 'AE', A: 'AA', 'A:': 'AA', E: 'EH', 'E#': 'EH',
    E2: 'EH', 'E:': 'EH R', I: 'IH', I2: 'IH', 'I#': 'IH', i: 'IY', 'i:': 'IY', '0': '(AA/AO)', '0#': 'AA', O: 'AO', O2: 'AO',
    'O:': 'AO', V: 'AH', U: 'UH', u: 'UW', 'u:': 'UW', o: 'OW', e: 'EY',
    aI: 'AY', aU: 'AW', eI: 'EY', OI: 'OY', oU: 'OW', '@U': 'OW',
    tS: 'CH', dZ: 'JH', D: 'DH', T: 'TH', S: 'SH', Z: 'ZH', N: 'NG', j: 'Y', b: 'B', d: 'D', f: 'F', g: 'G', h: 'HH',
    k: 'K', l: 'L', 'l^': 'L', m: 'M', n: 'N', 'n-': 'AH N', 'm-': 'AH M', p: 'P', r: 'R', 'r-': 'R', s: 'S', t: 'T',
    't#': 'T', t2: 'T', d2: 'D', v: 'V', w: 'W', 'w#': 'W', z: 'Z', 'z#': 'Z', x: 'K', C: 'HH', '?': 'T',
  }),
); // prettier-ignore

/** Stress, length and joints, which the phone set does not write. */
const silent = new Set(["'", ',', '%', '=', ':', '_', '|', '-', '*', ';', '~', '!', '#', '"', '^']);
const longestMnemonic = 4;

/** "l'aant3n" → L AE N T ER N, or L AE N T AH N as a Briton has it; nothing where a sign is not English. */
export function phonesOf(mnemonics: string, accent: Accent): string | undefined {
  const phones: string[] = [];
  const text = mnemonics.trim();
  for (let at = 0; at < text.length;) {
    let length = longestMnemonic;
    while (length > 0 && !phonesOfMnemonic.has(text.slice(at, at + length))) length--;
    if (length === 0 && !silent.has(text[at] ?? '')) return undefined;
    if (length > 0) phones.push(...accented(phonesOfMnemonic.get(text.slice(at, at + length)) ?? '', accent));
    at += Math.max(1, length);
  }
  const heard = phones.filter((phone, at) => phone !== phones[at - 1]);
  return heard.length > 0 ? heard.join(' ') : undefined;
}

function accented(phones: string, accent: Accent): string[] {
  return phones
    .replace(/\((\w+)(?:\/(\w+))?\)/g, (_, american: string, british = '') =>
      accent === 'american' ? american : (british as string),
    )
    .split(' ')
    .filter((phone) => phone !== '');
}
