/** Where another plant, place or number comes with its own telling: "Tallow Bell watered and fed Salt Harrier just watered greenhouse vented". */
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { endsWithPerson } from './deeds.js';
import {
  HAVE,
  isDoneToIt,
  isParticiple,
  isStateOfNumber,
  OF_THEM,
  OPENS,
  STATE,
  STATE_OF_NUMBER,
  tellsOwn,
} from './own-telling.js';
import { isTended, lastOf, type MarkMeant, wordBack } from './record.js';

const LEADS_ON = whole`
  and|but|so|the|a|of|to|with|from|for|at|by|in|into|on|onto|under|as|than|like|or|that|which|who|while|when|where|since|because
  all|both|not|just|only|also|then|some|my|our|plus|i|we|he|she|they|it's|is|are|was|were|has|have|had|if|before|after|except
  bar|no|more|another|wait|sorry|actually|rather|mean|whole|about|off|out|till|until|beside|near|behind|called|named|next
`;

const TELLS_THAT = whole`that|said|says|think|thought|told|noticed|found|saw|see|heard|hope|if|when|because|who|i|we|not|didn't`;
const WHO = whole`i|we|he|she|they|who|you|then|also|i've|we've`;
const JOINS = whole`and|but|so|then|i|we|the|they|she|he|have|has|got`;
const isWord = (piece: Piece, words: RegExp): boolean => piece.is === 'word' && words.test(piece.text);

const PARTICLE = whole`on|up|off|down|back|in|out|at|over`;

/** Nothing of it is left open. */
function endsTelling(before: readonly Piece[]): boolean {
  const last = lastOf(before);
  if (!last) return false;
  if (/^(?:when|size|place|medium|money|pots|celsius)$/.test(last.is)) return true;
  // "… I carried".
  if (last.is !== 'word' || (isParticiple(last) && WHO.test(wordBack(before, 2)))) return false;
  const isOfVerb =
    isParticiple(before.at(-2)) || (/^(?:them|it)$/.test(wordBack(before, 2)) && isParticiple(before.at(-3)));
  return !LEADS_ON.test(last.text) || (PARTICLE.test(last.text) && isOfVerb);
}

/** Where a plant was told of before anything was done: "Tallow Bell watered …". */
function isOfSubject(before: readonly Piece[]): boolean {
  const plant = before.findIndex(({ is }) => is === 'plant' || is === 'place');
  return (
    plant >= 0 &&
    plant < before.length - 1 &&
    !before.slice(0, plant).some((piece) => piece.is === 'word' && piece.verb !== undefined)
  );
}

/** "5 rooted". */
const isNumberTold = (before: readonly Piece[]): boolean =>
  before.length === 2 &&
  before[0]?.is === 'count' &&
  (isParticiple(before[1]) || STATE.test(wordAt(before, 1)));

/** "… 13 rooted, 5 dead": nothing but the next number. */
const isNumberOnly = (before: readonly Piece[]): boolean =>
  before.length === 2 && before[0]?.is === 'count' && STATE_OF_NUMBER.test(wordAt(before, 1));

/** "Potted on the Tallow Bell into 9cm": a deed, what it was done to, and what ends it. */
const isOfDeed = (before: readonly Piece[]): boolean => {
  const verb = before.findIndex(isParticiple);
  return (
    verb >= 0 &&
    before.slice(verb).some(({ is }) => is === 'plant') &&
    (/^(?:when|size|place|pots)$/.test(lastOf(before)?.is ?? '') ||
      endsWithPerson(before) ||
      // "… and watered them in".
      [1, 2].some(
        (back) => /^(?:them|it)$/.test(wordBack(before, back)) && isParticiple(before.at(-back - 1)),
      ))
  );
};

/** What befell a place, of no plant: "frost got into the greenhouse". */
const isOfOthers = (before: readonly Piece[]): boolean =>
  before.some((piece) => piece.is === 'word' && piece.verb?.form === 'past' && piece.verb.lemma !== 'be') &&
  before.every(({ is }) => is === 'word' || is === 'place' || is === 'when') &&
  (/^(?:place|when)$/.test(lastOf(before)?.is ?? '') || /^(?:overnight|in)$/.test(wordBack(before))) &&
  !before.some((piece) => isWord(piece, TELLS_THAT));

/** "Watered the Salt Harrier", "checked both": a deed, and nothing but what it was done to. */
const isBareDeed = (before: readonly Piece[], behind: readonly Piece[]): boolean => {
  const last = lastOf(before);
  const next = behind.find(({ is }) => is === 'plant');
  if (!before.some(isParticiple) || before.some((piece) => piece.is === 'break')) return false;
  if (last?.is === 'count')
    return (last.quantity.whole !== undefined || last.quantity.both === true) && behind[0]?.is === 'plant';
  // "Checked FU18 Check Shirt": one plant, by its label and its name.
  return (
    last?.is === 'plant' &&
    next?.is === 'plant' &&
    (last.plant.batch === undefined) === (next.plant.batch === undefined) &&
    (last.plant.crop === undefined) === (next.plant.crop === undefined)
  );
};

/** Done to plants where they stand. */
const isCare = (piece: Piece): boolean =>
  isTended(piece) ||
  (piece.is === 'word' && /^(?:pinch|stop|check|dose|weed)$/.test(piece.verb?.lemma ?? ''));

export const subjectsBegun: readonly MarkMeant[] = [
  {
    name: 'frost got in <count> <plant> are dead',
    mark: ',',
    begins: ['plant', 'count', 'word'],
    when: (before, behind) =>
      (behind[0]?.is !== 'word' || OPENS.test(behind[0].text)) &&
      isOfOthers(before) &&
      tellsOwn(behind, 0) === 'state',
    phrasings: [
      [
        'frost got into the greenhouse 5 Salt Harrier are dead',
        'frost got into the greenhouse, 5 Salt Harrier are dead',
      ],
    ],
    mustNot: [
      'noticed this morning 5 Salt Harrier are dead',
      'said that in the porch 5 Salt Harrier are dead',
    ],
  },
  {
    name: '<plant> <done> <plant> <done>',
    mark: '.',
    begins: ['plant', 'place', 'count', 'word'],
    when: (before, behind) => {
      if (behind[0]?.is === 'word' && !OPENS.test(behind[0].text)) return false;
      const told = tellsOwn(behind, 0);
      if (told === undefined || OF_THEM.test(wordBack(before))) return false;
      if (told !== 'deed' && isBareDeed(before, behind))
        return told === 'state' || before.every((piece) => !isParticiple(piece) || isCare(piece));
      return (
        endsTelling(before) &&
        (isOfSubject(before) || isOfDeed(before) || (told === 'state' && isNumberOnly(before)))
      );
    },
    phrasings: [
      [
        'Salt Harrier watered and fed Tallow Bell just watered greenhouse vented',
        'Salt Harrier watered and fed. Tallow Bell just watered. greenhouse vented',
      ],
      [
        'six Salt Harrier potted on into 9cm pots the Tallow Bell shifted to the porch',
        'six Salt Harrier potted on into 9cm pots. the Tallow Bell shifted to the porch',
      ],
      [
        'Salt Harrier fed and vented Tallow Bell not touched 15 Salt Harrier scrapped',
        'Salt Harrier fed and vented. Tallow Bell not touched. 15 Salt Harrier scrapped',
      ],
      [
        "watered the Salt Harrier Tallow Bell didn't need it",
        "watered the Salt Harrier. Tallow Bell didn't need it",
      ],
      [
        'checked both Salt Harrier nine rooted Tallow Bell still nothing',
        'checked both. Salt Harrier nine rooted. Tallow Bell still nothing',
      ],
      ['Salt Harrier 5 rooted Tallow Bell all of them', 'Salt Harrier 5 rooted. Tallow Bell all of them'],
    ],
    mustNot: [
      'watered Salt Harrier and Tallow Bell',
      'sold three potted Salt Harrier',
      'gave Salt Harrier to Doreen and Tallow Bell rooted in May to Win',
      'Salt Harrier and Tallow Bell watered',
      'yesterday Salt Harrier potted on',
      'moved the Salt Harrier next to the Tallow Bell struck in May',
    ],
  },
  {
    name: '<count> <done> <count> <done>',
    mark: ',',
    begins: ['count', 'word'],
    when: (before, behind) => {
      const [count] = behind;
      const isRest = /^(?:rest|others?)$/.test(wordAt(behind, 0));
      if (!isRest && count?.is !== 'count') return false;
      // "14 Salt Harrier 9 rooted": of so many.
      if (before.length === 2 && before[0]?.is === 'count' && before[1]?.is === 'plant')
        return count?.is === 'count' && isStateOfNumber(behind, 1);
      if (!endsTelling(before)) return false;
      // "Sold 4 at the market rest went in the rockery".
      if (
        isRest &&
        isDoneToIt(behind, 1) &&
        before.some(isParticiple) &&
        before.some(({ is }) => is === 'plant')
      )
        return true;
      // "Knocked one out for a look nothing rooted".
      if (count?.is === 'count' && count.quantity.value === 0 && /^(?:root|show)/.test(wordAt(behind, 1)))
        return before.some(isParticiple);
      // "Tipped out the pot all bar two have roots".
      if (count?.is === 'count' && HAVE.test(wordAt(behind, 1)))
        return (before.some(isParticiple) && before.some(({ is }) => is === 'plant')) || isNumberTold(before);
      if (!isStateOfNumber(behind, 1)) return false;
      const told = before.findLastIndex((piece, at) => isParticiple(piece) || STATE.test(wordAt(before, at)));
      return (
        !/^(?:of|from|out)$/.test(wordAt(before, 0)) &&
        before[told - 1]?.is === 'count' &&
        !before.slice(told + 1).some((piece) => piece.is === 'plant' || isWord(piece, JOINS)) &&
        (before.some(({ is }) => is === 'plant') || told === 1)
      );
    },
    phrasings: [
      ['Salt Harrier 9 looked at 5 rooted 1 dead', 'Salt Harrier 9 looked at, 5 rooted, 1 dead'],
      [
        'Salt Harrier all stopped 4 dumped with wilt 2 moved to the porch',
        'Salt Harrier all stopped, 4 dumped with wilt, 2 moved to the porch',
      ],
    ],
    mustNot: [
      'Salt Harrier 9 rooted 12 rooted cuttings in',
      'of the Salt Harrier 12 rooted 9 potted on',
      'Salt Harrier potted on 4 rooted',
    ],
  },
];
