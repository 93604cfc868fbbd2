/** The list of what a grower would call a silly thing to be asked; also for the demo season. */
import type { Day } from '../../src/calendar/day.js';
import { alive } from '../../src/ledger/batch.js';
import type { Ledger } from '../../src/ledger/ledger.js';
import { type Due, isDue } from '../../src/outlook/due.js';

/** Why the questions and statements of one day are silly; empty where none is. */
export function silly(ledger: Ledger, dues: readonly Due[], today: Day): string[] {
  const asked = dues.filter((due) => isDue(due, today));
  const perBatch = new Map<string, number>();
  for (const due of asked.filter(({ asks }) => asks))
    for (const label of due.labels) perBatch.set(label, (perBatch.get(label) ?? 0) + 1);
  return [
    ...[...perBatch]
      .filter(([, times]) => times > 1)
      .map(([label]) => `${label} is asked about twice in a day`),
    ...asked.flatMap((due) => due.labels.flatMap((label) => sillyOf(ledger, due, label, today))),
    ...(new Set(asked.map(({ key }) => key)).size < asked.length ? ['one thing is said twice'] : []),
    ...asked.filter((due) => due.from > due.bestBy).map((due) => `${due.key} is late before it is due`),
  ];
}

function sillyOf(ledger: Ledger, due: Due, label: string, today: Day): string[] {
  const batch = ledger.batches.get(label);
  if (!batch) return [`${label} does not exist`];
  const month = Number(today.slice(5, 7));
  const faults: [boolean, string][] = [
    [alive(batch) === 0, 'asked about after its loss'],
    [due.kind === 'check' && batch.hardeningSince !== null, 'roots looked for while hardening off'],
    [due.kind === 'check' && batch.plantedOut > 0, 'roots looked for in the border'],
    [due.kind === 'check' && batch.pottedOn >= alive(batch), 'roots looked for in its own pot'],
    [due.kind === 'check' && batch.struck === today, 'roots looked for on the day of striking'],
    [due.kind === 'potOn' && batch.rooted === 0, 'potting on what has no roots'],
    [due.kind === 'clearOut' && batch.rooted > batch.pottedOn, 'giving up on what has rooted'],
    [due.kind === 'pinch' && batch.hardeningSince !== null, 'pinching while hardening off'],
    [due.kind === 'pinch' && batch.pottedOn === 0 && batch.received === null, 'pinching what is not potted'],
    [due.kind === 'hardenOff' && batch.plantedOut >= alive(batch), 'hardening off what is planted out'],
    [due.kind === 'hardenOff' && (month === 12 || month <= 2), 'hardening off in winter'],
    [due.kind === 'plantOut' && (month === 12 || month <= 3), 'planting out in winter'],
    [due.kind === 'plantOut' && batch.plantedOut >= alive(batch), 'planting out what is out'],
    [
      due.kind === 'plantOut' && batch.rooted > 0 && (due.count ?? 0) > batch.rooted - batch.plantedOut,
      'planting out what never rooted',
    ],
    [due.kind === 'tend' && batch.rooted >= alive(batch), 'misting what has rooted'],
  ];
  return faults.filter(([is]) => is).map(([, what]) => `${label}: ${what} (${due.key} on ${today})`);
}
