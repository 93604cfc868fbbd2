/** A plan beside a deed: one that it took the place of ("was going to mist the propagator, but I watered the greenhouse instead"), or that comes after it ("… before they go in the garden"). */
import { findHits } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import type { Piece } from '../pieces/pieces.js';
import { plantsIn } from '../sentences/sentences.js';

const LEADS = /^(?:i|we|i'd|we'd|i'm|was|were|had|been|just|only|all|really|well|originally|meaning)$/;
const PLANNED = /^(?:going|about|set|ready|planning|hoping|intending|fixing|supposed)$/;
const MEANT = /^(?:meant|planned|intended|wanted|hoped|meaning)$/;
const THEM = /^(?:it|them|they|those|these|some|one|ones|lot|rest|others)$/;

/** The row from the deed on, where that names its own plant or place; as it was where it leans on the plan. */
export function withoutPlanBefore(pieces: readonly Piece[]): readonly Piece[] {
  const plan = planEnd(pieces);
  if (plan === 0) return pieces;
  const joint = pieces.findIndex((_, at) => at > plan && turnsAt(pieces, at));
  if (joint < 0) return pieces;
  const deed = pieces.slice(joint + 1);
  if (!findHits(rules, deed).some(({ rule }) => rule.faint !== true)) return pieces;
  if (plantsIn(deed).length > 0) return deed;
  if (!deed.some(({ is }) => is === 'place')) return pieces;
  const [planned, another] = plantsIn(pieces.slice(plan, joint));
  const leans = deed.some((_, at) => THEM.test(wordAt(deed, at)));
  if (!leans) return deed;
  return planned && !another ? [planned, ...deed] : pieces;
}

/** Past the "to" of a plan that lies behind, else 0. */
function planEnd(pieces: readonly Piece[]): number {
  let at = 0;
  while (LEADS.test(wordAt(pieces, at)) || (pieces[at]?.is === 'count' && wordAt(pieces, at + 1) === 'set'))
    at++;
  const isPast =
    MEANT.test(wordAt(pieces, at)) ||
    (PLANNED.test(wordAt(pieces, at)) &&
      pieces.slice(0, at).some((_, n) => /^(?:was|were)$/.test(wordAt(pieces, n))));
  const verb = pieces[at + 2];
  return isPast && wordAt(pieces, at + 1) === 'to' && verb?.is === 'word' && verb.verb?.form === 'base'
    ? at + 2
    : 0;
}

/** "… but", "… so I". */
const turnsAt = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'but' || (wordAt(pieces, at) === 'so' && /^(?:i|we)$/.test(wordAt(pieces, at + 1)));

const GROWERS_NEXT = /^(?:plant|pot|go|move|put|sell|harden|bed|line)$/;

/** "Put them in the porch to get used to the cold before they go in the garden", "… before planting out": the row up to what only comes next. */
export function withoutWhatComesNext(pieces: readonly Piece[]): readonly Piece[] {
  const at = pieces.findIndex((_, n) => wordAt(pieces, n) === 'before');
  const isPast = (piece: Piece): boolean => piece.is === 'word' && piece.verb?.form === 'past';
  if (at < 3 || !pieces.slice(0, at).some(isPast) || wordAt(pieces, at - 1) === 'the') return pieces;
  const rest = pieces.slice(at + 1);
  const subject = /^(?:they|these|those|it)$/.test(wordAt(rest, 0));
  const verb = rest[subject ? 1 : 0];
  const isNext =
    verb?.is === 'word' &&
    verb.verb?.form === (subject ? 'base' : 'ing') &&
    GROWERS_NEXT.test(verb.verb.lemma) &&
    // "Before potting on four": done as well, as like as not.
    !rest.some(
      (piece) => isPast(piece) || piece.is === 'count' || piece.is === 'plant' || piece.is === 'break',
    ) &&
    (subject || !rest.some(({ is }) => is === 'size' || is === 'place'));
  return isNext ? pieces.slice(0, at) : pieces;
}
