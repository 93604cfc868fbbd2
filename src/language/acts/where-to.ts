/** Where an act brought its plants, and from where: told by places, by prepositions, by "in there". */
import { isOpenedOrLaid } from '../grammar/tend/telling.js';
import type { Clause } from '../clauses/clauses.js';
import type { Draft } from './drafting/draft.js';
import { isOtherDeed } from './drafting/endings.js';
import { isGround } from './drafting/slots-filled.js';
import { type Rule, wordAt } from '../grammar/rule.js';
import { isWhole } from '../grammar/stand-ins.js';
import { loosePlace } from './loose-places.js';
import type { Piece } from '../pieces/pieces.js';
import { recipientOf } from './recipients.js';
import type { Proposal } from '../proposal.js';
import type { Utterance } from '../pieces/utterance.js';

/** "Watered both the greenhouse and the cold frame": one entry a place. */
export function eachPlace(
  drafts: readonly Draft[],
  pieces: readonly Piece[],
  clause: Clause,
): readonly Draft[] {
  const [draft] = drafts;
  if (drafts.length !== 1 || !draft || draft.plant !== undefined) return drafts;
  // "…, then sat on the step", "… and vntted the cold frame": what was done next, elsewhere.
  const next = pieces.findIndex(
    (piece, at) =>
      at > (clause.hit?.to ?? 0) &&
      piece.is === 'word' &&
      ((wordAt(pieces, at - 1) === 'then' && !/^(?:the|my|in|on)$/.test(piece.text)) ||
        (/^(?:and|then)$/.test(wordAt(pieces, at - 1)) && isOtherDeed(piece))),
  );
  const places = pieces
    .slice(clause.from, next < 0 ? clause.to : Math.min(next, clause.to))
    .flatMap((piece) =>
      piece.is === 'place' && !isOpenedOrLaid(piece) && !tellsWhich(draft, piece.place) ? [piece.place] : [],
    );
  return places.length < 2 ? drafts : [...new Set(places)].map((place) => ({ ...draft, place }));
}

/** "Moved the others in there too", "8 Salt Harrier same place": the place named last. */
export function placeThere(
  pieces: readonly Piece[],
  clause: Clause,
  told: readonly Proposal[],
): string | undefined {
  // "Everything in there got a drink" tells it before the act.
  const from = clause.subjectFirst ? clause.from : (clause.hit?.to ?? clause.from);
  for (let at = from; at < clause.to; at++)
    if (
      (wordAt(pieces, at) === 'there' && /^(?:in|into|out|over|up|down|on)$/.test(wordAt(pieces, at - 1))) ||
      (wordAt(pieces, at) === 'same' && /^(?:place|spot)$/.test(wordAt(pieces, at + 1)))
    )
      return told.findLast(({ slots }) => typeof slots['place'] === 'string')?.slots['place'] as
        string | undefined;
  return undefined;
}

export const STANDS: ReadonlySet<string> = new Set(['move', 'plantOut', 'hardenOff', 'strike']);

/** Adds the recipient of what left, and a place that only a preposition tells. */
export function withWhereTo(
  draft: Draft,
  rule: Rule,
  pieces: readonly Piece[],
  clause: Clause,
  { tokens, text }: Utterance,
): Draft {
  const { kind } = rule;
  if (kind === 'dispatch') {
    const to = draft.to ?? recipientOf(pieces, clause, tokens, text);
    return to === undefined ? draft : { ...draft, to };
  }
  if (rule.sense === 'emptying') {
    const [from, to] = pieces
      .slice(clause.from, clause.to)
      .flatMap((piece) => (piece.is === 'place' ? [piece.place] : []));
    // What was emptied is no place that they went to.
    const emptied = { ...draft };
    delete emptied.place;
    return {
      ...emptied,
      ...(from === undefined ? {} : { fromPlace: from }),
      ...(to === undefined ? {} : { place: to }),
    };
  }
  if (kind === 'move') {
    const places = pieces
      .slice(clause.from, clause.to)
      .flatMap((piece) => (piece.is === 'place' && !tellsWhich(draft, piece.place) ? [piece] : []));
    const moved =
      draft.quantity?.whole || rule.sense === 'plain move'
        ? movedOn(draft, pieces, clause, tokens, text)
        : undefined;
    if (moved) return { ...draft, ...moved };
    const inside =
      rule.sense === 'indoors' ||
      pieces
        .slice(clause.from, clause.to)
        .some((piece) => piece.is === 'word' && /^(?:indoors|inside)$/.test(piece.text));
    const [only] = places;
    if (
      places.length === 1 &&
      only &&
      inside &&
      draft.plant === undefined &&
      /^(?:in|from|on|off)$/.test(only.prep ?? '')
    )
      return { ...draft, place: 'indoors', fromPlace: only.place };
    const towards = places.find(({ prep }, n) => n > 0 && /^(?:to|into|onto|in|on)$/.test(prep ?? ''));
    const [first] = places;
    if (
      places.length > 1 &&
      towards &&
      first &&
      (first.prep === undefined || first.prep === 'from' || first.prep === 'off')
    )
      return { ...draft, place: towards.place, fromPlace: first.place };
  }
  // "In the ground along the drive".
  if (!STANDS.has(kind) || (draft.place !== undefined && !isGround(draft.place))) return draft;
  const place =
    loosePlace(pieces, ownPart(draft, pieces, clause), tokens, text) ??
    loosePlace(pieces, clause, tokens, text) ??
    (kind === 'move' ? doorsOf(pieces, clause) : undefined);
  const stood = place === undefined || place === draft.fromPlace ? draft : { ...draft, place };
  if (kind !== 'plantOut' || stood.place !== 'ground') return stood;
  // "In the ground at last": planted, wherever that is.
  const planted = { ...stood };
  delete planted.place;
  return planted;
}

/** "8 Salt Harrier along the fence and 3 Tallow Bell in the big planter": of several plants each is told where it is up to the next. */
function ownPart({ plant }: Draft, pieces: readonly Piece[], clause: Clause): Clause {
  const plants = pieces
    .slice(clause.from, clause.to)
    .flatMap((piece, n) => (piece.is === 'plant' ? [{ at: clause.from + n, plant: piece.plant }] : []));
  const own = plants.findIndex((each) => each.plant === plant);
  const from = plants[own]?.at;
  if (plants.length < 2 || from === undefined || !clause.hit) return clause;
  return { ...clause, from, to: plants[own + 1]?.at ?? clause.to, hit: { ...clause.hit, from } };
}

/** "Brought everything indoors": all that is said of where. */
function doorsOf(pieces: readonly Piece[], clause: Clause): string | undefined {
  if (clause.hit?.rule.sense === 'indoors') return 'indoors';
  return pieces
    .slice(clause.hit?.to ?? clause.from, clause.to)
    .flatMap((piece) =>
      piece.is === 'word' && /^(?:indoors|outdoors|outside)$/.test(piece.text) ? [piece.text] : [],
    )[0];
}

/** A place that says which plants are meant, or left out, and not where the act brought them. */
const tellsWhich = ({ which, leftOut = [] }: Draft, place: string): boolean =>
  which?.stands === place || leftOut.some((out) => out.which?.stands === place);

/** "Everything in the cold frame to the shed": where they stood before "to" is where they came from. */
function movedOn(
  draft: Draft,
  pieces: readonly Piece[],
  clause: Clause,
  tokens: Utterance['tokens'],
  text: string,
): Pick<Draft, 'place' | 'fromPlace'> | undefined {
  const verb = clause.hit?.from ?? clause.from;
  // "Everything in the spare room has moved to …".
  const isBefore = pieces.slice(clause.from, verb).some(isWhole);
  const from = clause.subjectFirst || isBefore ? clause.from : (clause.hit?.to ?? clause.from);
  const at = pieces.findIndex(
    (piece, n) =>
      n >= from &&
      n < clause.to &&
      piece.is === 'place' &&
      !tellsWhich(draft, piece.place) &&
      /^(?:in|on|at|under|inside|by)$/.test(piece.prep ?? ''),
  );
  const stood = pieces[at];
  if (stood?.is !== 'place') return undefined;
  const to = pieces.findIndex(
    (_, n) => n > at && n < clause.to && /^(?:to|into|onto)$/.test(wordAt(pieces, n)),
  );
  const outside = /^(?:outside|outdoors|indoors|inside|upstairs|downstairs)$/.exec(
    wordAt(pieces, at + 1),
  )?.[0];
  if (to < 0 && outside !== undefined && wordAt(pieces, at + 2) !== 'the')
    return { fromPlace: stood.place, place: outside };
  if (to < 0) return undefined;
  const reached = pieces.slice(to, to + 4).find((piece) => piece.is === 'place');
  const place =
    reached?.is === 'place'
      ? reached.place
      : loosePlace(pieces, { ...clause, from: to, hit: undefined }, tokens, text);
  return place === undefined ? undefined : { fromPlace: stood.place, place };
}
