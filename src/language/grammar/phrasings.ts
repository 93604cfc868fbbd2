/** What the rules say of themselves, as notes: for the tests that hold them to it, and for learning what each kind sounds like. */
import type { NoteContext } from '../note.js';
import { rules } from './rules.js';

/** The plants and places that the phrasings speak of. */
export const phrasingContext: NoteContext = {
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

/** A rule for an act, with notes of its kind and notes that look like it and are not. */
export interface Phrasings {
  readonly name: string;
  readonly kind: string;
  readonly phrasings: readonly string[];
  readonly mustNot: readonly string[];
}

export const actPhrasings: readonly Phrasings[] = rules.flatMap(({ name, kind, phrasings, mustNot = [] }) =>
  kind === 'aside' ? [] : [{ name, kind, phrasings: phrasings ?? [said(name)], mustNot }],
);
