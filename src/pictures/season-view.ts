/** What the season picture shows, as data: each batch's stages over time, what is expected, the frost, the targets. */
import { addDays, type Day, earliest, latest } from '../calendar/day.js';
import { alive, type Act, type Batch, began } from '../ledger/batch.js';
import type { Ledger } from '../ledger/ledger.js';
import type { Stage } from './palette.js';

/** A stretch of a batch's time in one stage with one number of living plants. */
export interface Piece {
  readonly from: Day;
  readonly to: Day;
  readonly stage: Stage;
  /** Living plants over those that the batch began with, 0–1: the bar's thickness. */
  readonly share: number;
}

export interface Mark {
  readonly day: Day;
  readonly what: 'struck' | 'received' | 'rooted' | 'pottedOn' | 'pinched' | 'hardening' | 'plantedOut';
}

/** Days within which roots are expected: one in ten earlier, half earlier, nine in ten earlier. */
export interface RootingRange {
  readonly p10: Day;
  readonly p50: Day;
  readonly p90: Day;
}

export interface Row {
  readonly label: string;
  readonly name: string;
  readonly alive: number;
  readonly count: number;
  readonly pieces: readonly Piece[];
  readonly marks: readonly Mark[];
  readonly rooting: RootingRange | null;
}

export interface Group {
  readonly crop: string;
  readonly rows: readonly Row[];
  readonly targets: readonly TargetView[];
}

export interface TargetView {
  readonly name: string;
  readonly crop: string;
  readonly wanted: number;
  /** Null where no day was named. */
  readonly by: Day | null;
  /** Chance that the live batches give as many in time, 0–1; null where it cannot be said yet. */
  readonly chance: number | null;
}

export interface FrostView {
  /** Chance that a frost still comes after that day, 0–1, in order of days. */
  readonly risk: readonly { readonly day: Day; readonly p: number }[];
  readonly plantOutOn: Day | null;
}

export interface SeasonView {
  readonly from: Day;
  readonly to: Day;
  readonly today: Day;
  readonly groups: readonly Group[];
  readonly frost: FrostView | null;
}

/** What is seen ahead, supplied by the outlook. */
export interface SeasonAhead {
  readonly rooting: (batch: Batch) => RootingRange | null;
  readonly frost: FrostView | null;
  readonly targets: readonly TargetView[];
}

const otherCrop = 'other';

/** The batches with something still to come, or something done since `since`, grouped by crop, oldest first. */
export function seasonViewOf(ledger: Ledger, today: Day, since: Day, ahead: SeasonAhead): SeasonView {
  const batches = [...ledger.batches.values()].filter(
    (batch) => began(batch) <= today && endOf(batch, today) >= since,
  );
  const crops = [...new Set([...batches.map(cropOf), ...ahead.targets.map(({ crop }) => crop)])].sort();
  const groups = crops.map((crop) => ({
    crop,
    rows: batches
      .filter((batch) => cropOf(batch) === crop)
      .sort((a, b) => began(a).localeCompare(began(b)))
      .map((batch) => rowOf(batch, today, ahead.rooting(batch))),
    targets: ahead.targets.filter((target) => target.crop === crop),
  }));
  const days = groups.flatMap((group) => [
    ...group.rows.flatMap(({ pieces, rooting }) => [
      ...pieces.map(({ from }) => from),
      ...(rooting ? [rooting.p90] : []),
    ]),
    ...group.targets.flatMap(({ by }) => by ?? []),
  ]);
  const first = days.reduce(earliest, today);
  const last = [...days, ...(ahead.frost?.plantOutOn ? [ahead.frost.plantOutOn] : [])].reduce(latest, today);
  return { from: addDays(first, -3), to: addDays(last, 7), today, groups, frost: ahead.frost };
}

function cropOf(batch: Batch): string {
  return batch.crop ?? otherCrop;
}

/** The day of the last thing done to it where all went or are planted out, else today. */
function endOf(batch: Batch, today: Day): Day {
  return alive(batch) > batch.plantedOut ? today : (batch.acts.at(-1)?.on ?? began(batch));
}

function rowOf(batch: Batch, today: Day, rooting: RootingRange | null): Row {
  return {
    label: batch.label,
    name: batch.variety ?? batch.crop ?? '',
    alive: alive(batch),
    count: batch.count,
    pieces: piecesOf(batch, today),
    marks: marksOf(batch),
    rooting: batch.rooted === 0 ? rooting : null,
  };
}

function piecesOf(batch: Batch, today: Day): Piece[] {
  const acts = [...batch.acts].sort((a, b) => a.on.localeCompare(b.on) || a.line - b.line);
  const pieces: Piece[] = [];
  let stage: Stage = batch.struck === null ? 'rooted' : 'rooting';
  let living = batch.count;
  let from = began(batch);
  const until = (to: Day) => {
    if (to > from && living > 0) pieces.push({ from, to, stage, share: living / batch.count });
    from = latest(from, to);
  };
  for (const act of acts) {
    const next = stageAfter(stage, act);
    const gone = act.kind === 'loss' || act.kind === 'dispatch' ? (act.count ?? 0) : 0;
    if (next === stage && gone === 0) continue;
    until(act.on);
    stage = next;
    living = Math.max(0, living - gone);
  }
  until(addDays(today, 1));
  return pieces;
}

const order: readonly Stage[] = ['rooting', 'rooted', 'pottedOn', 'hardening', 'plantedOut'];

function stageAfter(stage: Stage, { kind, count }: Act): Stage {
  const reached: Partial<Record<Act['kind'], Stage>> = {
    potOn: 'pottedOn',
    hardenOff: 'hardening',
    plantOut: 'plantedOut',
    ...(count !== 0 ? { check: 'rooted' } : {}),
  };
  const next = reached[kind];
  return next !== undefined && order.indexOf(next) > order.indexOf(stage) ? next : stage;
}

function marksOf(batch: Batch): Mark[] {
  const marks: Mark[] = [{ day: began(batch), what: batch.struck === null ? 'received' : 'struck' }];
  const seen = new Set<Mark['what']>();
  for (const { kind, on, count } of batch.acts) {
    const what = markOf(kind, count);
    if (what === null || seen.has(what)) continue;
    seen.add(what);
    marks.push({ day: on, what });
  }
  return marks;
}

function markOf(kind: Act['kind'], count: number | null): Mark['what'] | null {
  switch (kind) {
    case 'check':
      return count === 0 ? null : 'rooted';
    case 'potOn':
      return 'pottedOn';
    case 'pinch':
      return 'pinched';
    case 'hardenOff':
      return 'hardening';
    case 'plantOut':
      return 'plantedOut';
    default:
      return null;
  }
}
