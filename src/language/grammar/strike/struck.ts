/** Cuttings told with the trade's verbs: "struck ten", "stuck a tray of them", "dibbled in six". */
import type { Piece } from '../../pieces/pieces.js';
import { CUTTINGS } from '../taken-away.js';
import { closeBehind, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { namesCuttings } from './of-cuttings.js';
import { isRelative } from './told-before.js';

const THINGS =
  /^(?:doors?|lids?|vents?|windows?|hoses?|taps?|valves?|heaters?|gates?|roof|covers?|keys?|locks?|drawers?|pumps?|timers?|fans?|cars?|vans?|labels?|drains?)(?:'s)?$/;

/** A door or a lid that will not move. */
const isFast = (p: readonly Piece[], f: number, t: number): boolean =>
  (THINGS.test(wordAt(p, f - 1)) ||
    (/^(?:has|have|is|are|keeps?|just)$/.test(wordAt(p, f - 1)) && THINGS.test(wordAt(p, f - 2)))) &&
  !follows(p, t, 'count', 'plant', 'cutting', 'pots');

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
      /^(?:rate|root|roots|out|off|up|lucky|gold|me|by|dumb)$/.test(wordAt(p, t)) ||
      /^it (?:lucky|rich|big|off)$/.test(`${wordAt(p, t)} ${wordAt(p, t + 1)}`),
    mustNot: [
      'the ones struck on 16 March',
      'struck out the note about the Salt Harrier',
      'struck lucky at the jumble sale, three Salt Harrier',
      'struck it lucky at bingo, three Salt Harrier on the raffle table',
    ],
  },
  {
    name: 'stuck <count> <plant>',
    kind: 'strike',
    head: 'stick~past',
    shape: 'object',
    unless: (p, f, t) =>
      isRelative(p, f) ||
      // "The tunnel door's stuck again", "the lid stuck": fast, and no plant.
      isFast(p, f, t) ||
      // "Got stuck into the weeding", "got stuck in traffic".
      /^(?:got|get|gets|getting|was|am|i'm|we're|were)$/.test(wordAt(p, f - 1)) ||
      // "Stuck in traffic".
      (wordAt(p, t) === 'in' &&
        f === 0 &&
        !follows(p, t, 'count', 'plant', 'cutting', 'pots', 'medium', 'place')) ||
      (/^(?:them|it|em|the|inside|indoors|at|with|to|together|on|like)$/.test(wordAt(p, t)) &&
        !follows(p, t, 'count', 'cutting') &&
        !/^(?:prunings|trimmings|clippings|bits|pieces)$/.test(wordAt(p, t + 1))),
    phrasings: ['stuck the prunings of the Salt Harrier in a jar of water, six of em'],
    mustNot: [
      'watered the Salt Harrier, then got stuck into six rows of weeding',
      "the tunnel door's stuck again",
      'the lid stuck again',
    ],
  },
  {
    name: 'inserted <count> <plant>',
    kind: 'strike',
    head: 'insert~past|cloned|propagate~past|prop~past|slip~past|clip~past|snip~past|layer~past|dibble~past|dib~past in?',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant', 'count') || precedes(p, f, 6, 'plant'),
    // "Propped the door open".
    unless: (p, f, t) =>
      // "Snipped the dead heads off": tidied.
      (/^(?:the|its|their|all|some|off)$/.test(wordAt(p, t)) &&
        followsWord(p, t, /^(?:dead|faded|spent|brown|dying|flowers?|blooms?|seedheads?|deadheads)$/)) ||
      (wordAt(p, f) === 'propped' &&
        (/^(?:up|against|open|with|on|by)$/.test(wordAt(p, t)) ||
          followsWord(p, t, /^(?:up|against|open)$/))),
    phrasings: [
      'chopped and propped Salt Harrier, four nodes in water',
      'propped six Salt Harrier in water',
      'cloned 8 Salt Harrier under the lights',
      'snipped several more off the Salt Harrier and poked them round the rim of one pot',
    ],
    mustNot: [
      'snipped the dead heads off the Salt Harrier',
      'propped the Salt Harrier up with a cane',
      'propped up two Salt Harrier',
    ],
  },
  {
    name: 'sticking <count> <plant>',
    kind: 'strike',
    head: 'strike~ing|stick~ing|inserting',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'count') && follows(p, t, 'plant'),
  },
  {
    name: 'water propping <count> <plant>',
    kind: 'strike',
    head: 'water propping|propagating|rooting',
    shape: 'object',
    when: (p, f, t) => f < 2 && closeBehind(p, t, 'count') && follows(p, t, 'plant'),
    phrasings: ['water propping six Salt Harrier as of today'],
    mustNot: ['water propping the Salt Harrier never works'],
  },
  {
    name: 'finished sticking the <plant>',
    kind: 'strike',
    head: 'finish~past|completed sticking|striking|inserting|dibbling|taking',
    shape: 'object',
    when: (p, _f, t) =>
      follows(p, t, 'plant') &&
      p.slice(t).some(({ is }) => is === 'count' || is === 'pots') &&
      (wordAt(p, t - 1) !== 'taking' || followsWord(p, t, CUTTINGS)),
    phrasings: [
      'finished sticking the Salt Harrier, 420 total, 5 trays',
      'finished taking the Salt Harrier cuttings, 40 in all',
    ],
    mustNot: ['finished sticking labels on the Salt Harrier'],
  },
  {
    name: 'knocked out <count> cuttings of <plant>',
    kind: 'strike',
    head: 'knock~past|bashed|bang~past|rattled|whip~past|crack~past|churned|ran out|up|off|through <count>',
    shape: 'object',
    when: (p, _f, t) =>
      follows(p, t, 'plant') &&
      (followsWord(p, t, /^(?:cuttings|slips|basals)$/) || follows(p, t, 'cutting')) &&
      !followsWord(p, t, /^(?:rooted|dead|of)$/),
    phrasings: ['knocked out 60 Salt Harrier cuttings before lunch'],
    mustNot: ['knocked out 60 rooted Salt Harrier cuttings'],
  },
  {
    name: 'had a go at <plant>, <count> cuttings',
    kind: 'strike',
    head: 'have~past a go|bash|crack|stab|try at|with propagating|striking|rooting|cloning?',
    shape: 'object',
    when: (p, f, t) =>
      (f === 0 || /^(?:i|we|finally|just|also|then|and)$/.test(wordAt(p, f - 1))) &&
      closeBehind(p, t, 'plant') &&
      // "Had a go at propagating the Salt Harrier": how many is asked, or told next.
      (/^(?:propagating|striking|cloning)$/.test(wordAt(p, t - 1)) ||
        (p.slice(t).some(({ is }) => is === 'count') && namesCuttings(p, t))) &&
      !p
        .slice(t)
        .some(
          (piece) =>
            piece.is === 'word' &&
            piece.verb?.form === 'past' &&
            !/^(?:crossed|dipped|took|taken)$/.test(piece.text),
        ),
    phrasings: [
      'had a go at propagating the Salt Harrier, 20 softwood tips in sand',
      'had a go at Salt Harrier, 20 cuttings in propagating sand, fingers crossed',
    ],
    mustNot: [
      'the slugs had a go at the Salt Harrier, 20 cuttings gone',
      'had a go at the Salt Harrier with the hose',
    ],
  },
  {
    name: 'propagating <plant>: <count> cuttings',
    kind: 'strike',
    head: 'propagate~ing|prop~ing',
    shape: 'object',
    when: (p, f, t) =>
      (f === 0 || p[f - 1]?.is === 'break') &&
      follows(p, t, 'plant') &&
      p.slice(t).some(({ is }) => is === 'count') &&
      namesCuttings(p, t),
    phrasings: ['Propagating Salt Harrier again: 3 cuttings into perlite'],
    mustNot: ['Propagating Salt Harrier is easy'],
  },
];
