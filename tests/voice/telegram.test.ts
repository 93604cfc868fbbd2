/** Voice notes through the built program as the bot of a fake Bot API: fetched, heard, asked about, and posted on a yes alone. */
import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { until } from '../../src/command-line/drills/program.js';
import { RunningBot } from '../../src/command-line/drills/running-bot.js';
import type { SentMessage } from '../../src/command-line/fake-bot-api/calls.js';
import { Grower } from '../../src/command-line/fake-bot-api/grower.js';
import { decodeOpus } from '../../src/voice/opus.js';
import { seededChance } from '../../src/voice/phrase-grammar.js';
import { describeWith } from './installed.js';
import { wavFile } from './wav-file.js';

/** Spoken by flite's slt: "potted on the bicycle thief into three inch pots", "what time does the football start on saturday". */
const note = readFileSync('fixtures/voice/bicycle-thief.ogg');
const offSubject = readFileSync('fixtures/voice/football.ogg');
const slow = 180_000;

let bot: RunningBot;
let bea: Grower;
beforeEach(async () => {
  bot = await RunningBot.prepare();
  bea = new Grower(bot.fake, 7);
  bot.start({ environment: { SLIPNOTE_SPEECH: 'pocketsphinx' } });
});
afterEach(() => bot.end());

const sentTo = (grower: Grower): SentMessage[] => bot.fake.sent.filter(({ chat }) => chat === grower.chat);

/** What the bot answers to what is done, once so many messages have come. */
async function answerTo(act: () => unknown, messages = 1): Promise<SentMessage> {
  const before = sentTo(bea).length;
  act();
  await until(() => sentTo(bea).length >= before + messages, slow);
  return sentTo(bea).at(-1) as SentMessage;
}

function speaks(bytes: Uint8Array, seconds = 3): void {
  const id = `voice-${bot.fake.files.size}`;
  bot.fake.files.set(id, bytes);
  const size = bytes.byteLength;
  bea.sends({
    voice: { file_id: id, file_unique_id: id, duration: seconds, mime_type: 'audio/ogg', file_size: size },
  });
}

/** Kinds of entry in the journal, oldest first. */
const posted = (): string[] =>
  bot
    .rows<{ what: string }>('SELECT what FROM journal ORDER BY line')
    .flatMap(({ what }) => [...what.matchAll(/"kind":"(\w+)"/g)].map(([, kind = '']) => kind));

const struck = 'took 4 cuttings of Bicycle Thief dahlia';
const press = (sent: SentMessage, label: string): void => {
  const button = sent.buttons.find((each) => each.label === label);
  if (!button) throw new Error(`no button "${label}" under "${sent.text}"`);
  bea.taps(sent.message, button.data);
};

describeWith(['pocketsphinx pocketsphinx-en-us'], 'a voice note to the bot', () => {
  it(
    'is answered with what was heard, and posted once it is said to be right',
    { timeout: slow },
    async () => {
      await answerTo(() => bea.says(struck));
      const before = posted();
      const asked = await answerTo(() => speaks(note));
      expect(asked.text).toMatch(/^I heard: .*bicycle thief into \*?three\*? inch pots/);
      expect(asked.buttons.map(({ label }) => label)).toEqual(['Yes, note it', 'No']);
      expect(posted()).toEqual(before);
      const receipt = await answerTo(() => press(asked, 'Yes, note it'));
      expect(receipt.text).toMatch(/potted on/i);
      expect(posted()).toEqual([...before, 'potOn']);
    },
  );

  it(
    'posts nothing where it was heard amiss, and is taken in typing instead',
    { timeout: slow },
    async () => {
      await answerTo(() => bea.says(struck));
      const before = posted();
      const asked = await answerTo(() => speaks(note));
      await answerTo(() => press(asked, 'No'));
      expect(posted()).toEqual(before);
      await answerTo(() => bea.says('potted on the Bicycle Thief into 9 cm pots'));
      expect(posted()).toEqual([...before, 'potOn']);
    },
  );

  it('keeps no one waiting who types meanwhile in another chat', { timeout: slow }, async () => {
    await answerTo(() => bea.says(struck));
    const tom = new Grower(bot.fake, 8);
    speaks(note);
    tom.says('took 3 basal cuttings of Ember Fox dahlia in one pot');
    await until(() => sentTo(tom).length > 0, slow);
    expect(sentTo(bea).filter(({ text }) => text.startsWith('I heard'))).toEqual([]);
    await until(() => sentTo(bea).some(({ text }) => text.startsWith('I heard')), slow);
  });

  it(
    'posts nothing of talk off the subject, of noise, or of a note drowned in it',
    { timeout: slow },
    async () => {
      await answerTo(() => bea.says(struck));
      const before = posted();
      for (const sound of [offSubject, noise(3), await drowned(note, 10), await drowned(offSubject, 10)]) {
        await answerTo(() => speaks(sound));
        expect(posted()).toEqual(before);
      }
    },
  );
});

const rateHz = 16_000;

/** White noise. */
function noise(seconds: number): Buffer {
  const chance = seededChance(1);
  return wavFile(
    Float32Array.from({ length: seconds * rateHz }, () => 0.1 * (2 * chance() - 1)),
    rateHz,
  );
}

/** The sound with white noise that lies so many decibels below it. */
async function drowned(ogg: Uint8Array, decibels: number): Promise<Buffer> {
  const { samples } = (await decodeOpus(ogg, rateHz)) ?? { samples: new Float32Array() };
  const power = samples.reduce((sum, value) => sum + value * value, 0) / samples.length;
  const amplitude = Math.sqrt(3 * power) * 10 ** (-decibels / 20);
  const chance = seededChance(2);
  const noisy = samples.map((value) => value + amplitude * (2 * chance() - 1));
  return wavFile(
    noisy.map((value) => Math.max(-1, Math.min(1, value))),
    rateHz,
  );
}
