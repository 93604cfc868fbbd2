/** An act that was done: each thing that it tells of as a proposal, with what it leans on. */
import type { EntryKind } from '../../ledger/entry.js';
import { partsOf } from './act-parts.js';
import { isSomeonesPlant } from '../mood/another-grower.js';
import { eachOfBoth, eachOfList } from './both-meant.js';
import { caresGiven } from './cares-given.js';
import { draftsOf } from './drafting.js';
import type { Draft } from './drafting/draft.js';
import { wordAt } from '../grammar/rule.js';
import { isSetGrowing } from '../grammar/stock/kinds-of-plant.js';
import { headedPlace } from './headed-place.js';
import { dayOf, toldBefore } from './lent-before.js';
import { countedBy, leftOutBefore, outOf } from './number-meant.js';
import { actsOnPlants, tendsSomethingElse } from './objects.js';
import { lostBecause } from './parts-ruined.js';
import type { PlantWords, When } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { proposeRemark } from '../proposals/remark-proposal.js';
import { sentenceOf } from '../sentences/sentences.js';
import { saysEverything, sharedObject, sharedPlace } from '../mood/side-by-side.js';
import { eachPlaced } from './shares-placed.js';
import { slotsOf } from '../slots.js';
import { plantBefore, sortedOut, spokenOf } from './spoken-before.js';
import { isDoing } from '../clauses/seen-on.js';
import { stateBehind } from './state-behind.js';
import { eachPlace, withWhereTo } from './where-to.js';
import { beforeReturn, swappedAt } from './for-what.js';
import { daysTold } from './on-days.js';
import { eachUnrooted } from './looks.js';
import { isForNothing, isPaidFor } from './paid-for.js';
import { type Act, carriedHere, endOf, type Telling } from './telling.js';

export function tellDone(telling: Telling, act: Act, kind: EntryKind): void {
  const { pieces, proposals, clauses, utterance } = telling;
  const { n, clause } = act;
  // "Salt Harrier showing its first buds, Tallow Bell watered".
  const doing = pieces.slice(0, Math.max(0, clause.from - 1));
  if (n === 0 && isDoing(doing))
    proposals.push(...(proposeRemark(sentenceOf(doing, utterance), utterance) ?? []));
  const drafts = draftsOfAct(telling, act);
  const explained =
    drafts.ours.length === 0 ? lostBecause(proposals.at(-1), pieces, clause, drafts.all) : undefined;
  if (explained) proposals[proposals.length - 1] = explained;
  const both =
    kind === 'tend'
      ? eachPlace(drafts.ours, pieces, clause)
      : eachOfBoth(
          eachUnrooted(telling, kind, drafts.ours),
          kind,
          proposals.length > 0 ? proposals : telling.earlier,
        );
  for (const found of eachOfList(both, clause, clauses[n - 1], proposals)) {
    const draft = leaning(telling, act, found);
    const proposed = proposalOf(telling, act, kind, found, draft);
    const cares = kind === 'tend' ? caresGiven(pieces, clause) : [];
    const each =
      cares.length === 0
        ? [proposed]
        : cares.map((care) => ({ ...proposed, slots: { ...proposed.slots, care } }));
    proposals.push(...each.flatMap((told) => onEachDay(told, daysTold(pieces, clause))));
    if (draft.plant) telling.plantNamed = draft.plant;
  }
  const state = stateBehind(pieces, clause.to, endOf(telling, act));
  if (state && drafts.ours.length > 0 && clauses[n + 1] === undefined)
    proposals.push(
      ...(proposeRemark(sentenceOf(state, utterance), utterance) ?? []).map((remark) =>
        remark.draft.plant === undefined && telling.plantNamed
          ? { ...remark, carried: telling.plantNamed }
          : remark,
      ),
    );
}

/** A care on each of its days; a look on the last of them, which its finding is of. */
function onEachDay(told: Proposal, days: readonly When[]): readonly Proposal[] {
  if (days.length === 0 || !/^(?:tend|check)$/.test(told.kind)) return [told];
  const meant = told.kind === 'check' ? days.slice(-1) : days;
  return meant.map((when) => ({ ...told, draft: { ...told.draft, when } }));
}

/** Acts that are told of other things in the same words. */
const PLANT_ACTS: ReadonlySet<string> = new Set(
  'loss dispatch potOn plantOut pinch stock receive strike move hardenOff'.split(' '),
);

/** What a clause tells of, and those of it that are plants of ours. */
function draftsOfAct(
  { pieces, utterance }: Telling,
  { clause, hit }: Act,
): { readonly all: readonly Draft[]; readonly ours: readonly Draft[] } {
  const { rule } = hit;
  const parts = partsOf(pieces, beforeReturn(pieces, clause));
  const all = parts.flatMap((part) =>
    eachPlaced(draftsOf(pieces, part), pieces, part).map((found) =>
      withWhereTo(found, rule, pieces, rule.kind === 'move' || parts.length > 1 ? part : clause, utterance),
    ),
  );
  const isOurs = (found: Draft): boolean => {
    if (/^(?:check|loss)$/.test(rule.kind) && isSomeonesPlant(found.plant, pieces)) return false;
    if (PLANT_ACTS.has(rule.kind))
      return (
        parts.length > 1 ||
        leftOutBefore(pieces, clause, found) !== found ||
        actsOnPlants(found, pieces, clause)
      );
    return (
      rule.kind !== 'tend' ||
      (actsOnPlants({ ...found, pronoun: true }, pieces, clause) &&
        !tendsSomethingElse(found, pieces, clause))
    );
  };
  return { all, ours: all.filter(isOurs) };
}

/** Tended, and nothing named that was. */
const isBare = ({ hit }: Act, { plant, pronoun, place }: Draft): boolean =>
  hit.rule.kind === 'tend' && plant === undefined && !pronoun && place === undefined;

/** A draft with what its row told before it, or tells beside it. */
function leaning(telling: Telling, act: Act, found: Draft): Draft {
  const { pieces, clauses, moods, utterance, earlier, proposals, lookedAt, lookedOn } = telling;
  const { n, clause, hit } = act;
  const { kind } = hit.rule;
  const sorted =
    kind === 'loss' && found.quantity === undefined && found.plant === undefined
      ? sortedOut(pieces, clause, clauses[n - 1]?.hit?.to ?? 0)
      : undefined;
  const counted = countedBy(
    pieces,
    clause,
    leftOutBefore(pieces, clause, { ...sorted, ...found }),
    telling.unrooted,
  );
  const place = isBare(act, found)
    ? (sharedPlace(pieces, clauses, moods, n) ??
      (hit.rule.care === 'vent' ? headedPlace(utterance.pieces, pieces[hit.from]?.from ?? 0) : undefined))
    : undefined;
  return {
    ...(kind === 'check' && lookedAt !== undefined && counted.quantity?.outOf === undefined
      ? outOf(counted, lookedAt, hit.rule.rooted, telling.unrooted)
      : counted),
    ...toldBefore(pieces, clause, counted, [...earlier, ...proposals]),
    ...(kind === 'check' && lookedOn ? { when: lookedOn } : {}),
    ...dayOf(pieces, clause, counted, proposals.at(-1), earlier),
    ...(place === undefined ? {} : { place }),
  };
}

function proposalOf(telling: Telling, act: Act, kind: EntryKind, found: Draft, draft: Draft): Proposal {
  const { pieces } = telling;
  const { rule, from } = act.hit;
  // "Threw eight Mossy Dell into the propagator, tips, no powder": cuttings, however they were told.
  const isInserted =
    kind === 'move' &&
    (draft.cutting !== undefined ||
      draft.hormone !== undefined ||
      (/^put /.test(rule.name) && isSharedOut(draft)));
  // "Stood three dahlia tubers on the heat mat to start them off": woken, however they were carried.
  const isWoken = kind === 'move' && isSetGrowing(pieces.slice(act.clause.from, act.clause.to));
  const told = isInserted ? 'strike' : isWoken ? 'stock' : kind;
  const carried = plantOf(telling, act, found, draft);
  const isPurpose =
    kind === 'hardenOff' && (wordAt(pieces, from - 1) === 'to' || wordAt(pieces, from) === 'to');
  const how =
    swappedAt(pieces, act.clause) >= 0
      ? { how: 'swapped' as const }
      : isPaidFor(rule, pieces, act.hit.to, act.clause.to)
        ? { how: 'sold' as const }
        : isForNothing(rule, pieces, act.hit.from, endOf(telling, act))
          ? { how: 'given' as const }
          : {};
  return {
    kind: told,
    draft,
    slots: slotsOf({ ...rule, ...how, kind: told }, draft),
    rule: rule.name,
    ...(carried && !draft.leftOut ? { carried } : {}),
    ...(isPurpose ? { purpose: true } : {}),
  };
}

/** "Bunged 15 Salt Harrier in the greenhouse, three to a tube": so many in each are put in to root. */
const isSharedOut = ({ each, plant, quantity, fromPlace, which }: Draft): boolean =>
  each !== undefined &&
  plant !== undefined &&
  quantity?.value !== undefined &&
  fromPlace === undefined &&
  which === undefined;

/** The plant that an act without one is about, where it names no place either. */
function plantOf(telling: Telling, act: Act, found: Draft, draft: Draft): PlantWords | undefined {
  const { pieces, clauses, moods, utterance } = telling;
  const { n, clause, hit } = act;
  // "Took six Salt Harrier and watered everything", "… and moved everything on the shelf to the porch": not those six alone.
  const { kind } = hit.rule;
  const isAllOf = kind === 'tend' || (kind === 'move' && draft.fromPlace !== undefined);
  const ofAll =
    (kind === 'tend' && draft.place !== undefined) || (isAllOf && saysEverything(pieces, clause, utterance));
  if (draft.plant !== undefined || ofAll) return undefined;
  return (
    (draft.pronoun ? spokenOf(pieces, clause) : undefined) ??
    (isBare(act, found) ? sharedObject(pieces, clauses, moods, n) : undefined) ??
    carriedHere(telling) ??
    (draft.pronoun ? plantBefore(pieces, clause) : undefined)
  );
}
