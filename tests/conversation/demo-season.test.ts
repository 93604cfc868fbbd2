/** The demo season comes to its ledger, and in it no prompt that a grower would call silly. */
import { describe, expect, it } from 'vitest';
import { addDays, type Day } from '../../src/calendar/day.js';
import { localDay, localTime } from '../../src/calendar/zone.js';
import { demoSeason, talkOf } from '../../src/command-line/demo.js';
import { batchRecord } from '../../src/conversation/replays/record.js';
import { replay, type Said } from '../../src/conversation/replays/replay.js';
import type { PromptAbout } from '../../src/conversation/turn.js';
import { alive } from '../../src/ledger/batch.js';

const { conversation } = demoSeason();
const replayed = replay(conversation);
const { ledger } = replayed.world;

interface Given extends PromptAbout {
  readonly day: Day;
  readonly time: string;
  readonly said: Said;
}

const given: Given[] = replayed.said.flatMap((said) =>
  (said.outgoing.prompts ?? []).map((about) => ({
    ...about,
    day: localDay(said.at, conversation.zone),
    time: localTime(said.at, conversation.zone),
    said,
  })),
);

/** First day on which something of that kind was told of the batch. */
function firstOf(kind: string, label: string | undefined): Day | undefined {
  return ledger.batches.get(label ?? '')?.acts.find((act) => act.kind === kind)?.on;
}

describe('the demo season', () => {
  it('ends with the ledger that the grower told', () => {
    const records = [...ledger.batches.values()].map(batchRecord);
    expect(
      records.map(({ label, alive: living, rooted, plantedOut }) => [label, living, rooted, plantedOut]),
    ).toEqual([
      ['CL1', 7, 7, 7],
      ['MW1', 5, 3, 3],
      ['CL2', 7, 5, 5],
      ['VL1', 10, 10, 10],
      ['VP1', 12, 9, 9],
    ]);
  });

  it('prompts for every stage', () => {
    const kinds = new Set(given.map(({ about }) => about));
    for (const kind of ['check', 'potOn', 'pinch', 'hardenOff', 'plantOut', 'strike'])
      expect(kinds).toContain(kind);
  });

  it('never asks about one batch twice in a day', () => {
    const once = given.filter(({ batch }) => batch !== undefined).map(({ batch, day }) => `${batch} ${day}`);
    expect(once).toEqual([...new Set(once)]);
  });

  it('never asks again before something has changed', () => {
    const asked = given.map(({ about, batch, variety, said }) => ({
      about: `${about} ${batch ?? variety}`,
      at: said.at,
    }));
    for (const [index, { about, at }] of asked.entries()) {
      const again = asked.slice(index + 1).find((each) => each.about === about);
      if (!again) continue;
      expect(
        conversation.turns.some((turn) => turn.at > at && turn.at < again.at),
        about,
      ).toBe(true);
    }
  });

  it('never looks for roots of what is hardening off, out or gone', () => {
    for (const { about, batch, day } of given.filter((each) => each.about === 'check')) {
      const since = [firstOf('hardenOff', batch), firstOf('plantOut', batch)].filter(
        (each) => each !== undefined,
      );
      for (const begun of since) expect(day < begun, `${about} ${batch} on ${day}`).toBe(true);
      expect(alive(ledger.batches.get(batch ?? '')!)).toBeGreaterThan(0);
    }
  });

  it('never asks to pot on, pinch, harden or plant what was not taken so far yet', () => {
    const before = { potOn: 'check', pinch: 'potOn', hardenOff: 'potOn', plantOut: 'hardenOff' } as const;
    for (const { about, batch, day } of given) {
      if (!(about in before)) continue;
      const first = firstOf(before[about as keyof typeof before], batch);
      expect(first !== undefined && first < day, `${about} ${batch} on ${day}`).toBe(true);
    }
  });

  it('speaks unasked at the hour that was set, and never sooner than the day after a batch began', () => {
    for (const { batch, day, time } of given) {
      expect(time).toBe('08:00');
      const began = ledger.batches.get(batch ?? '')?.struck;
      if (began) expect(day >= addDays(began, 1)).toBe(true);
    }
  });

  it('lets no young pelargonium be disturbed in winter', () => {
    const winter = given.filter(
      ({ batch, day }) => batch === 'VP1' && day > '2026-10-31' && day < '2027-03-01',
    );
    expect(winter).toEqual([]);
  });

  it('reads as a chat', () => {
    const talk = talkOf(conversation, replayed);
    expect(talk).toContain('› some');
    expect(talk.split('\n').filter((line) => line.startsWith('20')).length).toBeGreaterThan(
      conversation.turns.length,
    );
  });
});
