/** Holds the corpus of notes to its own rules, and the reader to the score it has reached on it. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { bringIn, bringInExamples, dayOfNote, halves, type CorpusNote, type Gold } from './corpus-note.js';
import { shapeFaults } from './gold-shape.js';
import { readAndJudge, scoreOf } from './reading.js';
import { judge, type Answer, type AnsweredEntry } from './score.js';
import { wantedValues } from './slot-comparison.js';

const notes = halves.flatMap(bringIn);
const kept = JSON.parse(readFileSync('fixtures/notes/scores.json', 'utf8')) as Record<
  string,
  { exact: number; wrong: number; needless: number }
>;

const goldsOf = (note: CorpusNote) => [note.gold, ...(note.gold.alts ?? [])];

describe('the corpus of notes', () => {
  it('holds at least 800 notes, at least 400 in either half', () => {
    expect(notes.length).toBeGreaterThanOrEqual(800);
    for (const half of halves) expect(bringIn(half).length, half).toBeGreaterThanOrEqual(400);
  });

  it('gives every note an id of its own', () => {
    expect(new Set(notes.map((note) => note.id)).size).toBe(notes.length);
  });

  it('has no text of the unseen half in the dev half', () => {
    const unseen = new Set(bringIn('unseen').map((note) => note.text.toLowerCase()));
    const shared = bringIn('dev').filter((note) => unseen.has(note.text.toLowerCase()));
    // Bare answers have few ways to be said.
    expect(shared.filter((note) => note.text.split(' ').length > 2).map((note) => note.text)).toEqual([]);
  });

  it('says the same families in both halves, eight notes of each and more', () => {
    const families = (half: 'dev' | 'unseen') => [...new Set(bringIn(half).map((n) => n.family))].sort();
    expect(families('dev')).toEqual(families('unseen'));
    for (const half of halves)
      for (const family of families(half)) {
        const size = bringIn(half).filter((note) => note.family === family).length;
        expect(size, `${half} ${family}`).toBeGreaterThanOrEqual(8);
      }
  });

  it('has golds of the shape that the note contract gives', () => {
    const faults = notes.flatMap((note) =>
      goldsOf(note).flatMap(({ entries }) => entries.flatMap(shapeFaults).map((f) => `${note.id}: ${f}`)),
    );
    expect(faults).toEqual([]);
  });

  it('takes the shape of the examples that the note contract gives', () => {
    const faults = bringInExamples().flatMap((note) =>
      goldsOf(note).flatMap(({ entries }) => entries.flatMap(shapeFaults).map((f) => `${note.id}: ${f}`)),
    );
    expect(faults).toEqual([]);
  });

  it('dates what was done no later than the note, and what is wanted no earlier', () => {
    const astray = notes.filter((note) =>
      goldsOf(note).some(({ entries }) =>
        entries.some(({ kind, date }) => {
          const days = typeof date === 'string' ? [date] : [];
          if (kind === 'target' || kind === 'remind') return days.some((day) => day < dayOfNote(note));
          return days.some((day) => day > dayOfNote(note));
        }),
      ),
    );
    expect(astray.map((note) => note.id)).toEqual([]);
  });

  it('names only batches that the context of the note knows', () => {
    const unknown = notes.filter((note) => {
      const labels = (note.context?.batches ?? []).map((batch) => batch.label);
      return note.gold.entries.some(({ batch }) => typeof batch === 'string' && !labels.includes(batch));
    });
    expect(unknown.map((note) => note.id)).toEqual([]);
  });

  it('lists batches oldest first', () => {
    const outOfOrder = notes.filter((note) => {
      const struck = (note.context?.batches ?? []).map((batch) => batch.struck ?? '');
      return struck.join() !== [...struck].sort().join();
    });
    expect(outOfOrder.map((note) => note.id)).toEqual([]);
  });
});

describe('the judge', () => {
  it('calls each gold, given as the answer, exact', () => {
    const firstOf = (wanted: unknown): unknown => wantedValues(wanted)[0] ?? undefined;
    const answerOf = ({ entries, mustAsk }: Gold): Answer => ({
      entries: entries.map((entry) => {
        const slots = Object.entries(entry).map(([slot, wanted]) => [slot, firstOf(wanted)]);
        const set = Object.entries(entry['set'] ?? {}).map(([slot, wanted]) => [slot, firstOf(wanted)]);
        const answered = Object.fromEntries(slots) as AnsweredEntry;
        return set.length > 0 ? { ...answered, set: Object.fromEntries(set) as object } : answered;
      }),
      asks: mustAsk.map((slot) => ({ entry: 0, slot })),
    });
    const amiss = [...notes, ...bringInExamples()].flatMap((note) =>
      goldsOf(note).flatMap((gold) => judge(note, answerOf(gold)).faults.map((f) => `${note.id}: ${f}`)),
    );
    expect(amiss).toEqual([]);
  });

  const note: CorpusNote = {
    id: 'judged',
    text: 'lost 2 Ember Fox, potted on the rest',
    now: '2026-04-08T10:15:00+01:00',
    zone: 'Europe/London',
    family: 'none',
    voice: 'none',
    gold: {
      entries: [
        { kind: 'loss', variety: 'Ember Fox', count: 2, date: { any: ['2026-04-08', null] } },
        { kind: 'potOn', variety: 'Ember Fox', potSize: '9cm' },
      ],
      mustAsk: [],
    },
  };
  const loss = { kind: 'loss', variety: 'ember fox', count: 2 };
  const potOn = { kind: 'potOn', variety: 'Ember Fox', potSize: '9cm' };
  const outcome = (answer: Answer) => judge(note, answer).outcome;

  it('takes the normal form: today and all may be left out or said, names in any case', () => {
    expect(outcome({ entries: [loss, { ...potOn, count: 'all', date: '2026-04-08' }], asks: [] })).toBe(
      'exact',
    );
  });

  it('calls an entry too many and another value wrong', () => {
    expect(outcome({ entries: [loss, potOn, { kind: 'undo' }], asks: [] })).toBe('wrong');
    expect(outcome({ entries: [{ ...loss, count: 3 }, potOn], asks: [] })).toBe('wrong');
    expect(outcome({ entries: [loss, { ...potOn, medium: 'perlite' }], asks: [] })).toBe('wrong');
  });

  it('calls entries out of order wrong', () => {
    expect(outcome({ entries: [potOn, loss], asks: [] })).toBe('wrong');
  });

  it('calls what was said and not understood missed', () => {
    expect(outcome({ entries: [loss], asks: [] })).toBe('missed');
    expect(outcome({ entries: [loss, { kind: 'potOn', variety: 'Ember Fox' }], asks: [] })).toBe('missed');
  });

  it('calls an ask needless where the note is plain, unless asking is allowed', () => {
    const asking: Answer = {
      entries: [{ kind: 'loss', variety: 'Ember Fox' }, potOn],
      asks: [{ entry: 0, slot: 'count' }],
    };
    expect(outcome(asking)).toBe('needless');
    const lenient = { ...note, gold: { ...note.gold, mayAsk: [{ entry: 0, slot: 'count' }] } };
    expect(judge(lenient, asking).outcome).toBe('exact');
  });

  it('wants what must be asked to be asked and left open', () => {
    const asked: CorpusNote = {
      ...note,
      gold: { entries: [{ kind: 'loss', variety: 'Ember Fox' }], mustAsk: ['count'] },
    };
    const entries = [{ kind: 'loss', variety: 'Ember Fox' }];
    expect(judge(asked, { entries, asks: [{ entry: 0, slot: 'count' }] }).outcome).toBe('exact');
    expect(judge(asked, { entries, asks: [] }).outcome).toBe('missed');
    expect(judge(asked, { entries: [loss], asks: [] }).outcome).toBe('wrong');
  });
});

describe('the reader on the corpus', () => {
  it.each(halves)('reads the %s half no worse than it has before', { timeout: 600_000 }, (half) => {
    const score = scoreOf(readAndJudge(bringIn(half)));
    const before = kept[half];
    expect(before, 'fixtures/notes/scores.json').toBeDefined();
    expect(score.exact, 'per cent exact').toBeGreaterThanOrEqual(before?.exact ?? 0);
    expect(score.wrong, 'per cent wrong').toBeLessThanOrEqual(before?.wrong ?? 0);
    expect(score.needless, 'per cent asked needlessly').toBeLessThanOrEqual(before?.needless ?? 0);
  });
});
