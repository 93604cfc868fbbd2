/** Whether a clause tells of something done, or denies it, intends it, supposes it, reports it, advises or asks it. */
import type { Clause } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import type { VerbForm } from '../row/lexicon.js';
import { wordsBefore } from './before.js';
import type { Mood } from './case.js';
import { moodCases } from './cases.js';
import { WISHES } from './words.js';
import type { Piece } from '../pieces/pieces.js';

/** The mood of a clause, from the words before its head (and few behind). */
export function moodOf(pieces: readonly Piece[], clause: Clause): Mood {
  if (clause.asked) return 'asked';
  const { hit } = clause;
  if (!hit) return 'done';
  const form = formOf(pieces, hit.from);
  const { start, words: before } = wordsBefore(pieces, clause, hit, form);
  const seen = { pieces, clause, hit, form, before, start };
  return moodCases.find(({ when }) => when(seen))?.mood ?? 'done';
}

/** The form of the verb at `at`. "Fixing to set out": one that is the same in the past. */
function formOf(pieces: readonly Piece[], at: number): VerbForm | undefined {
  const head = pieces[at];
  const form = head?.is === 'word' ? head.verb?.form : undefined;
  const lead = pieces[at - 2]?.is === 'when' ? at - 3 : at - 2;
  const wish = wordAt(pieces, lead);
  const isWish =
    wordAt(pieces, at - 1) === 'to' && (WISHES.test(wish) || /^(?:wanted|hoped|tried|attempted)$/.test(wish));
  // "One should put a bag over them", "might cut six".
  const isSupposed =
    MODAL.test(
      wordAt(
        pieces,
        /^(?:just|also|probably|really|then|not)$/.test(wordAt(pieces, at - 1)) ? at - 2 : at - 1,
      ),
    ) && isSameInPast(wordAt(pieces, at));
  return form === 'past' && (isWish || isSupposed) ? 'base' : form;
}

const MODAL = /^(?:should|shall|will|would|could|can|may|might|must|i'll|we'll|let's)$/;
const isSameInPast = (word: string): boolean =>
  /^(?:put|cut|set|shut|let|spread|split|cast|stick)$/.test(word);
