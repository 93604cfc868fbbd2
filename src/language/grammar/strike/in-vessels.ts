/** Cuttings told by where in a vessel they stand: "went round the rim of a pot", "a jar of water with five stems in it". */
import { precedes, type Rule, wordAt } from '../rule.js';
import { isRound } from './round-the-edge.js';

const ROOTED = /^(?:rooted|rooting|roots)$/;
/** What nothing but cuttings stands in. */
const TO_ROOT_IN = /\b(?:perlite|vermiculite|sand|water|oasis|sphagnum|pumice)\b/;

export const inVessels: readonly Rule[] = [
  {
    name: '<count> <plant> firmed into <medium>',
    kind: 'strike',
    head: 'firmed|pushed|poked|pressed|tucked|shoved|bunged|popped|slotted|stuck|laid|lined|settled|nestled|bedded|planted|put|placed|stood down|out|up|flat? in|into|on|onto a|the|some? <pots>? of|with? <medium>',
    shape: 'subject',
    when: (p, f, t) => {
      const medium = p[t - 1];
      return (
        medium?.is === 'medium' &&
        TO_ROOT_IN.test(medium.medium) &&
        p[f - 1]?.is === 'plant' &&
        precedes(p, f, 4, 'count') &&
        // "Four Salt Harrier pots stood in the sand bed".
        !/^(?:bed|beds|tray|pit|bath|bench)$/.test(wordAt(p, t)) &&
        !/^(?:water|stood)/.test(`${medium.medium} ${wordAt(p, f)}`) &&
        !p.some((piece) => piece.is === 'word' && ROOTED.test(piece.text))
      );
    },
    phrasings: [
      '4 Salt Harrier firmed into sharp sand',
      'leaves trimmed, 2 of the Salt Harrier pushed into perlite',
    ],
    mustNot: ['4 Salt Harrier tucked in the sand bed', '4 Salt Harrier firmed into the border'],
  },
  {
    name: '<count> cuttings of <plant> planted in <medium>',
    kind: 'strike',
    head: 'planted|potted|placed|set up? in|into',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 8, 'plant') &&
      precedes(p, f, 8, 'count') &&
      p.slice(0, f).some((_, at) => /^(?:cuttings?|slips?)$/.test(wordAt(p, at))) &&
      p.slice(t).some((piece) => piece.is === 'medium' && TO_ROOT_IN.test(piece.medium)) &&
      !p.some((piece) => piece.is === 'word' && ROOTED.test(piece.text)),
    phrasings: [
      'Salt Harrier cuttings x5 potted into vermiculite',
      'twelve cuttings from Salt Harrier planted in small pots with perlite',
    ],
    mustNot: ['twelve rooted cuttings of Salt Harrier potted into perlite'],
  },
  {
    name: '<count> shoots of <plant> went round the edge of <pots>',
    kind: 'strike',
    head: 'go~past|put~past|got|stuck|struck|inserted|dibbed|dibbled|popped|tucked|pushed|poked|set|set~past in?',
    shape: 'subject',
    when: (p, f, t) => isRound(p, t) && precedes(p, f, 8, 'plant') && precedes(p, f, 8, 'count'),
    phrasings: ['eight shoots of Salt Harrier went round the rim of a clay pot'],
    mustNot: ['eight Salt Harrier went round the edge of the pond'],
  },
  {
    name: '<pots> with <count> <plant> in it',
    kind: 'strike',
    head: 'with|holding|containing <count> .. in it|them|each',
    shape: 'object',
    faint: true,
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant') &&
      p.slice(0, f).some(({ is }) => is === 'pots') &&
      p.slice(0, f).some(({ is }) => is === 'medium') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined) &&
      !p
        .slice(f, t)
        .some((piece) => piece.is === 'word' && /^(?:flowers?|blooms?|roses?|rooted)$/.test(piece.text)),
    phrasings: ['a jam jar of water on the windowsill with five Salt Harrier stems in it as of today'],
    mustNot: ['a jar of water with five Salt Harrier flowers in it'],
  },
];
