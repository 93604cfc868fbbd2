/** Cuttings told with no verb at all: "14 box cuttings, nodal". */
import { isToldOfLast } from '../../acts/drafting/last-pot.js';
import type { Piece } from '../../pieces/pieces.js';
import { endsAt, followsWord, wordAt } from '../rule.js';

export const SAYS_OTHERWISE =
  /^(?:need|needs|want|wants|look|looks|looking|are|is|going|gone|getting|from|should|still|doing|seem|got|have|has|rooted|later|where|which|that|if|for|will|would|my|these|those|your|how|took|job|jobs|plan|todo|order)$/;

/** A plant stands there, or behind an article. */
const isPlant = (pieces: readonly Piece[], at: number): boolean =>
  pieces[/^(?:the|a|my|an|our)$/.test(wordAt(pieces, at)) ? at + 1 : at]?.is === 'plant';

/** "Cuttings from the streptocarpus", "from Mum's hedge", "from Mum's": off a plant, not out of somebody's hands. */
const fromAPlant = (pieces: readonly Piece[], at: number): boolean =>
  isPlant(pieces, at + 1) ||
  isGarden(pieces, at + 1) ||
  followsWord(pieces, at, /^(?:hedges?|bush|bushes|shrubs?|trees?)$/) ||
  pieces.slice(at).some((piece) => piece.is === 'word' && /^(?:prunings|trimmings|stock)$/.test(piece.text));

/** "Mum's", "next door's garden", "the allotment": where plants stand to be cut. */
function isGarden(pieces: readonly Piece[], from: number): boolean {
  let at = from;
  while (/^(?:the|my|our|her|his|their|your|next|door's)$/.test(wordAt(pieces, at))) at++;
  const place = pieces[at];
  const named = place?.is === 'place' ? place.place : wordAt(pieces, at);
  return GARDEN.test(named) || (/['’]s?$/.test(named) && endsAt(pieces, at + 1));
}

const GARDEN = /\b(?:garden|yard|patch|plot|allotment|backyard|next door)$/;

/** "Rooting hormone used": a slot, however it is told. */
export const hormoneUsed = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'used' && /^(?:hormone|powder|gel|dip)$/.test(wordAt(pieces, at - 1));

/** "…, pinched from Joan's hedge": where they were come by. */
function beforeSource(row: readonly Piece[]): readonly Piece[] {
  const at = row.findIndex(
    (piece, n) =>
      n > 0 &&
      piece.is === 'word' &&
      CAME_BY.test(piece.text) &&
      /^(?:from|off)$/.test(wordAt(row, n + 1)) &&
      // "Pinched off the bench": out of their own hands.
      !row.slice(n + 2, n + 4).some(({ is }) => is === 'place'),
  );
  return at < 0 ? row : row.slice(0, at);
}

const CAME_BY =
  /^(?:pinched|nicked|cadged|begged|scrounged|borrowed|liberated|swiped|snaffled|rescued|salvaged|scavenged|foraged|snipped|cut|taken|gathered|collected)$/;

/** Telegraphic: "14 box cuttings, nodal" and nothing that says otherwise. */
export const bareCuttings = (row: readonly Piece[], from: number): boolean => {
  const pieces = beforeSource(row);
  if (!pieces.some(({ is }) => is === 'plant')) return false;
  if (!pieces.some(({ is }) => is === 'count' || is === 'pots')) return false;
  // "Got started at last, 14 basals …": talk before the first break.
  const first = pieces.findIndex(({ is }) => is === 'plant' || is === 'count' || is === 'pots');
  const opening = pieces.slice(0, first).findLastIndex(({ is }) => is === 'break') + 1;
  return !pieces.some(
    (piece, at) =>
      piece.is === 'word' &&
      // "Four in each bar the last one, that got five".
      !isToldOfLast(pieces, at + 1) &&
      ((SAYS_OTHERWISE.test(piece.text) &&
        !(piece.text === 'from' && fromAPlant(pieces, at)) &&
        !(piece.text === 'my' && wordAt(pieces, at - 1) === 'from' && isGarden(pieces, at)) &&
        !(piece.text === 'that' && wordAt(pieces, at + 1) === 'makes') &&
        !(piece.text === 'got' && /^(?:round|around|started|going)$/.test(wordAt(pieces, at + 1)))) ||
        // "Ten basal shoots on the Salt Harrier": seen, and still there.
        (piece.text === 'on' && isPlant(pieces, at + 1)) ||
        (piece.verb !== undefined &&
          at >= opening &&
          wordAt(pieces, at + 1) !== 'count' &&
          wordAt(pieces, at + 1) !== 'round' &&
          // "…, 15, peat and grit, mist": where they stand.
          !(/^(?:mist|fog)$/.test(piece.text) && endsAt(pieces, at + 1)) &&
          at !== from &&
          !hormoneUsed(pieces, at) &&
          !/^(?:heel|root|rooting|water|damp|compost|place|tip|stem|leaf|pot|bed|cut|cutting|cuttings|shade|heat|flowering)$/.test(
            piece.text,
          ) &&
          // "…, that makes the dozen".
          !(piece.text === 'makes' && /^(?:that|which)$/.test(wordAt(pieces, at - 1))) &&
          // "Started the Salt Harrier, 5 semi-ripe bits".
          !(
            /^(?:start|begin)$/.test(piece.verb.lemma) &&
            piece.verb.form === 'past' &&
            /^(?:the|my|some|off)$/.test(wordAt(pieces, at + 1))
          ) &&
          !/^(?:push|put|go|do|tuck|pop|dip|dunk|stick|lay|dust|line|insert|space)$/.test(piece.verb.lemma))),
  );
};
