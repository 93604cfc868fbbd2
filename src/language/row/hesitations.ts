/** What is said for nothing: a word twice ("took six of of the Salt Harrier"), a "like" that likens nothing ("put like in the porch"), a laugh. */
import { verbSense } from './lexicon.js';
import { findNames } from './names.js';
import type { NoteContext } from '../note.js';
import { whole } from '../phrases.js';
import { mark, textAt, type Token } from './tokens.js';

/** Words that say no more when said twice; "very", "so" and "no" do. */
const SAID_ONCE = whole`
  the|a|an|my|our|some|those|these|them|all|of|from|off|with|and|but|then|into|onto|at|under|by|in
  i|we|i've|we've|they|it|it's|is|are|was|were|have|has|because|about|just|also
  cuttings?|pots?|trays?|plants?|plugs?
`;

/** What is begun anew: "in the in the greenhouse", "i took i took six". */
const BEGINS = whole`in|on|into|onto|at|of|off|from|to|by|under|with|and|i|we|then|out`;
/** How many words of it are said at most. */
const LONGEST_START = 3;

const ARTICLE = whole`the|a|an|my|our|those|these|them|each|every`;

/** Behind them "like the" likens nothing. */
const LEADS = whole`of|from|off|in|into|onto|on|at|by|under|with|for|and|then|since|until|till|bar|except|along|behind|beside|round|around|near`;

/** Verbs that "in", "on" and "off" are as often part of: "potted on like the Tallow Bell". */
const WITH_PARTICLE = whole`pot|move|take|come|get|go|bring|carry|pass|finish|fetch|hold|keep|put`;

/** What is done to plants, so that they are told behind it. */
const DONE_TO = whole`take|put|pot|strike|stick|move|shift|carry|plant|lose|sell|give|swap|bin|chuck|toss|dump|water|mist|feed|pinch|cut|open|close|shut|pull|kick|check|send|pop|bring|fetch|sit|stand|lift|crack`;

const WHO_DID = whole`i|we|i've|we've|just|then|and|also|have|but|so`;

/** They open where and when. */
const WHERE_AND_WHEN = whole`in|into|inside|from|off|on|onto|at|under|over|out|outside`;

/** What is likened to something: "they look like in a jungle", "roots like on the Tallow Bell". */
const LIKENED = whole`
  look|looks|looked|looking|feel|feels|felt|smell|smells|smelt|smelled|sound|sounds|sounded|seem|seems|seemed
  be|been|being|it's|its|that's|act|acts|acting|behave|behaves|behaving|treat|treats|treated
  just|exactly|much|more|something|anything|nothing|not|bit|rather|quite|very|so|too|what|how
  i|we|you|they|it|she|he|who|that|this|would|i'd|we'd|they'd|don't|didn't|doesn't|do|does|did|to|really|or|also
  grow|grows|grew|grown|root|roots|rooted|rooting|sprout|sprouted|die|died|dead|rot|rotted|flop|flopped
  standing|drooping|shooting|leaves|leaf|stems?|flowers?|buds?
`;

/** "Like in the book", "like the others": as it was there, or was with them. */
const COMPARED = whole`
  book|books|picture|pictures|photo|photos|video|videos|films?|telly|tv|magazine|shop|shops|past|old|wild|tropics
  last|same|other|others|rest|first|previous|next|one|ones
`;

/** "It's called Neon Aunt lol. they're in the porch": a pause, and no word of a name. */
const LAUGH = /^(?:lol+|lmao|rofl|(?:ha){2,}h?|(?:he){2,})$/;

/** The row as it was meant to be said; inside a known name the words stand. */
export function withoutHesitation(tokens: readonly Token[], context: NoteContext): readonly Token[] {
  if (!tokens.some((_, at) => idleAt(tokens, at) > 0)) return tokens;
  const inName = new Set<number>();
  for (const { from, to } of findNames(tokens, context)) for (let at = from; at < to; at++) inName.add(at);
  const row: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    const idle = inName.has(at) || inName.has(at + 1) ? 0 : idleAt(tokens, at);
    if (idle > 0) at += idle - 1;
    else if (token) row.push(token);
    if (token && idle > 0 && LAUGH.test(token.text) && isBetween(row.at(-1), tokens[at + 1]))
      row.push(mark(',', token.start, token.end));
  }
  return row;
}

const isBetween = (before: Token | undefined, next: Token | undefined): boolean =>
  before !== undefined &&
  next !== undefined &&
  [before, next].every(({ is }) => is !== 'mark' && is !== 'line');

/** How many tokens from `at` were said for nothing. */
function idleAt(tokens: readonly Token[], at: number): number {
  if (LAUGH.test(textAt(tokens, at))) return 1;
  if (textAt(tokens, at) === 'like') return isIdleLike(tokens, at) ? 1 : 0;
  return isSaidTwice(tokens, at) ? 1 : sayingAt(tokens, at) || begunAnew(tokens, at);
}

/** Proverbs with a "not" or a deed in them that tell of no plants: "so, waste not want not, six cuttings made from it". */
const SAYINGS = [
  ['waste', 'not', 'want', 'not'],
  ['waste', 'not', ',', 'want', 'not'],
  ['in', 'for', 'a', 'penny'],
  ['nothing', 'ventured', 'nothing', 'gained'],
  ['nothing', 'ventured', ',', 'nothing', 'gained'],
  ['no', 'time', 'like', 'the', 'present'],
  ['no', 'rest', 'for', 'the', 'wicked'],
];

const sayingAt = (tokens: readonly Token[], at: number): number =>
  SAYINGS.find((words) => words.every((word, n) => textAt(tokens, at + n) === word))?.length ?? 0;

const isSame = (tokens: readonly Token[], at: number, again: number): boolean => {
  const [one, other] = [tokens[at], tokens[again]];
  // "P/on" gives two tokens of one word; "lost Lost Monday" is no word said twice.
  return (
    one?.is === 'word' &&
    other?.is === 'word' &&
    one.start !== other.start &&
    one.raw.toLowerCase() === other.raw
  );
};

function isSaidTwice(tokens: readonly Token[], at: number): boolean {
  if (!isSame(tokens, at, at + 1)) return false;
  const text = textAt(tokens, at);
  // "Brought in in October", "brought them in in October".
  if (text === 'in' && isParticle(tokens, at)) return false;
  return SAID_ONCE.test(text) || (verbSense(text)?.form === 'past' && !/^(?:had|did)$/.test(text));
}

const isParticle = (tokens: readonly Token[], at: number): boolean =>
  verbSense(textAt(tokens, at - 1)) !== undefined ||
  (/^(?:them|it|all|everything)$/.test(textAt(tokens, at - 1)) &&
    /^(?:bring|take|fetch|carry|get|come)$/.test(verbSense(textAt(tokens, at - 2))?.lemma ?? ''));

/** "In the in the greenhouse", "i took, i took six": how many tokens were said before it was begun anew. */
function begunAnew(tokens: readonly Token[], at: number): number {
  if (!BEGINS.test(textAt(tokens, at))) return 0;
  for (let length = 2; length <= LONGEST_START; length++) {
    const again = at + length;
    const behind = textAt(tokens, again) === ',' ? again + 1 : again;
    let same = 0;
    while (same < length && isSame(tokens, at + same, behind + same)) same++;
    if (same === length) return behind - at;
  }
  return 0;
}

function isIdleLike(tokens: readonly Token[], at: number): boolean {
  const [before, next, behind] = [textAt(tokens, at - 1), textAt(tokens, at + 1), textAt(tokens, at + 2)];
  const isCompared = COMPARED.test(behind) || (ARTICLE.test(behind) && COMPARED.test(textAt(tokens, at + 3)));
  const verb = verbSense(textAt(tokens, at - 2))?.lemma ?? '';
  if (WHERE_AND_WHEN.test(next)) {
    const is = tokens[at - 1]?.is;
    // "Put it like in the porch".
    const isDoneTo = /^(?:it|them)$/.test(before) && DONE_TO.test(verb);
    if (is === undefined || is === 'mark' || is === 'line') return false;
    return !isCompared && (isDoneTo || !LIKENED.test(before));
  }
  if (!ARTICLE.test(next) || next === 'a' || next === 'an') return false;
  // "Got round to like the Salt Harrier", "never came to like the Tallow Bell".
  if (before === 'to') return /^(?:round|around|back)$/.test(textAt(tokens, at - 2));
  if (LEADS.test(before))
    return !(/^(?:on|off|in)$/.test(before) && WITH_PARTICLE.test(verb)) && !(before === 'and' && isCompared);
  const done = verbSense(before);
  const who = textAt(tokens, at - 2);
  return (
    done?.form === 'past' &&
    DONE_TO.test(done.lemma) &&
    (who === '' || WHO_DID.test(who) || /^(?:mark|line)$/.test(tokens[at - 2]?.is ?? '')) &&
    !/^(?:others?|rest|same|ones?)$/.test(behind)
  );
}
