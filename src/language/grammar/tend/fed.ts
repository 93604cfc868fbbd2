/** Fed: "gave them a feed", "seaweed for the Salt Harrier". */
import { follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { ALL_OF_THEM, bare, didThe, ON_PAPER, roundDone, verb, WANTING } from './telling.js';

export const fed: readonly Rule[] = [
  verb(
    'feed fertilise fertilize',
    'feed',
    'fed <plant>',
    (p, f, t) =>
      /^up$/.test(wordAt(p, t)) ||
      /^(?:cat|dog|kids|hens|chickens|birds|children|family|cats)$/.test(wordAt(p, t + 1)) ||
      /^(?:am|i'm|was|being)$/.test(wordAt(p, f - 1)),
  ),
  {
    name: 'gave <plant> a feed',
    kind: 'tend',
    head: 'give~past|give~ing|hit|hitting .. feed|feeding|seaweed|tomorite|fertiliser|fertilizer|plantfood|food|seasol|maxicrop|comfrey',
    shape: 'object',
    care: 'feed',
    unless: (p, _f, t) => /^(?:pantry|bank|hub|larder|festival|fair)$/.test(wordAt(p, t)),
    phrasings: ['hit the Salt Harrier with a half-strength feed'],
    mustNot: ['gave 10 Salt Harrier to the food pantry'],
  },
  {
    name: '<plant> treated to a feed',
    kind: 'tend',
    head: 'treat~past .. feed|seaweed|tomorite|fertiliser|fertilizer|food|comfrey',
    shape: 'object',
    care: 'feed',
    phrasings: ['treated the Salt Harrier to a feed', 'the Salt Harrier were treated to a weak feed'],
  },
  roundDone('feeding', 'feed', {
    phrasings: ['feeding done'],
    mustNot: ['no feeding done'],
  }),
  didThe('feeding', 'feed', {
    phrasings: ['did the feeding in the greenhouse', 'did my feeding'],
  }),
  {
    name: 'seaweed for <plant>',
    kind: 'tend',
    head: 'seaweed|phostrogen|tomorite|fertiliser|fertilizer|comfrey|maxicrop|seasol|plantfood for|to|on|over',
    shape: 'object',
    care: 'feed',
    when: (p, _f, t) => follows(p, t, 'plant', 'place') || followsWord(p, t, ALL_OF_THEM),
    unless: (p, f, t) =>
      followsWord(p, t, ON_PAPER) ||
      followsWord(p, t, /^(?:is|was|are|arrived|came|needed|wanted|out)$/) ||
      p
        .slice(0, f)
        .some((piece) => piece.is === 'word' && (piece.verb !== undefined || WANTING.test(piece.text))),
    phrasings: ['seaweed for the Salt Harrier', 'weak tomorite to everything in the greenhouse'],
    mustNot: [
      'bought seaweed for the Salt Harrier',
      'no seaweed for the Salt Harrier',
      'seaweed on the list for the Salt Harrier',
    ],
  },
  {
    name: '<plant> got a feed',
    kind: 'tend',
    head: 'get~past|have~past .. feed|food|seaweed|tomorite|comfrey',
    shape: 'subject',
    care: 'feed',
    when: (p, f) => precedes(p, f, 6, 'plant', 'place'),
  },
  bare('feed', 'feed'),
];
