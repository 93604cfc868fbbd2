/** What is due and coming, as a calendar to take along. */
import type { Instant } from '../calendar/clock.js';
import { latest } from '../calendar/day.js';
import { allDues, type Viewpoint } from '../conversation/prompts/looking-ahead.js';
import { dueCalendar } from '../exchange/due-calendar.js';
import { calendarCaption } from '../words/paper-words.js';
import { dueReason } from '../words/due-reason.js';
import { tellWords } from '../words/prompts.js';
import { capital } from '../words/speech.js';
import type { Paper } from './paper.js';

export function calendarPaper(view: Viewpoint, name: string, now: Instant): Paper {
  const { settings, today } = view;
  const speech = { wording: settings.wording, units: settings.units, today };
  const items = allDues(view).map((due) => {
    const reason = dueReason(due, speech);
    return {
      key: due.key,
      day: latest(due.from, today),
      summary: capital(tellWords(due, speech)),
      ...(reason === '' ? {} : { description: capital(reason) }),
    };
  });
  const text = dueCalendar(items, `slipnote: ${name}`, now);
  return {
    name: 'due.ics',
    kind: 'document',
    bytes: Buffer.from(text),
    caption: calendarCaption(items.length),
  };
}
