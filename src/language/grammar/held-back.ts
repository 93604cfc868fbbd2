/** What an act left out: "kept two back", "held three over as spares", "left two in the frame". Logs nothing itself. */
import type { Piece } from '../pieces/pieces.js';
import { closeBehind, followsWord, type Rule, wordAt } from './rule.js';

export const heldBackRules: readonly Rule[] = [
  {
    name: 'kept <count> back',
    kind: 'aside',
    sense: 'kept',
    head: 'keep~past|keeping',
    shape: 'object',
    when: (p, _f, t) => closeBehind(p, t, 'count', 'plant'),
  },
  {
    name: 'held <count> back',
    kind: 'aside',
    sense: 'kept',
    head: 'hold~past|holding|saved|saving|set~past|setting|put~past|putting',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'count') && followsWord(p, t, /^(?:back|aside|over|by|behind|spare|spares)$/),
    unless: (p, _f, t) => followsWord(p, t, /^(?:on|in|into|to)$/),
  },
  {
    name: 'left <count> behind',
    kind: 'aside',
    sense: 'kept',
    head: 'left|leaving',
    shape: 'object',
    when: (p, _f, t) =>
      isNumber(p[t]) &&
      (p[t + 1] === undefined ||
        p[t + 1]?.is === 'break' ||
        STAYS.test(wordAt(p, t + 1)) ||
        p[t + 1]?.is === 'place'),
    unless: (p, _f, t) => followsWord(p, t, /^(?:dead|rotten|rotted|with|alive|living|standing|now)$/),
  },
];

const STAYS = /^(?:back|behind|in|on|under|where|over|as|of|for|to|that|which|till|until|at)$/;

/** "Left two", not "left the lot". */
const isNumber = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' && piece.quantity.value !== undefined;
