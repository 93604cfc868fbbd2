/** Losses told by what is left: "frost again, down to six", "only three alive", "five of nine survived". */
import type { Piece } from '../../pieces/pieces.js';
import { causeAt } from './counted.js';
import { endsAt, type Rule, wordAt } from '../rule.js';

/** Whether a number of plants that says how many others there are stands among the pieces. */
const isNumbered = (pieces: readonly Piece[]): boolean =>
  pieces.some(
    (piece) =>
      piece.is === 'count' &&
      ((piece.quantity.value ?? 0) > 0 || piece.quantity.share !== undefined) &&
      !piece.quantity.vague &&
      !piece.quantity.negative,
  );

/** Nothing between the number and what is said of it but the plants themselves. */
const onlyPlants = (pieces: readonly Piece[]): boolean =>
  pieces.every(
    (piece) =>
      piece.is === 'plant' ||
      piece.is === 'count' ||
      /^(?:only|just|now|still|of|the|my|our|those|these|them|are|is|out|plants?|cuttings?|left|alive)$/.test(
        piece.is === 'word' ? piece.text : '',
      ),
  );

/** Fewer may have been sold or planted: that they died is said, or what killed them. */
const saysHarm = (pieces: readonly Piece[]): boolean =>
  pieces.some(
    (_, at) =>
      causeAt(pieces, at) !== undefined ||
      /^(?:lost|losses|died|dead|dying|alive|standing|survived|survivors)$/.test(wordAt(pieces, at)),
  );

const namesPlant = (pieces: readonly Piece[]): boolean => pieces.some(({ is }) => is === 'plant');

/** So many of a plant are left, and what became of the others is said. */
const tellsHowFew = (pieces: readonly Piece[], from: number, to: number): boolean =>
  namesPlant(pieces) && saysHarm(pieces) && isNumbered(pieces.slice(from, to));

/** How many there are now; the others are lost where nothing else is told that they went to. */
export const left: readonly Rule[] = [
  {
    name: 'down to <count> <plant>',
    kind: 'loss',
    head: 'down to the|my|our? last|just|only? <count>',
    shape: 'object',
    sense: 'left',
    faint: true,
    when: (p, f, t) =>
      tellsHowFew(p, f, t) &&
      (f === 0 ||
        /^(?:plant|break|when)$/.test(p[f - 1]?.is ?? '') ||
        /^(?:am|are|is|i'm|we're|now|gone|went|dwindled|reduced|whittled|were|was)$/.test(
          wordAt(p, f - 1),
        )) &&
      (p[t]?.is === 'plant' || endsAt(p, t) || /^(?:the|left|since|after|of)$/.test(wordAt(p, t))),
    phrasings: [
      'frost again, down to six Salt Harrier',
      'the Salt Harrier are down to the last two, rot',
      'down to my last four Salt Harrier, slugs',
    ],
    mustNot: [
      'down to six Salt Harrier',
      'cut the Salt Harrier down to two leaves',
      'porch down to two degrees, Salt Harrier fine',
      'Salt Harrier down to two pounds each',
    ],
  },
  {
    name: 'only <count> <plant> left',
    kind: 'loss',
    // "Only three" is one piece.
    head: '<count> .. left|remaining|alive|standing',
    shape: 'object',
    sense: 'left',
    faint: true,
    when: (p, f, t) =>
      tellsHowFew(p, f, t) &&
      onlyPlants(p.slice(f, t - 1)) &&
      isAllSaid(p, t) &&
      // "Ten left this morning": gone elsewhere.
      p[t]?.is !== 'when',
    phrasings: ['only three Salt Harrier alive', 'only three left of the Salt Harrier after the slugs'],
    mustNot: [
      'only three Salt Harrier left',
      'only three labels left for the Salt Harrier',
      'only three Salt Harrier left to pot on',
      'only three weeks left for the Salt Harrier',
      'only three Salt Harrier left in the porch',
      'three Salt Harrier left this morning',
      'three Salt Harrier left by courier',
    ],
  },
  {
    name: 'of <count> <plant> are alive <count>',
    kind: 'loss',
    // As those say it who write in a second language.
    head: 'is|are alive|living',
    shape: 'object',
    sense: 'left',
    when: (p, f, t) =>
      p[f - 1]?.is === 'plant' &&
      p[f - 2]?.is === 'count' &&
      [3, 4].some((back) => /^(?:from|of)$/.test(wordAt(p, f - back))) &&
      isNumbered(p.slice(t, t + 1)) &&
      endsAt(p, t + 1),
    phrasings: ['from 12 Salt Harrier are alive only 9'],
    mustNot: ['the Salt Harrier are alive', 'the Salt Harrier are alive, 9 rooted'],
  },
  {
    name: '<count> of <count> <plant> survived',
    kind: 'loss',
    head: 'still|have~? survive~past|alive|survivors',
    shape: 'subject',
    sense: 'left',
    faint: true,
    when: (p, f, t) => {
      const count = p.slice(Math.max(0, f - 6), f).findLast(({ is }) => is === 'count');
      return (
        count?.is === 'count' &&
        isNumbered([count]) &&
        namesPlant(p) &&
        (count.quantity.outOf !== undefined ||
          count.quantity.share !== undefined ||
          causeAt(p, t) !== undefined) &&
        (isAllSaid(p, t) || /^(?:the|that|last)$/.test(wordAt(p, t)))
      );
    },
    phrasings: ['five of nine Salt Harrier survived', 'half the Salt Harrier survived the frost'],
    mustNot: ['ten Salt Harrier survived', 'all the Salt Harrier survived the frost'],
  },
  {
    name: 'minus <count> <plant>, <cause>',
    kind: 'loss',
    head: '<count>',
    shape: 'subject',
    sense: 'left',
    faint: true,
    when: (p, f) => {
      const count = p[f];
      return (
        count?.is === 'count' &&
        count.quantity.negative === true &&
        (p[f - 1]?.is === 'plant' || p[f + 1]?.is === 'plant') &&
        // "-3 in the frame, frosted" is how cold it was.
        p.some((_, at) => !/^(?:frost)?$/.test(causeAt(p, at) ?? ''))
      );
    },
    phrasings: ['minus two Salt Harrier, wilt', 'Salt Harrier -2, rot'],
    mustNot: ['minus two Salt Harrier', 'Salt Harrier -3 in the porch, frosted'],
  },
];

/** Nothing behind that makes it something else: "left to pot on", "left in the porch". */
const isAllSaid = (pieces: readonly Piece[], at: number): boolean =>
  !pieces.slice(at).some(({ is }) => is === 'place') &&
  (endsAt(pieces, at) || /^(?:of|after|since|out|here)$/.test(wordAt(pieces, at))) &&
  wordAt(pieces, at) !== 'on';
