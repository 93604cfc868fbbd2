/** The built program against a Bot API that misbehaves in every way that a fake can think of. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { until } from '../../src/command-line/drills/program.js';
import { faults, inTurn, migrated, slow, tooFast } from '../../src/command-line/fake-bot-api/fault.js';
import { Grower } from '../../src/command-line/fake-bot-api/grower.js';
import { RunningBot } from '../../src/command-line/drills/running-bot.js';

const note = 'took 3 basal cuttings of Ember Fox dahlia in one pot';
const other = 'took 4 tip cuttings of Marble Wren fuchsia in one pot';

let bot: RunningBot;
beforeEach(async () => {
  bot = await RunningBot.prepare();
});
afterEach(() => bot.end());

/** All who wrote have been answered so many times. */
async function answered(grower: Grower, times: number): Promise<void> {
  await until(
    () => bot.textsTo(grower.chat).length >= times,
    20_000,
    () => `${bot.textsTo(grower.chat).length} answers, not ${times}: ${bot.programs.at(-1)?.stderr}`,
  );
}

describe('polling', () => {
  it.each([
    ['another poller', faults.conflict],
    ['a broken server', faults.broken],
    ['a cut connection', faults.cut],
    ['an answer that is no JSON', faults.rubbish],
    ['an answer that never arrives', faults.lost],
    ['a pause that is asked for', tooFast(1)],
  ])('goes on after %s', async (_, fault) => {
    const bea = new Grower(bot.fake, 7);
    bot.fake.faultPlan = inTurn('getUpdates', fault, fault);
    const program = bot.start();
    bea.says(note);
    await answered(bea, 1);
    expect([...bot.linesByMessage().values()]).toEqual([1]);
    expect(program.stderr).toContain('poll failed');
  });

  it('takes a webhook away that would keep updates from it', async () => {
    bot.fake.webhook = 'https://elsewhere.example/';
    const bea = new Grower(bot.fake, 7);
    bot.start();
    bea.says(note);
    await answered(bea, 1);
  });
});

describe('a stranger', () => {
  it('has nothing fetched or listened to', async () => {
    const bea = new Grower(bot.fake, 7);
    bot.start({ environment: { SLIPNOTE_GROWERS: '8' } });
    bea.sends({ document: { file_id: 'f1', file_unique_id: 'u1', file_name: 'minima.csv', file_size: 10 } });
    bea.sends({ voice: { file_id: 'f2', file_unique_id: 'u2', duration: 3 } });
    await answered(bea, 1);
    const known = new Grower(bot.fake, 8);
    known.sends({
      document: { file_id: 'f1', file_unique_id: 'u1', file_name: 'minima.csv', file_size: 10 },
    });
    await answered(known, 1);
    expect(bot.fake.called.filter(({ method }) => method === 'getFile')).toHaveLength(1);
  });
});

describe('sending', () => {
  it.each([
    ['a broken server', faults.broken, 1],
    ['a cut connection', faults.cut, 1],
    ['an answer that is no JSON', faults.rubbish, 1],
    ['a pause that is asked for', tooFast(1), 1],
    ['a slow server', slow(1_500), 1],
    // It did arrive: one doubt, one double.
    ['an answer that never arrives', faults.lost, 2],
  ])('goes on after %s', async (_, fault, copies) => {
    const bea = new Grower(bot.fake, 7);
    bot.fake.faultPlan = inTurn('sendMessage', fault);
    bot.start();
    bea.says(note);
    await answered(bea, copies);
    await until(() => bot.rows("SELECT 1 FROM outbox WHERE outcome = 'sent'").length === 1, 10_000);
    expect(bot.textsTo(7)).toHaveLength(copies);
  });

  it('to a chat that blocked the bot waits until it is let in again', async () => {
    const bea = new Grower(bot.fake, 7);
    const finn = new Grower(bot.fake, 8);
    bot.fake.faultPlan = (method, args) =>
      method === 'sendMessage' && args['chat_id'] === 7 ? faults.blocked : undefined;
    bot.start();
    bea.says(note);
    await until(() => bot.fake.called.some(({ method }) => method === 'sendMessage'), 15_000);
    finn.says(other);
    await answered(finn, 1);
    const tries = bot.fake.called.filter(({ method }) => method === 'sendMessage').length;
    expect(tries).toBe(2);
    bot.fake.faultPlan = () => undefined;
    bea.becomes('member');
    await answered(bea, 1);
  });

  it('follows a group to its new id, ledger and all', async () => {
    const bea = new Grower(bot.fake, 7, 'Bea', -500);
    const moved = new Grower(bot.fake, 7, 'Bea', -1_000_500);
    bot.fake.faultPlan = (method, args) =>
      method === 'sendMessage' && args['chat_id'] === -500 ? migrated(-1_000_500) : undefined;
    bot.start();
    bea.says(`@slip_bot ${note}`);
    await answered(moved, 1);
    moved.says(`@slip_bot ${other}`);
    await answered(moved, 2);
    expect(bot.rows('SELECT DISTINCT ledger FROM journal')).toHaveLength(1);
    expect(bot.linesByMessage().size).toBe(2);
  });
});

describe('what comes in', () => {
  it('that is poisoned is set aside, and the rest goes on', async () => {
    const bea = new Grower(bot.fake, 7);
    const program = bot.start();
    bea.sends({ text: { $ne: null } as never });
    bea.brings({ message: { chat: 'nowhere', text: note } });
    bea.brings({ message: null, update_id: 'x' });
    bea.brings({ callback_query: { id: 5, data: [], from: {} } });
    bea.says(note);
    await until(() => bot.textsTo(7).length >= 1, 15_000);
    await until(() => bot.rows('SELECT 1 FROM journal').length === 1, 10_000);
    await until(() => bot.rows('SELECT 1 FROM inbox WHERE settled_at IS NULL').length === 0, 10_000);
    expect(bot.rows('SELECT 1 FROM inbox WHERE fault IS NOT NULL').length).toBeGreaterThanOrEqual(2);
    expect(program.stderr).toContain('update set aside');
  });

  it('twice is handled once', async () => {
    const bea = new Grower(bot.fake, 7);
    const twice = {
      message: {
        message_id: 3,
        date: 1_770_000_000,
        text: note,
        chat: { id: 7, type: 'private' },
        from: { id: 7, is_bot: false, first_name: 'Bea' },
      },
    };
    const program = bot.start();
    bot.fake.queue.add({ update_id: 42, ...twice } as never);
    await answered(bea, 1);
    await program.kill();
    bot.fake.queue.add({ update_id: 42, ...twice } as never);
    bot.start();
    bea.says(other);
    await until(() => bot.linesByMessage().size === 2, 15_000);
    expect([...bot.linesByMessage().values()]).toEqual([1, 1]);
  });

  it('as a press that this chat was never offered is refused in words, and logs nothing', async () => {
    const bea = new Grower(bot.fake, 7);
    const mallory = new Grower(bot.fake, 666);
    bot.start();
    bea.says(note);
    await answered(bea, 1);
    const data = bot.fake.sent[0]?.buttons[0]?.data ?? 'undo:1';
    const message = bot.fake.sent[0]?.message ?? 0;
    const before = bot.rows('SELECT 1 FROM journal').length;
    mallory.taps(message, data);
    mallory.taps(message, 'undo:1');
    await until(() => bot.fake.answeredTaps.length === 2, 10_000);
    expect(bot.fake.answeredTaps.map(({ text }) => text)).toEqual([
      'That button is out of date.',
      'That button is out of date.',
    ]);
    await until(() => bot.rows('SELECT 1 FROM inbox WHERE settled_at IS NULL').length === 0, 10_000);
    expect(bot.rows('SELECT 1 FROM journal').length).toBe(before);
  });

  it('in a group among its people is not logged unless the bot is spoken to', async () => {
    const bea = new Grower(bot.fake, 7, 'Bea', -500);
    bot.start();
    bea.says(`we ${note} yesterday`);
    bea.says(`/took@slip_bot 3 basal cuttings of Ember Fox dahlia in one pot`, {
      is_topic_message: true,
      message_thread_id: 12,
    });
    await answered(bea, 1);
    expect(bot.linesByMessage()).toEqual(new Map([['telegram:-500 2', 1]]));
    expect(bot.fake.sent[0]?.thread).toBe(12);
  });
});

describe('a bot that nobody owns', () => {
  it('prints a code, is deaf to strangers, and belongs to the first who sends the code', async () => {
    const bea = new Grower(bot.fake, 7);
    const finn = new Grower(bot.fake, 8);
    const program = bot.start({ environment: { SLIPNOTE_GROWERS: '' } });
    await until(() => /[A-Z2-9]{4}-[A-Z2-9]{4}/.test(program.stdout), 15_000);
    const [code = ''] = /[A-Z2-9]{4}-[A-Z2-9]{4}/.exec(program.stdout) ?? [];
    finn.says(note);
    await answered(finn, 1);
    expect(bot.textsTo(8)[0]).toMatch(/send it here/);
    bea.says(code);
    await answered(bea, 1);
    expect(bot.textsTo(7)[0]).toMatch(/this bot is yours/);
    bea.says(note);
    await answered(bea, 2);
    expect(bot.linesByMessage()).toEqual(new Map([['telegram:7 2', 1]]));
    expect(program.stderr).not.toContain(code);
  });
});
