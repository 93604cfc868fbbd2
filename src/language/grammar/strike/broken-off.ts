/** Bits broken off a plant, which are cuttings by what was done with them: "nipped off six bits and shoved them in". */
import type { Piece } from '../../pieces.js';
import { closeBehind, follows, followsWord, type Rule, wordAt } from '../rule.js';
import { CUTTINGS } from '../taken-away.js';

/** "They're in a pot of grit now", "all in one pot": where cuttings stand to root. */
export function standIn(pieces: readonly Piece[], from: number): boolean {
  let at = from;
  while (/^(?:they|they're|are|all|now|which|both|already)$/.test(wordAt(pieces, at)) || isAll(pieces[at]))
    at++;
  return /^(?:in|into|round|around)$/.test(wordAt(pieces, at)) && follows(pieces, at, 'pots', 'medium');
}

const isAll = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' && piece.quantity.whole !== undefined;

/** "… and dibbed them in": what was done with them; no bin. */
const isPutIn = (pieces: readonly Piece[], from: number): boolean =>
  !followsWord(pieces, from, /^(?:bin|heap|bucket|caddy|skip)$/) &&
  pieces
    .slice(from)
    .some(
      (piece, n) =>
        piece.is === 'word' &&
        /^(?:poked|stuck|pushed|popped|tucked|inserted|struck|shoved|put|bunged|dibbed|dibbled|jammed|planted|firmed|potted)$/.test(
          piece.text,
        ) &&
        /^(?:in|into|round|around|them|em|these|those|it)$/.test(wordAt(pieces, from + n + 1)),
    );

export const brokenOff: readonly Rule[] = [
  {
    name: 'nipped off <count> bits of <plant> and shoved them in',
    kind: 'strike',
    head: 'nip~past|snip~past|pinch~past|cut~past|pull~past|break~past|snap~past|whip~past|tore off|out <count>',
    shape: 'object',
    when: (p, f, t) =>
      followsWord(p, t, CUTTINGS) &&
      closeBehind(p, t, 'plant') &&
      (f === 0 || /^$|^(?:i|we|just|and|then|also|finally)$/.test(wordAt(p, f - 1))) &&
      !followsWord(p, t, /^(?:his|her)$/) &&
      (isPutIn(p, t) || p.slice(t).some((_, n) => wordAt(p, t + n) === 'and' && standIn(p, t + n + 1))),
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
    name: 'pulled <count> bits off <plant> and dibbed them in',
    kind: 'strike',
    head: 'pull~past|tore|peel~past|break~past|snap~past|sliced|eased|strip~past <count> .. off|from',
    shape: 'object',
    when: (p, f, t) =>
      (p.slice(f, t).some(({ is }) => is === 'cutting') || followsWord(p, f, CUTTINGS)) &&
      closeBehind(p, t, 'plant') &&
      isPutIn(p, t),
    phrasings: ['pulled six heeled bits off the Salt Harrier and dibbed them in round a pot'],
    mustNot: [
      'pulled six mouldy bits off the Salt Harrier and put them in the bin',
      'pulled six bits off the Salt Harrier',
    ],
  },
];
