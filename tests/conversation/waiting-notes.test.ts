/** A note that still waits for its number: it is answered in passing words, and an undo is of it. */
import { describe, expect, it } from 'vitest';
import { leftIt } from '../../src/words/answers.js';
import { chat } from './chat.js';

describe('an undo while a number is still asked for', () => {
  it.each(['undo that', 'forget it, wrong plants altogether', 'scrap that loss'])(
    '“%s” leaves the note that waits, and nothing before it',
    (text) => {
      const { say, entries } = chat();
      say('took 12 cuttings of Ember Fox dahlia');
      say('lost some Ember Fox');
      const before = entries();
      expect(say(text)?.text).toBe(leftIt);
      expect(entries()).toEqual(before);
      say('3');
      expect(entries()).toEqual(before);
    },
  );

  it('takes back what the same note has logged, and what was logged since', () => {
    const { say, entries } = chat();
    say('took 12 cuttings of Ember Fox dahlia');
    const before = entries();
    say('watered everything and lost some Ember Fox');
    say('undo');
    expect(entries()).toEqual(before);
    say('lost some Ember Fox');
    say('took 4 cuttings of Plum Gaiters fuchsia');
    say('undo');
    expect(entries()).toEqual(before);
  });
});

it.each(['seven in the end', 'seven all told', 'seven altogether'])('“%s” answers how many', (text) => {
  const { say, entries } = chat();
  say('took a few cuttings of Ember Fox dahlia');
  say(text);
  expect(entries()).toMatchObject([{ kind: 'strike', count: 7 }]);
});
