/** Holds each rule of the grammar to what it says of itself: its name or its phrasings are read as its kind, its must-nots are not. */
import { describe, expect, it } from 'vitest';
import { actPhrasings, phrasingContext } from '../../src/language/grammar/phrasings.js';
import { rules } from '../../src/language/grammar/rules.js';
import { verbSense } from '../../src/language/row/lexicon.js';
import { read } from '../../src/language/read.js';

const kindsIn = (text: string): readonly string[] =>
  read({
    text,
    now: Date.parse('2026-05-09T09:00:00Z'),
    zone: 'Europe/London',
    context: phrasingContext,
    byRules: true,
  }).entries.map(({ entry }) => entry.kind);

describe('a rule', () => {
  it.each(actPhrasings.map((rule) => [rule.name, rule] as const))(
    'reads "%s" as its kind',
    (_, { kind, phrasings }) => {
      for (const phrasing of phrasings) expect(kindsIn(phrasing), phrasing).toContain(kind);
    },
  );

  it.each(actPhrasings.filter(({ mustNot }) => mustNot.length > 0).map((rule) => [rule.name, rule] as const))(
    'lets pass what is not "%s"',
    (_, { kind, mustNot }) => {
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
