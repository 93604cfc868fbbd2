/** "9 off the Salt Harrier this morning": cuttings told by nothing but their number and the plant that they came off. */
import { isPersons } from '../../mood/somebody-else.js';
import { type Rule, wordAt } from '../rule.js';

/** What may stand before it: talk, no deed. */
const TALK =
  /^(?:right|so|ok|okay|well|i|we|i've|we've|got|had|managed|and|also|then|another|just|only|plus|today|hi|hello|morning)$/;

/** How cuttings are come by that are somebody's. */
const CAME_BY =
  /^(?:take|snag|nick|cadge|pinch|swipe|blag|steal|grab|get|nab|snip|scrounge|beg|have|liberate)$/;

export const offAPlant: readonly Rule[] = [
  {
    name: "<count> off <somebody>'s plant",
    kind: 'strike',
    head: 'off|from',
    shape: 'object',
    when: (p, f, t) => {
      const whose = /^(?:the|my|our)$/.test(wordAt(p, t)) ? t + 1 : t;
      const count = p[f - 1];
      return (
        isPersons(wordAt(p, whose)) &&
        /^(?:plants?|ones?|bush|bushes|shrub|pot|garden|hedge)$/.test(wordAt(p, whose + 1)) &&
        count?.is === 'count' &&
        count.quantity.value !== undefined &&
        p
          .slice(0, f - 1)
          .every(
            (piece) =>
              piece.is !== 'word' ||
              TALK.test(piece.text) ||
              (piece.verb?.form === 'past' && CAME_BY.test(piece.verb.lemma)),
          ) &&
        p.slice(0, f - 1).some((piece) => piece.is === 'word' && piece.verb?.form === 'past')
      );
    },
    phrasings: [
      "Salt Harrier: snagged 5 more off my aunt's plant",
      "Salt Harrier, cadged three from Doreen's plant",
    ],
    mustNot: ["knocked 3 off my aunt's plant", "got 3 slugs off my aunt's plant"],
  },
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
