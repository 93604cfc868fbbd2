/** Names told in full, as written, inflected, misspelt or misheard. */
import { isKnown, pluralsOf } from '../lexicon.js';
import { type FoundName, type Name, NUMERALS, plain } from './known.js';
import { soundKey, soundsLike } from '../sounds.js';
import { distance } from '../spelling.js';
import type { Token } from '../tokens.js';

/** A name that begins at token `at`. */
export function nameAt(tokens: readonly Token[], at: number, name: Name): FoundName | undefined {
  return inWords(tokens, at, name) ?? runTogether(tokens, at, name);
}

/** Word by word, a hyphen or apostrophe between them allowed. */
function inWords(tokens: readonly Token[], at: number, name: Name): FoundName | undefined {
  let to = at;
  let slips = 0;
  let exact = 0;
  let sounded = 0;
  for (const [n, word] of name.words.entries()) {
    while (n > 0 && /^[-'.,]$/.test(tokens[to]?.raw ?? '') && to > at) to++;
    const token = tokens[to];
    if (!token || token.is === 'mark') return undefined;
    const written = plain(token.raw.replace(/'s$/i, ''));
    const whole = plain(token.raw);
    const lastWord = n === name.words.length - 1;
    if (whole === word || written === word || NUMERALS.get(whole) === word) exact++;
    // "T Whistler": the first word by its letter.
    else if (
      n === 0 &&
      name.words.length > 1 &&
      whole.length === 1 &&
      word.startsWith(whole) &&
      token.capital
    )
      slips += 1;
    else if (lastWord && pluralsOf(word).includes(whole)) {
      exact++;
      slips += 1;
    } else if (whole === `${word}s`) {
      exact++;
      slips += 1;
    } else if (token.text === word && !isKnown(written)) {
      // "Lost postmn": the name with its slip mended.
      slips += 1;
    } else if (soundsLike(written, word)) {
      slips += 2;
      sounded++;
    } else {
      const allowed = word.length < 4 ? 0 : word.length < 7 ? 1 : 2;
      if (
        isKnown(written) ||
        written.charAt(0) !== word.charAt(0) ||
        distance(written, word, allowed) > allowed
      ) {
        const plural = `${word}s`;
        if (!lastWord || isKnown(written) || distance(written, plural, allowed) > allowed) return undefined;
      }
      slips += 2;
    }
    to++;
  }
  // Two everyday words that happen to sound alike are no name.
  const everyday = tokens.slice(at, to).some((token) => isKnown(plain(token.raw)));
  if (everyday && slips >= 2 && exact === 0 && name.words.length > 1 && sounded === name.words.length)
    return undefined;
  if (slips >= 2 && name.words.length === 1 && name.joined.length < 5) return undefined;
  return { from: at, to, variety: name.variety, slips };
}

/** "copperlantern", "marble ren": the letters alone, over as many words or one fewer or more. */
function runTogether(tokens: readonly Token[], at: number, name: Name): FoundName | undefined {
  if (name.joined.length < 7) return undefined;
  if (tokens[at]?.raw.charAt(0).toLowerCase() !== name.joined.charAt(0)) return undefined;
  let joined = '';
  for (let to = at + 1; to <= Math.min(at + name.words.length + 1, tokens.length); to++) {
    const token = tokens[to - 1];
    if (!token || token.is === 'mark' || token.is === 'line') return undefined;
    joined += plain(token.raw);
    if (joined.length > name.joined.length + 3) return undefined;
    if (to - at === name.words.length) continue;
    if (
      Math.abs(joined.length - name.joined.length) <= 3 &&
      name.joined.length >= 9 &&
      soundKey(joined) === soundKey(name.joined)
    )
      return { from: at, to, variety: name.variety, slips: 3 };
    if (joined === name.joined || joined === `${name.joined}s`)
      return { from: at, to, variety: name.variety, slips: 1 };
  }
  return undefined;
}
