/** An act told once more without its verb: "Took nine yesterday. This morning five more, dipped", "Stuck 40 Salt Harrier. Also 5 trays of Tallow Bell". */
import { firstDay } from '../../calendar/span.js';
import { wholeOf } from '../clauses/clauses.js';
import { draftsOf } from '../acts/drafting.js';
import { plantsWithNumber } from '../acts/elided.js';
import { plantToldOf } from './joining/plant-of.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece, When } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { plantsIn, type Sentence } from './sentences.js';
import { slotsOf } from '../slots.js';

const GOES_ON = /^(?:strike|loss|potOn|pinch|plantOut|dispatch)$/;
/** Words around the number, the day and the slots of the act. */
const AROUND =
  /^(?:and|then|of|them|those|it|on|the|same|way|a|an|in|into|with|no|cuttings?|all|also|plus|just|dip|dipped|powder|hormone|gel|rooting)$/;
const WEEKDAY = /^(?:on )?(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*$/i;

/** The act again with the new number and day; undefined where the sentence says anything else. */
export function onceMore(last: Proposal | undefined, { pieces, asked }: Sentence): Proposal | undefined {
  if (!last || asked) return undefined;
  const likewise = numberAlone(last, pieces);
  if (likewise) return likewise;
  if (!GOES_ON.test(last.kind) || last.draft.quantity?.value === undefined) return undefined;
  const isAlone = pieces.every(
    (piece) =>
      /^(?:count|when|break|pots|size|medium|cutting|place|plant)$/.test(piece.is) ||
      (piece.is === 'word' && AROUND.test(piece.text)),
  );
  const counts = pieces.filter(({ is }) => is === 'count');
  const plants = plantsIn(pieces);
  if (plants.length > 0) return isAlone && plants.length === 1 ? ofAnotherPlant(last, pieces) : undefined;
  const [draft] = isAlone && counts.length === 1 ? draftsOf(pieces, wholeOf(pieces)) : [];
  if (!draft?.when || draft.quantity?.value === undefined || !draft.quantity.more) return undefined;
  const plant = plantToldOf(last);
  if (!plant || !isBehind(draft.when, last.draft.when)) return undefined;
  const { cutting } = last.slots;
  return {
    kind: last.kind,
    rule: last.rule,
    draft: { ...draft, quantity: { value: draft.quantity.value } },
    slots: {
      ...(last.kind === 'strike' && cutting !== undefined ? { cutting } : {}),
      ...slotsOf({ kind: last.kind }, draft),
    },
    carried: plant,
  };
}

/** "Three rooted. Tallow Bell all of them": a plant and its number, and no word more. */
function numberAlone({ kind, rule, draft }: Proposal, pieces: readonly Piece[]): Proposal | undefined {
  if (!/^(?:check|strike|loss|potOn|pinch|plantOut)$/.test(kind) || !draft.plant) return undefined;
  const [told, another] = plantsWithNumber(pieces, 0, pieces.length);
  const { value, whole } = told?.quantity ?? {};
  if (!told || another || (kind !== 'check' && !value && (whole !== 'all' || kind === 'strike')))
    return undefined;
  return { kind, rule, draft: { ...told, ...(draft.when ? { when: draft.when } : {}) }, slots: {} };
}

/** "Also 5 trays of Tallow Bell": the same with another plant. */
function ofAnotherPlant(last: Proposal, pieces: readonly Piece[]): Proposal | undefined {
  const [draft, another] = draftsOf(pieces, wholeOf(pieces));
  const counted =
    draft?.quantity?.value !== undefined || (last.kind === 'strike' && draft?.pots !== undefined);
  if (
    last.kind === 'dispatch' ||
    !draft ||
    // "Took four Salt Harrier Monday. Tuesday 6 Tallow Bell": a day gone by, behind the day before it.
    !(/^(?:also|and|plus)$/.test(wordAt(pieces, 0)) || opensWithDay(pieces, last, draft.when)) ||
    another ||
    !counted
  )
    return undefined;
  const { when } = last.draft;
  return {
    kind: last.kind,
    rule: last.rule,
    draft: { ...(when ? { when } : {}), ...draft },
    slots: slotsOf({ kind: last.kind }, draft),
  };
}

const opensWithDay = (pieces: readonly Piece[], last: Proposal, when: When | undefined): boolean =>
  (pieces[0]?.is === 'when' || (wordAt(pieces, 0) === 'on' && pieces[1]?.is === 'when')) &&
  when !== undefined &&
  last.draft.when !== undefined &&
  isBehind(when, last.draft.when);

/** A day gone by; one of the week alone may be still to come, unless the act before was told of a day before it. */
function isBehind({ past, words }: When, before: When | undefined): boolean {
  if (past === undefined || past === 'ask') return false;
  if (!WEEKDAY.test(words)) return true;
  const earlier = before?.past;
  return earlier !== undefined && earlier !== 'ask' && firstDay(earlier) < firstDay(past);
}
