/** Names told in part: by their initials, by some of their words, by one word that no other name has. */
import { isEnglish } from '../english.js';
import { type FoundName, type Name, type Owners, plain } from './known.js';
import { isKnown, verbSense } from '../lexicon.js';
import { whole } from '../../phrases.js';
import { numberAt } from '../../pieces/numbers.js';
import { KIN } from '../../mood/somebody-else.js';
import type { Token } from '../tokens.js';

/** All that may be meant in part. */
export function partsOfNames(
  tokens: readonly Token[],
  names: readonly Name[],
  owners: Owners,
): readonly FoundName[] {
  return [...findInitials(tokens, names), ...findPhrases(tokens, names), ...findParts(tokens, owners)];
}

/** "CL" for the one variety with those initials, in capitals. */
function findInitials(tokens: readonly Token[], names: readonly Name[]): FoundName[] {
  return tokens.flatMap((token, at) => {
    // "hc 4/12 rooted": in small letters where no word is so written and the note opens with them.
    const small =
      at === 0 &&
      tokens[1]?.is === 'number' &&
      /^\p{Ll}{2,4}$/u.test(token.raw) &&
      !isKnown(token.raw) &&
      !isEnglish(token.raw);
    if (!small && !/^\p{Lu}{2,4}$/u.test(token.raw)) return [];
    const meant = names.filter(
      ({ words }) =>
        words.length > 1 && words.map((word) => word.charAt(0)).join('') === token.raw.toLowerCase(),
    );
    const [only] = meant;
    return meant.length === 1 && only ? [{ from: at, to: at + 1, variety: only.variety, slips: 4 }] : [];
  });
}

/** "Brass Kettle" for the one variety that is "Old Brass Kettle": two words or more that stand together in no other name. */
function findPhrases(tokens: readonly Token[], names: readonly Name[]): FoundName[] {
  const long = names.filter(({ words }) => words.length > 2);
  if (long.length === 0) return [];
  return tokens.flatMap((_, at) => {
    const meant = names.flatMap(({ variety, words }) => {
      const length = sharedWords(tokens, at, words);
      const telling = tokens.slice(at, at + length).some(({ raw }) => !isKnown(plain(raw)));
      return telling && length >= 2 && length < words.length
        ? [{ from: at, to: at + length, variety, slips: 3 }]
        : [];
    });
    const [only] = meant;
    return meant.length === 1 &&
      only &&
      names.every(({ words }) => words.length > 2 || sharedWords(tokens, at, words) < 2)
      ? [only]
      : [];
  });
}

/** How many of a name's words, in their order and all but one at either end, the tokens from `at` are. */
function sharedWords(tokens: readonly Token[], at: number, words: readonly string[]): number {
  const start = words.indexOf(plain(tokens[at]?.raw ?? ''));
  if (start < 0) return 0;
  let length = 0;
  while (start + length < words.length && plain(tokens[at + length]?.raw ?? '') === words[start + length])
    length++;
  return length;
}

/** Words of time say when, whoever has them in a name. */
const OF_TIME = whole`
  january|february|march|april|may|june|july|august|september|october|november|december
  jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec|(mon|tues|wednes|thurs|fri|satur|sun)days?|mon|tues?|weds?|thu|thurs?|fri
  spring|summer|autumn|winter|easter|christmas|today|morning|noon|afternoon|evening|midnight
  dozens?|hundreds?
`;

const HAD = /^(?:had|has|got|took|bought|wanted|gave|brought|sold|lost|potted|planted|pinched|struck)$/;
const OWNER = /^(?:my|our|his|her|their)$/;
const ARTICLE = /^(?:a|an|another|the|those|my|one|this|that)$/;

const HOW_IT_DOES =
  /^(?:rotting|rotted|rooting|rooted|roots|mouldy|moldy|leggy|wilting|wilted|flopping|flopped)$/;

/** "Potted Tom on", "Tom 4/6": what is done to plants alone, or so many of so many. */
function isDealtWith(tokens: readonly Token[], at: number): boolean {
  const [number, stroke] = tokens.slice(at + 1);
  const before = tokens[at - 1]?.text ?? '';
  return (
    /^(?:except|bar|excepting)$/.test(before) ||
    // "Lou is rotting", "any Lou left".
    (/^(?:is|are|has|have|was|were)$/.test(number?.text ?? '') && HOW_IT_DOES.test(stroke?.text ?? '')) ||
    (before === 'any' && number?.text === 'left') ||
    /^(?:pot|pinch|harden|mist|strike|transplant|prick)$/.test(verbSense(before)?.lemma ?? '') ||
    (/^(?:move|plant|shift)$/.test(verbSense(before)?.lemma ?? '') &&
      /^(?:to|into|out|onto|in|on)$/.test(number?.text ?? '')) ||
    (number?.is === 'number' && /^(?:of|out|rooted|dead)$|^\/$/.test(stroke?.text ?? ''))
  );
}

/** "The Bridies", "kraken": one word that belongs to a single name, and to no everyday talk. */
function findParts(tokens: readonly Token[], owners: Owners): FoundName[] {
  if (owners.size === 0) return [];
  const isShouted = tokens.every(({ raw }) => !/\p{Ll}/u.test(raw));
  const isUnknownWord = (at: number): boolean => {
    const token = tokens[at];
    // "The 9cm kraken": a unit.
    const isUnit = token?.glued === true && tokens[at - 1]?.is === 'number';
    return token?.is === 'word' && !isUnit && token.start !== tokens[at + 1]?.start && !isKnown(token.text);
  };
  return tokens.flatMap((token, at) => {
    const part = plain(token.raw.replace(/'s$/i, ''));
    // "Lost a Tom", where *Marmalade Tom* is a variety; without an article or a number it may be a person.
    const isCounted =
      part.length === 3 &&
      (ARTICLE.test(tokens[at - 1]?.text ?? '') || numberAt(tokens, at - 1) !== undefined);
    // "My sisters salvia": whose it is, though a name holds the word.
    if (!token.capital && OWNER.test(tokens[at - 1]?.text ?? '') && KIN.test(part.replace(/s$/, '')))
      return [];
    const isTended = part.length === 3 && token.capital && isDealtWith(tokens, at);
    const name = part.length > 3 || isCounted || isTended ? owners.get(part) : undefined;
    if (!name || token.is !== 'word' || OF_TIME.test(part)) return [];
    const capital = token.capital && !isShouted && at > 0 && !/^[.!?]$/.test(tokens[at - 1]?.raw ?? '.');
    // "Pinched Archdeacon Mon", "the Archdeacons I took": neither a day nor who speaks is part of a name.
    // … nor "the Archdeacons Stan had" who had them.
    const beside = [tokens[at - 1], tokens[at + 1]].filter(
      (each, n) =>
        !OF_TIME.test(plain(each?.raw ?? '')) &&
        !/^i(?:['’]|$)/i.test(each?.raw ?? '') &&
        !(n === 1 && ARTICLE.test(tokens[at - 1]?.text ?? '') && HAD.test(tokens[at + 2]?.text ?? '')),
    );
    // "Biscuits: 8 rooted": at the head of a sentence, what is told of.
    const heads = token.capital && !capital && tokens[at + 1]?.text === ':';
    if (isTended || heads) return [{ from: at, to: at + 1, variety: name.variety, slips: 5 }];
    // Beside another word nobody knows, or another capital, it is part of a name of its own.
    if (
      capital
        ? beside.some((each) => each?.capital === true && (each === tokens[at + 1] || at > 1))
        : isKnown(part)
    )
      return [];
    if (isCounted && !capital) return [];
    if (!capital && (isUnknownWord(at - 1) || isUnknownWord(at + 1))) return [];
    // "Stopped at the gate": a thing, though a name holds it.
    const placed =
      /^(?:the|my|our)$/.test(tokens[at - 1]?.text ?? '') &&
      /^(?:at|by|near|behind|beside|through|over|past|outside)$/.test(tokens[at - 2]?.text ?? '');
    if (!capital && placed) return [];
    return [{ from: at, to: at + 1, variety: name.variety, slips: 5 }];
  });
}
