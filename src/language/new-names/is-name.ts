/** Whether a run of words is a plant's name, by how it is written and by what stands around it. */
import { wordAt } from '../grammar/rule.js';
import { isOnLabel } from '../on-label.js';
import type { Piece } from '../pieces.js';
import {
  isBehindCuttings,
  isBesideCrop,
  isCountedBehind,
  isCropApart,
  isOfCropBefore,
  isParentOfCuttings,
} from './beside-crop.js';
import { isCapitalOf } from './capitals.js';
import { isBoughtFrom } from './bought-from.js';
import { isCropOfTwo, looksLikeCrop } from './crop-like.js';
import { onlyDescribes } from './describing.js';
import { isGiverOrTaker } from './giver-or-taker.js';
import { isIntroduced } from './introduced.js';
import { headsCuttings } from './heads-cuttings.js';
import { endsName, inPlantPosition, isComeBy, isCrop } from './position.js';
import { isAtEnd, isSentenceStart, lastWord, type NameSeen, type Run, type RunSeen } from './run.js';

interface NameCase {
  /** Like what is written. */
  readonly name: string;
  readonly isName: boolean;
  readonly when: (seen: RunSeen) => boolean;
}

const isBracket = (piece: Piece | undefined, mark: string): boolean =>
  piece?.is === 'break' && piece.mark === mark;

const NO_NAME_ALONE =
  /^(?:on|up|out|off|in|into|to|of|from|at|with|by|over|down|back|away|and|the|more|cuttings?|slips?|tips?|shoots?|stems?|plants?|plugs?|pots?|trays?|tubers?|stools?|crowns?|seedlings?|leaves|leaf|today|yesterday)$/;

/** The first that fits decides; where none does, it is no name. */
const cases: readonly NameCase[] = [
  {
    // Where every word of a note has a capital.
    name: 'Potted On 6, Took 12 Cuttings Of',
    isName: false,
    when: ({ pieces, at, length }) =>
      wordAt(pieces, at) === 'of' ||
      ((length === 1 || wordAt(pieces, at + 1) === 'of') && NO_NAME_ALONE.test(wordAt(pieces, at))),
  },
  {
    name: 'sold Pauline 3 Salt Harrier',
    isName: false,
    when: ({ pieces, tokens, before, end, length, isCapital, isShouted }) =>
      isGiverOrTaker(
        before,
        pieces.slice(end),
        length,
        isCapital,
        (piece) => !isShouted && isCapitalOf(tokens, piece),
      ),
  },
  {
    name: 'a rosemary Gwen calls Salt Harrier',
    isName: false,
    when: ({ pieces, before, end, length }) =>
      length === 1 && isCrop(before.at(-1)) && /^(?:calls|swears|reckons)$/.test(wordAt(pieces, end)),
  },
  {
    // Spectacles, keys and the like.
    name: 'lost my glasses somewhere',
    isName: false,
    when: ({ before, capital }) =>
      capital === 0 &&
      /^(?:my|our|his|her)$/.test(wordAt(before, before.length - 1)) &&
      wordAt(before, before.length - 2) === 'lost',
  },
  {
    name: 'brought home a Salt Harrier from the fair',
    isName: true,
    when: (seen) => isWritten(seen) && isComeBy(seen.before) && endsName(seen.pieces, seen.end),
  },
  {
    name: '8 coleus cuttings of Marble Finch',
    isName: true,
    when: (seen) => isWritten(seen) && isOfCropBefore(seen),
  },
  {
    name: '10 lavender cuttings, cold frame (Grey Curate)',
    isName: true,
    when: ({ pieces, before, end, isCapital }) =>
      isCapital &&
      isBracket(before.at(-1), '(') &&
      isBracket(pieces[end], ')') &&
      before.some(isCrop) &&
      before.every((piece) => piece.is !== 'plant' || piece.plant.variety === undefined),
  },
  {
    name: '…, label says Rusty Verger',
    isName: true,
    when: ({ pieces, before, at, length, isCapital }) =>
      isCapital &&
      before.some(isCrop) &&
      isOnLabel([...before, ...pieces.slice(at)], before.length, before.length + length),
  },
  {
    name: '8 coleus plugs in, one I have not grown before, Marble Finch',
    isName: true,
    when: (seen) => isWritten(seen) && isAtEnd(seen) && isIntroduced(seen.before),
  },
  {
    name: 'it was Marble Wren, not Ember Fox',
    isName: true,
    when: (seen) =>
      isWritten(seen) &&
      /^(?:was|were|be|meant|mean|it's|that's|not)$/.test(lastWord(seen)) &&
      (isAtEnd(seen) || wordAt(seen.pieces, seen.end) === 'not'),
  },
  {
    // Whose they were.
    name: "one of Agnes's plugs",
    isName: false,
    when: ({ pieces, before, end, length }) =>
      length === 1 &&
      /'s$/.test(wordAt(pieces, end - 1)) &&
      (/^(?:plugs?|liners?|cuttings?|ones?|lot|plants?|seedlings?)$/.test(wordAt(pieces, end)) ||
        (wordAt(before, before.length - 1) === 'of' &&
          (pieces[end] === undefined || pieces[end]?.is === 'break'))),
  },
  {
    // Whose, and of what.
    name: "from Joan's hedge",
    isName: false,
    when: ({ pieces, tokens, before, at, end, length }) =>
      length > 1 &&
      /^(?:from|off|of|over|in)$/.test(wordAt(before, before.length - 1)) &&
      pieces.slice(at, end - 1).some((piece) => piece.is === 'word' && /['’]s?$/.test(piece.text)) &&
      !pieces.slice(end - 1, end).some((piece) => isCapitalOf(tokens, piece)) &&
      /^(?:hedges?|bush|bushes|shrubs?|trees?|border|wall|fence|gate|lane|verge|front|back)$/.test(
        wordAt(pieces, end - 1),
      ),
  },
  {
    // Where they were come by.
    name: 'bought some geraniums off the wholesale market',
    isName: false,
    when: ({ pieces, before, end, capital }) =>
      capital === 0 && isBoughtFrom(before, wordAt(pieces, end - 1)),
  },
  {
    name: 'Salt Harrier tubers',
    isName: true,
    when: (seen) =>
      isWritten(seen) &&
      /^(?:tubers?|crowns?|stools?|divisions?|rhizomes?|corms?|plugs?|liners?)$/.test(
        wordAt(seen.pieces, seen.end),
      ),
  },
  {
    name: "his old Sexton's Cope mother plant",
    isName: true,
    when: ({ pieces, end, isCapital }) =>
      isCapital &&
      /^(?:mother|stock|parent)$/.test(wordAt(pieces, end)) &&
      !/'s$/.test(wordAt(pieces, end - 1)) &&
      wordAt(pieces, end + 1) === 'plant',
  },
  {
    // Whose, not which.
    name: "Auntie Joan's pelargonium",
    isName: false,
    when: (seen) => isBesideCrop(seen) && /'s$/.test(wordAt(seen.pieces, seen.end - 1)),
  },
  {
    name: 'took 14 mum cuttings from Velvet Turnstile',
    isName: true,
    when: isParentOfCuttings,
  },
  {
    name: 'took six leggy straggling salvia',
    isName: false,
    when: ({ pieces, at, end, capital }) =>
      capital === 0 && onlyDescribes(pieces.slice(at, end).map((_, n) => wordAt(pieces, at + n))),
  },
  {
    name: 'took 5 each of Tin Whistler and Spotted Dick',
    isName: true,
    when: (seen) =>
      isWritten(seen) &&
      lastWord(seen) === 'and' &&
      seen.before.at(-2)?.is === 'plant' &&
      wordAt(seen.before, seen.before.length - 4) === 'each' &&
      wordAt(seen.before, seen.before.length - 3) === 'of',
  },
  {
    name: 'took six hydrangea cuttings velour tuba two pots',
    isName: true,
    when: isBehindCuttings,
  },
  {
    name: 'Quarry Annie dahlia',
    isName: true,
    when: (seen) => isBesideCrop(seen) && (seen.capital > 0 || (seen.unknown > 0 && standsForPlant(seen))),
  },
  {
    name: 'dahlia Quarry Annie',
    isName: true,
    when: ({ before, length, unknown, isCapital }) =>
      isCrop(before.at(-1)) &&
      (isCapital || (unknown > 0 && length >= 2 && inPlantPosition(before.slice(0, -1)))),
  },
  {
    name: 'did Salt Harrier as well, penstemon, nine cuttings',
    isName: true,
    when: (seen) =>
      (isWritten(seen) || opensSentence(seen)) &&
      isCropApart(seen) &&
      (seen.before.length === 0 ||
        seen.before.at(-1)?.is === 'break' ||
        /^(?:did|done|took|taken|struck|stuck|cut|made|set|started|got|of|some|and|also|then)$/.test(
          lastWord(seen),
        )),
  },
  {
    // All in small letters, as thumbs write.
    name: "aunt dervla's hat fuchsia, 12 cuttings",
    isName: true,
    when: (seen) =>
      seen.isLower &&
      seen.before.length === 0 &&
      seen.length >= 2 &&
      seen.unknown > 0 &&
      isCrop(seen.pieces[seen.end]) &&
      isCountedBehind(seen.pieces, seen.end + 1),
  },
  {
    // Two capitals that open a sentence, and a number.
    name: 'Ember Fox 10 of 12 have rooted',
    isName: true,
    when: (seen) => opensSentence(seen) && seen.pieces[seen.end]?.is === 'count',
  },
  {
    name: 'Ember Fox: 12 trays of 70 struck',
    isName: true,
    when: (seen) => opensSentence(seen) && headsCuttings(seen),
  },
  {
    name: 'From Salt Harrier 8 have roots',
    isName: true,
    when: (seen) =>
      isWritten(seen) &&
      seen.before.length === 1 &&
      /^(?:from|of|by)$/.test(lastWord(seen)) &&
      seen.pieces[seen.end]?.is === 'count' &&
      /^(?:have|has|are|is|were|had|rooted|died|lost)$/.test(wordAt(seen.pieces, seen.end + 1)),
  },
  {
    name: 'where no plant stands',
    isName: false,
    when: (seen) => !standsForPlant(seen),
  },
  {
    name: 'before a plant that is named',
    isName: false,
    when: (seen) => seen.pieces[seen.end]?.is === 'plant' && !isBesideCrop(seen),
  },
  {
    name: 'took five Quarry Annie',
    isName: true,
    when: ({ capital }) => capital > 0,
  },
  {
    name: 'six sweet pea plugs',
    isName: true,
    when: ({ pieces, at, length, capital, before, end }) =>
      capital === 0 &&
      length === 2 &&
      before.at(-1)?.is === 'count' &&
      isCropOfTwo(`${wordAt(pieces, at)} ${wordAt(pieces, at + 1)}`) &&
      /^(?:plugs?|seedlings?|plants?|cuttings?|liners?)$/.test(wordAt(pieces, end)),
  },
  {
    name: 'took five quarrywort',
    isName: true,
    when: ({ pieces, at, length, unknown }) =>
      unknown === length && (length > 1 || looksLikeCrop(wordAt(pieces, at))),
  },
  {
    name: 'took five quarry annie',
    isName: true,
    when: ({ length, unknown, isLower }) => isLower && unknown !== length && (unknown > 0 || length >= 2),
  },
];

export function isName(seen: NameSeen, run: Run): boolean {
  const told = { ...seen, ...run, end: seen.at + run.length, isCapital: run.capital === run.length };
  return cases.find(({ when }) => when(told))?.isName ?? false;
}

/** Written as names are: two capitals or more, and nothing else. */
const isWritten = ({ isCapital, length }: RunSeen): boolean => isCapital && length > 1;

/** The first words of a sentence, each with a capital, and no verb. */
function opensSentence({ pieces, tokens, at, length, capital, isShouted }: RunSeen): boolean {
  const opening = pieces[at];
  return (
    opening?.is === 'word' &&
    opening.verb === undefined &&
    (opening.from === 0 || isSentenceStart(tokens, opening.from)) &&
    !isShouted &&
    length > 1 &&
    tokens[opening.from]?.capital === true &&
    capital === length - 1
  );
}

/** Where a plant's name would stand, "three rooted Blue Note" included. */
const standsForPlant = (seen: RunSeen): boolean =>
  inPlantPosition(seen.before) ||
  (seen.isCapital && lastWord(seen) === 'rooted' && seen.before.at(-2)?.is === 'count');
