/** New names told behind their crop, and what is said there and names nothing. */
import { expect, it } from 'vitest';
import { read } from '../../src/language/read.js';

const entriesOf = (text: string) =>
  read({ text, now: Date.parse('2026-05-14T18:10:00Z'), zone: 'Europe/London' }).entries.map(
    ({ entry }) => entry,
  );

it.each([
  [
    "did 7 salvia cuttings off my sister's, she says it's Tin Whistler. all in one pot in the porch",
    'salvia',
  ],
  [
    'Right, took 7 coleus today! it’s the dark one from school called Tin Whistler. In a glass of water',
    'coleus',
  ],
  ['got 7 cuttings off bobs salvia, its called Tin Whistler. all in one pot', 'salvia'],
  [
    "Ruth let me have some bits off her fuchsia so I've done 7 cuttings of it, she calls it Tin Whistler",
    'fuchsia',
  ],
  ['took 7 begonia cuttings, not sure but I think it’s Tin Whistler', 'begonia'],
  ['took 7 begonia cuttings. Label said Tin Whistler', 'begonia'],
  ['took 7 begonia cuttings. Name: Tin Whistler', 'begonia'],
  ['did 7 cuttings of my coleus tin whistler, in water', 'coleus'],
  ['took 7 cuttings of the salvia auntie whistler this morning', 'salvia', 'Auntie Whistler'],
  ['took 7 cuttings of tin whistler another fuchsia', 'fuchsia'],
  ['took 7 of Tin Whistler a new fuchsia', 'fuchsia'],
  ['took 7 of tin whistler also a fuchsia', 'fuchsia'],
  ['7 tin whistler taken, our fuchsia', 'fuchsia'],
  ['Took 7 of Tin Whistler. That one’s a fuchsia.', 'fuchsia'],
  ['Took 7 Fence Mint Whistler, mint', 'mint', 'Fence Mint Whistler'],
  ['took 7 of the fuchsia mister whistler same spot', 'fuchsia', 'Mister Whistler'],
])('“%s” names its plant', (text, crop, variety = 'Tin Whistler') => {
  expect(entriesOf(text)).toMatchObject([{ kind: 'strike', crop, variety, count: 7 }]);
});

it.each([
  ['bought 7 plugs of lantana at the village fair, tag says Tin Whistler'],
  ['7 petunia plugs came from Oakhanger’s, Tin Whistler, they’re in the tunnel'],
])('“%s” names what came', (text) => {
  expect(entriesOf(text)).toMatchObject([{ kind: 'receive', variety: 'Tin Whistler', count: 7 }]);
});

it.each([
  ["took 7 fuchsia cuttings, she says it's too late"],
  ["took 7 fuchsia cuttings, it's for Mary Dolan"],
  ['took 7 fuchsia cuttings off Mum, Happy Birthday'],
  ['took 7 fuchsia cuttings, label says keep frost free'],
  ['took 7 cuttings off kevs fuchsia this morning'],
  ['took 7 cuttings off mums fuchsia, she says its brilliant'],
  ['took 7 cuttings of the fuchsia mary pellow was chucking out'],
  ['took 7 cuttings of the fuchsia touch wood'],
  ['took 7 cuttings of the fuchsia cheers doreen'],
  ['took 7 cuttings of my fuchsia really pleased'],
])('“%s” names none', (text) => {
  const entries = entriesOf(text).filter(({ kind }) => kind !== 'remark');
  expect(entries).toMatchObject([{ kind: 'strike', crop: 'fuchsia', count: 7 }]);
  expect(entries[0]).not.toHaveProperty('variety');
});
