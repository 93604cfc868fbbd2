/** Puts the question that comes next, with its buttons. */
import { allOfThem } from './completing.js';
import { isLive } from '../../ledger/batch.js';
import { batchLabelled, liveBatches } from '../../ledger/ledger.js';
import { whichPrompt } from '../../words/answers.js';
import { changeQuestion, renameAll, renameOne, renameQuestion, whichQuestion } from '../../words/amend.js';
import {
  batchOption, everyOne, leaveIt, refusalWords, repeatAgain, repeatOnce, repeatQuestion, slotQuestion,
} from '../../words/asks.js'; // prettier-ignore
import { bringInButtons, bringInQuestion } from '../../words/bringing-in-words.js';
import { doubtedButtons, doubtedQuestion } from '../../words/doubted.js';
import { eraseButtons, eraseQuestion, eraseSharedQuestion } from '../../words/erase.js';
import { heardButtons, heardQuestion } from '../../words/heard.js';
import { briefly } from '../../words/receipts.js';
import { capital, dayWords, type Speech } from '../../words/speech.js';
import { dependantsQuestion, takeAllBack } from '../../words/undo.js';
import { setupQuestion, setupSkip } from '../../words/setup.js';
import { careWords } from '../../words/plants.js';
import { doneOf, speechOf, standingOn } from '../batches/deeds.js';
import type { Sitting } from '../sitting.js';
import type { Ask, SlotAsk } from '../talk.js';
import type { Button } from '../turn.js';
import type { Care, Plant } from '../../ledger/entry.js';
import type { Line } from '../../ledger/posting.js';

export interface Question {
  readonly text: string;
  readonly buttons: readonly (readonly Button[])[];
}

/** How a question reads; its buttons carry its number and the number of the option. */
export function questionOf(sitting: Sitting, { id, asked, askedAt, origin }: Ask): Question {
  const buttons = (labels: readonly string[]) =>
    labels.map((label, index): Button[] => [{ label, data: `ask:${id}:${index}` }]);
  const leave: Button[] = [{ label: leaveIt, data: `ask:${id}:x` }];
  switch (asked.ask) {
    case 'slot':
      return slotText(sitting, asked, id, leave);
    case 'repeat':
      return {
        text: repeatQuestion((askedAt - lastSaid(sitting, asked.text, origin.message, askedAt)) / 1000),
        buttons: [
          [
            { label: repeatAgain, data: `ask:${id}:0` },
            { label: repeatOnce, data: `ask:${id}:x` },
          ],
        ],
      };
    case 'dependants':
      return {
        text: dependantsQuestion(deeds(sitting, asked.lines), deeds(sitting, asked.dependants)),
        buttons: [[{ label: takeAllBack, data: `ask:${id}:0` }], leave],
      };
    case 'whichLine':
      return { text: whichQuestion, buttons: [...buttons(deeds(sitting, asked.lines)), leave] };
    case 'change':
      return { text: changeQuestion, buttons: [leave] };
    case 'howMany': {
      const batch = batchLabelled(sitting.ledger, asked.batch);
      return {
        text: slotQuestion({ kind: 'check', batch: asked.batch }, 'rooted', { batch, live: [] }),
        buttons: [],
      };
    }
    case 'otherBatch': {
      const labels = asked.labels.flatMap((label) => batchLabelled(sitting.ledger, label) ?? []);
      return {
        text: whichQuestion,
        buttons: [...buttons(labels.map((batch) => batchOption(batch, speechOf(sitting)))), leave],
      };
    }
    case 'whichPrompt': {
      const labels = asked.occasions.map((occasion) => promptName(sitting, occasion));
      return { text: whichPrompt(String(asked.value), labels), buttons: [...buttons(labels), leave] };
    }
    case 'rename': {
      const label = standingOn(sitting.ledger, [asked.line])[0]?.touched[0] ?? '';
      return {
        text: renameQuestion(asked.from, asked.to, label),
        buttons: buttons([renameOne(label), renameAll(asked.from)]),
      };
    }
    case 'heard':
      return { text: heardQuestion(asked.words), buttons: [buttons(heardButtons).flat()] };
    case 'meant':
      return { text: doubtedQuestion(asked.kind), buttons: [buttons(doubtedButtons).flat()] };
    case 'erase':
      return {
        text: sitting.world.group ? eraseSharedQuestion : eraseQuestion,
        buttons: [
          buttons(eraseButtons.slice(0, 2)).flat(),
          [{ label: eraseButtons[2], data: `ask:${id}:x` }],
        ],
      };
    case 'bringIn':
      return {
        text: bringInQuestion,
        buttons: [
          buttons(bringInButtons.slice(0, 1)).flat(),
          [{ label: bringInButtons[1], data: `ask:${id}:x` }],
        ],
      };
    case 'setup':
      return {
        text: setupQuestion(asked.step, sitting.settings),
        buttons: [[{ label: setupSkip, data: `ask:${id}:x` }]],
      };
  }
}

function slotText(sitting: Sitting, asked: SlotAsk, id: number, leave: Button[]): Question {
  const speech = speechOf(sitting);
  const plant = asked.entry as Plant;
  const batch = plant.batch === undefined ? undefined : batchLabelled(sitting.ledger, plant.batch);
  const why = asked.refusal ? `${refusalWords(asked.refusal, asked.entry, speech)} ` : '';
  const text =
    why +
    slotQuestion(asked.entry, asked.slot, {
      batch,
      live: liveBatches(sitting.ledger),
      unknown: asked.refusal?.refused === 'noBatch',
    });
  const labels = asked.options.map((option) => optionLabel(sitting, asked.slot, option, speech));
  const options = labels.flatMap((label, index) =>
    isGone(sitting, asked, asked.options[index]) ? [] : { label, data: `ask:${id}:${index}` },
  );
  const wide = asked.slot === 'batch' || asked.slot === 'variety';
  return {
    text,
    buttons: [...(wide ? options.map((each) => [each]) : options.length > 0 ? [options] : []), leave],
  };
}

/** A batch that was offered when it lived. */
function isGone({ ledger }: Sitting, { slot }: SlotAsk, option: unknown): boolean {
  const batch = slot === 'batch' && typeof option === 'string' ? batchLabelled(ledger, option) : undefined;
  return batch !== undefined && !isLive(batch);
}

function optionLabel(sitting: Sitting, slot: string, option: unknown, speech: Speech): string {
  if (option === allOfThem) return everyOne;
  if (slot === 'batch' && typeof option === 'string') {
    const batch = batchLabelled(sitting.ledger, option);
    return batch ? batchOption(batch, speech) : option;
  }
  if (slot === 'rooted') return option === 'none' ? 'None yet' : capital(String(option));
  if (slot === 'care') return capital(careWords(option as Care));
  if (slot === 'date' && typeof option === 'string') return dayWords(option as never, speech);
  return typeof option === 'object' ? JSON.stringify(option) : String(option);
}

/** "EF1 Ember Fox" or what else the prompt of that occasion was about. */
export function promptName({ talk }: Sitting, occasion: string): string {
  const about = talk.prompts.findLast((each) => each.occasion === occasion)?.about;
  return [about?.batch, about?.variety ?? about?.crop].filter((each) => each).join(' ') || occasion;
}

function deeds(sitting: Sitting, lines: readonly Line[]): string[] {
  const speech = speechOf(sitting);
  return standingOn(sitting.ledger, lines).map((each) => briefly(doneOf(sitting.ledger, each), speech));
}

function lastSaid(sitting: Sitting, text: string, message: string, at: number): number {
  return sitting.talk.heard.filter((each) => each.text === text && each.message !== message).at(-1)?.at ?? at;
}
