/** Spoken notes in a conversation: what waits for a yes, what does not, and what replaces what. */
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { instantAt } from '../../src/calendar/zone.js';
import { replay, type Replayed, type ReplayTurn } from '../../src/conversation/replays/replay.js';
import type { HeardWord } from '../../src/language/note.js';

const zone = 'Europe/London';
const sure = (text: string): HeardWord[] => text.split(' ').map((word) => ({ word, p: 0.999 }));
const unsure = (text: string): HeardWord[] => text.split(' ').map((word) => ({ word, p: 0.4 }));

type Turn =
  { say: string } | { heard: readonly HeardWord[]; others?: readonly string[]; lags?: readonly number[] };

function talk(...turns: Turn[]): Replayed {
  const timed: ReplayTurn[] = turns.map((turn, at) => ({
    at: instantAt(asDay('2026-04-08'), `10:${String(10 + 2 * at)}`, zone),
    ...turn,
  }));
  return replay({ zone, start: timed[0]?.at ?? 0, settings: {}, turns: timed });
}

const kinds = ({ journal }: Replayed): string[] =>
  journal.map(({ what }) => ('kind' in what ? String(what.kind) : 'other'));
const texts = ({ said }: Replayed): string => JSON.stringify(said);

const struck = { say: 'took 4 cuttings of Copper Lantern dahlia in the propagator' };

describe('a spoken note', () => {
  it.each([
    ['make that four', 4],
    ['actually it was nine', 9],
    ['the copper lantern i took were seven', 7],
    ['it was eight i took not five', 8],
  ])('that puts something right does so behind a yes: %s', (words, count) => {
    const talked = talk(
      { say: 'took 5 cuttings of Copper Lantern dahlia' },
      { heard: unsure(words) },
      { say: 'yes' },
    );
    expect([...talked.world.ledger.batches.values()].map((batch) => batch.count)).toEqual([count]);
  });

  it('that takes something back does so behind a yes', () => {
    const talked = talk(
      { say: 'took 5 cuttings of Copper Lantern dahlia' },
      { heard: unsure('undo that') },
      { say: 'yes' },
    );
    expect(talked.world.ledger.standing).toEqual([]);
  });

  it('with a number waits for a yes, however sure, and shows what was heard', () => {
    const spoken = { heard: sure('took five cuttings of copper lantern') };
    expect(kinds(talk(struck, spoken))).toEqual(['strike']);
    expect(texts(talk(struck, spoken))).toContain('I heard: took');
    expect(kinds(talk(struck, spoken, { say: 'yes' }))).toEqual(['strike', 'strike']);
    expect(kinds(talk(struck, spoken, { say: 'no' }))).toEqual(['strike']);
  });

  it('is answered by a spoken yes', () => {
    const spoken = { heard: sure('took five cuttings of copper lantern') };
    expect(kinds(talk(struck, spoken, { heard: sure('yes') }))).toEqual(['strike', 'strike']);
  });

  it('is posted unasked where all of it is sure and no number is told', () => {
    const talked = talk(struck, { heard: sure('misted the copper lantern') });
    expect(kinds(talked)).toEqual(['strike', 'tend']);
    expect(texts(talked)).toContain('I heard: misted');
  });

  it('waits where a word is in doubt', () => {
    expect(kinds(talk(struck, { heard: unsure('misted the copper lantern') }))).toEqual(['strike']);
  });

  it('said again or typed replaces the draft', () => {
    const first = { heard: sure('lost three of the copper lantern') };
    const again = { heard: sure('lost two of the copper lantern') };
    const talked = talk(struck, first, again, { say: 'yes' });
    expect(kinds(talked)).toEqual(['strike', 'loss']);
    expect(talked.journal.at(-1)?.what).toMatchObject({ count: 2 });
  });

  it('that only asks is answered at once', () => {
    const talked = talk(struck, { heard: unsure('how many copper lantern have i got') });
    expect(kinds(talked)).toEqual(['strike']);
    expect(texts(talked)).not.toContain('Is that right?');
  });

  it('of which nothing was understood is asked about as it may have been heard otherwise, and never posted unasked', () => {
    const garbled = { heard: sure('the mystic the cop a land turn'), others: ['misted the copper lantern'] };
    const talked = talk(struck, garbled);
    expect(kinds(talked)).toEqual(['strike']);
    expect(texts(talked)).toContain('I heard: (misted?) (the?) (copper?) (lantern?). Is that right?');
    expect(kinds(talk(struck, garbled, { say: 'yes' }))).toEqual(['strike', 'tend']);
  });

  it('that was understood is what it was heard as, whatever else it may have been', () => {
    const spoken = {
      heard: sure('lost two of the copper lantern'),
      others: ['lost three of the copper lantern'],
    };
    expect(talk(struck, spoken, { say: 'yes' }).journal.at(-1)?.what).toMatchObject({
      kind: 'loss',
      count: 2,
    });
  });

  it('that another hearing tells more plainly is asked about as that', () => {
    const spoken = {
      heard: unsure('planted the copper lantern under the window'),
      others: ['planted three copper lantern under the window'],
      lags: [9],
    };
    const talked = talk(struck, spoken);
    expect(kinds(talked)).toEqual(['strike']);
    expect(texts(talked)).toContain('(planted?) (three?) (copper?)');
    expect(talk(struck, spoken, { say: 'yes' }).journal.at(-1)?.what).toMatchObject({ count: 3 });
  });

  it('off the subject posts nothing', () => {
    expect(kinds(talk({ heard: sure('lovely morning out there today') }))).toEqual([]);
  });
});
