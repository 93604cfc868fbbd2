/** Updates are read for what they mean, and without trust in their types. */
import { describe, expect, it } from 'vitest';
import { BadUpdate } from '../../src/channels/telegram-fields.js';
import { chatOfUpdate, readUpdate } from '../../src/channels/telegram-update.js';
import type { Update } from '../../src/channels/telegram.js';

const self = { id: 99, username: 'slip_bot' };
const bea = { id: 7, is_bot: false, first_name: 'Bea', last_name: 'Marsh' };
const alone = { id: 7, type: 'private', first_name: 'Bea' };
const group = { id: -100, type: 'supergroup', title: 'Bench' };

function read(content: object, kind = 'message') {
  const update = { update_id: 1, [kind]: { message_id: 5, date: 1_000, chat: alone, from: bea, ...content } };
  return readUpdate(update as unknown as Update, self, 2_000_000);
}

function said(content: object, kind = 'message') {
  const received = read(content, kind);
  return received.kind === 'said' ? received.incoming : received.kind;
}

describe('a message', () => {
  it('carries its own time, its sender and what it says', () => {
    expect(said({ text: 'lost two' })).toEqual({
      chat: 'telegram:7',
      group: false,
      from: { id: 'telegram:7', name: 'Bea Marsh' },
      message: '5',
      at: 1_000_000,
      text: 'lost two',
    });
  });

  it('that is edited keeps its number and its first time', () => {
    expect(said({ text: 'lost three', edit_date: 9_000 }, 'edited_message')).toMatchObject({
      message: '5',
      at: 1_000_000,
      edited: true,
    });
  });

  it('with a command is the note that the command stands for', () => {
    expect(said({ text: '/due' })).toMatchObject({ text: 'what is due this week?' });
    expect(said({ text: '/due@slip_bot' })).toMatchObject({ text: 'what is due this week?' });
    expect(said({ text: '/lost 2 Ember Fox to rot' })).toMatchObject({ text: 'lost 2 Ember Fox to rot' });
    expect(said({ text: '/pot_on Ember Fox' })).toMatchObject({ text: 'pot on Ember Fox' });
    expect(said({ text: '/start' })).toMatchObject({ text: '/start' });
  });

  it('of another kind is named, captions being words like any', () => {
    expect(said({ photo: [{}] })).toMatchObject({ other: 'photo' });
    expect(said({ photo: [{}], caption: 'took 3 tips' })).toMatchObject({ text: 'took 3 tips' });
    expect(said({ sticker: {} })).toMatchObject({ other: 'sticker' });
    expect(said({ text: 'buy now', forward_origin: {} })).toMatchObject({ other: 'forwarded' });
    expect(said({ video: {} })).toMatchObject({ other: 'unknown' });
    expect(said({ location: { latitude: 51.5, longitude: -0.1 } })).toMatchObject({
      location: { latitude: 51.5, longitude: -0.1 },
    });
    expect(read({ voice: { file_id: 'v1' } })).toMatchObject({ voice: { fileId: 'v1' } });
    expect(read({ document: { file_id: 'd1', file_name: '../../etc/pass\u0000wd' } })).toMatchObject({
      document: { fileId: 'd1', name: 'passwd' },
    });
  });

  it('from a bot, or of the group about itself, says nothing', () => {
    expect(said({ text: 'spam', from: { ...bea, is_bot: true } })).toBe('nothing');
    expect(said({ chat: group, new_chat_members: [bea] })).toBe('nothing');
  });

  it('in a topic is answered there', () => {
    expect(read({ text: '/due', chat: group, is_topic_message: true, message_thread_id: 12 })).toMatchObject({
      thread: 12,
    });
  });
});

describe('in a group', () => {
  it('only what is said to the bot is read', () => {
    expect(said({ chat: group, text: 'took 3 of Ember Fox' })).toBe('nothing');
    expect(said({ chat: group, text: '/due@other_bot' })).toBe('nothing');
    expect(said({ chat: group, text: '@slip_bot_2 hello' })).toBe('nothing');
    expect(said({ chat: group, text: '@Slip_Bot, took 3 of Ember Fox' })).toMatchObject({
      group: true,
      text: 'took 3 of Ember Fox',
    });
    expect(
      said({
        chat: group,
        text: 'all of them',
        reply_to_message: { message_id: 4, from: { id: 99, is_bot: true } },
      }),
    ).toMatchObject({ text: 'all of them', replyTo: '4' });
  });

  it('a move to another id is told', () => {
    expect(read({ chat: group, migrate_to_chat_id: -1_001 })).toEqual({
      kind: 'moved',
      chat: 'telegram:-100',
      to: 'telegram:-1001',
    });
  });
});

describe('an update of a shape that the Bot API does not give', () => {
  it('is refused and not guessed at', () => {
    expect(() => read({ text: 12 })).toThrow(BadUpdate);
    expect(() => read({ text: 'hello', date: 'noon' })).toThrow(BadUpdate);
    expect(() => read({ text: 'hello', message_id: { $gt: 0 } })).toThrow(BadUpdate);
    expect(() => read({ location: { latitude: 'north', longitude: 0 } })).toThrow(BadUpdate);
    expect(() => read({ location: { latitude: 91, longitude: 0 } })).toThrow(BadUpdate);
    // Someone in another's chat of one, a group with a person's number, a group that would become a person's chat.
    expect(() => read({ text: 'hello', from: { ...bea, id: 8 } })).toThrow(BadUpdate);
    expect(() => read({ text: 'hello', chat: { id: 7, type: 'group' } })).toThrow(BadUpdate);
    expect(() => read({ chat: group, migrate_to_chat_id: 7 })).toThrow(BadUpdate);
    expect(chatOfUpdate({ update_id: 1, message: { chat: { id: 'x' } } } as unknown as Update)).toBe('');
  });
});
