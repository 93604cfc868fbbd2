/** A reply is of the message that it replies to, or of none: never of what another message asked. */
import { describe, expect, it } from 'vitest';
import { nothingWaits } from '../../src/words/answers.js';
import { chat, DAY } from './chat.js';

/** Two batches, the younger of which is asked about; a question of the older one is long past. */
function twoBatches() {
  const bench = chat();
  bench.say('took 9 tip cuttings of Long Wait dahlia, bench');
  bench.say('took 6 tip cuttings of Ember Fox dahlia, greenhouse');
  bench.runFor(15 * DAY);
  return bench;
}

const FORGOTTEN = [{ answers: 'terminal:here/1/999' }, { replyTo: '999' }];

describe.each(FORGOTTEN)('to a message that is forgotten (%o)', (forgotten) => {
  it.each([
    '5',
    'none yet',
    'Some',
    'All',
    'later',
    'yes',
    'all but one',
    '2 rooted',
    'five, the rest have rotted',
    'lost two of them',
    'moved them to the frame',
    'sorry, just 3',
    'no, that was 6',
    'it was Sunday',
    'they were Long Wait',
    'that was the other one',
    'and another 3',
  ])('“%s” changes nothing and is told what to do', (text) => {
    const { say, entries, prompts } = twoBatches();
    const before = [entries(), prompts()];
    expect(say(text, forgotten)?.text).toBe(nothingWaits);
    expect([entries(), prompts()]).toEqual(before);
  });

  it.each([
    ['lost 2 of the Ember Fox', { kind: 'loss', batch: 'EF1', count: 2 }],
    ['Ember Fox: 3 rooted', { kind: 'check', batch: 'EF1', rooted: 3 }],
    ['watered the bench', { kind: 'tend', place: 'bench' }],
    ['took 4 cuttings of Tin Widow coleus', { kind: 'strike', variety: 'Tin Widow' }],
  ])('“%s” is a note as ever', (text, entry) => {
    const { say, entries } = twoBatches();
    say(text, forgotten);
    expect(entries().at(-1)).toMatchObject(entry);
  });
});

describe('a reply', () => {
  it('to the old prompt of a batch that is gone answers no other', () => {
    const { say, entries, prompts } = twoBatches();
    const old = prompts().find(({ about }) => about.batch === 'LW1');
    say('all the Long Wait died');
    const before = entries();
    expect(say('5', { answers: old?.key ?? '' })?.text).toBe(nothingWaits);
    expect(entries()).toEqual(before);
  });

  it('to a question that is settled, or to a mere answer, answers no prompt', () => {
    const { say, entries } = twoBatches();
    const asked = say('took some Tin Widow coleus');
    say('8');
    const told = say('where are the Ember Fox?');
    const before = entries();
    for (const message of [asked, told])
      expect(say('5', { answers: message?.key ?? '' })?.text).toBe(nothingWaits);
    expect(entries()).toEqual(before);
  });

  it('to a question answers it, also where it was put once more since, and so does one to the note', () => {
    for (const to of ['question', 'note']) {
      const { say, entries } = twoBatches();
      const asked = say('took some Tin Widow coleus');
      expect(say('watered the bench')?.text).toContain('Still open');
      say('8', to === 'note' ? { replyTo: '3' } : { answers: asked?.key ?? '' });
      expect(entries().at(-1)).toMatchObject({ kind: 'strike', variety: 'Tin Widow', count: 8 });
    }
  });

  it('that is edited is still of the message that it replied to', () => {
    const { say, entries, prompts } = twoBatches();
    const old = prompts().find(({ about }) => about.batch === 'LW1');
    const reply = { message: '77', answers: old?.key ?? '' };
    say('fiv or so', reply);
    say('5', { ...reply, edited: true });
    expect(entries().at(-1)).toMatchObject({ kind: 'check', batch: 'LW1', rooted: 5 });
  });

  it('to a long answer with the words of its button turns the page', () => {
    const { say } = chat();
    for (let n = 0; n < 60; n++) say(`watered the bench, round ${n}, and then the greenhouse`);
    const page = say('what have I done this year?');
    const [button] = page?.buttons?.flat() ?? [];
    expect(say(button?.label ?? '', { answers: page?.key ?? '' })?.text).toContain('Watered');
  });
});
