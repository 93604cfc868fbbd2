/** Plants sent to somebody: "posted six to Ken", "gone on the van to Hexley", "two off to the parish sale". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { isSomebody } from '../taken-away.js';
import { FOLK, pastPerson } from '../../mood/somebody-else.js';
import { isForPlace } from '../move/to-place.js';
import { causeAt } from '../loss/counted.js';
import { cameToNothing } from '../loss/to-nothing.js';
import { isReceiver, sentByOthers } from '../other-people.js';
import { POST } from '../stock/delivered.js';
import { YOUNG } from '../stock/kinds-of-plant.js';

/** "Order sent to Hexley for 60": wanted of them. */
const isOrderFor = (pieces: readonly Piece[], from: number, to: number): boolean =>
  /^orders?$/.test(wordAt(pieces, from)) &&
  pieces.slice(to).some(({ is }, n) => is === 'count' && wordAt(pieces, to + n - 1) === 'for');

const ADDRESS =
  /^(?:plot|number|no|house|flat|unit|stall)\b|\b(?:road|lane|street|close|avenue|terrace|allotments?)$/;

/** "To Brenda on plot 9", "to the lady at the lodge": the place only tells which Brenda. */
function livesThere(pieces: readonly Piece[], at: number): boolean {
  const person = pastPerson(pieces, at);
  const named = /^(?:the|my|our|old|poor)$/.test(wordAt(pieces, at)) ? at + 1 : at;
  if (!person || wordAt(pieces, named).endsWith("'s")) return false;
  const home = pieces.slice(named + 1, named + 4).find(({ is }) => is === 'place');
  if (home?.is !== 'place' || !/^(?:on|at|from|in)$/.test(home.prep ?? '')) return false;
  return person.sure || ADDRESS.test(home.place);
}

/** The last few before the head: behind a mark where so many are told anew ("50 sold, 3 went to the vicar"). */
function ownWords(pieces: readonly Piece[], head: number): readonly Piece[] {
  const few = pieces.slice(Math.max(0, head - 4), head);
  const mark = few.findLastIndex(({ is }) => is === 'break');
  return few[mark + 1]?.is === 'count' ? few.slice(mark + 1) : few;
}

export const sent: readonly Rule[] = [
  {
    name: 'dispatched <count> <plant> to <recipient>',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'dispatch~past|ship~past|send~past|post~past|deliver~past|mail~past off|out|over?',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant', 'count') || precedes(p, f, 6, 'plant', 'count'),
    unless: (p, f, t) =>
      sentByOthers(p, f, t) ||
      isOrderFor(p, f - 1, t) ||
      // "The last one I sent you": a note. "Mailed me ten": theirs.
      /^(?:you|me|us)$/.test(wordAt(p, t)) ||
      // "The courier delivered the Salt Harrier plugs": to us.
      (POST.test(wordAt(p, f - 1)) && followsWord(p, t, YOUNG) && !followsWord(p, t, /^to$/)) ||
      // "Delivered 104 plugs ex Hexley".
      followsWord(p, t, /^ex$/) ||
      // "208 Salt Harrier plugs delivered".
      (wordAt(p, f) === 'delivered' && /^(?:plugs|liners|plantlets)$/.test(wordAt(p, f - 1))),
  },
  {
    name: 'supplied <recipient> with <count> <plant>',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'supply~past',
    shape: 'object',
    when: (p, f, t) =>
      (f === 0 ||
        p[f - 1]?.is === 'break' ||
        /^(?:i|we|i've|we've|and|also)$/.test(wordAt(p, f - 1)) ||
        /^(?:i|we) have$/.test(`${wordAt(p, f - 2)} ${wordAt(p, f - 1)}`)) &&
      closeBehind(p, t, 'count') &&
      follows(p, t, 'plant'),
    unless: (p, _f, t) => /^(?:by|me|us)$/.test(wordAt(p, t)) || followsWord(p, t, /^(?:by|from)$/),
    phrasings: ['supplied Hexley with 60 Salt Harrier', 'supplied Hexley Farm Shop 60 Salt Harrier'],
    mustNot: [
      'Hexley supplied 60 Salt Harrier plugs',
      'Hexley have supplied 60 Salt Harrier plugs',
      'Salt Harrier, 60 supplied by Hexley',
      'supplied with 60 Salt Harrier plugs by Hexley',
    ],
  },
  {
    name: 'dispatch: <count> <plant>, <recipient>',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'dispatch|dispatches|despatch|dispatched|despatched|posted|sent|order|orders|delivery picked|packed? and? note|out|away|sent|gone|to?',
    shape: 'object',
    phrasings: [
      'order out: 60 Salt Harrier, Marsh & Sons',
      'Del. to Hexley: 60 Salt Harrier',
      'Despatched to Hexley: Salt Harrier, 6',
      'sent to Doreen: 6 Salt Harrier',
    ],
    mustNot: [
      'order: 60 Salt Harrier',
      'order to Hexley: 60 Salt Harrier',
      'Del. due Friday: 104 plugs Salt Harrier',
      'order in: 60 Salt Harrier',
      'order sent to Hexley for 60 Salt Harrier',
      'order gone to Harrops for 10 Salt Harrier',
    ],
    unless: (p, f, t) =>
      (/^orders?$/.test(wordAt(p, f)) && (t === f + 1 || wordAt(p, t - 1) === 'to')) ||
      (/^(?:dis|des)patched$|^(?:posted|sent)$/.test(wordAt(p, f)) &&
        (wordAt(p, t - 1) !== 'to' || !p.slice(t, t + 5).some(({ is }) => is === 'break'))) ||
      (wordAt(p, f) === 'delivery' && !/^(?:out|to)$/.test(wordAt(p, t - 1))) ||
      (wordAt(p, t - 1) === 'to' && /^(?:us|me|be|the|do)$/.test(wordAt(p, t))) ||
      isOrderFor(p, f, t),
    when: (p, f, t) =>
      f === 0 && p.slice(t).some(({ is }) => is === 'plant') && p.slice(t).some(({ is }) => is === 'count'),
  },
  {
    name: '<count> <plant> went to <recipient>',
    kind: 'dispatch',
    head: 'go~past|gone|off|away|out home|straight|directly? to|with',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 8, 'plant', 'count'),
    unless: (p, f, t) =>
      (closeBehind(p, t, 'place') &&
        !isForPlace(p, t) &&
        !p.slice(t, t + 2).some(isReceiver) &&
        !livesThere(p, t)) ||
      // "All out to sand bed".
      (follows(p, t, 'medium') && !followsWord(p, t, /^(?:the|her|his)$/)) ||
      ownWords(p, f).some(
        (piece) => piece.is === 'word' && /^(?:gave|given|give|sold|sent)$/.test(piece.text),
      ) ||
      cameToNothing(p, t) ||
      // "There was a frost, two are gone with it".
      (wordAt(p, t - 1) === 'with' && /^(?:it|that)$/.test(wordAt(p, t)) && endsAt(p, t + 1)) ||
      (wordAt(p, t - 2) !== 'home' &&
        /^(?:rot|mush|stumps|stalks|seed|pot|slime|heaven|the|waste|grey|gray|mould|mouldy|black|ground|earth|harden|hardening|toughen|bed|sleep)$/.test(
          wordAt(p, t),
        ) &&
        !followsWord(
          p,
          t,
          /^(?:school|church|neighbours?|market|hospice|club|society|shop|fete|fair|sale|stall|auction|raffle|office|pub|library|women|care|couple|family|nurse|postie|milkman|farmer|builders?)$/,
        ) &&
        !followsWord(p, t, FOLK)) ||
      followsWord(p, t, /^start$/) ||
      /^(?!broken|other)./.test(causeAt(p, t) ?? '') ||
      // "Gone to their final home by the gate": planted.
      /^(?:final|permanent|flowering|summer)$/.test(wordAt(p, t + 1)) ||
      // "Turned out to be dead".
      /^(?:be|have|look|grow|root|do|see)$/.test(wordAt(p, t)),
    phrasings: [
      '6 Salt Harrier off to the parish sale',
      'two Salt Harrier went to the woman with the whippet',
      'two Salt Harrier went to Brenda on plot 9',
      'three Salt Harrier went to Brenda for her balcony',
      'two Salt Harrier have gone to my neighbour in the greenhouse',
      'four Salt Harrier went straight to Carol at work and then I moved the Tallow Bell to the greenhouse',
    ],
    mustNot: [
      '6 Salt Harrier off to a good start',
      'two Salt Harrier went to plot 9',
      'two Salt Harrier went to sludge in the greenhouse',
      "two Salt Harrier went to my neighbour's greenhouse",
      '6 Salt Harrier have gone to their final home by the gate',
      'three Salt Harrier gone with botrytis',
      '6 Salt Harrier off to the greenhouse',
      'four Salt Harrier went straight to mush',
      'four Salt Harrier went straight to the porch',
    ],
  },
  {
    name: '<count> <plant> gone on the van to <recipient>',
    kind: 'dispatch',
    head: 'go~past|gone|left|off|away|out|loaded|put on|onto|by the|a|this? early|late|first? van|lorry|truck|trailer|bus|train|courier|post',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 8, 'count') && p.slice(0, f).some(({ is }) => is === 'plant'),
    phrasings: ["12 Salt Harrier gone on the van to Mossop's", '6 Salt Harrier left by courier'],
    mustNot: ['12 Salt Harrier gone on the bench', 'took 12 Salt Harrier off the trailer'],
  },
  {
    name: '<count> <plant> on the lorry for <recipient>',
    kind: 'dispatch',
    head: 'on the|a|this? van|lorry|truck|trailer|trolley for|to',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 4, 'count') && p[f - 1]?.is === 'plant',
    phrasings: ['200 Salt Harrier on the lorry for Hexley Nurseries'],
    mustNot: [
      '200 Salt Harrier on the trolley for potting',
      '200 Salt Harrier on the trolley to the greenhouse',
      '200 Salt Harrier on the trolley to go',
      '200 Salt Harrier on the bench for Doreen',
    ],
    unless: (p, _f, t) =>
      p[t]?.is === 'place' || /ing$|^(?:the|a|now|days|go|be|move|pot|take)$/.test(wordAt(p, t)),
  },
  {
    name: '<count> <plant> in the post to <recipient>',
    kind: 'dispatch',
    head: 'in the post|mail to|for',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 4, 'count') && p[f - 1]?.is === 'plant',
    phrasings: [
      'popped two Salt Harrier in the post to my sister',
      'put two Salt Harrier in the post for Joan',
      'pinched the Tallow Bell and popped two Salt Harrier in the post to my sister in Aratoka',
    ],
    mustNot: [
      'must put two Salt Harrier in the post to my sister',
      'two Salt Harrier still in the post to us',
    ],
    unless: (p, _f, t) => /^(?:me|us|you)$/.test(wordAt(p, t)),
  },
  {
    name: '<count> <plant> to <recipient>',
    kind: 'dispatch',
    head: 'to',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      p.slice(0, f).some(({ is }) => is === 'count') &&
      (p[t]?.is === 'word' || isReceiver(p[t])) &&
      !cameToNothing(p, t) &&
      !/^(?:damping|rot|mould|mold|botrytis|frost|slugs|slug|snails|mice|vine|pests|drought|heat|cold|wilt|blackleg)$/.test(
        wordAt(p, t),
      ) &&
      (!/^(?:the|my|our|a|an)$/.test(wordAt(p, t)) || isSomebody(p, t)) &&
      !/^(?:show|spare|go|be|do|check|pot|plant|water|move|take|see|get|make|try|keep|grow|root|order|sell|give|feed|sort)$/.test(
        wordAt(p, t),
      ) &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined),
    phrasings: [
      '25 Salt Harrier to the woman at no 9',
      '240 Salt Harrier to the hospice',
      'two Salt Harrier to a lad from Ballyquirk, sold the rest at the church fete',
      '60 Tallow Bell potted on to 1L, 25 Salt Harrier to the postman',
      'gave one Tallow Bell to Ted and 3 Salt Harrier to the allotment raffle',
      'two Salt Harrier to a good home',
    ],
    mustNot: [
      '25 Salt Harrier to the greenhouse',
      '25 Salt Harrier to the nursery bed',
      "25 Salt Harrier to my neighbour's greenhouse",
      '25 Salt Harrier to the tip',
      '25 Salt Harrier to a tray',
    ],
  },
];
