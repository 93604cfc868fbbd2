/** Plants thrown out: "binned six", "four on the heap". */
import type { Piece } from '../../pieces/pieces.js';
import { causeAt } from './counted.js';
import { RUINED } from './ruined.js';
import { TIP } from './tip.js';
import {
  closeBehind,
  endsAt,
  follows,
  followsInAct,
  followsWord,
  precedes,
  type Rule,
  wordAt,
} from '../rule.js';

/** "Chucked them into the greenhouse", "threw six in with the lobelia": put there, not thrown away. */
function putSomewhere(pieces: readonly Piece[], from: number): boolean {
  if (
    pieces
      .slice(from)
      .some(
        (piece) =>
          piece.is === 'word' && (RUINED.test(piece.text) || /^(?:still|sitting|left)$/.test(piece.text)),
      )
  )
    return false;
  for (let at = from; at < pieces.length; at++) {
    const piece = pieces[at];
    if (!piece || piece.is === 'break') return false;
    // "Binned two and moved the others to the greenhouse": another deed.
    if (
      piece.is === 'word' &&
      piece.verb?.form === 'past' &&
      /^(?:and|then|but|i|we|i've|we've|have|also|just)$/.test(wordAt(pieces, at - 1))
    )
      return false;
    // "Chucked that and the rest went into the greenhouse".
    if (
      piece.is === 'count' &&
      piece.quantity.whole === 'rest' &&
      /^(?:went|go|got|gone|are|is|were|have|has|can|will|stayed|moved|now|all|i|we)$/.test(
        wordAt(pieces, at + 1),
      )
    )
      return false;
    if (piece.is === 'place' && /^(?:in|into|to|onto|on|under)$/.test(piece.prep ?? ''))
      return !TIP.test(piece.place);
    if (/^in$/.test(wordAt(pieces, at)) && /^with$/.test(wordAt(pieces, at + 1))) return true;
    // "Chucked 30 in a tray of coarse sand".
    if (/^(?:in|into)$/.test(wordAt(pieces, at)) && follows(pieces, at + 1, 'pots', 'medium')) return true;
  }
  return false;
}

/** "Has thrown its first buds", "threw up two flower spikes", "has thrown a pure white shoot": what a plant grows. */
function putForth(pieces: readonly Piece[], from: number, to: number): boolean {
  let at = to;
  // Of what was thrown by the plant itself, words for its colour may stand between.
  const ofPlant = /^(?:thrown|threw)$/.test(wordAt(pieces, from)) && plantHas(pieces, from);
  while (
    pieces[at]?.is === 'count' ||
    /^(?:up|out|its|their|a|an|one|the|some|first|new|lots|of|loads|few|side|big|long|lovely|early|more)$/.test(
      wordAt(pieces, at),
    ) ||
    (ofPlant && at < to + 4 && wordAt(pieces, at) !== '' && !GROWN.test(wordAt(pieces, at)))
  )
    at++;
  return GROWN.test(wordAt(pieces, at));
}

/** "Salt Harrier has just …": the plant did it. */
function plantHas(pieces: readonly Piece[], verb: number): boolean {
  let at = verb - 1;
  while (/^(?:has|have|had|just|also|now|suddenly|even|already)$/.test(wordAt(pieces, at))) at--;
  return pieces[at]?.is === 'plant' || /^(?:it|it's|one|which)$/.test(wordAt(pieces, at));
}

const GROWN =
  /^(?:buds?|flower(?:s|ing)?|shoots?|spikes?|blooms?|growth|suckers?|runners?|sports?|leaves|leaf|roots?|stems?|sideshoots?|seed|pups?|trusses|truss)$/;

/** "A bit of bonemeal", "some grit": stuff, and no plants. */
const isAdded = (pieces: readonly Piece[], at: number): boolean => {
  const some = pieces[at];
  return (
    /^(?:a|an|some|plenty|lots|extra)$/.test(wordAt(pieces, at)) ||
    (some?.is === 'count' && some.quantity.vague === true && pieces[at + 1]?.is === 'word')
  );
};

/** Plants that nothing will come of. */
const HOPELESS =
  /^(?:worst|weakest|duds?|dead|rotten|sickly|hopers?|no-hopers?|nohopers?|runts?|failures?|weaklings?|goners?|blind)$/;

/** "Two dead leaves": parts of a plant that lives. */
export const ofPartsOnly = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  followsWord(pieces, to, /^(?:leaf|leaves|flowers?|blooms?|heads?|buds?|stems?|pots?|trays?|canes?)$/);

export const thrownAway: readonly Rule[] = [
  {
    name: 'weeded out <count> <plant>',
    kind: 'loss',
    head: 'weeded|rogued|sorted|picked|cleared|take~past|pull~past out?',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'count') &&
      (wordAt(p, t - 1) === 'rogued' ||
        (wordAt(p, t - 1) === 'out' && (wordAt(p, t - 2) === 'rogued' || followsWord(p, t, HOPELESS)))),
    unless: ofPartsOnly,
    phrasings: [
      'weeded out the four worst Salt Harrier',
      'rogued out six Salt Harrier',
      'went through the Salt Harrier and cleared out three no-hopers',
      'took out four duds from the Salt Harrier',
    ],
    mustNot: ['took out four Salt Harrier', 'picked out the six best Salt Harrier'],
  },
  {
    name: 'got rid of <count> rotten <plant>',
    kind: 'loss',
    head: 'get~past|getting rid of <count>',
    shape: 'object',
    when: (p, _f, t) => RUINED.test(wordAt(p, t)) || RUINED.test(wordAt(p, t + 1)),
    unless: ofPartsOnly,
    phrasings: ['got rid of four blackened Salt Harrier'],
    mustNot: ['got rid of four spare Salt Harrier', 'got rid of two dead Salt Harrier leaves'],
  },
  {
    name: 'wrote off <count> <plant>',
    kind: 'loss',
    head: 'write|wrote|written|writing off',
    shape: 'object',
    when: (p, _f, t) => p[t]?.is === 'count' || (p[t]?.is === 'plant' && follows(p, t, 'count')),
    unless: (p, _f, t) => /^(?:hours?|days?|weeks?|minutes?)$/.test(wordAt(p, t + 1)),
    phrasings: ['wrote off 24 Salt Harrier'],
    mustNot: ['wrote off to Harrops about two Salt Harrier', 'wrote off two hours on the Salt Harrier'],
  },
  {
    name: '<count> <plant> never rooted, so out they went',
    kind: 'loss',
    head: 'out they|it went|go|came|come',
    shape: 'subject',
    when: (p, f, t) =>
      p
        .slice(0, f)
        .some((piece) => piece.is === 'plant' || (piece.is === 'word' && RUINED.test(piece.text))) &&
      p.slice(0, f).some(({ is }) => is === 'count') &&
      !/^(?:to|into|in|on|along|by)$/.test(wordAt(p, t)) &&
      // "Out they came with roots": tipped out to be looked at.
      (!/^com|^came/.test(wordAt(p, t - 1)) || p.slice(0, f).some((_, at) => causeAt(p, at) !== undefined)),
    phrasings: [
      'six of the Salt Harrier never rooted so out they went',
      'two were black at the base so out they went',
      'grey mould all over two of the Salt Harrier, so out they came',
    ],
    mustNot: [
      'six Salt Harrier hardened, out they went to the border',
      'lifted six Salt Harrier and out they came with lovely roots',
    ],
  },
  {
    name: '<count> no good',
    kind: 'loss',
    head: 'no good|use',
    shape: 'subject',
    when: (p, f) => p[f - 1]?.is === 'count' && followsWord(p, f + 3, /^(?:binned|chucked|out|dumped)$/),
    phrasings: ['Salt Harrier: 9 good, 3 no good, binned those'],
    mustNot: ['3 no good at labelling the Salt Harrier'],
  },
  {
    name: 'binned <count> <plant>',
    kind: 'loss',
    head: 'bin~past|pitch~past|chuck~past|throw~past|compost~past|toss~past|dump~past|scrap~past|discard~past|ditch~past|cull~past|destroy~past|turf~past|heave~past|biff~past|feck~past|hoy~past|yeet~past|trash~past out|away|off?',
    shape: 'object',
    unless: (p, f, t) =>
      // "It chucked it down, so I took six": it rained.
      (wordAt(p, t) === 'it' && wordAt(p, t + 1) === 'down') ||
      // "In pots of composted bark": of what sort.
      /^(?:of|in|into|with|some)$/.test(wordAt(p, f - 1)) ||
      followsInAct(p, t, /^(?:fleece|lid|cover|sheet|party|towel|over)$/) ||
      /^(?:label|labels)$/.test(wordAt(p, t + 1)) ||
      // "Chucked in a bit of bonemeal and planted out three": what was added.
      (wordAt(p, t) === 'in' && isAdded(p, t + 1)) ||
      putForth(p, f, t) ||
      putSomewhere(p, t),
    phrasings: [
      'chucked a dozen Salt Harrier on the heap',
      'binned the last two Salt Harrier still sitting in the propagator',
      'tossed 3 Salt Harrier that dried out in the greenhouse',
      'binned four Salt Harrier and brought the rest over to the bench',
      'chucked four Salt Harrier and carried the rest over to the bench',
    ],
    mustNot: [
      'chucked in some bonemeal and planted out 3 Salt Harrier',
      'chucked a dozen Salt Harrier into the greenhouse',
      'threw six Tallow Bell in with the lobelia',
      'it chucked it down so I took six Salt Harrier in the shed',
      'the Salt Harrier are in 1 litre pots of composted straw now, did the lot yesterday',
      'Salt Harrier has thrown its first buds',
      'Salt Harrier threw up two flower spikes',
      'Salt Harrier has thrown one pure white shoot',
      'the Salt Harrier has just thrown a very odd pink flower',
    ],
  },
  {
    name: '<count> for the heap',
    kind: 'loss',
    head: 'for the|my green|brown|compost? bin|heap|tip|skip|bonfire|dustbin|caddy',
    shape: 'subject',
    when: (p, f, t) =>
      (p[f - 1]?.is === 'plant' || p[f - 1]?.is === 'count') &&
      p.slice(0, f).some(({ is }) => is === 'count') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined) &&
      endsAt(p, t),
    phrasings: ['another two Salt Harrier for the compost heap', 'three Salt Harrier for the bin'],
    mustNot: [
      'keeping three Salt Harrier for the bin store',
      'planted three Salt Harrier for the tip of the bed',
    ],
  },
  {
    name: '<count> in the bin',
    kind: 'loss',
    head: 'went? in|on|to|into|onto|down the|my|our green|brown|garden|food? waste? bin|compost|heap|tip|skip|dustbin|bucket|caddy|bonfire|trash|rubbish|garbage|dumpster',
    shape: 'subject',
    // "In the bucket of sand", "in the green bin full of perlite": to root there; a plain bucket is no bin.
    unless: (p, f, t) =>
      followsWord(p, t, /^(?:of|full)$/) ||
      /^(?:next|close|further)$/.test(wordAt(p, f - 1)) ||
      (/^(?:bucket|caddy)$/.test(wordAt(p, t - 1)) && !/^(?:compost|waste|food)$/.test(wordAt(p, t - 2))),
    phrasings: [
      'five Salt Harrier in the bin',
      'two Salt Harrier have gone down the tip',
      'fired two of the Salt Harrier in the compost bucket',
      'tipped two Salt Harrier into the green bin',
      'seven Salt Harrier have roots, the other five went on the compost',
    ],
    mustNot: [
      'stood two Salt Harrier in the bucket',
      'stood two Salt Harrier next to the bin',
      'put six Salt Harrier cuttings in a bucket of compost',
    ],
    when: (p, f, t) =>
      (precedes(p, f, 8, 'count', 'plant') || precedes(p, f, 4, 'word')) &&
      !p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'word' &&
            /^(?:chucked|binned|threw|thrown|lost|tossed|chuck|dumped|dead|died|rotted)$/.test(piece.text),
        ) &&
      t > 0,
  },
];
