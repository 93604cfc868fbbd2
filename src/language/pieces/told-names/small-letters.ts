/** Names in small letters behind words that may as well say something else: "the label says tin whistler", "think its tin whistler". */
import { causes, crops, isKnown, phraseAt, verbSense } from '../../row/lexicon.js';
import { NEVER_WITHIN } from '../../joined/new-names/counted.js';
import { onlyDescribes } from '../../joined/new-names/describing.js';
import { textAt, type Token } from '../../row/tokens.js';

/**
 * Whether two or three words that end what is said stand there, one of them in nobody's mouth every day, in a note of plants taken
 * or come by; no "keep frost free", no "red spider mite".
 */
export function isSmallName(tokens: readonly Token[], from: number): boolean {
  let to = from;
  while (tokens[to]?.is === 'word') to++;
  const words = tokens.slice(from, to).map(({ text }) => text);
  return (
    words.length > 1 &&
    words.length < 4 &&
    !tokens[from]?.capital &&
    !words.every(isKnown) &&
    !words.some(
      (word, at) =>
        NEVER_WITHIN.has(word) || verbSense(word) || ADVISES.test(word) || phraseAt(causes, words, at),
    ) &&
    !onlyDescribes(words) &&
    isOfPlantsBegun(tokens.slice(0, from))
  );
}

/** Whether the words behind "the variety is" name it, and do not only describe it: "old bellringer"; no "unknown", "new to me", "hard to tell". */
export function namesSort(tokens: readonly Token[], from: number): boolean {
  let to = from;
  while (to - from < 5 && tokens[to]?.is === 'word' && !NEVER_WITHIN.has(textAt(tokens, to))) to++;
  const words = tokens.slice(from, to).map(({ text }) => text);
  const isAsked = /^(?:to|for|i|we|with)$/.test(textAt(tokens, to));
  return (
    words.length > 0 &&
    words.length < 4 &&
    !isAsked &&
    !words.some((word) => SAYS_NOTHING.test(word) || /(?:ing|ly)$/.test(word)) &&
    verbSense(words[0] ?? '')?.form !== 'past' &&
    !onlyDescribes(words)
  );
}

/** What is said of a sort that nobody can name. */
const SAYS_NOTHING =
  /^(?:un.*|not|never|anyones?|anyone's|anybody's|guess|marked|called|named|missing|mystery|gone|rubbed|illegible|doubtful|uncertain|same|true|tbc|something|nothing|someone|different)$/;

/** What labels advise, and how plants fare. */
const ADVISES =
  /^(?:keep|needs?|likes?|hardy|full|part|best|protect|avoid|sow|flowers?|height|spread|zone|ideal|toxic|organic|bit|sulking|dying)$|(?:ous|ing|ed)$/;

function isOfPlantsBegun(before: readonly Token[]): boolean {
  const isBegun = before.some((_, at) =>
    /^(?:took|did|done|struck|got|bought|cuttings|plugs)$/.test(textAt(before, at)),
  );
  return isBegun && before.some((_, at) => phraseAt(crops, [textAt(before, at)], 0));
}
