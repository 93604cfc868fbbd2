/** What is told settles what was asked of it, and what was put off is forgotten once it is over. */
import { expect, it } from 'vitest';
import { chat, DAY } from './chat.js';

/** A grower who wants plants, and has just been asked for cuttings. */
function askedForCuttings(wish: string) {
  const bench = chat();
  bench.say(wish);
  bench.runFor(25 * DAY);
  const isOpen = () => bench.prompts().some(({ open, about }) => open && about.about === 'strike');
  expect(isOpen()).toBe(true);
  return { ...bench, isOpen };
}

it.each([
  ['I want 20 Ember Fox dahlia by 20 June 2021', ['took 12 tip cuttings of Ember Fox']],
  ['I want 20 Ember Fox dahlia by 20 June 2021', ['took some Ember Fox', '12']],
  ['I want 20 dahlias by 20 June 2021', ['took 12 tip cuttings of Long Wait dahlia']],
])('%s: cuttings taken settle it (%s)', (wish, notes) => {
  const { say, isOpen } = askedForCuttings(wish);
  for (const note of notes) say(note);
  expect(isOpen()).toBe(false);
});

it('cuttings of another sort settle no wish', () => {
  const { say, isOpen } = askedForCuttings('I want 20 Ember Fox dahlia by 20 June 2021');
  say('took 12 tip cuttings of Long Wait dahlia');
  expect(isOpen()).toBe(true);
});

it('what was put off is kept no longer than it lasts, and never without end', () => {
  const { say, runFor, talk } = chat();
  for (let day = 0; day < 30; day++) {
    say('snooze the Ember Fox until tomorrow');
    runFor(DAY);
  }
  expect(talk().snoozes.length).toBeLessThanOrEqual(2);
  for (let time = 0; time < 300; time++) say(`snooze the Ember Fox for ${(time % 20) + 2} days`);
  expect(talk().snoozes.length).toBeGreaterThan(20);
  expect(talk().snoozes.length).toBeLessThanOrEqual(200);
});
