/** Sends a letter through the Bot API and says how that ended. */
import type { Outgoing } from '../conversation/turn.js';
import type { Sent } from '../post/delivery.js';
import type { WaitingLetter } from '../post/outbox.js';
import { sayingOf } from './letter.js';
import { type BotApi, BotFault } from './telegram.js';
import { textPieces } from './text-pieces.js';

/** UTF-16 units, says the Bot API. */
const TEXT_LIMIT = 4096;
const CAPTION_LIMIT = 1024;

/** A file comes before its text where that is too long for a caption; buttons stay with the last message. */
export function telegramPieces(said: Outgoing): Outgoing[] {
  const { text, buttons, file, ...rest } = said;
  if (file && text.trim().length <= CAPTION_LIMIT) return [said];
  const texts = textPieces(text, TEXT_LIMIT);
  const pieces: Outgoing[] = [
    ...(file ? [{ ...rest, text: '', file }] : []),
    ...texts.map((piece) => ({ ...rest, text: piece })),
  ];
  return pieces.map((piece, index) => {
    const last = index === pieces.length - 1;
    return {
      ...piece,
      key: last ? said.key : `${said.key}#${index + 1}`,
      ...(last && buttons ? { buttons } : {}),
    };
  });
}

/** Telegram's own number of a chat. */
export function numberOf(chat: string): number {
  return Number(chat.slice(chat.indexOf(':') + 1));
}

export async function sendLetter(api: BotApi, letter: WaitingLetter): Promise<Sent> {
  const said = sayingOf(letter);
  const replyTo = Number(said.replyTo);
  const target = {
    chat: numberOf(letter.chat),
    ...(said.thread !== undefined ? { thread: said.thread } : {}),
    ...(Number.isSafeInteger(replyTo) ? { replyTo } : {}),
    ...(said.buttons && said.buttons.length > 0 ? { buttons: said.buttons } : {}),
  };
  try {
    const message = said.file
      ? await api.sendFile(target, said.file, said.text)
      : await api.sendText(target, said.text);
    return { outcome: 'arrived', message: String(message) };
  } catch (fault) {
    if (!(fault instanceof BotFault)) throw fault;
    return outcomeOf(fault);
  }
}

function outcomeOf(fault: BotFault): Sent {
  switch (fault.kind) {
    case 'tooFast':
      return { outcome: 'tooFast', waitSeconds: fault.waitSeconds };
    case 'moved':
      return { outcome: 'moved', to: fault.movedTo };
    case 'closed':
    case 'refused':
    case 'failed':
      return { outcome: fault.kind, why: fault.why };
    // Both pass: the token is put right, the other poller goes.
    case 'badToken':
    case 'conflict':
      return { outcome: 'failed', why: fault.why };
  }
}
