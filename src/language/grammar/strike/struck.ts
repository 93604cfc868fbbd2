/** Cuttings told with the trade's verbs: "struck ten", "stuck a tray of them", "dibbled in six". */
import { follows, precedes, type Rule, wordAt } from '../rule.js';
import { isRelative } from './told-before.js';

export const struck: readonly Rule[] = [
  {
    name: 'struck <count> <plant>',
    kind: 'strike',
    head: 'strike~',
    shape: 'object',
    unless: (p, f, t) =>
      // "Fuchsias strike best in May": as they always do.
      (/^strikes?$/.test(wordAt(p, f)) && p[f - 1]?.is === 'plant') ||
      isRelative(p, f) ||
      /^(?:rate|root|roots|out|off|up|lucky|gold|me|by)$/.test(wordAt(p, t)),
    mustNot: [
      'struck out the note about the Salt Harrier',
      'struck lucky at the jumble sale, three Salt Harrier',
    ],
  },
  {
    name: 'stuck <count> <plant>',
    kind: 'strike',
    head: 'stick~past',
    shape: 'object',
    unless: (p, f, t) =>
      isRelative(p, f) ||
      // "Got stuck into the weeding", "got stuck in traffic".
      /^(?:got|get|gets|getting)$/.test(wordAt(p, f - 1)) ||
      (/^(?:them|it|em|the|inside|indoors|at|with|to|together|on|like)$/.test(wordAt(p, t)) &&
        !follows(p, t, 'count', 'cutting') &&
        !/^(?:prunings|trimmings|clippings|bits|pieces)$/.test(wordAt(p, t + 1))),
    phrasings: ['stuck the prunings of the Salt Harrier in a jar of water, six of em'],
    mustNot: ['watered the Salt Harrier, then got stuck into six rows of weeding'],
  },
  {
    name: 'inserted <count> <plant>',
    kind: 'strike',
    head: 'insert~past|propagate~past|slip~past|clip~past|snip~past|layer~past|dibble~past|dib~past in?',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant', 'count') || precedes(p, f, 6, 'plant'),
  },
  {
    name: 'sticking <count> <plant>',
    kind: 'strike',
    head: 'strike~ing|stick~ing|inserting',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'count') && follows(p, t, 'plant'),
  },
];
