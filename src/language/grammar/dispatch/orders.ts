/** Orders that went out: "Doreen's order went out, 8 of these", "order for Hexley gone". */
import { isSomeones } from '../other-people.js';
import { type Rule, wordAt } from '../rule.js';

export const orders: readonly Rule[] = [
  {
    name: "<recipient>'s order of <count> <plant> went out",
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'order|orders .. collected|gone|out|away|off|sent|dispatched|despatched|shipped|left|fetched|posted|made|filled|fulfilled|picked',
    shape: 'object',
    when: (p, f) =>
      isSomeones(wordAt(p, f - 1)) &&
      p.slice(f).some(({ is }) => is === 'count') &&
      p.slice(f).some(({ is }) => is === 'plant'),
    phrasings: [
      "Doreen's order went out, 8 Salt Harrier",
      "Doreen's order of 8 Salt Harrier went out",
      "Hexley's order collected, 8 Salt Harrier",
    ],
    mustNot: ["Doreen's order of 8 Salt Harrier is due out on Friday", 'order gone for 8 Salt Harrier plugs'],
    unless: (p, _f, t) =>
      p.some(
        (_, at) => /^(?:due|still|to|not|never|be|ready|for)$/.test(wordAt(p, at)) && at > t - 3 && at < t,
      ) || /^(?:by|from|of|up)$/.test(wordAt(p, t)),
  },
  {
    name: 'order for <recipient> gone: <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient within',
    head: 'order|orders for .. collected|gone|out|away|off|sent|dispatched|despatched|shipped|left|fetched|posted|picked',
    shape: 'object',
    when: (p, f, t) =>
      p[f + 2]?.is === 'word' &&
      !/^(?:the|next|this)$/.test(wordAt(p, f + 2)) &&
      p.slice(t).some(({ is }) => is === 'count') &&
      p.slice(t).some(({ is }) => is === 'plant'),
    phrasings: ['order for Hexley gone: 8 Salt Harrier'],
    mustNot: ['order for Hexley: 8 Salt Harrier'],
    unless: (p, _f, t) => /^(?:by|from|of|up)$/.test(wordAt(p, t)),
  },
];
