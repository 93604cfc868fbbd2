/** The acts that a row of pieces tells of: its clauses, their moods, and what each names or carries over. */
import { acrossTheRow } from './across-row.js';
import { isSomeonesPlant } from './another-grower.js';
import { eachOfBoth } from './both-meant.js';
import { caresGiven } from './cares-given.js';
import { type Clause, clausesOf } from './clauses.js';
import { isSupposed, moodsOnCondition } from './conditions.js';
import { sharedMoods, sharedObject, sharedPlace } from './side-by-side.js';
import { draftsOf } from './drafting.js';
import type { Draft } from './drafting/draft.js';
import { isCutOff } from './given-up.js';
import { findHits } from './grammar/hits.js';
import { wordAt } from './grammar/rule.js';
import { rules } from './grammar/rules.js';
import { moodOf } from './mood.js';
import { elidedLooks } from './elided.js';
import { dayOf, toldBefore } from './lent-before.js';
import { allButKept } from './kept-back.js';
import { doneAndLeft, leftForLater } from './left-undone.js';
import type { Note } from './note.js';
import { countedBy, lookBefore, outOf } from './number-meant.js';
import { partsOf } from './act-parts.js';
import { actsOnPlants, tendsSomethingElse } from './objects.js';
import { lostBecause } from './parts-ruined.js';
import type { Piece, PlantWords, When } from './pieces.js';
import { proposeReading } from './reading-proposal.js';
import type { Quantity } from './quantities/quantity.js';
import type { Proposal } from './proposal.js';
import { proposeRemark } from './remark-proposal.js';
import { sentenceOf } from './sentences.js';
import { slotsOf } from './slots.js';
import { carriedFrom, plantBefore, sortedOut, spokenOf } from './spoken-before.js';
import { stateBehind } from './state-behind.js';
import { isTemperature, telegraphs } from './telegraphs.js';
import type { Utterance } from './utterance.js';
import { eachPlace, withWhereTo } from './where-to.js';

export interface Acts {
  readonly proposals: readonly Proposal[];
  /** How many acts were named, done or not. */
  readonly hits: number;
}

export function proposeActs(
  row: readonly Piece[],
  earlier: readonly Proposal[],
  utterance: Utterance,
  note: Note,
): Acts {
  if (isSupposed(row) || isCutOff(row)) return { proposals: [], hits: findHits(rules, row).length };
  const proposals: Proposal[] = [];
  let hits = 0;
  const { done, later } = doneAndLeft(row);
  for (const pieces of telegraphs(done)) {
    const temperatures = isTemperature(pieces)
      ? proposeReading(sentenceOf(pieces, utterance), note)
      : undefined;
    if (temperatures) {
      proposals.push(...temperatures);
      hits++;
      continue;
    }
    const acts = actsOf(pieces, [...earlier, ...proposals], utterance);
    proposals.push(...acts.proposals);
    hits += acts.hits;
  }
  return { proposals: [...acrossTheRow(proposals, done), ...leftForLater(later, utterance)], hits };
}

function actsOf(pieces: readonly Piece[], earlier: readonly Proposal[], utterance: Utterance): Acts {
  const proposals: Proposal[] = [];
  let hits = 0;
  let plantNamed: PlantWords | undefined;
  let lookedAt: number | undefined;
  let lookedOn: When | undefined;
  // How many were said not to have rooted: "they" that go out behind it.
  let unrooted: Quantity | undefined;
  const clauses = clausesOf(pieces, rules);
  const own = clauses.map((clause) => moodOf(pieces, clause));
  const moods = moodsOnCondition(pieces, clauses, sharedMoods(pieces, clauses, own));
  for (const [n, clause] of clauses.entries()) {
    if (!clause.hit) continue;
    hits++;
    const mood = moods[n] ?? 'done';
    const { rule } = clause.hit;
    const { kind } = rule;
    if (kind === 'aside') {
      const [aside] = draftsOf(pieces, clause);
      const others = allButKept(proposals.at(-1), rule, aside);
      if (others) proposals[proposals.length - 1] = others;
      plantNamed = aside?.plant ?? plantNamed;
      lookedAt = rule.sense === 'sample' ? aside?.quantity?.value : undefined;
      continue;
    }
    // "Tipped out ten, six had roots": ten were looked at.
    const found = clauses[n + 1];
    if (mood === 'done' && rule.sense === 'look' && found?.hit?.rule.kind === 'check') {
      const look = lookBefore(pieces, clause, found);
      if (look) {
        plantNamed = look.plant ?? plantNamed;
        lookedAt = look.quantity?.value;
        lookedOn = look.when;
        continue;
      }
    }
    const carriedHere = (): PlantWords | undefined => plantNamed ?? carriedFrom([...earlier, ...proposals]);
    if (mood === 'denied' && kind === 'check' && rule.sense !== 'look') {
      const [draft] = draftsOf(pieces, clause);
      // "Six of them haven't rooted": of the others nothing is said.
      if (draft?.quantity?.value !== undefined && draft.quantity.value > 0 && !isNotOne(pieces, clause)) {
        unrooted = draft.quantity;
        plantNamed = draft.plant ?? plantNamed;
        continue;
      }
      // "Binned eight of them, never rooted": why those went.
      if (draft?.plant === undefined && isWhyLost(pieces, clause, proposals.at(-1))) continue;
      const carried = draft?.plant === undefined ? carriedHere() : undefined;
      proposals.push({
        kind,
        draft: {
          ...(draft?.plant ? { plant: draft.plant } : {}),
          ...(draft?.when ? { when: draft.when } : {}),
        },
        slots: { rooted: 'none' },
        rule: `not ${rule.name}`,
        ...(carried ? { carried } : {}),
      });
      continue;
    }
    if (mood !== 'done') {
      // "Wanted to check the Salt Harrier, found roots on three", "meant to take ten Ember Fox but took six": theirs.
      const again = mood === 'supposed' && clauses[n + 1]?.hit?.rule.kind === kind;
      if (rule.sense === 'look' || again) plantNamed = draftsOf(pieces, clause)[0]?.plant ?? plantNamed;
      continue;
    }
    const purpose =
      kind === 'hardenOff' &&
      (wordAt(pieces, clause.hit.from - 1) === 'to' || wordAt(pieces, clause.hit.from) === 'to');
    const told = rule.how === 'swapped' ? beforeReturn(pieces, clause) : clause;
    const parts = partsOf(pieces, told);
    const drafts = parts.flatMap((part) =>
      draftsOf(pieces, part).map((found) =>
        withWhereTo(found, rule, pieces, rule.kind === 'move' || parts.length > 1 ? part : clause, utterance),
      ),
    );
    const ours = drafts.filter(
      ({ plant }) => !(/^(?:check|loss)$/.test(kind) && isSomeonesPlant(plant, pieces)),
    );
    const guarded = ours.filter((found) =>
      PLANT_ACTS.has(kind)
        ? parts.length > 1 || actsOnPlants(found, pieces, clause)
        : kind !== 'tend' ||
          (actsOnPlants({ ...found, pronoun: true }, pieces, clause) &&
            !tendsSomethingElse(found, pieces, clause)),
    );
    const explained =
      guarded.length === 0 ? lostBecause(proposals.at(-1), pieces, clause, drafts) : undefined;
    if (explained) proposals[proposals.length - 1] = explained;
    for (const drafted of kind === 'tend'
      ? eachPlace(guarded, pieces, clause)
      : eachOfBoth(guarded, kind, proposals)) {
      const since = clauses[n - 1]?.hit?.to ?? 0;
      const sorted =
        kind === 'loss' && drafted.quantity === undefined && drafted.plant === undefined
          ? sortedOut(pieces, clause, since)
          : undefined;
      const counted = countedBy(pieces, clause, { ...sorted, ...drafted }, unrooted);
      const isBare =
        kind === 'tend' && drafted.plant === undefined && !drafted.pronoun && drafted.place === undefined;
      const beside = isBare ? sharedPlace(pieces, clauses, moods, n) : undefined;
      const draft: Draft = {
        ...(kind === 'check' && lookedAt !== undefined && counted.quantity?.outOf === undefined
          ? outOf(counted, lookedAt)
          : counted),
        ...toldBefore(pieces, clause, counted, [...earlier, ...proposals]),
        ...(kind === 'check' && lookedOn ? { when: lookedOn } : {}),
        ...dayOf(pieces, clause, counted, proposals.at(-1)),
        ...(beside === undefined ? {} : { place: beside }),
      };
      const shared = isBare ? sharedObject(pieces, clauses, moods, n) : undefined;
      const placed = kind === 'tend' && draft.place !== undefined;
      const carried =
        draft.plant === undefined && !placed
          ? ((draft.pronoun ? spokenOf(pieces, clause) : undefined) ??
            shared ??
            carriedHere() ??
            (draft.pronoun ? plantBefore(pieces, clause) : undefined))
          : undefined;
      // "Threw eight Mossy Dell into the propagator, tips, no powder": cuttings, however they were told.
      const inserted = kind === 'move' && (draft.cutting !== undefined || draft.hormone !== undefined);
      const proposed: Proposal = {
        kind: inserted ? 'strike' : kind,
        draft,
        slots: slotsOf(inserted ? { ...rule, kind: 'strike' } : rule, draft),
        rule: rule.name,
        ...(carried && !draft.leftOut ? { carried } : {}),
        ...(purpose ? { purpose } : {}),
      };
      const cares = kind === 'tend' ? caresGiven(pieces, clause) : [];
      if (cares.length === 0) proposals.push(proposed);
      else proposals.push(...cares.map((care) => ({ ...proposed, slots: { ...proposed.slots, care } })));
      if (draft.plant) plantNamed = draft.plant;
    }
    const state = stateBehind(pieces, clause.to, clauses[n + 1]?.from ?? pieces.length);
    if (state && guarded.length > 0 && clauses[n + 1] === undefined)
      proposals.push(...(proposeRemark(sentenceOf(state, utterance), utterance) ?? []));
    const look = proposals.findLast((told) => told.kind === 'check');
    for (const draft of look ? elidedLooks(pieces, clause.to, clauses[n + 1]?.from ?? pieces.length) : []) {
      const when = look?.draft.when;
      const told = { ...draft, ...(when ? { when } : {}) };
      proposals.push({ kind: 'check', draft: told, slots: {}, rule: '<plant> <count>, behind a look' });
      plantNamed = draft.plant;
    }
  }
  return { proposals, hits };
}

/** "Not a root on one of the Soft Anchor": one stands for each of them. */
function isNotOne(pieces: readonly Piece[], clause: Clause): boolean {
  const own = pieces.slice(clause.from, clause.to);
  return own.some((_, at) => wordAt(own, at) === 'not' && /^(?:a|single)$/.test(wordAt(own, at + 1)));
}

/** Of a swap, what came back ("for one of her ferns") is no part of what left. */
function beforeReturn(pieces: readonly Piece[], clause: Clause): Clause {
  const from = clause.hit?.to ?? clause.from;
  const named = clause.hit?.rule.shape === 'subject' ? clause.from : from;
  for (let at = from; at < clause.to; at++) {
    const piece = pieces[at];
    if (
      piece?.is === 'word' &&
      piece.text === 'for' &&
      pieces.slice(named, at).some(({ is }) => is === 'plant')
    )
      return { ...clause, to: at };
  }
  return clause;
}

/** Acts that are told of other things in the same words. */
const PLANT_ACTS: ReadonlySet<string> = new Set(
  'loss dispatch potOn plantOut pinch stock receive strike move hardenOff'.split(' '),
);

/** Told of no plant behind a comma, straight behind a loss of so many. */
function isWhyLost(pieces: readonly Piece[], { from, hit }: Clause, before: Proposal | undefined): boolean {
  const start = hit?.from ?? from;
  return (
    before?.kind === 'loss' &&
    before.draft.quantity?.value !== undefined &&
    (pieces[start - 1]?.is === 'break' || pieces[start - 2]?.is === 'break')
  );
}
