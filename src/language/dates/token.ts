/** Cuts text into the words, numbers and marks that phrases of time are made of, each with its place in the text. */
import { canonicalWord, isRuleWord } from './words.js';

export interface Token {
  /** The word as rules write it, digits as they stand, or one mark. */
  readonly word: string;
  /** Offsets into the text, end exclusive. */
  readonly start: number;
  readonly end: number;
  /** Whether it follows the token before without a space. */
  readonly glued: boolean;
  readonly digits: boolean;
  /** What tokens share that the same rules may begin with: the word, `#` for digits, empty for words of no rule. */
  readonly likeness: string;
  /** Written like an everyday word or a person's name: "sat", "may", "june". */
  readonly everyday: boolean;
}

const everyday = new Set(
  'sat sun wed mar may march jan april june august spring fall mid late end dec sep'.split(' '),
);

const piece =
  /\b(?:2(?:day|moro|morrow|nite)|week[- ]{1,5}ends?|mid[- ]{0,5}weeks?|[ap]\.m)\b\.?|[a-z]+(?:['’][a-z]+)*|\d+|[^\sa-z\d]/gi;
const invisible = /[\u00AD\u200B-\u200F\u202A-\u202E\u2060-\u2069\uFEFF]/u;

/** Cuts `text`. Full-width digits read as digits; invisible marks are passed over. */
export function tokensOf(text: string): Token[] {
  const { plain, originOf } = plainForm(text);
  const tokens: Token[] = [];
  let last = 0;
  for (const match of plain.matchAll(piece)) {
    const written = match[0];
    if (isLooseApostrophe(written, plain[match.index + 1])) continue;
    const start = match.index;
    const glued = start === last && start > 0;
    last = start + written.length;
    const first = written.charCodeAt(0);
    const letters = /[a-z]/i.test(written);
    const digits = first >= 48 && first <= 57 && !letters;
    const word = letters ? wordOf(written) : written;
    tokens.push({
      word,
      start: originOf(start),
      end: originOf(last - 1) + 1,
      glued,
      digits,
      likeness: digits ? '#' : letters && !isRuleWord(word) ? '' : word,
      everyday: letters && everyday.has(written.toLowerCase()),
    });
  }
  return joinHyphens(tokens);
}

/** The mark behind "weeks'" says nothing; before digits it stands for a century. */
function isLooseApostrophe(mark: string, next: string | undefined): boolean {
  return (mark === "'" || mark === '’') && !(next !== undefined && next >= '0' && next <= '9');
}

function wordOf(written: string): string {
  const lower = written.toLowerCase().replaceAll('’', "'").replace(/[ .-]/g, '');
  // "We'd the eight potted": no Wednesday.
  if (lower === "we'd") return lower;
  const known = canonicalWord(lower);
  if (known !== undefined) return known;
  if (!lower.includes("'")) return lower;
  return (
    canonicalWord(lower.slice(0, lower.indexOf("'"))) ?? canonicalWord(lower.replaceAll("'", '')) ?? lower
  );
}

/** A hyphen inside a word ("late-morning", "week-end") says nothing; between months, days and numbers it means "to". */
function joinHyphens(tokens: readonly Token[]): Token[] {
  if (!tokens.some((each) => each.word === '-')) return tokens as Token[];
  return tokens.flatMap((token, at) => {
    const before = tokens[at - 1];
    const after = tokens[at + 1];
    if (token.word !== '-' || !before || !after) return [token];
    const inside = token.glued && after.glued && isJoinable(before) && isJoinable(after);
    return inside ? [] : [token];
  });
}

const names = new Set(
  'january february march april may june july august september october november december monday tuesday wednesday thursday friday saturday sunday'.split(
    ' ',
  ),
);

function isJoinable(token: Token): boolean {
  return /^[a-z]/.test(token.word) && !names.has(token.word);
}

/** The text with odd digits made plain and invisible marks left out, and where each of its characters came from. */
function plainForm(text: string): { plain: string; originOf: (at: number) => number } {
  // eslint-disable-next-line no-control-regex -- tells plain ASCII, the common case
  if (/^[\x00-\x7F’£°]*$/.test(text)) return { plain: text, originOf: (at) => at };
  const origins: number[] = [];
  let plain = '';
  for (let at = 0; at < text.length; at++) {
    const written = text[at] ?? '';
    if (invisible.test(written)) continue;
    plain += /[\uFF10-\uFF19]/.test(written)
      ? String.fromCharCode(written.charCodeAt(0) - 0xfee0)
      : dash(written);
    origins.push(at);
  }
  return { plain, originOf: (at) => origins[at] ?? at };
}

function dash(written: string): string {
  if (/[\u2010-\u2015\u2212]/.test(written)) return '-';
  return /[‘ʼ＇]/.test(written) ? '’' : written;
}
