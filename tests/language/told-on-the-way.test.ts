/** What a deed is told with and is not part of it, or is told once more: a way there, a rest, a plan, a second day, another plant. */
import { describe, expect, it } from 'vitest';
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
  places: ['propagator', 'greenhouse', 'polytunnel', 'cold frame'],
};

/** Each entry as its kind and what it says, by the rules alone. */
function told(text: string): string {
  const now = Date.parse('2026-07-15T09:00:00Z');
  return read({ text, now, zone: 'Europe/London', context, byRules: true })
    .entries.map(({ entry }) => {
      const slots = entry as unknown as Record<string, unknown>;
      return [
        'kind', 'variety', 'count', 'care', 'fromPlace', 'place', 'how', 'to', 'value', 'date',
      ].flatMap((slot) => (slots[slot] === undefined ? [] : [String(slots[slot])])).join(' '); // prettier-ignore
    })
    .join(', ');
}

describe('a way told without its "to"', () => {
  it.each([
    ["Everything that was in the greenhouse's gone down the polytunnel, her indoors wants it back", 'move all greenhouse polytunnel'],
    ['took five Salt Harrier down the polytunnel', 'move Salt Harrier 5 polytunnel'],
    ['the Salt Harrier are up the polytunnel now', 'move Salt Harrier polytunnel'],
    ['Everything in the greenhouse has moved to the polytunnel', 'move all greenhouse polytunnel'],
    ['went down the polytunnel and watered the Salt Harrier', 'tend Salt Harrier water polytunnel'],
    ['everything in the greenhouse is going down the polytunnel tomorrow', ''],
  ])('leads there: "%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
}); // prettier-ignore

describe('where the grower went then', () => {
  it.each([
    ['took six Salt Harrier, then it poured so that was me back in the shed with a flask', 'strike Salt Harrier 6'],
    ['took six Salt Harrier and spent the rest of the day in the shed', 'strike Salt Harrier 6'],
    ['took six Salt Harrier while Ron was in the shed', 'strike Salt Harrier 6'],
    ['took six Salt Harrier then back in the shed for a brew', 'strike Salt Harrier 6'],
    ['took six Salt Harrier and sat them in the greenhouse', 'strike Salt Harrier 6 greenhouse'],
    ["took six Salt Harrier, they're back in the greenhouse", 'strike Salt Harrier 6 greenhouse'],
    ['four pots of Salt Harrier cuttings done after dinner, three to a pot', 'strike Salt Harrier 12'],
  ])('is no place of the plants: "%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
}); // prettier-ignore

describe('a plan that another deed took the place of', () => {
  it.each([
    ['was going to mist the propagator, but I watered the greenhouse instead', 'tend water greenhouse'],
    ['Was all set to mist the propagator when Sheila came round', ''],
    ['was going to move the Salt Harrier to the greenhouse but put them in the cold frame', 'move Salt Harrier cold frame'],
    ['meant to take ten Salt Harrier but took six', 'strike Salt Harrier 6'],
    ['was going to pot on the Salt Harrier but gave them a feed instead', 'tend Salt Harrier feed'],
  ])('was not carried out: "%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
}); // prettier-ignore

describe('one act on two days', () => {
  it.each([
    ['gave Salt Harrier a good drink last Sunday and again today', 'tend Salt Harrier water 2026-07-12, tend Salt Harrier water 2026-07-15'],
    ['watered them on Sunday and again today', 'tend water 2026-07-12, tend water 2026-07-15'],
    ['checked the Salt Harrier on Sunday and again today, no roots', 'check Salt Harrier 2026-07-15'],
    ['watered Salt Harrier Monday, yesterday was wet', 'tend Salt Harrier water 2026-07-13'],
    ['watered Salt Harrier on Sunday and will again on Friday', 'tend Salt Harrier water 2026-07-12'],
  ])('is told of each: "%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
}); // prettier-ignore

describe('another plant, in the next breath', () => {
  it.each([
    ['Moved the Salt Harrier into the cold frame. I tell a lie, it were the Tallow Bell.', 'move Tallow Bell cold frame'],
    ['Watered the Salt Harrier. Oops, it was the Tallow Bell.', 'tend Tallow Bell water'],
    ['Sold two Salt Harrier to Jean. Sorry, I meant Tallow Bell', 'dispatch Tallow Bell 2 sold Jean'],
    ['Moved the Salt Harrier into the cold frame. No, the Tallow Bell.', 'move Tallow Bell cold frame'],
    ['Moved the Salt Harrier into the cold frame. Oh no, the Tallow Bell!', 'move Salt Harrier cold frame'],
    ['Moved the Salt Harrier into the cold frame. It was the Tallow Bell that had mildew', 'move Salt Harrier cold frame'],
  ])('is put right: "%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
}); // prettier-ignore

describe('what came back for plants that went', () => {
  it.each([
    ['two Salt Harrier went to Brenda on plot 9, swapped for a bag of shallots', 'dispatch Salt Harrier 2 swapped Brenda'],
    ['two Salt Harrier went to Brenda, swapped for two Tallow Bell', 'dispatch Salt Harrier 2 swapped Brenda'],
    ['gave two Salt Harrier to Ken in exchange for nothing at all', 'dispatch Salt Harrier 2 given Ken'],
    ['gave two Salt Harrier to Ken and swapped three Tallow Bell with Pat', 'dispatch Salt Harrier 2 given Ken, dispatch Tallow Bell 3 swapped Pat'],
  ])('is none of them: "%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
}); // prettier-ignore
