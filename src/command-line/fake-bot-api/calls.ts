/** The methods of the Bot API that the fake answers, with the types of the real one. */
import type { ApiMethods, Chat, Message } from 'grammy/types';
import type { UpdateQueue } from './update-queue.js';

type Args<K extends keyof ApiMethods> = Parameters<ApiMethods[K]>[0];
export type Calls = {
  [K in keyof ApiMethods]?: (args: Args<K>) => ReturnType<ApiMethods[K]> | Promise<ReturnType<ApiMethods[K]>>;
};

/** The Bot API's own refusal. */
export class Refusal extends Error {
  constructor(
    readonly code: number,
    readonly description: string,
  ) {
    super(description);
  }
}

export interface SentMessage {
  readonly method: string;
  readonly chat: number;
  readonly message: number;
  readonly text: string;
  readonly thread?: number;
  readonly replyTo?: number;
  /** Label and data of its buttons. */
  readonly buttons: readonly { readonly label: string; readonly data: string }[];
  readonly file?: { readonly name: string; readonly bytes: number };
  /** Milliseconds of `performance.now()`. */
  readonly sentAt: number;
}

export interface FakeState {
  readonly queue: UpdateQueue;
  readonly sent: SentMessage[];
  readonly answeredTaps: { readonly id: string; readonly text?: string }[];
  /** What the bot showed itself doing. */
  readonly actions: { readonly chat: number; readonly action: string }[];
  readonly edited: { readonly chat: number; readonly message: number }[];
  readonly files: Map<string, Uint8Array>;
  commands: readonly { readonly command: string; readonly description: string }[];
  webhook: string;
  nextMessage: number;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

/** What the Bot API refuses to hand out. */
const FILE_LIMIT = 20_000_000;

/** A bot that cannot exist: the fake's own. */
export const fakeBot = { id: 4_711_000_001, is_bot: true as const, first_name: 'Slip', username: 'slip_bot' };

export function callsOn(state: FakeState) {
  const send = (method: string, args: SendArgs, text: string, file?: SentMessage['file']): Message => {
    const chat = Number(args.chat_id);
    const buttons = buttonsOf(args.reply_markup);
    const message = state.nextMessage++;
    state.sent.push({
      method,
      chat,
      message,
      text,
      buttons,
      sentAt: performance.now(),
      ...(args.message_thread_id !== undefined ? { thread: args.message_thread_id } : {}),
      ...(args.reply_parameters ? { replyTo: args.reply_parameters.message_id } : {}),
      ...(file ? { file } : {}),
    });
    return { message_id: message, date: Math.floor(state.now() / 1000), chat: chatOf(chat), text } as Message;
  };
  const edit = (args: { chat_id?: number | string; message_id?: number }): true => {
    state.edited.push({ chat: Number(args.chat_id), message: Number(args.message_id) });
    return true;
  };
  return {
    getMe: () =>
      ({
        ...fakeBot,
        can_join_groups: true,
        can_read_all_group_messages: false,
        supports_inline_queries: false,
      }) as ReturnType<ApiMethods['getMe']>,
    getUpdates: async (args) => {
      if (state.webhook !== '')
        throw new Refusal(409, "Conflict: can't use getUpdates method while webhook is active");
      const { offset, limit = 100, timeout = 0 } = args ?? {};
      const updates = await state.queue.take(offset, limit, timeout * 1000);
      if (updates === 'conflict') throw new Refusal(409, 'Conflict: terminated by other getUpdates request');
      return updates;
    },
    setWebhook: ({ url }) => {
      state.webhook = url;
      return true;
    },
    deleteWebhook: () => {
      state.webhook = '';
      return true;
    },
    sendMessage: (args) => {
      if (args.text.trim() === '') throw new Refusal(400, 'Bad Request: message text is empty');
      if (args.text.length > 4096) throw new Refusal(400, 'Bad Request: message is too long');
      return send('sendMessage', args as SendArgs, args.text) as ReturnType<ApiMethods['sendMessage']>;
    },
    sendPhoto: (args) =>
      send('sendPhoto', args as SendArgs, captionOf(args.caption), fileOf(args.photo)) as ReturnType<
        ApiMethods['sendPhoto']
      >,
    sendDocument: (args) =>
      send('sendDocument', args as SendArgs, captionOf(args.caption), fileOf(args.document)) as ReturnType<
        ApiMethods['sendDocument']
      >,
    editMessageText: edit,
    editMessageReplyMarkup: edit,
    answerCallbackQuery: ({ callback_query_id, text }) => {
      state.answeredTaps.push({ id: callback_query_id, ...(text ? { text } : {}) });
      return true;
    },
    sendChatAction: ({ chat_id, action }) => {
      state.actions.push({ chat: Number(chat_id), action });
      return true;
    },
    setMyCommands: ({ commands }) => {
      state.commands = commands;
      return true;
    },
    getFile: ({ file_id }) => {
      const bytes = state.files.get(file_id);
      if (!bytes) throw new Refusal(400, 'Bad Request: invalid file_id');
      if (bytes.byteLength > FILE_LIMIT) throw new Refusal(400, 'Bad Request: file is too big');
      return { file_id, file_unique_id: file_id, file_size: bytes.byteLength, file_path: `files/${file_id}` };
    },
  } satisfies Calls;
}

interface SendArgs {
  readonly chat_id: number | string;
  readonly message_thread_id?: number;
  readonly reply_parameters?: { readonly message_id: number };
  readonly reply_markup?: unknown;
}

function buttonsOf(markup: unknown): SentMessage['buttons'] {
  const rows = (markup as { inline_keyboard?: { text: string; callback_data?: string }[][] } | undefined)
    ?.inline_keyboard;
  return (rows ?? []).flat().map(({ text, callback_data: data = '' }) => {
    const bytes = Buffer.byteLength(data);
    if (bytes < 1 || bytes > 64) throw new Refusal(400, 'Bad Request: BUTTON_DATA_INVALID');
    return { label: text, data };
  });
}

function captionOf(caption: string | undefined): string {
  if ((caption ?? '').length > 1024) throw new Refusal(400, 'Bad Request: message caption is too long');
  return caption ?? '';
}

/** Uploads reach a call as name and bytes. */
function fileOf(upload: unknown): { readonly name: string; readonly bytes: number } {
  const { name, size } = upload as File;
  return { name, bytes: size };
}

function chatOf(id: number): Chat {
  return id < 0 ? { id, type: 'supergroup', title: 'Bench' } : { id, type: 'private', first_name: 'Grower' };
}
