/** Shoots parted from a plant by hand and put in at once: "snapped off five and stuck them in perlite". */
import type { Piece } from '../../pieces/pieces.js';
import { CUTTINGS } from '../taken-away.js';
import { closeBehind, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { isWhole } from '../stand-ins.js';

/** "They're in a pot of grit now", "all in one pot": where cuttings stand to root. */
export function standIn(pieces: readonly Piece[], from: number): boolean {
  let at = from;
  while (/^(?:they|they're|are|all|now|which|both|already)$/.test(wordAt(pieces, at)) || isWhole(pieces[at]))
    at++;
  return /^(?:in|into|round|around)$/.test(wordAt(pieces, at)) && follows(pieces, at, 'pots', 'medium');
}

const STUCK =
  /^(?:poked|stuck|pushed|popped|tucked|inserted|struck|shoved|put|bunged|dibbed|dibbled|jammed|planted|stood|plonked|rammed|wedged|set|placed|bedded|sat|lined|firmed|heeled)$/;

const BY_ACCIDENT = /^(?:when|while|whilst|as|before|after|because|accident|accidentally)$/;

/** "… and stuck them in", "… and they're in perlite now": where what was parted stands to root. */
const isStuckIn = (pieces: readonly Piece[], from: number): boolean =>
  pieces.slice(from).some(
    (piece, n) =>
      piece.is === 'word' &&
      STUCK.test(piece.text) &&
      // "Snapped two off when I put them in the cold frame".
      !pieces.slice(from, from + n).some((_, at) => BY_ACCIDENT.test(wordAt(pieces, from + at))) &&
      (/^(?:in|into|round|around|them|em|these|those|it)$/.test(wordAt(pieces, from + n + 1)) ||
        // "Stuck all three in perlite".
        isWhole(pieces[from + n + 1])),
  ) ||
  pieces
    .slice(from)
    .some(
      (_, n) =>
        (wordAt(pieces, from + n) === 'and' || pieces[from + n]?.is === 'break') &&
        standIn(pieces, from + n + 1),
    );

/** Told by whoever keeps the ledger. */
const isOurs = (pieces: readonly Piece[], from: number): boolean =>
  from === 0 ||
  /^$|^(?:i|we|just|and|then|also|finally|so|i've|we've|have|had)$/.test(wordAt(pieces, from - 1));

const SHOOTS = /^(?:side-?shoots?|suckers?|growths?|lengths?|branch(?:es)?|twiglets?|heels?|ends?|tops?)$/;

/** How many shoots are told, or that there were some, from `from` up to `off`, and the plant they came off close behind. */
function isShootsOff(pieces: readonly Piece[], from: number, off: number): boolean {
  const told = pieces.slice(from, off);
  return (
    closeBehind(pieces, off, 'plant') &&
    told.some(
      (piece) =>
        piece.is === 'cutting' ||
        (piece.is === 'word' && (CUTTINGS.test(piece.text) || SHOOTS.test(piece.text))),
    ) &&
    told.every(
      (piece) =>
        piece.is === 'count' ||
        piece.is === 'cutting' ||
        (piece.is === 'word' && !SPOILT.test(piece.text) && piece.verb?.form !== 'past'),
    )
  );
}

const SPOILT =
  /^(?:dead|rotten|rotting|mouldy|brown|black|blackened|yellow|dying|diseased|leaves|leaf|flowers?|blooms?|buds?|weeds?|slugs?|snails?|fleece|lid)$/;

const THROWN = /^(?:bin|heap|bucket|caddy|skip|vase|bonfire|bed|border|ground|garden|his|her)$/;

export const pulledOff: readonly Rule[] = [
  {
    name: 'separated <count> pups off <plant>',
    kind: 'strike',
    head: 'separated|divide~past|detached|take~past|cut~past|pull~past|twisted|prised|got|get~past <count> pups|pup|offsets|offset|plantlets|plantlet|babies|baby|offshoots|runners .. off|from|of',
    shape: 'object',
    when: (p, f, t) =>
      isOurs(p, f) &&
      (closeBehind(p, t, 'plant') || /^(?:big|old|mother|main|parent)$/.test(wordAt(p, t + 1))) &&
      (wordAt(p, f) !== 'got' || wordAt(p, t - 1) === 'off') &&
      !followsWord(p, t, THROWN),
    phrasings: [
      'separated three pups off the big Salt Harrier and potted them up',
      'took two offsets from the Salt Harrier',
    ],
    mustNot: ['got three babies from the Salt Harrier man at the fair', 'took two pups off to the vet'],
  },
  {
    name: 'nipped off <count> bits of <plant> and shoved them in',
    kind: 'strike',
    head: 'nip~past|snip~past|pinch~past|cut~past|pull~past|break~past|snap~past|whip~past|tear~past off|out <count>',
    shape: 'object',
    when: (p, f, t) =>
      followsWord(p, t, CUTTINGS) &&
      closeBehind(p, t, 'plant') &&
      (f === 0 || /^$|^(?:i|we|just|and|then|also|finally)$/.test(wordAt(p, f - 1))) &&
      !followsWord(p, t, /^(?:bin|heap|bucket|caddy|skip|his|her)$/) &&
      isStuckIn(p, t),
    phrasings: [
      'nipped off six bits of Salt Harrier and shoved them in a pot of sand',
      'snapped off five shoots of Salt Harrier and stuck them in perlite',
      "nipped off five Salt Harrier shoots and they're in perlite now",
    ],
    mustNot: [
      'the dog nipped off two bits of Salt Harrier and put them in his bed',
      'nipped off five Salt Harrier shoots, the Tallow Bell are in perlite',
      'nipped off six shoots of Salt Harrier and put them in the compost bin',
      'nipped off six tips of Salt Harrier',
      'snapped off two dead bits of Salt Harrier and put the pots back',
    ],
  },
  {
    name: 'off <plant> I got <count>',
    kind: 'strike',
    head: 'off|from the? my? big|old|little? <plant> <plant>? i|we get~past|take~past|cut~past|manage~past <count>',
    shape: 'object',
    when: (p, f) => f === 0 || p[f - 1]?.is === 'break',
    phrasings: ['off the big Salt Harrier I got 9', 'from Salt Harrier we took 9 cuttings'],
    mustNot: ['off the Salt Harrier I got 9 greenfly'],
    unless: (p, _f, t) =>
      p[t]?.is === 'word' && !/^(?:cuttings?|and|tips?|shoots?|slips?|today|yesterday)$/.test(wordAt(p, t)),
  },
  {
    // A handful is asked about.
    name: 'pulled <count> shoots off <plant> and stuck them in',
    kind: 'strike',
    head: 'pull~past|tear~past|snap~past|break~past|nip~past|snip~past|pinch~past|whip~past|peel~past|strip~past|pick~past|tug~past|cut~past|take~past .. off|from',
    shape: 'object',
    when: (p, f, t) =>
      isOurs(p, f) &&
      isShootsOff(p, f + 1, t) &&
      isStuckIn(p, t) &&
      follows(p, t, 'plant') &&
      !followsWord(p, t, THROWN),
    phrasings: [
      'pulled a handful of shoots off Salt Harrier and stuck them in gritty compost in the cold frame',
      'broke four side shoots off the Salt Harrier and stuck them in water',
      'pulled 5 bits off the Salt Harrier and put them in perlite',
      'pulled six heeled bits off the Salt Harrier and dibbed them in round a pot',
      'tore three heels off Salt Harrier, poked them into a pot of sand',
    ],
    mustNot: [
      'pulled a handful of shoots off Salt Harrier and put them in the compost bin',
      'pulled the dead leaves off Salt Harrier and put them in the cold frame',
      'the dog pulled two shoots off Salt Harrier and put them in his bed',
      'snapped two shoots off Salt Harrier when I put them in the cold frame',
      'pulled two rotten shoots off Salt Harrier and stuck the pots back in the shed',
    ],
  },
  {
    name: '<count> <plant>, all pulled with a heel',
    kind: 'strike',
    head: 'pull~past|tear~past|ripped|snap~past|peel~past|cut~past|strip~past off|away? <cutting>',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 8, 'count') &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb?.form === 'past') &&
      !followsWord(p, t, SPOILT),
    phrasings: [
      '10 Salt Harrier and 6 Tallow Bell, all pulled with a heel and stuck in the cold frame',
      'six Salt Harrier torn off with a heel',
    ],
    mustNot: ['six Salt Harrier pulled up and binned', 'six Salt Harrier snapped off nodal cuttings dead'],
  },
];
