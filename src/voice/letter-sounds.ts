/** Guesses a word's pronunciation from its spelling, for machines without espeak-ng: rough, but better than deaf to it. */

/** Spellings and the CMU phones they usually stand for in English, read left to right, the longest that fits first. */
const soundOf = new Map(
  Object.entries({
    tion: 'SH AH N', sion: 'ZH AH N', ough: 'AO', eigh: 'EY', augh: 'AO', igh: 'AY', tch: 'CH', dge: 'JH', eau: 'OW',
    air: 'EH R', are: 'EH R', ear: 'IH R', eer: 'IH R', ier: 'IY ER', our: 'AW ER', oor: 'AO R', ore: 'AO R', ure: 'Y UH R',
    sch: 'SH', chr: 'K R', ium: 'IY AH M', ia: 'IY AH', ch: 'CH', sh: 'SH', th: 'TH', ph: 'F', wh: 'W', ck: 'K', ng: 'NG',
    qu: 'K W', kn: 'N', wr: 'R', gh: 'G', gn: 'N', sc: 'S K', ce: 'S', ci: 'S IH', cy: 'S IY', ge: 'JH', gi: 'JH IH',
    ai: 'EY', ay: 'EY', ea: 'IY', ee: 'IY', ei: 'EY', ey: 'IY', ie: 'IY', oa: 'OW', oe: 'OW', oi: 'OY', oo: 'UW',
    ou: 'AW', ow: 'OW', oy: 'OY', au: 'AO', aw: 'AO', eu: 'Y UW', ew: 'Y UW', ue: 'UW', ui: 'UW', ae: 'IY',
    ar: 'AA R', er: 'ER', ir: 'ER', or: 'AO R', ur: 'ER', a: 'AE', b: 'B', c: 'K', d: 'D', e: 'EH', f: 'F', g: 'G',
    h: 'HH', i: 'IH', j: 'JH', k: 'K', l: 'L', m: 'M', n: 'N', o: 'AA', p: 'P', q: 'K', r: 'R', s: 'S', t: 'T', u: 'AH',
    v: 'V', w: 'W', x: 'K S', y: 'Y', z: 'Z',
  }),
); // prettier-ignore

const longVowel: Readonly<Record<string, string>> = { a: 'EY', e: 'IY', i: 'AY', o: 'OW', u: 'UW', y: 'AY' };

/** "wren" → R EH N. Always yields at least one phone for a word with a letter in it. */
export function lettersToPhones(word: string): string {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '');
  const phones: string[] = [];
  for (let at = 0; at < letters.length;) {
    const rest = letters.slice(at);
    const long = /^([aeiouy])[bcdfgk-nprstvz]e(?:s|d)?$/.exec(rest);
    if (long && at > 0) {
      phones.push(
        longVowel[long[1] ?? ''] ?? '',
        ...lettersToPhones(rest.slice(1).replace(/e([sd]?)$/, '$1')).split(' '),
      );
      break;
    }
    if (at > 0 && /^e(?:s|d)?$/.test(rest) && rest.length < 2) break;
    if (at > 0 && rest === 'y') {
      phones.push('IY');
      break;
    }
    let length = Math.min(4, rest.length);
    while (length > 1 && !soundOf.has(rest.slice(0, length))) length--;
    const spelling = rest.slice(0, length);
    const doubled = length === 1 && spelling === letters[at - 1] && !'aeiou'.includes(spelling);
    if (!doubled) phones.push(...(soundOf.get(spelling) ?? '').split(' '));
    at += length;
  }
  return phones.filter((phone) => phone !== '').join(' ') || 'AH';
}
