/** Holds each rule of the grammar to what it says of itself: its name or its phrasings are read as its kind, its must-nots are not. */
import { describe, expect, it } from 'vitest';
import { rules } from '../../src/language/grammar/rules.js';
import { verbSense } from '../../src/language/lexicon.js';
import type { NoteContext } from '../../src/language/note.js';
import { read } from '../../src/language/read.js';

const context: NoteContext = {
  varieties: [
    { name: 'Salt Harrier', crop: 'pelargonium' },
    { name: 'Tallow Bell', crop: 'fuchsia' },
    { name: 'Ember Fox', crop: 'dahlia' },
    { name: 'Plum Gaiters', crop: 'fuchsia' },
  ],
  batches: [
    { label: 'SH1', variety: 'Salt Harrier', crop: 'pelargonium', count: 14, place: 'propagator' },
    { label: 'TB1', variety: 'Tallow Bell', crop: 'fuchsia', count: 8, place: 'greenhouse' },
  ],
  places: ['propagator', 'greenhouse', 'cold frame'],
};

const WORDS: Readonly<Record<string, string>> = {
  '<plant>': 'Salt Harrier',
  '<count>': 'five',
  '<pots>': 'three pots',
  '<size>': '9cm',
  '<medium>': 'perlite',
  '<place>': 'the greenhouse',
  '<pest>': 'slugs',
  '<someone>': 'Doreen',
  '<giver>': 'Doreen',
  '<recipient>': 'Doreen',
};

const said = (name: string): string => name.replace(/<\w+>/g, (word) => WORDS[word] ?? word);

const kindsIn = (text: string): readonly string[] =>
  read({ text, now: Date.parse('2026-05-09T09:00:00Z'), zone: 'Europe/London', context }).entries.map(
    ({ entry }) => entry.kind,
  );

describe('a rule', () => {
  const acts = rules.flatMap((rule) => (rule.kind === 'aside' ? [] : [rule]));

  it.each(acts.map((rule) => [rule.name, rule] as const))(
    'reads "%s" as its kind',
    (name, { kind, phrasings }) => {
      for (const phrasing of phrasings ?? [said(name)]) expect(kindsIn(phrasing), phrasing).toContain(kind);
    },
  );

  it.each(acts.filter(({ mustNot }) => mustNot).map((rule) => [rule.name, rule] as const))(
    'lets pass what is not "%s"',
    (_, { kind, mustNot = [] }) => {
      for (const phrasing of mustNot) expect(kindsIn(phrasing), phrasing).not.toContain(kind);
    },
  );

  it('names verbs that the word list has, and ends its options where their words end', () => {
    const parts = rules.flatMap(({ head }) => head.split(' '));
    const verbs = parts.flatMap((part) => [...part.matchAll(/\b([a-z]+)~/g)].map(([, lemma = '']) => lemma));
    expect([...new Set(verbs)].filter((lemma) => verbSense(lemma) === undefined)).toEqual([]);
    expect(parts.filter((part) => part.slice(0, -1).includes('?'))).toEqual([]);
  });
});
