/** The first use: a welcome and three questions that can be skipped, each also settable later in words. */
import type { ReadNote } from '../../language/note.js';
import { setUp, welcome } from '../../words/setup.js';
import { follow } from './instructing.js';
import { isLogged } from '../noting.js';
import { readIn } from '../reading/reading.js';
import { drop } from '../answers/replying.js';
import type { Sitting } from '../sitting.js';
import type { Ask } from '../talk.js';
import { zoneOfPlace } from './zone-of-place.js';

type Instruction = Parameters<typeof follow>[1];
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
  if (step === 'place') {
    const told = tellsTwo(sitting, text);
    if (told) {
      drop(sitting, ask);
      for (const set of told)
        if (set.kind !== 'setZone' || zoneOfPlace(set.place ?? '') !== null) follow(sitting, set);
      goOn(sitting, step);
      return true;
    }
  }
  // "Make that 3", "undo" and what only leans on a note are of the notes, however little they say.
  if (read.entries.length > 0 && read.entries[0]?.entry.kind !== 'answer') return false;
  const set = settingIn(sitting, step, text);
  if (set ? set.kind === 'setZone' && !isPlaceName(set.place ?? '') : !SKIPS.test(bare(text))) return false;
  drop(sitting, ask);
  // Where the clock of a small place is not known, the next question settles it.
  if (set && !(step === 'place' && set.kind === 'setZone' && zoneOfPlace(set.place ?? '') === null))
    follow(sitting, set);
  goOn(sitting, step);
  return true;
}

/** "I'm in Leeds, last frost mid May": the place, and what the other parts set; null where they set nothing. */
function tellsTwo(sitting: Sitting, text: string): readonly Instruction[] | null {
  const parts = text.split(/[,;.]| and /).map((part) => part.trim());
  const told = parts.map((part) => readIn(sitting, part).instruction);
  const place = parts.find((part, at) => part !== '' && !told[at]);
  const others = told.flatMap((each) => each ?? []);
  if (others.length === 0) return null;
  const where = place === undefined ? null : settingIn(sitting, 'place', place);
  return [...(where ? [where] : []), ...others];
}

/** Words that turn a question down, or leave it as it is. */
const SKIPS =
  /^(?:skip(?: it| that)?|no|nope|yes|yep|yeah|aye|ok|okay|right|correct|fine|don['’]?t know|dunno|not sure|pass|later)$/i;

/** Words that no place is called by: "they are in a jam jar on the sill" is no place to live. */
const TELLS =
  /\b(?:they|they['’]re|these|those|she|he|it|do|does|did|is|are|was|were|can|could|should|what|when|how|why|which|put|got|have|had|and|also|too|make|took|some|lost|cuttings?|plants?|pots?|rooted)\b/i;

/** A town, a county, a zone: a few words without figures. */
const isPlaceName = (words: string): boolean =>
  zoneOfPlace(words) !== null ||
  (/^\p{L}[\p{L}'’.-]*(?:,? \p{L}[\p{L}'’.-]*){0,4}$/u.test(words) && !TELLS.test(words));

/** What stands around a place in an answer: "I'm in Leeds". */
const AROUND_PLACE =
  /^(?:(?:i['’]?m|i am|we['’]?re|we are|i live|we live|it['’]?s|it is|my garden is|the garden is|based|living|from|just|near|outside|in|at)\b ?)+/i;

function goOn(sitting: Sitting, step: Step): void {
  const next = steps[steps.indexOf(step) + 1];
  if (next) sitting.ask({ ask: 'setup', step: next });
  else sitting.reply.text.push(setUp);
}

const bare = (text: string): string => text.trim().replace(/[.!]$/, '');

/** What the words set as the answer to that question; null where they set nothing. */
function settingIn(sitting: Sitting, step: Step, text: string): Instruction | null {
  const words = bare(text);
  if (SKIPS.test(words)) return null;
  const asInstruction = (words: string): Instruction | undefined => readIn(sitting, words).instruction;
  if (step === 'digest') {
    const set = asInstruction(
      /^(?:never|off|none)$/i.test(words) ? 'digest never' : `digest ${words.replace(/^(?:at )?/i, 'at ')}`,
    );
    return set?.kind === 'setDigest' ? set : null;
  }
  const frost = step === 'place' ? asInstruction(`last frost ${words}`) : undefined;
  if (frost?.kind === 'setFrost') return frost;
  return { kind: 'setZone', place: words.replace(AROUND_PLACE, '') || words };
}
