/** A question that names how many by when is answered of that number, told as wanted before or not; and "forgot" heads one more note. */
import { describe, expect, it } from 'vitest';
import { chat } from './chat.js';

function bench() {
  const told = chat();
  told.say('took 12 basal cuttings of Ember Fox dahlia, propagator');
  return told;
}

const answerTo = (text: string): string => {
  const { say } = bench();
  return say(text)?.text ?? '';
};

describe('enough?', () => {
  it.each([
    ['will I have enough Ember Fox for 10 by July?', /^10 Ember Fox wanted by 31 Jul/],
    ['am I on track for twenty Ember Fox by the end of August?', /^20 Ember Fox wanted by 31 Aug/],
    ['can I get to 20 Ember Fox by July?', /^20 Ember Fox wanted by 31 Jul/],
    ['how many more Ember Fox cuttings should I take to have 30 by July?', /^30 Ember Fox wanted by 31 Jul/],
    ['do I have enough Ember Fox?', /^You haven’t said what you want/],
  ])('“%s”', (text, answer) => {
    expect(answerTo(text)).toMatch(answer);
  });

  it('is asked of the number in the question though another was wanted', () => {
    const { say } = bench();
    say('I want 8 Ember Fox by July');
    expect(say('do I have enough Ember Fox?')?.text).toMatch(/^8 Ember Fox wanted/);
    expect(say('and will I have enough Ember Fox for 15 by July?')?.text).toMatch(/^15 Ember Fox wanted/);
    expect(say('do I have enough Ember Fox?')?.text).toMatch(/^8 Ember Fox wanted/);
  });
});

describe('how many have I …?', () => {
  function season() {
    const told = chat();
    told.say('took 12 basal cuttings of Ember Fox dahlia, propagator');
    told.say('took 6 Soot Marquis fuchsia');
    told.say('lost 2 Ember Fox to rot');
    told.say('lost one Soot Marquis');
    told.say('gave 3 Ember Fox to Joan');
    told.say('sold 2 Ember Fox');
    return told;
  }

  it.each([
    ['how many have I lost?', /^3 lost in 2 batches:\nEF1 Ember Fox 2\nSM1 Soot Marquis 1$/],
    ['how many have I lost all told', /^3 lost in 2 batches/],
    ['how many Ember Fox have died', /^2 lost: EF1 Ember Fox 2\.$/],
    ['how many have I sold so far?', /^2 sold: EF1 Ember Fox 2\.$/],
    ['how many did I give Joan?', /^3 given away: EF1 Ember Fox 3\.$/],
    ['how many cuttings did I take this week?', /^18 struck in 2 batches, /],
    ['how many fuchsias have been planted out?', /^None planted out\.$/],
    ['how many Ember Fox are left?', /^5 Ember Fox: EF1 Ember Fox 5\.$/],
    ['how many have I not planted out?', /^10 in 2 batches/],
  ])('“%s”', (text, answer) => {
    expect(season().say(text)?.text).toMatch(answer);
  });
});

describe('what was forgotten', () => {
  it.each([
    ['oh and I forgot, 6 of the Soot Marquis fuchsias yesterday in two pots', { count: 6, pots: 2 }],
    ['and I forgot 4 Soot Marquis fuchsia', { count: 4 }],
    ['oh and 3 more Soot Marquis fuchsia', { count: 3 }],
  ])('“%s” is one more round of cuttings', (text, entry) => {
    const { say, entries } = bench();
    say(text);
    expect(entries().at(-1)).toMatchObject({ kind: 'strike', variety: 'Soot Marquis', ...entry });
  });

  it.each(['I forgot to water the Ember Fox', 'forgot, didn’t take any Soot Marquis'])(
    '“%s” logs nothing',
    (text) => {
      const { say, entries } = bench();
      const before = entries();
      say(text);
      expect(entries()).toEqual(before);
    },
  );
});
