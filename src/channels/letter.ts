/** A message on its way through the outbox: what is said as JSON, and back. */
import { createHash } from 'node:crypto';
import type { Outgoing } from '../conversation/turn.js';
import type { Letter, WaitingLetter } from '../post/outbox.js';

/** What a letter's body holds beside its chat and key. */
type Body = Pick<Outgoing, 'text' | 'buttons' | 'replyTo' | 'prompts'> & {
  readonly file?: { readonly name: string; readonly kind: 'picture' | 'document' };
  readonly thread?: number;
};

/** A message read back from its letter. */
export interface Saying extends Outgoing {
  /** Topic of a forum group. */
  readonly thread?: number;
}

export function letterOf(
  said: Saying,
  { kind, dueAt }: Pick<Letter, 'kind' | 'dueAt'>,
  ledger?: number,
): Letter {
  const { text, buttons, replyTo, prompts, file, thread } = said;
  const body: Body = {
    text,
    ...(buttons
      ? { buttons: buttons.map((row) => row.map(({ label, data }) => ({ label, data: carried(data) }))) }
      : {}),
    ...(replyTo !== undefined ? { replyTo } : {}),
    ...(prompts ? { prompts } : {}),
    ...(file ? { file: { name: file.name, kind: file.kind } } : {}),
    ...(thread !== undefined ? { thread } : {}),
  };
  return {
    // Messages of different ledgers in one chat are numbered alike.
    key: `${said.chat} ${ledger ?? '-'} ${said.key}`,
    chat: said.chat,
    kind,
    body: JSON.stringify(body),
    dueAt,
    offers: buttons?.flat().map(({ data }) => ({ data: carried(data), means: data })) ?? [],
    ...(ledger !== undefined ? { ledger } : {}),
    ...(file ? { attachment: file.bytes } : {}),
  };
}

export function sayingOf({ chat, key, kind, body, attachment }: WaitingLetter): Saying {
  const { file, ...rest } = JSON.parse(body) as Body;
  return {
    ...rest,
    chat,
    key: keyWithinChat(key),
    unasked: kind === 'notice',
    ...(file && attachment ? { file: { ...file, bytes: attachment } } : {}),
  };
}

/** What a button carries: its data, or a digest of it where that is longer than the 64 bytes which the Bot API takes. */
function carried(data: string): string {
  return Buffer.byteLength(data) <= 64 ? data : `#${createHash('sha256').update(data).digest('base64url')}`;
}

/** The conversation's key of a letter: without chat and ledger, and without the number of a piece or of a repeated key. */
export function keyWithinChat(key: string): string {
  return key
    .split(' ')
    .slice(2)
    .join(' ')
    .replace(/[#~]\d+$/, '');
}
