/** Where a temperature begins or ends that stands beside another or beside a deed: "greenhouse at 31 propagator steady on 22". */
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { isTended, lastOf, type MarkMeant, wordBack } from './record.js';

const MEASURES = whole`
  at|is|was|got|hit|reached|holding|steady|on|down|up|to|sitting|reading|reads|showing|only|just|now|still|dropped|fell|went|dipped
  touched|topped|climbed|nudged|a|cosy|balmy|nice|lovely|cool|good|the
`;
/** Of these one at least leads to the number. */
const TELLS = whole`at|sitting|hit|reached|holding|steady|down|up|reading|reads|showing|dropped|fell|dipped|to|touched|topped|climbed|nudged`;
const LONGEST_LEAD = 4;

/** How far a place's own words lead to its temperature; -1 where they lead to none. */
function warmthLedTo(pieces: readonly Piece[], from: number): number {
  let at = from;
  let tells = false;
  while (at < from + LONGEST_LEAD && MEASURES.test(wordAt(pieces, at))) {
    tells ||= TELLS.test(wordAt(pieces, at));
    at++;
  }
  const piece = pieces[at];
  // "Sitting at 12", which might be an hour.
  if (piece?.is === 'celsius' || (piece?.is === 'when' && tells && /^at \d+$/.test(piece.when.words)))
    return at;
  return piece?.is === 'count' && tells && endsTelling(pieces[at + 1]) ? at : -1;
}

/** Nothing behind a number that it may count. */
const endsTelling = (piece: Piece | undefined): boolean =>
  piece === undefined ||
  piece.is === 'break' ||
  piece.is === 'when' ||
  piece.is === 'place' ||
  (piece.is === 'word' && /^(?:and|so|but|then|overnight|inside|outside|degrees?)$/.test(piece.text));

const isNumber = (piece: Piece): boolean => piece.is === 'celsius' || piece.is === 'count';

/** A stretch that tells a temperature and no deed: "min -3 in tunnel 2 last night". */
function tellsWarmth(before: readonly Piece[]): boolean {
  if (!before.some(({ is }) => is === 'place') || before.some(({ is }) => is === 'plant')) return false;
  return (
    before.some(({ is }) => is === 'celsius') ||
    before.some((piece, at) => piece.is === 'place' && warmthLedTo(before, at + 1) > 0)
  );
}

/** What goes on with a temperature: "… last night in the greenhouse". */
const GOES_ON = whole`
  in|on|at|inside|outside|out|under|by|with|and|so|but|then|when|while|because|as|for|from|to|until|till|again|too|though
  which|where|that|degrees?|or|i|we|it|is|was|the|only|again|already|still|now|there|here|brr+|max|min|maximum|minimum|high|low
`;

/** "By dinner time", "at lunch". */
const endsWithHour = (before: readonly Piece[]): boolean =>
  /^(?:time|noon|midday|dinner|lunch|lunchtime|teatime|tea|inside|outside|overnight|midnight|dawn|dusk)$/.test(
    wordBack(before),
  );

/** "Glasshouse 1 vented": what was done to a place, said in short. */
function isToldOf(before: readonly Piece[]): boolean {
  const last = lastOf(before);
  return last?.is === 'word' && last.verb?.form === 'past' && before.at(-2)?.is === 'place';
}

/** "… over the hothouse", and not "and the hothouse". */
function isInPlace(before: readonly Piece[]): boolean {
  const last = lastOf(before);
  return last?.is === 'place' && (last.prep !== undefined || /^(?:over|round)$/.test(wordBack(before, 3)));
}

export const warmthsTold: readonly MarkMeant[] = [
  {
    name: '<place> at <number> lids on',
    mark: ',',
    begins: ['word', 'celsius'],
    when: (before, behind) => {
      const last = lastOf(before);
      // "… put the lid back at six 14 degrees in there at noon".
      if (behind[0]?.is === 'celsius')
        return (
          last?.is === 'when' &&
          /^(?:in|inside|outside|out)$/.test(wordAt(behind, 1)) &&
          before.some((piece) => piece.is === 'word' && piece.verb?.form === 'past')
        );
      return (
        last !== undefined &&
        isNumber(last) &&
        before.findIndex(({ is }) => is === 'place') === before.length - 3 &&
        wordBack(before, 2) === 'at' &&
        /^(?:lids?|vents?|doors?|fleece|covers?|heat|heater|fan|windows?)$/.test(wordAt(behind, 0)) &&
        /^(?:on|off|open|opened|shut|closed|up|down)$/.test(wordAt(behind, 1))
      );
    },
    phrasings: [
      ['propagator at 18 lids on', 'propagator at 18, lids on'],
      [
        'uncovered the greenhouse this morning 14 degrees in there at noon',
        'uncovered the greenhouse this morning, 14 degrees in there at noon',
      ],
    ],
    mustNot: ['propagator with 18 lids on', 'uncovered the greenhouse at 14 degrees in there'],
  },
  {
    name: '<warmth> <place> at <warmth>',
    mark: ',',
    begins: ['place'],
    when: (before, behind) => {
      const [place] = behind;
      const last = lastOf(before);
      if (place?.is !== 'place' || place.prep !== undefined) return false;
      const led = warmthLedTo(behind, 1);
      // Behind one place's warmth a number by itself is the next one's: "utility room sitting at 12 propagator 19".
      if (led < 0 && !(tellsWarmth(before) && behind[1]?.is === 'count' && endsTelling(behind[2])))
        return false;
      if (behind[led]?.is === 'celsius' && !GOES_ON.test(wordBack(before)) && last?.is === 'word')
        return true;
      if (last?.is === 'word') return isToldOf(before) || (endsWithHour(before) && before.some(isNumber));
      if (last?.is === 'when' && before.some(isTended)) return true;
      return (
        last !== undefined &&
        /^(?:when|celsius|count|place)$/.test(last.is) &&
        (before.some(isNumber) || tellsWarmth(before))
      );
    },
    phrasings: [
      [
        "greenhouse got up to 31 by two o'clock propagator steady on 22",
        "greenhouse got up to 31 by two o'clock, propagator steady on 22",
      ],
      [
        'min 3 in the greenhouse last night propagator holding 19',
        'min 3 in the greenhouse last night, propagator holding 19',
      ],
      ['propagator misted greenhouse at 27', 'propagator misted, greenhouse at 27'],
      [
        'misted the propagator this morning greenhouse at 27',
        'misted the propagator this morning, greenhouse at 27',
      ],
    ],
    mustNot: ['moved the Salt Harrier to the greenhouse at 4', 'the propagator in the greenhouse at 27'],
  },
  {
    name: '<warmth> in <place> <day> <thing>',
    mark: '.',
    begins: ['word', 'plant'],
    when: (before, behind) => {
      const last = lastOf(before);
      if ((last?.is !== 'when' && wordBack(before) !== 'overnight') || !tellsWarmth(before)) return false;
      return !GOES_ON.test(wordAt(behind, 0));
    },
    phrasings: [
      [
        '-3 in the greenhouse last night fleece went over the porch',
        '-3 in the greenhouse last night. fleece went over the porch',
      ],
      [
        'greenhouse down to 3 overnight Salt Harrier now fleeced',
        'greenhouse down to 3 overnight. Salt Harrier now fleeced',
      ],
    ],
    mustNot: [
      '-3 in the greenhouse last night so I fleeced it',
      'greenhouse down to 3 overnight the Salt Harrier now fleeced',
    ],
  },
  {
    name: '<deed> it was <warmth>',
    mark: ',',
    begins: ['word'],
    when: (before, behind) => {
      const from = wordAt(behind, 0) === 'where' ? 1 : 0;
      const isWas = from === 0 && wordAt(behind, 0) === 'was' && isInPlace(before);
      if (
        !(isWas || /^(?:it|it's)$/.test(wordAt(behind, from))) ||
        /^(?:and|but|so|because|as|when|where|while|since|if|that|though|although)$/.test(wordBack(before))
      )
        return false;
      const at = warmthLedTo(behind, isWas ? 0 : from + 1);
      const number = at > 0 ? behind[at] : behind.slice(0, 4).find(({ is }) => is === 'count');
      const inThere = number === undefined ? -1 : behind.indexOf(number) + 1;
      return (
        (number?.is === 'celsius' ||
          (number?.is === 'count' &&
            wordAt(behind, inThere) === 'in' &&
            wordAt(behind, inThere + 1) === 'there')) &&
        before.some(({ is }) => is === 'plant' || is === 'place') &&
        before.some((piece) => piece.is === 'word' && piece.verb?.form === 'past')
      );
    },
    phrasings: [
      [
        'three of the Salt Harrier died it was minus 6 on Friday',
        'three of the Salt Harrier died, it was minus 6 on Friday',
      ],
    ],
    mustNot: ['three of the Salt Harrier died because it was minus 6'],
  },
];
