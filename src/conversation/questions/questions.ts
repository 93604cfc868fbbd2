/** Answers questions with numbers from the ledger. */
import { weekOf } from '../../calendar/span.js';
import { type Batch, isLive, isOf, placeOf, standsAt } from '../../ledger/batch.js';
import type { Question } from '../../ledger/entry.js';
import { knownPlace, type Ledger, matching } from '../../ledger/ledger.js';
import { standingAt } from '../../ledger/place-meant.js';
import { plantOf } from '../../ledger/reach.js';
import { dueWords } from '../../words/due-list.js';
import { helpWords } from '../../words/help.js';
import { pastReceipt } from '../../words/receipts.js';
import { frostWords } from '../../words/frost-words.js';
import { planWords } from '../../words/plan-words.js';
import {
  countWords,
  doneCountWords,
  historyWords,
  noneOf,
  rateWords,
  storyWords,
  whereWords,
} from '../../words/question-answers.js';
import { deed } from '../../words/asks.js';
import { dealtWith, deedCounted, deedListed, isDeed } from './how-many-done.js';
import { doneOf, speechOf } from '../batches/deeds.js';
import { dueWithin } from '../../outlook/digest.js';
import { siteOf } from '../../outlook/site.js';
import { whichBetter } from '../../outlook/which-better.js';
import { allDues } from '../prompts/looking-ahead.js';
import { plansAsked } from './plans-asked.js';
import { rates } from './strike-rates.js';
import type { Sitting } from '../sitting.js';

export function answerQuestion(sitting: Sitting, question: Question): void {
  const place = placeMeant(sitting.ledger, question);
  sitting.reply.text.push(answerTo(sitting, place === undefined ? question : { ...question, place }));
}

/** By the name that the ledger has for it, of those of that noun the one where such plants stand. */
function placeMeant(ledger: Ledger, { place, ...plant }: Question): string | undefined {
  const known = knownPlace(ledger, place);
  if (known !== undefined || place === undefined) return known;
  const theirs = matching(ledger, plantOf(plant)).flatMap(({ standing }) => Object.keys(standing));
  const [only, another] = standingAt([...new Set(theirs)], (name) => name, place);
  return another === undefined && only !== undefined ? only : place;
}

function answerTo(sitting: Sitting, question: Question): string {
  const { ledger } = sitting;
  const speech = speechOf(sitting);
  const plant = plantOf(question);
  const named = Object.keys(plant).length > 0;
  const all = [...ledger.batches.values()].filter((batch) => fits(batch, question));
  const live = all.filter(isLive);
  switch (question.topic ?? 'help') {
    case 'due': {
      // Asked of one plant and of no time, it is that plant's next step that is wanted.
      if (named && question.from === undefined && question.to === undefined)
        return answerTo(sitting, { ...question, topic: 'when' });
      const span = { from: question.from ?? sitting.today, to: question.to ?? weekOf(sitting.today).to };
      const due = dueWithin(allDues(sitting), { ...span, today: sitting.today }).filter(
        ({ labels }) => !named || live.some(({ label }) => labels.includes(label)),
      );
      return dueWords(due, span, speech);
    }
    case 'count': {
      const asked = deedCounted(sitting.text);
      if (asked) {
        const { from, to } = question;
        const dealt = dealtWith(all, asked, { from, to }, sitting.text);
        return doneCountWords(dealt, deed(asked), from && to ? { from, to } : null, speech);
      }
      return live.length === 0 ? noneOf(plant, question.place) : countWords(live, plant, question.place);
    }
    case 'where':
      return live.length === 0 ? noneOf(plant, question.place) : whereWords(live);
    case 'when':
    case 'status': {
      if (all.length === 0) return noneOf(plant);
      const shown = live.length > 0 ? live : all;
      const next = allDues(sitting).filter(({ kind }) => kind !== 'tend');
      return shown
        .slice(0, 10)
        .map((batch) =>
          storyWords(batch, next.find(({ labels }) => labels.includes(batch.label)) ?? null, speech),
        )
        .join('\n\n');
    }
    case 'history': {
      const from = question.from;
      const to = question.to;
      const who = growerNamed(sitting);
      const only = deedListed(sitting.text);
      const entries = ledger.standing.filter(({ entry, touched, journal }) => {
        const day = typeof entry.date === 'string' ? entry.date : entry.date.to;
        return (
          (!named || touched.some((label) => all.some((batch) => batch.label === label))) &&
          (who === undefined || journal.by === who) &&
          (only === null || isDeed(entry, only)) &&
          (from === undefined || day >= from) &&
          (to === undefined || day <= to)
        );
      });
      return historyWords(entries.map((each) => pastReceipt(doneOf(ledger, each), speech)));
    }
    case 'rate':
      return rateWords(rates(all), whichBetter(all), plant);
    case 'plan':
      return planWords(plansAsked(sitting, plant), speech);
    case 'frost':
      return frostWords(siteOf(sitting.settings), speech);
    case 'help':
      return helpWords(live[0] ?? null, placeOf(live[0] ?? ({ standing: {} } as Batch)), speech);
  }
}

/** "What did Col do in March": a grower of this ledger that the words name. */
function growerNamed({ ledger, text }: Sitting): string | undefined {
  const words = new Set(text.toLowerCase().split(/[^\p{L}\p{N}]+/u));
  return ledger.standing
    .flatMap(({ journal }) => journal.by ?? [])
    .find((by) =>
      by
        .toLowerCase()
        .split(/\s+/)
        .every((name) => words.has(name)),
    );
}

function fits(batch: Batch, { place, ...question }: Question): boolean {
  return isOf(batch, plantOf(question)) && (place === undefined || standsAt(batch, place));
}
