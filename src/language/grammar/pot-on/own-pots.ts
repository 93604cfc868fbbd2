/** Plants that were given or have pots of their own: "gave four rooted Salt Harrier pots of their own". */
import type { Piece } from '../../pieces/pieces.js';
import { followsWord, precedes, type Rule, wordAt } from '../rule.js';

/** The word at `at` or before it that does not tell whose pots, or how big. */
function wordBehindOwn(pieces: readonly Piece[], at: number): string {
  let from = at;
  while (/^(?:the|their|my|our|own|new|bigger)$/.test(wordAt(pieces, from))) from--;
  return wordAt(pieces, from);
}

/** "Stuck five Salt Harrier, each …": what follows tells how the cuttings stand. */
const struckBefore = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(0, from)
    .some(
      (piece, at) =>
        piece.is === 'word' &&
        /^(?:took|taken|struck|stuck|inserted)$/.test(piece.text) &&
        pieces[at + 1]?.is === 'count',
    );

export const ownPots: readonly Rule[] = [
  {
    name: 'gave <plant> their own pots',
    kind: 'potOn',
    head: 'give~past|give~ing|treat~past .. pots|pot|<size>|home|homes|quarters|digs',
    shape: 'object',
    when: (p, f, t) =>
      // "Pots of their own"; a new home may be somebody's.
      (wordAt(p, t) === 'of' && /^(?:their|its)$/.test(wordAt(p, t + 1)) && wordAt(p, t + 2) === 'own') ||
      p
        .slice(f, t)
        .some(
          (piece) =>
            (piece.is === 'word' &&
              (/^(?:bigger|larger|roomier)$/.test(piece.text) ||
                (/^(?:own|new|each|individual|next)$/.test(piece.text) &&
                  !/^(?:homes?|quarters|digs)$/.test(wordAt(p, t - 1))))) ||
            piece.is === 'size',
        ),
    // "Gave Pat three Ember Fox in 9cm pots", "three of the 9cm Ember Fox": away, as they stood.
    unless: (p, _f, t) =>
      /^(?:in|of|from|off)$/.test(wordBehindOwn(p, t - 2)) || p[t]?.is === 'plant' || wordAt(p, t) === 'ones',
    phrasings: [
      'gave the Salt Harrier 9cm pots',
      'gave the Salt Harrier their own pots',
      'gave four rooted Salt Harrier pots of their own',
      'treated three Salt Harrier to bigger pots',
      'gave six Salt Harrier a bigger home',
    ],
    mustNot: [
      'gave six Salt Harrier a new home',

      'gave Pat three Salt Harrier in 9cm pots',
      'gave Pat three of the 9cm Salt Harrier',
      'gave away 3 Salt Harrier in their own pots',
    ],
  },
  {
    name: 'gave <plant> a pot each',
    kind: 'potOn',
    head: 'give~past .. <pots> each',
    shape: 'object',
    phrasings: ['gave seven of the rooted Salt Harrier a pot each'],
  },
  {
    name: '<plant> have a bigger pot',
    kind: 'potOn',
    head: 'have~|get~past a|some|nice? bigger|larger|new pot|pots',
    shape: 'subject',
    when: (p, f) =>
      p.slice(0, f).some(({ is }) => is === 'plant') && !/^(?:i|we|you|they)$/.test(wordAt(p, f - 1)),
    unless: (p, _f, t) => followsWord(p, t, /^(?:waiting|ready|coming|ordered|somewhere)$/),
    phrasings: [
      'Salt Harrier got new pots, four of them',
      'the Salt Harrier were bursting out so every one has a bigger pot now',
    ],
    mustNot: ['the Salt Harrier need a bigger pot', 'the Salt Harrier have new pots waiting'],
  },
  {
    name: '<count> <plant> got a <size> each',
    kind: 'potOn',
    head: 'get~past a|an? <pots>? <size> each',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 8, 'plant', 'count'),
    unless: (p, f) => struckBefore(p, f),
    phrasings: ['the Salt Harrier were tangled, 4 of them have got a 9cm pot each now'],
    mustNot: ['the Salt Harrier need to get a 9cm pot each'],
  },
  {
    name: '<plant> in its own pot',
    kind: 'potOn',
    head: 'their|its|a|an|in own <size>|pots|pot',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 8, 'plant', 'count') || precedes(p, f, 3, 'word'),
    unless: (p, f) =>
      struckBefore(p, f) ||
      // "Gave Pat three Ember Fox in their own pots": as they stood.
      (/^(?:in|into)$/.test(wordAt(p, f - 1)) &&
        p
          .slice(0, f)
          .some((piece) => piece.is === 'word' && /^(?:gave|sold|swapped|handed)$/.test(piece.text))) ||
      p.some((piece) => piece.is === 'word' && /^(?:cuttings|cutting)$/.test(piece.text)),
    phrasings: [
      'Salt Harrier in its own pot',
      'I have put the Salt Harrier each one in a own pot of 10 cm',
      'the Salt Harrier are now separated, everyone in own pot',
    ],
    mustNot: [
      'the Salt Harrier need their own pots',
      'stuck 5 Salt Harrier, each in its own pot',
      'took six Salt Harrier cuttings, each in its own pot',
    ],
  },
];
