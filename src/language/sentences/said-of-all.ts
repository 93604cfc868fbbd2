/** What is said once of all that was told before it, in a sentence of its own: "… Both on bench 1.", "… All tips.", "… One pot each." */
import type { EntryKind } from '../../ledger/entry.js';
import { causeOf } from './cause-behind.js';
import type { Draft } from '../acts/drafting/draft.js';
import { wordAt } from '../grammar/rule.js';
import { saysMore, slotsAlone } from './mending.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { giftBehind } from '../acts/recipients.js';
import { type Sentence, sentenceOf } from './sentences.js';
import { slotsOf } from '../slots.js';
import type { Utterance } from '../pieces/utterance.js';

/** What came new to the bench stands where it is said to, whichever way it came. */
const CAME: ReadonlySet<EntryKind> = new Set(['strike', 'stock', 'receive']);
const SHARES: ReadonlySet<EntryKind> = new Set([...CAME, 'potOn', 'move', 'plantOut', 'loss', 'dispatch']);

/** Words around "all" and "both" that lead to what is said. */
const LEADS = whole`
  they|they're|these|those|them|are|is|of|lots|the|now|and|each
`;

/** The acts told last with what the sentence says of all of them; undefined where it says anything else, or of one. */
export function saidOfAll(
  told: readonly Proposal[],
  { pieces, asked }: Sentence,
  utterance: Utterance,
): readonly Proposal[] | undefined {
  const alike = toldAlike(told);
  if (
    asked ||
    alike.length < 2 ||
    !(opensWithThey(pieces) || pieces.some((piece, at) => isOfAll(piece) || EACH.test(wordAt(pieces, at))))
  )
    return undefined;
  // "Both" of three: nobody knows which.
  const isBoth = pieces.some((piece) => piece.is === 'count' && piece.quantity.both === true);
  if (isBoth && alike.length !== 2) return undefined;
  const rest = pieces
    .slice(leadEnd(pieces))
    .filter((piece) => !isOfAll(piece) && !(piece.is === 'word' && piece.text === 'either'));
  const filled = alike.map((each) => filledBy(each, rest, utterance));
  if (!filled.every((each) => each !== undefined)) return undefined;
  return [...told.slice(0, told.length - alike.length), ...filled];
}

/** Whether "all", "both" or "all but two" speak of several acts told before: what they say is not of the last alone. */
export const speaksOfSeveral = (told: readonly Proposal[], { pieces }: Sentence): boolean =>
  toldAlike(told).length > 1 &&
  pieces.some((piece) => isOfAll(piece) || (piece.is === 'count' && piece.quantity.allBut !== undefined));

/** "They're in the cold frame", of all that was taken. */
const opensWithThey = (pieces: readonly Piece[]): boolean =>
  /^(?:they're|theyre|they|these|those)$/.test(wordAt(pieces, 0)) && pieces.some(({ is }) => is === 'place');

/** "One pot each", "no hormone on any". */
const EACH = /^(?:each|any|either)$/;

/** The acts at the end of what was told that are of one kind, or that all brought something to the bench. */
function toldAlike(told: readonly Proposal[]): readonly Proposal[] {
  const kind = told.at(-1)?.kind;
  if (kind === undefined || !SHARES.has(kind)) return [];
  const isAlike = (other: EntryKind): boolean => other === kind || (CAME.has(kind) && CAME.has(other));
  const from = told.findLastIndex((each) => !isAlike(each.kind) || each.future === true) + 1;
  return told.slice(from);
}

const isOfAll = (piece: Piece): boolean =>
  piece.is === 'count' &&
  (piece.quantity.both === true || (piece.quantity.whole === 'all' && piece.quantity.allBut === undefined));

/** Past "they're all", "both lots", "each". */
function leadEnd(pieces: readonly Piece[]): number {
  let at = 0;
  for (let piece = pieces[at]; piece !== undefined; piece = pieces[++at])
    if (!isOfAll(piece) && !LEADS.test(wordAt(pieces, at))) break;
  return at;
}

function filledBy(each: Proposal, rest: readonly Piece[], utterance: Utterance): Proposal | undefined {
  if (each.kind === 'loss') {
    const cause = /^(?:to|from|with)$/.test(wordAt(rest, 0)) ? rest.slice(1) : rest;
    return causeOf(each, sentenceOf(cause, utterance));
  }
  if (each.kind === 'dispatch') {
    const to = giftBehind(rest, utterance.tokens, utterance.text);
    return to === undefined ? undefined : { ...each, slots: { to, ...each.slots } };
  }
  if (each.kind === 'strike' && /^tips?$/.test(wordAt(rest, 0)) && rest.length === 1)
    return { ...each, slots: { cutting: 'tip', ...each.slots } };
  return withSlots(each, rest);
}

/** "All in 24-cell trays in the mist house": what was said of one of them before stands. */
function withSlots(each: Proposal, rest: readonly Piece[]): Proposal | undefined {
  const said = rest.filter(saysMore);
  const added = isDenied(said) ? undefined : slotsAlone(said);
  if (!added || added.quantity !== undefined || (added.when && !isPast(added))) return undefined;
  const { pots, ...others } = added;
  // "All in four pots": how many of them each plant has, nobody said.
  const held = pots === 1 ? { pots } : {};
  const { quantity } = each.draft;
  const slots = slotsOf({ kind: each.kind }, { ...others, ...held, ...(quantity ? { quantity } : {}) });
  // "Potted on these and those. All in the cold frame": told of a move.
  if (TOLD.some(([said, slot]) => added[said] !== undefined && !(slot in slots))) return undefined;
  return {
    ...each,
    slots: { ...slots, ...each.slots },
    draft: { ...each.draft, ...(added.when && !each.draft.when ? { when: added.when } : {}) },
  };
}

/** What a draft says beside its plant, and the slot that carries it. */
const TOLD = [
  ['place', 'place'],
  ['medium', 'medium'],
  ['size', 'potSize'],
  ['cutting', 'cutting'],
  ['hormone', 'hormone'],
] as const;

const isPast = ({ when }: Draft): boolean => when?.past !== undefined && when.past !== 'ask';

/** "Not all in the porch"; no "no hormone". */
const isDenied = (pieces: readonly Piece[]): boolean =>
  pieces.some((_, at) => /^(?:not|didn't)$/.test(wordAt(pieces, at))) &&
  pieces.some(({ is }) => is === 'place' || is === 'medium' || is === 'cutting');
