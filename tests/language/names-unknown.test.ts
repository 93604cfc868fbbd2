/** Holds the searches for names that no ledger knows to their phrasings, and to the notes that are of the lot that lives. */
import { describe, expect, it } from 'vitest';
import * as setApart from '../../src/language/joined/new-names/set-apart.js';
import type { Search } from '../../src/language/joined/new-names/search.js';
import * as unaccounted from '../../src/language/joined/new-names/unaccounted.js';
import type { Piece } from '../../src/language/pieces/pieces.js';
import { piecesOf } from '../../src/language/read.js';
import { tokenise } from '../../src/language/row/tokens.js';

const unknownIn = (text: string): (string | undefined)[] =>
  piecesOf({
    text,
    now: Date.parse('2026-07-15T09:00:00Z'),
    zone: 'Europe/London',
    context: {
      varieties: [{ name: 'Salt Harrier', crop: 'coleus' }],
      batches: [{ label: 'SH1', variety: 'Salt Harrier', crop: 'coleus', count: 15 }],
      pending: { kind: 'check', batch: 'SH1' },
    },
  }).pieces.flatMap((piece) =>
    piece.is === 'plant' && !piece.known && piece.plant.variety !== undefined ? [piece.plant.variety] : [],
  );

const claimedBy = (search: (by: Search) => void, text: string): Piece[] => {
  const claimed: Piece[] = [];
  const claim = (piece: Piece): boolean => claimed.push(piece) > 0;
  search({ text, tokens: tokenise(text), places: [], free: () => true, claim });
  return claimed;
};

describe.each([
  ['set apart behind their crop', setApart, setApart.namesSetApart],
  ['where a plant stands', unaccounted, unaccounted.unaccountedNames],
])('%s', (_, { phrasings, mustNot }, search) => {
  it.each(phrasings)('"%s" names %s', (text, name) => {
    expect(unknownIn(text)).toEqual([name]);
  });

  it.each(mustNot)('"%s" names none', (text) => {
    expect(claimedBy(search, text)).toEqual([]);
  });
});

it('reads a label at a sale', () => {
  expect(unknownIn('Bought 3 dahlia tubers at the jumble sale, the label says Rusty Verger')).toEqual([
    'Rusty Verger',
  ]);
});

it('takes a wish for no name', () => {
  expect(unknownIn('took 5 coleus cuttings, Happy Birthday')).toEqual([]);
});
