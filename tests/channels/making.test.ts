/** That something is being made is shown while it lasts. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { repeatedly } from '../../src/channels/repeatedly.js';
import { until } from '../../src/command-line/drills/program.js';
import { RunningBot } from '../../src/command-line/drills/running-bot.js';
import { faults, inTurn } from '../../src/command-line/fake-bot-api/fault.js';
import { Grower } from '../../src/command-line/fake-bot-api/grower.js';

afterEach(() => vi.useRealTimers());

describe('what is shown of a bot at work', () => {
  it('is shown again before Telegram lets it fade, and no more once it is done', async () => {
    vi.useFakeTimers();
    let shown = 0;
    const stop = await repeatedly(() => Promise.resolve(void shown++));
    vi.advanceTimersByTime(9_000);
    expect(shown).toBe(3);
    stop();
    vi.advanceTimersByTime(60_000);
    expect(shown).toBe(3);
  });

  it.each([
    ['/season', 'upload_photo', 'sendPhoto'],
    ['/labels', 'upload_document', 'sendDocument'],
    ['export everything as json', 'upload_document', 'sendDocument'],
  ])('comes before the file: %s', async (asked, action, method) => {
    const bot = await RunningBot.prepare();
    try {
      const bea = new Grower(bot.fake, 7);
      bot.start();
      bea.says('took 3 basal cuttings of Ember Fox dahlia in one pot');
      await until(() => bot.textsTo(7).length === 1, 15_000);
      // That it cannot be shown keeps nothing back.
      bot.fake.faultPlan = inTurn('sendChatAction', ...(asked === '/labels' ? [faults.broken] : []));
      bea.says(asked);
      await until(() => bot.fake.sent.some((sent) => sent.method === method), 20_000);
      const calls = bot.fake.called.map((call) => call.method);
      expect(calls.indexOf('sendChatAction')).toBeGreaterThan(0);
      expect(calls.indexOf('sendChatAction')).toBeLessThan(calls.indexOf(method));
      if (asked !== '/labels') expect(bot.fake.actions[0]).toEqual({ chat: 7, action });
    } finally {
      await bot.end();
    }
  });

  it('is not shown for what is only said', async () => {
    const bot = await RunningBot.prepare();
    try {
      const bea = new Grower(bot.fake, 7);
      bot.start();
      bea.says('/season');
      await until(() => bot.textsTo(7).length === 1, 15_000);
      expect(bot.textsTo(7)[0]).toMatch(/nothing to draw/i);
      bea.says('/due');
      await until(() => bot.textsTo(7).length === 2, 15_000);
      expect(bot.fake.actions.filter(({ action }) => action !== 'upload_photo')).toEqual([]);
    } finally {
      await bot.end();
    }
  });
});
