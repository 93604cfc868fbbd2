/** What a chat remembers of prompts stays small however many seasons it lasts, and nothing that waits is forgotten. */
import { expect, it } from 'vitest';
import { chat, DAY } from './chat.js';

it('forgets the prompts of batches that are gone, and keeps the one that waits', () => {
  const { say, runFor, prompts } = chat();
  say('took 9 tip cuttings of Long Wait dahlia in one pot');
  runFor(60 * DAY);
  const waiting = prompts().filter(({ open }) => open);
  expect(waiting.map(({ about }) => about.variety)).toContain('Long Wait');
  let given = 0;
  for (let round = 0; round < 100; round++) {
    say('took 4 tip cuttings of Ember Fox dahlia in one pot');
    const before = prompts().length;
    runFor(28 * DAY);
    given += Math.max(0, prompts().length - before);
    say('all the Ember Fox died');
  }
  expect(given).toBeGreaterThan(50);
  expect(prompts().length).toBeLessThanOrEqual(70);
  expect(prompts()).toEqual(expect.arrayContaining(waiting));
});

it('forgets that it asked for cuttings of a season long gone, and keeps what it asked lately', () => {
  const { say, runFor, prompts } = chat();
  const varieties = [
    'Ember Fox',
    'Long Wait',
    'Marble Wren',
    'Copper Lantern',
    'Slate Hart',
    'Soft Anchor',
    'Tin Widow',
    'Violet Ledger',
  ];
  const asksForCuttings = () => prompts().filter(({ open, about }) => open && about.about === 'strike');
  const given = new Set<string>();
  for (let year = 2021; year < 2030; year++) {
    for (const variety of varieties) say(`I want 20 ${variety} dahlia by 20 June ${year}`);
    for (let round = 0; round < 3; round++) {
      runFor(18 * DAY);
      const asked = asksForCuttings();
      expect(asked).not.toEqual([]);
      for (const { occasion } of asked) given.add(occasion);
    }
    runFor((365 - 3 * 18) * DAY);
  }
  expect(given.size).toBeGreaterThan(100);
  expect(prompts().length).toBeLessThanOrEqual(70);
});
