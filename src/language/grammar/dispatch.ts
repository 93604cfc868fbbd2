/** Plants that leave the collection. */
import type { Piece } from '../pieces.js';
import { leavesWith } from './taken-away.js';
import { closeBehind, follows, followsWord, precedes, type Rule, wordAt } from './rule.js';

const NOT_GIVEN =
  /^(?:drink|water|soak|feed|mist|spray|chance|watering|miss|air|shade|pot|pots|trim|haircut|check|look|shake|tug|dose|once|good|wide|up|rest|time|shot|go)$/;
const TOWARDS = /^(?:to|on|for)$/;

/** "Mr Abbery has kindly sent four rooted …": what somebody else sent comes in. */
export function sentByOthers(pieces: readonly Piece[], from: number, to: number): boolean {
  if (wordAt(pieces, from) !== 'sent' || followsWord(pieces, to, /^(?:to|off|out)$/)) return false;
  let at = from - 1;
  while (/^(?:has|have|had|kindly|very|just|also|now|already|again|then|by|post)$/.test(wordAt(pieces, at)))
    at--;
  const who = wordAt(pieces, at);
  return (
    who !== '' && !/^(?:i|we|i've|we've|and|then|been|were|was|are|is|be|got|they|all|that|it)$/.test(who)
  );
}

/** "Doreen's", who has done something; no "that's". */
export function isSomeones(word: string): boolean {
  return (
    /.'s$/.test(word) && !/^(?:it|that|this|there|what|here|who|where|how|when|let|she|he)'s$/.test(word)
  );
}

/** Places that are people: what goes there leaves the collection. */
const RECEIVING = /\b(?:community|school|church|hospice|society|care home|food bank|village hall) ?/;

export function isReceiver(piece: Piece | undefined): boolean {
  return piece?.is === 'place' && RECEIVING.test(piece.place);
}

/** "Sal came for hers and took two more": somebody else's taking. */
export function cameAndTook(pieces: readonly Piece[], from: number): boolean {
  const came = pieces.findIndex(
    (piece, at) => at < from && piece.is === 'word' && /^(?:came|called|stopped|popped)$/.test(piece.text),
  );
  return (
    came > 0 &&
    !pieces.slice(0, from).some((piece) => piece.is === 'word' && /^(?:i|we|i've|we've)$/.test(piece.text))
  );
}

export const dispatchRules: readonly Rule[] = [
  {
    name: 'gave <count> <plant> to <recipient>',
    kind: 'dispatch',
    head: 'give~past|hand~past|pass~past|donate~past|gift~past|present~past|offload~past|rehome~past|slip~past away|on|over?',
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      follows(p, t, 'plant', 'count') ||
      (precedes(p, f, 6, 'plant', 'count') && followsWord(p, t, /^(?:to|away)$/)),
    unless: (p, f, t) =>
      /^(?:up|in)$/.test(wordAt(p, t)) ||
      /^(?:stools?|tubers?|crowns?|plants?|stock)$/.test(wordAt(p, f - 1)) ||
      // "Gave seven of them a pot each".
      (follows(p, t, 'pots') && !followsWord(p, t, TOWARDS) && followsWord(p, t, /^each$/)) ||
      (followsWord(p, t, NOT_GIVEN) && !followsWord(p, t, TOWARDS)) ||
      /^(?:me|us)$/.test(wordAt(p, t)) ||
      (/^(?:passed|slipped)$/.test(wordAt(p, f)) && !followsWord(p, t, TOWARDS)),
  },
  {
    name: 'sold <count> <plant>',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'sell~past|flog~past',
    shape: 'object',
    how: 'sold',
    unless: (p, _f, t) => /^(?:me|us|out)$/.test(wordAt(p, t)),
  },
  {
    name: 'swapped <count> <plant> with <recipient>',
    kind: 'dispatch',
    head: 'swap~past|trade~past|exchange~past',
    shape: 'object',
    how: 'swapped',
    unless: (p, _f, t) =>
      (/^(?:to|places|the)$/.test(wordAt(p, t)) && !follows(p, t, 'plant', 'count')) ||
      wordAt(p, t) === 'for',
  },
  {
    name: 'did a swap with <recipient>',
    phrasings: ['did a swap with Doreen, two Salt Harrier for a fern'],
    kind: 'dispatch',
    head: 'do~past|have~past a? swap|trade',
    shape: 'object',
    how: 'swapped',
    when: (p, _f, t) => p.slice(t).some(({ is }) => is === 'plant'),
  },
  {
    name: 'swap with <recipient>: <count> <plant>',
    kind: 'dispatch',
    head: 'swap|trade with',
    shape: 'object',
    how: 'swapped',
    when: (p, f, t) =>
      f === 0 && p.slice(t).some(({ is }) => is === 'count') && p.slice(t).some(({ is }) => is === 'plant'),
    phrasings: ['swap with Ken: 3 Salt Harrier for 2 of his asters'],
  },
  {
    name: 'dispatched <count> <plant> to <recipient>',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'dispatch~past|ship~past|send~past|post~past|deliver~past|mail~past off|out|over?',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant', 'count') || precedes(p, f, 6, 'plant', 'count'),
    unless: sentByOthers,
  },
  {
    name: 'dispatch: <count> <plant>, <recipient>',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'dispatch|dispatches|despatch note?',
    shape: 'object',
    when: (p, f, t) =>
      f === 0 && p.slice(t).some(({ is }) => is === 'plant') && p.slice(t).some(({ is }) => is === 'count'),
  },
  {
    name: '<count> <plant> went to <recipient>',
    kind: 'dispatch',
    head: 'go~past|gone|off|away|out home? to|with',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 8, 'plant', 'count'),
    unless: (p, f, t) =>
      (follows(p, t, 'place') && !p.slice(t, t + 2).some(isReceiver)) ||
      // "All out to sand bed".
      (follows(p, t, 'medium') && !followsWord(p, t, /^(?:the|her|his)$/)) ||
      p
        .slice(Math.max(0, f - 4), f)
        .some((piece) => piece.is === 'word' && /^(?:gave|given|give|sold|sent)$/.test(piece.text)) ||
      (/^(?:rot|mush|seed|pot|slime|heaven|the|waste|grey|gray|mould|mouldy|nothing|black|ground|earth)$/.test(
        wordAt(p, t),
      ) &&
        !followsWord(
          p,
          t,
          /^(?:vicar|school|church|neighbours?|lady|man|market|hospice|club|society|shop|fete|fair|sale|stall|auction|raffle|office|pub|library|girls|lads|ladies|women|care|children)$/,
        )) ||
      followsWord(p, t, /^start$/),
    phrasings: ['6 Salt Harrier off to the parish sale'],
    mustNot: ['6 Salt Harrier off to a good start', '6 Salt Harrier off to the greenhouse'],
  },
  {
    name: 'took <count> <plant> to <recipient>',
    kind: 'dispatch',
    head: 'take~past',
    shape: 'object',
    when: (p, _f, t) => leavesWith(p, t) && p.slice(t).some(({ is }) => is === 'count'),
    phrasings: ['took 3 Salt Harrier to Doreen'],
    mustNot: ['took 3 Salt Harrier to the greenhouse', 'took 3 cuttings of Salt Harrier to root'],
  },
  {
    name: '<recipient> took <count> <plant> home',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'take~past|have~past|collect~past|buy~past|carry~past .. home|away',
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant' || is === 'count') &&
      f > 0 &&
      !/^(?:i|we|and|then|also)$/.test(wordAt(p, f - 1)),
  },
  {
    name: '<recipient> had <count> <plant> off me',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'take~past|have~past|collect~past|buy~past|get~past .. off|from me|us',
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant' || is === 'count') &&
      f > 0 &&
      !/^(?:i|we)$/.test(wordAt(p, f - 1)),
  },
  {
    name: 'dropped <count> <plant> round to <recipient>',
    kind: 'dispatch',
    head: 'drop~past|take~past|ran|carry~past|walked|bring~past .. round|over|off|across|up|down to',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant' || is === 'count') &&
      p[t]?.is === 'word' &&
      !/^(?:the|my|our|a|one)$/.test(wordAt(p, t)) &&
      !/^(?:root|be|get|grow|dry|harden)$/.test(wordAt(p, t)),
    phrasings: ['dropped three of the Salt Harrier round to Sheila at number nine'],
    mustNot: ['took three of the Salt Harrier over to the greenhouse'],
  },
  {
    name: '<recipient> came for their <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'come~past|called for her|his|their <count>',
    shape: 'object',
    when: (p, f, t) => f > 0 && !/^(?:i|we)$/.test(wordAt(p, f - 1)) && closeBehind(p, t, 'plant'),
    phrasings: ['Sal came for her 4 Salt Harrier'],
  },
  {
    name: '<recipient> came and took <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'take~past',
    shape: 'object',
    when: (p, f, t) => cameAndTook(p, f) && p[t]?.is === 'count' && closeBehind(p, t, 'plant'),
    unless: (p, _f, t) => followsWord(p, t, /^(?:cuttings?|tips?|slips?)$/),
    phrasings: ['Sal came for her 4 Salt Harrier and took 2 Tallow Bell as well'],
    mustNot: ['came home and took 4 Salt Harrier', 'I came in and took 4 Salt Harrier'],
  },
  {
    name: '<recipient> has taken <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'taken|had|nabbed|scrounged',
    shape: 'object',
    when: (p, f, t) => isSomeones(wordAt(p, f - 1)) && p[t]?.is === 'count' && closeBehind(p, t, 'plant'),
    unless: (p, _f, t) => followsWord(p, t, /^(?:cuttings?|tips?|slips?)$/),
    phrasings: ["Doreen's taken two Salt Harrier"],
    mustNot: ["that's taken two Salt Harrier"],
  },
  {
    name: '<recipient> had <count> <plant> for their own',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'have~past|take~past',
    shape: 'object',
    when: (p, f, t) =>
      f > 0 &&
      p[f - 1]?.is === 'word' &&
      !/^(?:i|we|i've|we've|have|had|has|then|and|also|just|it|that|they|you)$/.test(wordAt(p, f - 1)) &&
      p[t]?.is === 'count' &&
      closeBehind(p, t, 'plant') &&
      followsWord(p, t, /^(?:their|her|his)$/),
    phrasings: [
      'the school had 5 Salt Harrier for their raised bed',
      'Doreen took two of the Salt Harrier for her mother',
    ],
  },
  {
    name: '<recipient> went off with <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'go~past|make~past|leave~past|walked|drove|skipped off|away|home? with',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'count') &&
      closeBehind(p, t, 'plant') &&
      f > 0 &&
      !/^(?:i|we|it|they)$/.test(wordAt(p, f - 1)) &&
      !p.slice(t).some((piece) => piece.is === 'word' && /^(?:gave|sold)$/.test(piece.text)),
    phrasings: ['Doreen went home with three of the Salt Harrier'],
    mustNot: ['went home with a cold', 'Doreen came round with six Salt Harrier'],
  },
  {
    name: '<recipient> collected <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'collect~past',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'plant') &&
      f > 0 &&
      p[f - 1]?.is === 'word' &&
      !/^(?:i|we|and|then|just|have|also|i've|we've)$/.test(wordAt(p, f - 1)),
  },
  {
    name: 'let <recipient> have <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient within',
    head: 'let~ .. have|take',
    shape: 'object',
    how: 'given',
    when: (p, f, t) => follows(p, t, 'plant', 'count') && !/^(?:me|us)$/.test(wordAt(p, f + 1)),
  },
  {
    name: 'pressed <count> <plant> on <recipient>',
    kind: 'dispatch',
    head: 'press~past|palm~past|foist~past|force~past|thrust~past',
    shape: 'object',
    how: 'given',
    when: (p, _f, t) => follows(p, t, 'plant', 'count') && followsWord(p, t, /^(?:on|onto|upon|off)$/),
  },
  {
    name: '<recipient> got <count> <plant> from me',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'get~past|become|became|have~past .. from me|us',
    shape: 'object',
    how: 'given',
    when: (p, f, t) => p.slice(f).some(({ is }) => is === 'plant') && t > f,
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
      p[t]?.is === 'word' &&
      !/^(?:damping|rot|mould|mold|botrytis|frost|slugs|slug|snails|mice|vine|pests|drought|heat|cold|wilt|blackleg)$/.test(
        wordAt(p, t),
      ) &&
      !/^(?:the|my|a|go|be|do|check|pot|plant|water|move|take|see|get|make|try|keep|grow|root)$/.test(
        wordAt(p, t),
      ) &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined),
  },
];
