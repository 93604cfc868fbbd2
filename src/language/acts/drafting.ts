/** The fifth stage: a clause's pieces to drafts, one for each plant it names, with shared slots shared out. */
import { type Clause, wholeOf } from '../clauses/clauses.js';
import { isAnotherLot, nextLot, sharePlantOfLots } from './drafting/another-lot.js';
import { decided, type Seen } from './drafting/case.js';
import { countedByContainers, countPerPot } from './drafting/containers-counted.js';
import { countCases } from './drafting/count-cases.js';
import { countSeen } from './drafting/count-seen.js';
import type { Draft } from './drafting/draft.js';
import { endsBefore } from './drafting/endings.js';
import { tellHormoneAndCause, textsOf } from './drafting/hormone-and-cause.js';
import { leftOutCases } from './drafting/left-out.js';
import { underCrop } from './drafting/crop-heading.js';
import { isCropAlone } from './drafting/one-plant.js';
import { isOpenedOrLaid } from '../grammar/tend/telling.js';
import { perHead } from './drafting/per-head.js';
import { dayCases, placeCases } from './drafting/place-and-day-cases.js';
import { mediumCases, sizeCases } from './drafting/size-and-medium-cases.js';
import { plantCases, setPlant } from './drafting/plant-cases.js';
import { potCases } from './drafting/pot-cases.js';
import { fillSlot } from './drafting/slots-filled.js';
import { shareSlots } from './drafting/slots-shared.js';
import { currentDraft, type ToldSoFar, untold } from './drafting/told-so-far.js';
import { wordCases } from './drafting/word-cases.js';
import type { Piece, PlantWords } from '../pieces/pieces.js';
import { whichAt } from '../lots/which-batch.js';

/** What the pieces of a clause say, plant by plant. */
export function draftsOf(pieces: readonly Piece[], clause: Clause): readonly Draft[] {
  const told = untold();
  const own = new Set(clause.hit?.own ?? []);
  const texts = textsOf({ pieces, clause });
  for (let at = clause.from; at < clause.to && !endsBefore(pieces, at, clause); at++) {
    const piece = pieces[at];
    if (!piece) continue;
    tellHormoneAndCause({ pieces, clause, told }, texts, at);
    const draft = currentDraft(told);
    if (own.has(at)) {
      tellOfAct(piece, clause, told);
      continue;
    }
    const seen = { piece, pieces, at, clause, told, draft };
    if (decided(leftOutCases, seen)) continue;
    const which = whichAt(pieces, at, clause);
    if (!which) {
      tell(seen);
      continue;
    }
    const isNext = draft.plant !== undefined && isAnotherLot(draft.which, which);
    const lot = isNext ? nextLot(told, draft) : draft;
    lot.which = { ...which, ...lot.which };
  }
  for (const draft of told.drafts) if (told.ofEach) draft.quantity ??= told.ofEach;
  sharePlantOfLots(told.drafts);
  if (told.eachOfPots) told.drafts.forEach(countPerPot);
  return underCrop(shareSlots(told), pieces, clause)
    .map(countedByContainers)
    .map((draft, _, all) => (all.length > 1 ? draft : perHead(draft, pieces, clause)));
}

/** The plants that a row names, each once, a crop joined to the variety beside it. */
export function mergedPlants(pieces: readonly Piece[]): readonly PlantWords[] {
  return draftsOf(pieces, wholeOf(pieces)).flatMap(({ plant }) => (plant ? [plant] : []));
}

/** A piece among the act's own words, which names a plant, a number or a slot only where nothing else has. */
function tellOfAct(piece: Piece, { hit }: Clause, told: ToldSoFar): void {
  const draft = currentDraft(told);
  if (piece.is === 'plant') {
    if (draft.plant === undefined) setPlant({ draft, piece });
    // "Put 18 Salt Harrier fuchsia cuttings in": a variety and its crop.
    else if (
      (isCropAlone(piece.plant) && draft.plant.crop === undefined && draft.plant.batch === undefined) ||
      (isCropAlone(draft.plant) && piece.plant.crop === undefined && piece.plant.batch === undefined)
    )
      draft.plant = { ...draft.plant, ...piece.plant };
  } else if (piece.is === 'count') {
    // "Roots all round the edge": no number of plants.
    if (hit?.rule.rooted !== 'some') draft.quantity ??= piece.quantity;
  } else if (hit?.rule.kind !== 'tend' || !isOpenedOrLaid(piece)) fillSlot(piece, told);
}

/** A piece beside the act, by the cases for its kind; where none decides it fills its own slot. */
function tell(seen: Seen<Piece['is']>): void {
  if (!isDecided(seen)) fillSlot(seen.piece, seen.told);
}

function isDecided(seen: Seen<Piece['is']>): boolean {
  switch (seen.piece.is) {
    case 'plant':
      return decided(plantCases, seen as Seen<'plant'>);
    case 'count':
      return decided(countCases, countSeen(seen as Seen<'count'>));
    case 'pots':
      return decided(potCases, seen as Seen<'pots'>);
    case 'word':
      return decided(wordCases, seen as Seen<'word'>);
    case 'place':
      return decided(placeCases, seen as Seen<'place'>);
    case 'medium':
      return decided(mediumCases, seen as Seen<'medium'>);
    case 'size':
      return decided(sizeCases, seen as Seen<'size'>);
    case 'when':
      return decided(dayCases, seen as Seen<'when'>);
    default:
      return false;
  }
}
