/** One thing of a list: a name and its number ("Salt Harrier - 6", "6 Salt Harrier", "Tallow Bell 4/6"). */
import { verbSense } from '../lexicon.js';
import { numberAt } from '../../pieces/numbers.js';
import { textAt, type Token } from '../tokens.js';

/** None of these begins what is listed: it says where or how, not what. */
const NO_NAME =
  /^(?:in|on|at|to|into|from|of|with|for|by|the|a|an|and|but|or|each|per|more|left|still|not|no|none|all|both|half|most|some|is|are|was|were|it|they|them|[ilp]|we|cm|litre|inch|ml|wk|wks|week|weeks|day|days|jan|feb|mar|apr|may|jun|june|jul|july|aug|sep|sept|oct|nov|dec|january|february|march|april|august|september|october|november|december|plants?|pots?|trays?|cuttings?|rooted|dead|alive)$/;
const LONGEST_NAME = 5;

/** "Salt Harrier - 6", "6 Salt Harrier", "• Salt Harrier 4/6": the words of a name and a number, in the order in which they are read. */
export function itemOf(line: readonly Token[]): readonly Token[] | undefined {
  const item = line.slice(line.findIndex(({ is }) => is !== 'mark'));
  const number = item.findIndex(({ is }) => is === 'number');
  if (number < 0) return isPlainName(item) ? item : undefined;
  if (number === 0) return isNamed(item.slice(numberAt(item, 0)?.to ?? 1)) ? asShare(item, 0) : undefined;
  const linked = /^(?:[-:=x*–—×]|by)$/.test(textAt(item, number - 1)) ? number - 1 : number;
  if (!isNamed(item.slice(0, linked)) || item.slice(0, linked).some(({ is }) => is !== 'word'))
    return undefined;
  if (item.slice(number).some(({ text }) => verbSense(text)?.form === 'past')) return undefined;
  const shared = asShare(item, number);
  const times = shared === item ? [timesBefore(item[number])] : [];
  return [...item.slice(0, linked), ...times, ...shared.slice(number)];
}

/** "Salt Harrier", "Tallow Bell all": written as names are, with no number to them. */
function isPlainName(item: readonly Token[]): boolean {
  const words = /^(?:all|none|half|most)$/.test(item.at(-1)?.text ?? '') ? item.slice(0, -1) : item;
  return words[0]?.capital === true && isNamed(words) && words.every(({ is }) => is === 'word');
}

/** "4/6", in a list of plants, is a share of them and no day. */
function asShare(item: readonly Token[], number: number): readonly Token[] {
  const stroke = item[number + 1];
  if (stroke?.text !== '/' || item[number + 2]?.is !== 'number') return item;
  return item.with(number + 1, { ...stroke, text: 'of', raw: 'of', is: 'word' });
}

function isNamed(words: readonly Token[]): boolean {
  const [first] = words;
  const name = words.slice(0, words.findIndex(({ is }) => is !== 'word') >>> 0);
  return (
    first?.is === 'word' &&
    !NO_NAME.test(first.text) &&
    name.length <= LONGEST_NAME &&
    !words.some(({ text, capital }) => !capital && verbSense(text)?.form === 'past')
  );
}

const timesBefore = (number: Token | undefined): Token => {
  const start = number?.start ?? 0;
  return { text: 'x', raw: 'x', start, end: start, is: 'word', capital: false, glued: false };
};
