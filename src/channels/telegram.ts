/** The Bot API through grammy, as narrow as this program needs it; the only file that knows grammy. */
import { Api, GrammyError, HttpError, InputFile } from 'grammy';
import type { Update } from 'grammy/types';

export type { Message, Update } from 'grammy/types';

/** What went wrong with a call, by what can be done about it. */
export type BotFaultKind =
  | 'badToken'
  /** Another poller, or a webhook. */
  | 'conflict'
  | 'tooFast'
  | 'closed'
  | 'moved'
  | 'refused'
  /** Not reached, no answer, an answer that makes no sense, or a fault of the server's. */
  | 'failed';

export class BotFault extends Error {
  constructor(
    readonly kind: BotFaultKind,
    /** The Bot API's own words or the network's code; never an address, which would hold the token. */
    readonly why: string,
    readonly waitSeconds = 0,
    readonly movedTo = '',
  ) {
    super(why);
  }
}

export interface SendTarget {
  readonly chat: number;
  readonly thread?: number;
  readonly replyTo?: number;
  /** Rows of buttons. */
  readonly buttons?: readonly (readonly { readonly label: string; readonly data: string }[])[];
}

export interface PollRequest {
  readonly offset?: number;
  readonly limit: number;
  readonly timeoutSeconds: number;
}

/** Every call throws `BotFault` and nothing else. Those that send answer the number of the message. */
export interface BotApi {
  me(): Promise<{ readonly id: number; readonly username: string }>;
  updates(request: PollRequest, signal: AbortSignal): Promise<Update[]>;
  /** Polling and a webhook exclude each other; what waits stays. */
  deleteWebhook(): Promise<void>;
  sendText(target: SendTarget, text: string): Promise<number>;
  sendFile(target: SendTarget, file: BotFile, caption: string): Promise<number>;
  /** Shows for some five seconds that a picture or paper is on its way. */
  showMaking(target: Pick<SendTarget, 'chat' | 'thread'>, what: BotFile['kind']): Promise<void>;
  answerTap(tapId: string, text?: string): Promise<void>;
  setCommands(commands: readonly { readonly command: string; readonly description: string }[]): Promise<void>;
  /** Bytes of a file that a grower sent; a fault where there are more than `maxBytes`. */
  fetchFile(fileId: string, maxBytes: number): Promise<Uint8Array>;
}

export interface BotFile {
  readonly name: string;
  readonly kind: 'picture' | 'document';
  readonly bytes: Uint8Array;
}

export interface BotAddress {
  readonly token: string;
  /** Without a slash at its end. */
  readonly root: string;
}

const CALL_SECONDS = 40;
const FILE_MS = 30_000;
const updateKinds = ['message', 'edited_message', 'callback_query', 'my_chat_member', 'chat_member'] as const;

export function connectBot({ token, root }: BotAddress): BotApi {
  const api = new Api(token, { apiRoot: root, timeoutSeconds: CALL_SECONDS });
  return {
    me: () => called(async () => await api.getMe()),
    updates: ({ offset, limit, timeoutSeconds }, signal) =>
      called(async () => {
        const updates = await api.getUpdates(
          {
            limit,
            timeout: timeoutSeconds,
            allowed_updates: updateKinds,
            ...(offset !== undefined ? { offset } : {}),
          },
          signal as Parameters<typeof api.getUpdates>[1],
        );
        if (!Array.isArray(updates)) throw new BotFault('failed', 'an answer that is no list of updates');
        return updates;
      }),
    deleteWebhook: () => called(async () => void (await api.deleteWebhook())),
    sendText: (target, text) =>
      called(async () => messageId(await api.sendMessage(target.chat, text, optionsOf(target)))),
    sendFile: (target, { kind, name, bytes }, caption) =>
      called(async () => {
        const file = new InputFile(bytes, name);
        const options = { ...optionsOf(target), ...(caption ? { caption } : {}) };
        return messageId(
          kind === 'picture'
            ? await api.sendPhoto(target.chat, file, options)
            : await api.sendDocument(target.chat, file, options),
        );
      }),
    showMaking: ({ chat, thread }, what) =>
      called(
        async () =>
          void (await api.sendChatAction(
            chat,
            what === 'picture' ? 'upload_photo' : 'upload_document',
            thread !== undefined ? { message_thread_id: thread } : {},
          )),
      ),
    answerTap: (tapId, text) =>
      called(async () => void (await api.answerCallbackQuery(tapId, text ? { text } : {}))),
    setCommands: (commands) => called(async () => void (await api.setMyCommands([...commands]))),
    fetchFile: (fileId, maxBytes) =>
      called(async () => {
        const { file_path: path, file_size: size } = await api.getFile(fileId);
        if (size !== undefined && size > maxBytes) throw tooLarge(maxBytes);
        if (!path || path.startsWith('/') || path.split('/').includes('..'))
          throw new BotFault('refused', 'a file without a usable path');
        return await download(`${root}/file/bot${token}/${encodeURI(path)}`, maxBytes);
      }),
  };
}

function optionsOf({ thread, replyTo, buttons }: SendTarget) {
  return {
    ...(thread !== undefined ? { message_thread_id: thread } : {}),
    ...(replyTo !== undefined
      ? { reply_parameters: { message_id: replyTo, allow_sending_without_reply: true } }
      : {}),
    ...(buttons
      ? {
          reply_markup: {
            inline_keyboard: buttons.map((row) =>
              row.map(({ label, data }) => ({ text: label, callback_data: data })),
            ),
          },
        }
      : {}),
  };
}

/** An answer without a number would lose the link between a reply and its prompt: it is no answer. */
function messageId(sent: { readonly message_id?: unknown } | null | undefined): number {
  if (typeof sent?.message_id !== 'number') throw new BotFault('failed', 'an answer without a message');
  return sent.message_id;
}

async function download(address: string, maxBytes: number): Promise<Uint8Array> {
  const response = await fetch(address, { signal: AbortSignal.timeout(FILE_MS) });
  if (!response.ok || !response.body) throw new BotFault('failed', `file: status ${response.status}`);
  const parts: Uint8Array[] = [];
  let length = 0;
  for await (const part of response.body as AsyncIterable<Uint8Array>) {
    length += part.byteLength;
    if (length > maxBytes) throw tooLarge(maxBytes);
    parts.push(part);
  }
  return Buffer.concat(parts);
}

function tooLarge(maxBytes: number): BotFault {
  return new BotFault('refused', `a file of more than ${Math.floor(maxBytes / 1_000_000)} MB`);
}

async function called<T>(call: () => Promise<T>): Promise<T> {
  try {
    return await call();
  } catch (error) {
    throw faultOf(error);
  }
}

function faultOf(error: unknown): BotFault {
  if (error instanceof BotFault) return error;
  if (error instanceof HttpError) return new BotFault('failed', networkCode(error.error));
  if (!(error instanceof GrammyError)) return new BotFault('failed', networkCode(error));
  const { error_code: code, parameters } = error;
  const why = `${code}: ${String(error.description).slice(0, 200)}`;
  if (parameters.migrate_to_chat_id !== undefined)
    return new BotFault('moved', why, 0, String(parameters.migrate_to_chat_id));
  // 404 is what the Bot API says to a token in a form that it does not know.
  if (code === 401 || (code === 404 && error.description === 'Not Found'))
    return new BotFault('badToken', why);
  if (code === 403) return new BotFault('closed', why);
  if (code === 409) return new BotFault('conflict', why);
  if (code === 429) return new BotFault('tooFast', why, parameters.retry_after ?? 1);
  if (code === 400 || code === 413)
    return new BotFault(/chat not found/i.test(why) ? 'closed' : 'refused', why);
  return new BotFault('failed', why);
}

/** A code like ECONNRESET; the message of a network error may hold the address, and so the token. */
function networkCode(error: unknown): string {
  const code = (error as { code?: unknown } | null)?.code;
  if (typeof code === 'string' || typeof code === 'number') return String(code);
  return error instanceof Error ? error.name : 'unknown';
}
