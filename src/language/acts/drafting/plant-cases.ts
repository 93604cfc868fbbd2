/** What a plant's name tells: the plant of this draft, another name for it, or the next. */
import { wordAt } from '../../grammar/rule.js';
import { isOnLabel } from '../../pieces/on-label.js';
import type { Piece } from '../../pieces/pieces.js';
import { type Case, isBeforeAct, passOver, type Seen } from './case.js';
import { endsWithOf } from './leads-to-plant.js';
import { definesCrop, isAppositive, isCropAlone, isSamePlant, joins } from './one-plant.js';
import { nearestWord } from './words-before.js';

type PlantSeen = Seen<'plant'>;

export const plantCases: readonly Case<PlantSeen>[] = [
  {
    name: '<plant> and <plant>, both <crop>',
    phrasings: [
      'Took 3 Quiet Lane and 4 Ribbon Sparrow, both fuchsias',
      'Took 3 Quiet Lane and 4 Ribbon Sparrow, both are fuchsia',
    ],
    when: ({ told, piece, pieces, at }) => {
      const before = pieces[/^(?:are|is|being)$/.test(wordAt(pieces, at - 1)) ? at - 2 : at - 1];
      return (
        told.drafts.length > 1 &&
        before?.is === 'count' &&
        before.quantity.both === true &&
        isCropAlone(piece.plant)
      );
    },
    does: ({ told, piece }) => {
      for (const each of told.drafts)
        if (each.plant && each.plant.crop === undefined) each.plant = { ...each.plant, ...piece.plant };
    },
  },
  {
    // Somebody else's, or what is to come.
    name: 'the bench was wanted for <plant>',
    phrasings: [
      'Moved the Salt Harrier to the greenhouse as the propagator was wanted for fuchsias',
      'Moved everything to the greenhouse, need the heat mat for the fuchsias',
    ],
    when: ({ draft, pieces, at, clause }) =>
      (draft.plant !== undefined || isPastBreak(pieces, clause.hit?.to ?? at, at)) && isWantedFor(pieces, at),
    does: passOver,
  },
  {
    name: '<plant>',
    phrasings: ['Took five Salt Harrier', 'Took a Salt Harrier', 'Took cuttings off a Salt Harrier'],
    when: ({ draft }) => draft.plant === undefined,
    does: (seen) => {
      const { draft } = seen;
      setPlant(seen);
      if (isSingle(seen) && draft.quantity === undefined) {
        draft.quantity = { value: 1 };
        // "Slips off a coleus, stuck six": the number behind the act is the one meant.
        seen.told.countedBefore = isBeforeAct(seen);
      }
    },
  },
  {
    name: '<variety> <crop>',
    phrasings: [
      "Took six cuttings of a salvia, Rusty Verger it's called",
      'Took 6 Ember Fox dahlia',
      'Took 6 Weir Plum also a hydrangea in the porch',
      'Took 11 Weir Plum, an iresine, in the cellar',
      'Binned 4 Salt Harrier out of SH1',
      'Fed the Salt Harrier in SH1',
    ],
    when: ({ draft, piece, pieces, at }) =>
      draft.plant !== undefined && joins(draft.plant, piece.plant, pieces, at),
    does: nameAgain,
  },
  {
    name: "<variety>, it's a <crop>",
    phrasings: [
      'Took 6 Weir Plum, also hydrangea, one pot',
      "Took 6 of Weir Plum as well, she's a hydrangea",
      "24 plugs of Weir Plum came, petunias, they're in the porch",
    ],
    when: ({ draft, piece, pieces, at, clause }) =>
      draft.plant?.crop === undefined &&
      piece.plant.crop !== undefined &&
      piece.plant.variety === undefined &&
      (definesCrop(pieces, at) ||
        (draft.plant?.variety !== undefined &&
          clause.hit?.rule.kind === 'receive' &&
          isAppositive(pieces, at))),
    does: nameAgain,
  },
  {
    name: '<crop>, <variety> he says it is',
    phrasings: ['Mossie handed me a dahlia tuber, "Copper Lantern" he says it is'],
    when: ({ draft, piece, pieces, at }) =>
      draft.plant !== undefined &&
      isCropAlone(draft.plant) &&
      piece.plant.variety !== undefined &&
      /^(?:he|she|they) (?:says|say|said|calls|call|called|reckons|reckon|thinks)$/.test(
        `${wordAt(pieces, at + 1)} ${wordAt(pieces, at + 2)}`,
      ),
    does: nameAgain,
  },
  {
    name: '<crop> from <someone>, name of <variety>',
    phrasings: [
      'Received 12 dahlia plugs from Mossgrane Growers yesterday name of Ember Fox',
      "Got 12 dahlia plugs from Mossgrane Nursery, 'Blind Fiddler'",
      "Took three leaf cuttings off a begonia that's new to me, 'Blind Fiddler', now in water",
    ],
    when: ({ draft, piece, pieces, at, clause }) =>
      draft.plant !== undefined &&
      isCropAlone(draft.plant) &&
      piece.plant.variety !== undefined &&
      (NAMED.test(`${wordAt(pieces, at - 2)} ${wordAt(pieces, at - 1)}`) ||
        (/^(?:receive|stock|strike)$/.test(clause.hit?.rule.kind ?? '') &&
          draft.quantity?.value !== undefined &&
          !piece.known &&
          isAfterMark(pieces[at - 1]) &&
          (pieces[at + 1] === undefined ||
            (pieces[at + 1]?.is === 'break' && pieces[at + 2]?.is !== 'plant')))),
    does: nameAgain,
  },
  {
    name: '<crop>, … (<variety>)',
    phrasings: ['10 lavender cuttings, heel, gritty mix, cold frame (Grey Curate)'],
    when: ({ draft, piece, pieces, at }) =>
      draft.plant !== undefined &&
      isCropAlone(draft.plant) &&
      piece.plant.variety !== undefined &&
      isMark(pieces[at - 1], '(') &&
      isMark(pieces[at + 1], ')'),
    does: nameAgain,
  },
  {
    name: '<crop>, <variety> on the label',
    phrasings: ['Bought 3 dahlia tubers at the jumble sale, Rusty Verger on the label'],
    when: ({ draft, piece, pieces, at }) =>
      draft.plant !== undefined &&
      isCropAlone(draft.plant) &&
      piece.plant.variety !== undefined &&
      isOnLabel(pieces, at, at + 1),
    does: nameAgain,
  },
  {
    name: '<plant> and <plant>',
    phrasings: [
      'Fed Salt Harrier and Tallow Bell',
      'Potted on Salt Harrier and a Tallow Bell',
      'Took 6 Weir Plum, a fuchsia and a begonia',
      'Took 6 Weir Plum, also a fuchsia cutting',
      'Bought a Weir Plum, also a fuchsia',
    ],
    when: ({ draft, piece }) => draft.plant !== undefined && !isSamePlant(draft.plant, piece.plant),
    does: (seen) => {
      const next = isSingle(seen) ? { quantity: { value: 1 } } : {};
      seen.told.drafts.push(next);
      setPlant({ ...seen, draft: next });
    },
  },
];

/** The plant, for a draft that has none. */
export function setPlant({ draft, piece }: Pick<PlantSeen, 'draft' | 'piece'>): void {
  draft.plant = piece.plant;
  draft.known = piece.known;
  if (piece.ofCrop !== undefined) draft.ofCrop = piece.ofCrop;
}

/** A mark that opens no bracket, which is told of elsewhere. */
const isAfterMark = (piece: Piece | undefined): boolean => piece?.is === 'break' && piece.mark !== '(';

function nameAgain({ draft, piece }: PlantSeen): void {
  draft.plant = { ...draft.plant, ...piece.plant };
}

const isMark = (piece: Piece | undefined, mark: string): boolean =>
  piece?.is === 'break' && piece.mark === mark;

const NAMED =
  /^(?:name (?:of|is)|(?:variety|cultivar|sort) (?:is|was))$|\b(?:called|named|labelled|labeled)$/;

/** "Needed for the tomatoes", "to make room for tomatoes". */
function isWantedFor(pieces: readonly Piece[], at: number): boolean {
  const lead = /^(?:the|my|some|more|new|next|our)$/.test(wordAt(pieces, at - 1)) ? at - 2 : at - 1;
  if (wordAt(pieces, lead) !== 'for') return false;
  const before = pieces.slice(Math.max(0, lead - 5), lead);
  return before.some((piece) => piece.is === 'word' && WANTED.test(piece.text));
}

const isPastBreak = (pieces: readonly Piece[], from: number, at: number): boolean =>
  pieces.slice(from, at).some(({ is }) => is === 'break');

const WANTED = /^(?:wanted|want|needed|need|needs|room|space|way|free|freed|reserved|kept)$/;

/** "A Salt Harrier", "another". */
const isSingle = ({ pieces, at }: PlantSeen): boolean =>
  /^(?:a|an|another|single)$/.test(nearestWord(pieces, at)) && !areOffOne(pieces, at);

/** "Cuttings of a dahlia", "some tips off an old coleus and a fuchsia": how many, nobody says. */
function areOffOne(pieces: readonly Piece[], at: number): boolean {
  let from = at - 1;
  while (from > at - 8 && (pieces[from]?.is === 'plant' || AND_A.test(wordAt(pieces, from)))) from--;
  const what = pieces[from - 1];
  // "Six of a new dahlia".
  if (endsWithOf(pieces[from]) && /^an?$/.test(wordAt(pieces, from + 1))) return true;
  return (
    /^(?:of|off|from)$/.test(wordAt(pieces, from)) &&
    // "Two off a fuchsia".
    (what?.is === 'count' ||
      (what?.is === 'cutting' && !/^(?:a|an|another|one)$/.test(wordAt(pieces, from - 2))) ||
      (what?.is === 'word' && SEVERAL.test(what.text)))
  );
}

const AND_A = /^(?:a|an|another|single|and|old|new|big|lovely|nice)$/;
const SEVERAL = /^(?:cutting|tip|slip|shoot|basal|stem|piece|bit|sprig|node)s$/;
