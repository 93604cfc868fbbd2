/** The first use: a welcome and three questions that can be skipped, each also settable later in words. */
import type { ReadNote } from '../language/note.js';
import { setUp, welcome } from '../words/setup.js';
import { follow } from './instructing.js';
import { isLogged } from './noting.js';
import { drop } from './replying.js';
import type { Sitting } from './sitting.js';
import type { Ask } from './talk.js';

type Step = 'place' | 'zone' | 'digest';
const steps: readonly Step[] = ['place', 'zone', 'digest'];

const greeting =
  /^(?:hello|hi|hiya|hey|howdy|g'?day|good (?:morning|afternoon|evening)|morning)(?: there)?[\s!.,]*$/i;

/** "Hello" and nothing else. */
export function greets(text: string): boolean {
  return greeting.test(text.trim());
}

export function start(sitting: Sitting): void {
  sitting.change({ welcomed: true, asks: sitting.talk.asks.filter(({ asked }) => asked.ask !== 'setup') });
  sitting.reply.text.push(welcome());
  sitting.ask({ ask: 'setup', step: 'place' });
}

export function skipSetup(sitting: Sitting, ask: Ask): void {
  drop(sitting, ask);
  if (ask.asked.ask === 'setup') goOn(sitting, ask.asked.step);
}

/** Whether the reply answers the question of that step; a note is no answer. */
export function answerSetup(sitting: Sitting, ask: Ask, step: Step, text: string, read: ReadNote): boolean {
  if (read.entries.some(({ entry }) => isLogged(entry))) return false;
  if (read.instruction) {
    drop(sitting, ask);
    follow(sitting, read.instruction);
    goOn(sitting, step);
    return true;
  }
  const set = settingIn(step, text);
  if (!set && read.entries.length > 0 && read.entries[0]?.entry.kind !== 'answer') return false;
  drop(sitting, ask);
  if (set) follow(sitting, set);
  goOn(sitting, step);
  return true;
}

function goOn(sitting: Sitting, step: Step): void {
  const next = steps[steps.indexOf(step) + 1];
  if (next) sitting.ask({ ask: 'setup', step: next });
  else sitting.reply.text.push(setUp);
}

function settingIn(step: Step, text: string): Parameters<typeof follow>[1] | null {
  const words = text.trim().replace(/[.!]$/, '');
  if (/^(?:skip|no|yes|ok|don'?t know|pass)$/i.test(words)) return null;
  if (step === 'place' || step === 'zone') return { kind: 'setZone', place: words };
  if (/^(?:never|off|none)$/i.test(words)) return { kind: 'setDigest', at: 'off' };
  const match = /^(?:at )?(\d{1,2})(?:[:.](\d{2}))? ?(am|pm)?$/i.exec(words);
  if (!match) return null;
  const hour = (Number(match[1]) % 24) + (match[3]?.toLowerCase() === 'pm' && Number(match[1]) < 12 ? 12 : 0);
  return { kind: 'setDigest', at: `${String(hour).padStart(2, '0')}:${match[2] ?? '00'}` };
}
