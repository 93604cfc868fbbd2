/** Holds each rule for a question to its phrasings: they are read as a question of its topic. */
import { describe, expect, it } from 'vitest';
import { questionRules } from '../../src/language/grammar/question.js';
import type { NoteContext } from '../../src/language/note.js';
import { read } from '../../src/language/read.js';

const context: NoteContext = {
  varieties: [
    { name: 'Salt Harrier', crop: 'pelargonium' },
    { name: 'Tallow Bell', crop: 'fuchsia' },
  ],
  batches: [
    { label: 'SH1', variety: 'Salt Harrier', crop: 'pelargonium', count: 14, place: 'propagator' },
    { label: 'TB1', variety: 'Tallow Bell', crop: 'fuchsia', count: 8, place: 'greenhouse' },
  ],
  places: ['propagator', 'greenhouse', 'cold frame'],
};

describe('a rule for a question', () => {
  it.each(questionRules.flatMap(({ topic, phrasings }) => phrasings.map((text) => [text, topic] as const)))(
    'reads "%s" as one of %s',
    (text, topic) => {
      const { entries } = read({
        text,
        now: Date.parse('2026-05-09T09:00:00Z'),
        zone: 'Europe/London',
        context,
      });
      expect(entries.map(({ entry }) => entry)).toMatchObject([{ kind: 'question', topic }]);
    },
  );
});
