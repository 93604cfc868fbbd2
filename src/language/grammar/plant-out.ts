/** Planted in final quarters, and plants that leave the collection. */
import type { Piece } from '../pieces.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from './rule.js';

const GARDEN =
  /^(?:bed|beds|border|borders|ground|garden|flowerbed|flowerbeds|rockery|urn|urns|planter|planters|tubs|tub|trough|troughs|container|containers|basket|baskets|windowbox|windowboxes|patch|plot|allotment|verge|bank|lawn|soil|rows|row|hedge|orchard|basket|baskets|boxes|box|avenue|sundial|flowerpots)$/;
const garden = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  followsWord(pieces, to, GARDEN) ||
  pieces
    .slice(to, to + 5)
    .some((piece) => piece.is === 'place' && piece.place.split(' ').some((word) => GARDEN.test(word)));

/** "In the ground", as a word or as a place. */
const groundAt = (pieces: readonly Piece[], at: number): boolean => {
  const piece = pieces[at];
  return wordAt(pieces, at) === 'ground' || (piece?.is === 'place' && /^(?:open )?ground$/.test(piece.place));
};

/** Words of a sentence that is no planting ("leggy in the border"). */
const OTHERWISE =
  /^(?:leggy|yellow|cuttings|cutting|looking|flowering|dead|aphids|buds|slugs|want|need|how|where|when|what|happy|still|for)$/;

export const plantOutRules: readonly Rule[] = [
  {
    name: '<plant> out for hardening',
    kind: 'hardenOff',
    head: 'out|outside|gone|moved for|to hardening|acclimatising|harden off?',
    shape: 'subject',
    when: (p, f) => p.slice(0, f).some(({ is }) => is === 'plant'),
    phrasings: ['TB1 out for hardening'],
  },
  {
    name: 'dug in <count> <plant>',
    kind: 'plantOut',
    head: 'dig~past in',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant', 'count'),
  },
  {
    name: 'in they went, <plant>',
    phrasings: ['in they went, Salt Harrier, along the path'],
    kind: 'plantOut',
    head: 'in they|we went|go',
    shape: 'object',
    when: (p, f, t) =>
      f === 0 &&
      p.slice(t).some(({ is }) => is === 'plant') &&
      (garden(p, f, t) ||
        followsWord(p, 0, /^(?:along|beside|round|by)$/) ||
        p.slice(t).some((piece) => piece.is === 'word' && /^(?:along|beside|round|path)$/.test(piece.text))),
  },
  {
    name: 'planted <count> <plant> out',
    kind: 'plantOut',
    head: 'plant~past .. out|up',
    shape: 'object',
    unless: (p, f, t) =>
      p.slice(f, t).some((piece) => piece.is === 'word' && /^(?:and|then|in|into)$/.test(piece.text)),
  },
  { name: 'planted out <count> <plant>', kind: 'plantOut', head: 'plant~ out', shape: 'object' },
  {
    name: 'planted <plant> in <place>',
    kind: 'plantOut',
    head: 'plant~past',
    shape: 'object',
    unless: (p, _f, t) => follows(p, t, 'size') || followsWord(p, t, /^(?:tubers?|seeds?|bulbs?)$/),
  },
  { name: 'bedded out <count> <plant>', kind: 'plantOut', head: 'bed~past out|in?', shape: 'object' },
  {
    name: 'set out <count> <plant>',
    kind: 'plantOut',
    head: 'set~past|put~ out',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant', 'count') &&
      (garden(p, f, t) || wordAt(p, f) === 'set') &&
      !followsWord(p, t, /^(?:cuttings|cutting|trays|pots|labels|tools)$/),
  },
  {
    name: 'put <plant> in along <place>',
    kind: 'plantOut',
    head: 'put~|pop~past|stick~past|bung~past|shove~past|plonk~past|get~past|dig~past|tuck~past|go~past|gone|be~ .. in|out along|beside|round|around|behind|alongside|by',
    shape: 'object',
    when: (p, f, t) =>
      (p.slice(f, t).some(({ is }) => is === 'plant') || p.slice(0, f).some(({ is }) => is === 'plant')) &&
      !p.some(
        (piece) => piece.is === 'word' && /^(?:cuttings|cutting|still|pots|trays|if|want)$/.test(piece.text),
      ) &&
      (p[t]?.is === 'place' || /^(?:the|my|our)$/.test(wordAt(p, t))),
    phrasings: [
      'bunged all the Salt Harrier in along the back fence',
      'the Tallow Bell are all in along the avenue now',
    ],
  },
  {
    name: 'put <plant> in the bed',
    kind: 'plantOut',
    head: 'put~|pop~past|stick~past|set~past|place~past|bung~past|dig~past|plonk~past|get~past|move~past|transplant~past|bring~past|tuck~past|shove~past|go~past|shift~past in|out|into?',
    shape: 'object',
    when: (p, f, t) =>
      (follows(p, t, 'plant', 'count') || followsWord(p, t, /^(?:them|em|those)$/)) &&
      garden(p, f, t) &&
      followsWord(p, t, /^(?:in|into|out|along|round|by|to)$/),
    unless: (p, _f, t) =>
      followsWord(p, t, /^(?:cuttings|cutting|fleece|cover)$/) || follows(p, t, 'cutting'),
  },
  {
    name: '<plant> went in the bed',
    kind: 'plantOut',
    head: 'go~past|gone|get~past|be~ in|into|out',
    shape: 'subject',
    when: (p, f, t) =>
      (precedes(p, f, 8, 'plant', 'count') || precedes(p, f, 3, 'word')) &&
      garden(p, f, t) &&
      (p.slice(0, f).some(({ is }) => is === 'plant') || /^(?:they|them|all)$/.test(wordAt(p, f - 1))),
    unless: (p) => p.some((piece) => piece.is === 'word' && /^(?:cuttings|cutting)$/.test(piece.text)),
  },
  {
    name: '<plant> in the ground',
    kind: 'plantOut',
    head: 'in|into the ground|<place>',
    shape: 'subject',
    when: (p, f, t) => p.slice(0, f).some(({ is }) => is === 'plant') && groundAt(p, t - 1),
  },
  {
    name: '<plant> in their final home',
    kind: 'plantOut',
    head: 'final|permanent|forever|flowering home|homes|place|places|position|positions|quarters|spot|spots',
    shape: 'subject',
    when: (p, f) => p.slice(0, f).some(({ is }) => is === 'plant'),
  },
  {
    name: '<plant> in the bed',
    kind: 'plantOut',
    head: 'in|along|into|round|by|down|out',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      garden(p, f, t) &&
      !p.some((piece) => piece.is === 'word' && (piece.verb !== undefined || OTHERWISE.test(piece.text))),
  },
  {
    name: 'the last of <plant> went out',
    phrasings: ['the last of the Salt Harrier went out to the border'],
    kind: 'plantOut',
    head: 'go~past out',
    shape: 'subject',
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      (garden(p, f, t) || followsWord(p, t, /^(?:beside|along|by|round)$/)),
  },
  {
    name: '<plant> out, <place>',
    phrasings: ['Salt Harrier out, front border'],
    kind: 'plantOut',
    head: 'out',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      p[f - 1]?.is === 'plant' &&
      endsAt(p, t) &&
      p
        .slice(t)
        .some(
          (piece) =>
            piece.is === 'place' || (piece.is === 'word' && GARDEN.test(piece.text)) || piece.is === 'count',
        ) &&
      garden(p, f, t + 1),
  },
];

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
      (followsWord(p, t, NOT_GIVEN) && !followsWord(p, t, TOWARDS)) ||
      /^(?:me|us)$/.test(wordAt(p, t)) ||
      (/^(?:passed|slipped)$/.test(wordAt(p, f)) && !followsWord(p, t, TOWARDS)),
  },
  {
    name: 'sold <count> <plant>',
    kind: 'dispatch',
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
    name: 'dispatched <count> <plant> to <recipient>',
    kind: 'dispatch',
    head: 'dispatch~past|ship~past|send~past|post~past|deliver~past|mail~past off|out|over?',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant', 'count') || precedes(p, f, 6, 'plant', 'count'),
    unless: sentByOthers,
  },
  {
    name: 'dispatch: <count> <plant>, <recipient>',
    kind: 'dispatch',
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
    unless: (p, _f, t) =>
      follows(p, t, 'place') ||
      (/^(?:rot|mush|seed|pot|slime|heaven|the|waste|grey|gray|mould|mouldy|nothing|black|ground|earth)$/.test(
        wordAt(p, t),
      ) &&
        !/^(?:vicar|school|church|neighbours?|lady|man|market|hospice|club|society|shop|fete|fair|office|pub|library|girls|lads|ladies|women|care|children)$/.test(
          wordAt(p, t + 1),
        )),
  },
  {
    name: '<recipient> took <count> <plant> home',
    kind: 'dispatch',
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
    head: 'take~past|have~past|collect~past|buy~past|get~past .. off|from me|us',
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant' || is === 'count') &&
      f > 0 &&
      !/^(?:i|we)$/.test(wordAt(p, f - 1)),
  },
  {
    name: '<recipient> collected <count> <plant>',
    kind: 'dispatch',
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
    head: 'let~ .. have|take',
    shape: 'object',
    how: 'given',
    when: (p, _f, t) => follows(p, t, 'plant', 'count'),
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
      !/^(?:the|my|a|go|be|do|check|pot|plant|water|move|take|see|get|make|try|keep|grow|root)$/.test(
        wordAt(p, t),
      ) &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined),
  },
];
