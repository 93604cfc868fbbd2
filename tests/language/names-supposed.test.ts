import { describe, expect, it } from 'vitest';
import { read } from '../../src/language/read.js';
import { noteOf } from '../../src/command-line/parse.js';

/** What is struck, each as "how many of what"; the note comes from a grower whose ledger knows only Salt Harrier. */
function struck(text: string): string {
  const note = noteOf({
    id: 'supposed',
    text,
    now: '2026-04-21T10:00:00+01:00',
    zone: 'Europe/London',
    context: { varieties: [{ name: 'Salt Harrier', crop: 'fuchsia' }], places: ['porch', 'greenhouse'] },
  });
  return read(note)
    .entries.filter(({ entry }) => entry.kind === 'strike')
    .map(({ entry }) => {
      const { count, variety, crop } = entry as { count?: unknown; variety?: string; crop?: string };
      return [count, variety ?? crop].filter((word) => word !== undefined).join(' ');
    })
    .join(', ');
}

describe('a name that nobody knows, written with capitals', () => {
  it.each([
    // Of numbers, hours, days, crops and small words.
    ['Took five Half Past Ten off the old plant', '5 Half Past Ten'],
    ['Struck nine of the Three Lamplighters', '9 Three Lamplighters'],
    ['Took six cuttings off the Dank Thursday, porch', '6 Dank Thursday'],
    ['Put in ten Sunday Badger tips', '10 Sunday Badger'],
    ['Struck 4 Spoon of Honey, porch', '4 Spoon of Honey'],
    ['Took 12 Gumdrop Pink tips', '12 Gumdrop Pink'],
    // Where no rule looks for a plant.
    ['Filled three pots with Shed Cathedral cuttings, four to a pot', '12 Shed Cathedral'],
    ['Eight shoots of Lime Verger went round the rim of a clay pot', '8 Lime Verger'],
    ['Ten Paces: put in eleven, tip cuttings', '11 Ten Paces'],
    // What follows the name is no part of it, and what opens the sentence neither.
    ['Struck a dozen Rusty Marquis Sunday arvo', '12 Rusty Marquis'],
    ['Stuck ten Velvet Dustbin on Easter Monday', '10 Velvet Dustbin'],
    ['Took 8 cuttings of Copper Sermon Coleus', '8 Copper Sermon'],
    ['Sixteen Paper Cathedral struck, 2 trays of 8', '16 Paper Cathedral'],
    ['Six Parish Ladle, also a fuchsia, struck this evening', '6 Parish Ladle'],
    // In small letters, where what was struck is told.
    ['took 6 porch dime two weekends ago', '6 Porch Dime'],
    ['ten cuttings off the dank curate this morning, porch', '10 Dank Curate'],
    ['three trays of 20 fourpenny moon stuck, porch', '60 Fourpenny Moon'],
    ['took six cuttings', '6 Salt Harrier'],
    ['took 6 nice strong shoots', ''],
    ['did four pots this morning for the stall', ''],
    ['took 12 more while I was out there', '12 Salt Harrier'],
    // Somebody, somewhere, and what is known.
    ['Took Mrs Pike three of the Salt Harrier', ''],
    ['Took six Salt Harrier for Aunty Vi', '6 Salt Harrier'],
    ['Took 10 fuchsia cuttings from Hampton Court', '10 fuchsia'],
  ])('“%s”', (text, expected) => {
    expect(struck(text)).toBe(expected);
  });
});
