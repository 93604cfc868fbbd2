/** Runs the transcripts of `fixtures/sessions`: what was said, the ledger at the end, and what holds after every turn. */
import { Ajv2020 } from 'ajv/dist/2020.js';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { localDay, localTime } from '../../src/calendar/zone.js';
import { type BatchRecord, batchRecord, entryRecords } from '../../src/conversation/replays/record.js';
import { replay, type Replayed } from '../../src/conversation/replays/replay.js';
import type { World } from '../../src/conversation/world.js';
import { memoryKeeper } from '../../src/outlook/keeper.js';
import { fold } from '../../src/ledger/fold.js';
import { readTranscript } from '../../src/conversation/replays/transcript.js';

const fits = new Ajv2020().compile(JSON.parse(readFileSync('shared/answer.schema.json', 'utf8')) as object);
const keeper = memoryKeeper();
const folder = resolve(import.meta.dirname, '../../fixtures/sessions');
const transcripts = readdirSync(folder)
  .filter((name) => name.endsWith('.txt'))
  .map((name) => ({ name, ...readTranscript(readFileSync(join(folder, name), 'utf8')) }));

describe('conversations', () => {
  it('are forty or more', () => expect(transcripts.length).toBeGreaterThanOrEqual(40));

  it.each(transcripts)('$name: $title', ({ conversation, replies, batches, entries }) => {
    const replayed = replay(conversation, { watch: addsUp, keeper });
    for (const { turn, words, absent } of replies) {
      const texts = spokenAt(replayed, turn);
      if (absent) expect(texts, `after turn ${turn + 1}`).not.toContain(words);
      else expect(texts, `after turn ${turn + 1}`).toContain(words);
    }
    const records = [...replayed.world.ledger.batches.values()].map(batchRecord);
    expect(records.map((record, index) => asListed(record, batches[index] ?? ''))).toEqual(batches);
    if (entries !== null) expect(entryRecords(replayed.world.ledger).map(entryWords)).toEqual(entries);
    for (const { by, ...entry } of entryRecords(replayed.world.ledger)) {
      const answer = { id: String(by), entries: [JSON.parse(JSON.stringify(entry))], asks: [] };
      expect(fits(answer), `${JSON.stringify(entry)} ${JSON.stringify(fits.errors)}`).toBe(true);
    }
    promptsAreCivil(replayed);
    expect(fold(replayed.journal).conflicts).toEqual([]);
  });
});

function addsUp({ ledger }: World): void {
  for (const batch of [...ledger.batches.values()].map(batchRecord)) {
    expect(batch.alive).toBe(batch.count - batch.lost - batch.dispatched);
    expect(batch.alive).toBeGreaterThanOrEqual(0);
    expect(batch.rooted).toBeGreaterThanOrEqual(batch.pottedOn);
    expect(batch.pottedOn).toBeGreaterThanOrEqual(batch.plantedOut);
    expect(batch.rooted).toBeLessThanOrEqual(batch.count);
  }
}

/** What was said to that turn and, up to the next, unasked. */
function spokenAt({ said }: Replayed, turn: number): string {
  const from = said.findIndex((each) => each.turn === turn);
  const upTo = said.findIndex((each) => (each.turn ?? -1) > turn);
  return said
    .slice(from < 0 ? 0 : from, upTo < 0 ? undefined : upTo)
    .map(
      ({ outgoing }) =>
        `${outgoing.text} [${(outgoing.buttons ?? [])
          .flat()
          .map(({ label }) => label)
          .join(' | ')}]`,
    )
    .join('\n');
}

function promptsAreCivil({ said, world: { settings } }: Replayed): void {
  const seen = new Set<string>();
  for (const { at, outgoing } of said) {
    for (const { about, batch } of outgoing.prompts ?? []) {
      const time = localTime(at, settings.zone);
      expect(time >= settings.quiet[1] && time < settings.quiet[0], `${about} at ${time}`).toBe(true);
      if (batch === undefined) continue;
      const once = `${about} ${batch} ${localDay(at, settings.zone)}`;
      expect(seen.has(once), `twice: ${once}`).toBe(false);
      seen.add(once);
    }
  }
}

const numbers = ['count', 'pots', 'alive', 'rooted', 'pottedOn', 'plantedOut', 'lost', 'dispatched'] as const;

/** The batch as its transcript lists it: the numbers that are named there or are not 0, the place where it is named. */
function asListed(record: BatchRecord, listed: string): string {
  const shown = numbers
    .filter((slot) => (slot === 'pots' ? listed.includes(', pots ') : record[slot] !== 0))
    .map((slot) => `${slot} ${record[slot]}`);
  const began = record.struck === null ? `received ${record.received}` : `struck ${record.struck}`;
  const place = listed.includes(', place ') ? [`place ${record.place}`] : [];
  return `${record.label} ${record.variety ?? record.crop}: ${[began, ...shown, ...place].join(', ')}`;
}

/** "strike EF1 12", "check EF1 2", "tend propagator mist", with the grower where there are several. */
function entryWords(logged: object): string {
  const entry = logged as Record<string, unknown>;
  const what = entry['batch'] ?? entry['variety'] ?? entry['crop'];
  const slots = ['count', 'rooted', 'care', 'place', 'fromPlace', 'cause', 'to', 'celsius', 'text'].flatMap(
    (slot) => (entry[slot] === undefined ? [] : [String(entry[slot])]),
  );
  const by = entry['by'] === undefined ? [] : [`by ${String(entry['by'])}`];
  return [entry['kind'], ...(what === undefined ? [] : [what]), ...slots, ...by].join(' ');
}
