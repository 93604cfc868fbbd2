/** Where plants just told stand, in a sentence of its own: "In the snug.", "They're in the lean-to with the rest." */
import { wholeOf } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import { loosePlace } from '../acts/loose-places.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import type { Sentence } from './sentences.js';
import type { Utterance } from '../pieces/utterance.js';
import { asMeant } from '../row/spelling/without-slips.js';

/** "They're in the lean-to with the rest": the row without whom they stand with there. */
export function withoutCompany(pieces: readonly Piece[]): readonly Piece[] {
  const at = pieces.findIndex(
    (piece, n) => piece.is === 'place' && /^(?:with|beside|alongside)$/.test(wordAt(pieces, n + 1)),
  );
  if (at < 0) return pieces;
  const behind = pieces.slice(at + 2).filter(({ is }) => is !== 'break');
  const isAll = behind.every(
    (piece) =>
      (piece.is === 'count' && piece.quantity.whole !== undefined) ||
      (piece.is === 'word' && /^(?:the|my|all|of|other|others|ones|rest|lot|lots|them)$/.test(piece.text)),
  );
  return isAll && behind.length > 0 ? pieces.slice(0, at + 1) : pieces;
}

/** What "in the …" says of no place, in a sentence of its own. */
const NO_PLACE = whole`red|black|pink|middle|hurry|end|meantime|weather|shops?|boot|pub`;
/** The longest name of a place that a grower gives. */
const LONGEST = 3;

/** "Took twelve fuchsia. In the snug.": a place by no name that anyone else would know; undefined where more is said. */
export function stoodSomewhere(
  last: Proposal,
  { pieces, asked }: Sentence,
  { tokens, text }: Utterance,
): Proposal | undefined {
  if (asked || !/^(?:strike|receive)$/.test(last.kind) || last.slots['place'] !== undefined) return undefined;
  const row = pieces.filter(({ is }) => is !== 'break');
  // "Up in the glory hole", but "up the nissen".
  const at = row.findIndex(
    (piece, n) =>
      // "They're all in the science lab".
      !(
        LEADS.test(wordAt(row, n)) ||
        (piece.is === 'count' && piece.quantity.whole === 'all' && THEY.test(wordAt(row, n - 1)))
      ) || /^(?:the|my|our)$/.test(wordAt(row, n + 1)),
  );
  const name = row.slice(at + 2);
  if (
    !/^(?:in|up|down|under|behind)$/.test(wordAt(row, at)) ||
    !/^(?:the|my|our)$/.test(wordAt(row, at + 1)) ||
    name.length === 0 ||
    name.length > LONGEST ||
    !name.every(
      (piece, n) => piece.is === 'word' && piece.verb?.form !== 'ing' && !NO_PLACE.test(wordAt(name, n)),
    )
  )
    return undefined;
  const place = loosePlace(row.slice(at), wholeOf(row.slice(at)), tokens, text);
  const said = asMeant(text, tokens.slice(name[0]?.from, name.at(-1)?.to));
  return place === undefined || place !== said ? undefined : { ...last, slots: { place, ...last.slots } };
}

const THEY = whole`they're|are|these`;
const LEADS = whole`they|they're|these|are|it's|it|is|all|both|now|stand|stands|stood|sit|sat|live|lives|standing|sitting|living|out|back|over|up|down`;
