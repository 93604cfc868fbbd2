/** Groups, and growers with several ledgers, in the built program against the fake Bot API. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { until } from '../../src/command-line/drills/program.js';
import { RunningBot } from '../../src/command-line/drills/running-bot.js';
import { Grower } from '../../src/command-line/fake-bot-api/grower.js';

const GROUP = -500;
const ember = 'took 3 basal cuttings of Ember Fox dahlia in one pot';
const marble = 'took 4 tip cuttings of Marble Wren fuchsia in one pot';

let bot: RunningBot;
let bea: Grower;
let finn: Grower;
let beaAlone: Grower;
beforeEach(async () => {
  bot = await RunningBot.prepare();
  bea = new Grower(bot.fake, 7, 'Bea', GROUP);
  finn = new Grower(bot.fake, 8, 'Finn', GROUP, 1_001);
  beaAlone = new Grower(bot.fake, 7, 'Bea');
});
afterEach(() => bot.end());

/** What the bot answered in that chat to what is done now. */
async function answerTo(chat: number, act: () => void): Promise<string> {
  const before = bot.textsTo(chat).length;
  act();
  await until(
    () => bot.textsTo(chat).length > before,
    20_000,
    () => bot.programs.at(-1)?.stderr ?? '',
  );
  return bot.textsTo(chat).slice(before).join('\n');
}

async function settled(): Promise<void> {
  await until(() => bot.fake.queue.length === 0, 10_000);
  await until(() => bot.count('SELECT 1 FROM inbox WHERE settled_at IS NULL') === 0, 10_000);
}

function entries(): string[] {
  return bot
    .rows<{ ledger: string; by: string | null; what: string }>(
      'SELECT name AS ledger, by, what FROM journal JOIN ledgers ON ledgers.id = journal.ledger ORDER BY posted_at, line',
    )
    .map(({ ledger, by, what }) => {
      const { variety, count } = JSON.parse(what) as { variety?: string; count?: number };
      return `${ledger}: ${variety ?? '?'} ${count ?? '?'} by ${by ?? '–'}`;
    });
}

/** The words of the button under the bot's last message in that chat, tapped by someone. */
function tap(grower: Grower, label: string): void {
  const last = bot.fake.sent.findLast(({ chat, buttons }) => chat === grower.chat && buttons.length > 0);
  const button = last?.buttons.find((each) => each.label === label);
  if (!last || !button) throw new Error(`no button ${label}`);
  grower.taps(last.message, button.data);
}

describe('a group', () => {
  it('is told how the bot is spoken to, and has one ledger in which each entry says by whom', async () => {
    bot.start();
    expect(await answerTo(GROUP, () => bea.letsIn())).toMatch(/begins with @slip_bot/);
    await answerTo(GROUP, () => bea.says(`@slip_bot ${ember}`));
    await answerTo(GROUP, () => finn.says(`/${marble}`));
    const receipt = bot.fake.sent.findLast(({ chat }) => chat === GROUP)?.message ?? 0;
    const reply = { message_id: receipt, from: { id: 4_711_000_001, is_bot: true, first_name: 'Slip' } };
    await answerTo(GROUP, () => bea.says('make that five', { reply_to_message: reply as never }));
    finn.says('lost 2 of the Ember Fox I fear');
    await settled();
    expect(entries().slice(0, 2)).toEqual(['Bench: Ember Fox 3 by Bea', 'Bench: Marble Wren 4 by Finn']);
    expect(entries()).toHaveLength(3);
    expect(await answerTo(GROUP, () => bea.says('@slip_bot how many have I got?'))).toMatch(/\b8\b/);
  });

  it('keeps its ledger when the group says that it has become another', async () => {
    bot.start();
    await answerTo(GROUP, () => bea.says(`@slip_bot ${ember}`));
    bea.sends({ migrate_to_chat_id: -1_000_500 });
    const moved = new Grower(bot.fake, 8, 'Finn', -1_000_500);
    expect(await answerTo(-1_000_500, () => moved.says('@slip_bot how many Ember Fox?'))).toMatch(/\b3\b/);
  });

  it.each(['message', 'membership'] as const)(
    'keeps its ledger when a grower leaves, who loses it (told by %s)',
    async (how) => {
      bot.start();
      await answerTo(GROUP, () => bea.says(`@slip_bot ${ember}`));
      await answerTo(GROUP, () => finn.says(`@slip_bot ${marble}`));
      expect(await answerTo(7, () => beaAlone.says('switch to the bench'))).toMatch(/“Bench”/);
      expect(await answerTo(7, () => beaAlone.says('how many have I got?'))).toMatch(/\b7\b/);
      bea.leaves(how);
      await settled();
      expect(await answerTo(7, () => beaAlone.says('how many have I got?'))).not.toMatch(/\b7\b/);
      expect(await answerTo(7, () => beaAlone.says('switch to the bench ledger'))).toMatch(/no ledger/);
      expect(await answerTo(GROUP, () => finn.says('@slip_bot how many have we got?'))).toMatch(/\b7\b/);
    },
  );

  it('has its ledger erased by its owner alone, who is the one who let the bot in', async () => {
    bot.start();
    await answerTo(GROUP, () => bea.letsIn());
    await answerTo(GROUP, () => finn.says(`@slip_bot ${marble}`));
    await answerTo(7, () => beaAlone.says(ember));
    expect(await answerTo(GROUP, () => finn.says('@slip_bot erase everything'))).toMatch(/only Bea may/);
    expect(await answerTo(GROUP, () => bea.says('@slip_bot erase everything'))).toMatch(/for everyone in it/);
    expect(await answerTo(GROUP, () => tap(finn, 'Erase everything'))).toMatch(/only Bea may/);
    expect(entries()).toHaveLength(2);
    await answerTo(GROUP, () => bea.says('@slip_bot erase everything'));
    tap(bea, 'Erase everything');
    await until(() => bot.textsTo(GROUP).some((text) => /Erased: 1 ledger with 1 line/.test(text)), 15_000);
    expect(entries()).toEqual(['own: Ember Fox 3 by –']);
  });
});

describe('several ledgers', () => {
  it('are switched between in words, and an entry for a shared one says by whom', async () => {
    bot.start();
    await answerTo(GROUP, () => finn.says(`@slip_bot ${marble}`));
    await answerTo(GROUP, () => bea.says('@slip_bot how many?'));
    await answerTo(7, () => beaAlone.says(ember));
    expect(await answerTo(7, () => beaAlone.says('which ledger is this?'))).toMatch(
      /This is the ledger “own”\. There is also “Bench”/,
    );
    expect(await answerTo(7, () => beaAlone.says('switch to the bench'))).toMatch(/“Bench” now/);
    await answerTo(7, () => beaAlone.says('took 6 tip cuttings of Copper Lantern coleus in one pot'));
    expect(await answerTo(7, () => beaAlone.says('back to home'))).toMatch(/“own” now/);
    expect(await answerTo(7, () => beaAlone.says('how many have I got?'))).toMatch(/^3\b/);
    expect(entries()).toEqual([
      'Bench: Marble Wren 4 by Finn',
      'own: Ember Fox 3 by –',
      'Bench: Copper Lantern 6 by Bea',
    ]);
  });
});
