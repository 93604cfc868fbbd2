/** "9 off the Salt Harrier this morning": cuttings told by nothing but their number and the plant that they came off. */
import { type Rule, wordAt } from '../rule.js';

/** What may stand before it: talk, no deed. */
const TALK =
  /^(?:right|so|ok|okay|well|i|we|i've|we've|got|had|managed|and|also|then|another|just|only|plus|today|hi|hello|morning)$/;

export const offAPlant: readonly Rule[] = [
  {
    name: '<count> off <plant>',
    kind: 'strike',
    head: 'off',
    shape: 'object',
    faint: true,
    when: (p, f, t) => {
      const named = p[/^(?:the|my|our)$/.test(wordAt(p, t)) ? t + 1 : t];
      const count = p[f - 1];
      return (
        named?.is === 'plant' &&
        count?.is === 'count' &&
        count.quantity.value !== undefined &&
        p
          .slice(0, f - 1)
          .every(
            (piece) =>
              piece.is === 'break' ||
              piece.is === 'when' ||
              piece.is === 'place' ||
              (piece.is === 'word' && TALK.test(piece.text)),
          ) &&
        !p.slice(t).some((piece) => piece.is === 'word' && piece.verb !== undefined)
      );
    },
    phrasings: [
      'yesterday I got another ten off the Salt Harrier',
      '9 off the Salt Harrier this morning, three to a pot',
      'right, 6 off Salt Harrier',
    ],
    mustNot: ['knocked 3 off the Salt Harrier', '3 off the Salt Harrier have rotted'],
  },
];
