/** What prepositions and "to" make of phrases of time: "by the end of May", "since Monday", "from Monday to Friday". */
import { addDays } from '../../calendar/day.js';
import { ambiguous, changed, daysFromToday, fixed, impossible, type When } from './meaning.js';
import { rule } from './pattern.js';
import { within } from './counted-spans.js';
import { fromTo, joins, pair } from './from-to.js';

const today = daysFromToday(0);

export const ranges = [
  rule('phrase', 'from Monday to Friday', `from? <start:when> ${joins} <end:when>`, ({ start, end }) =>
    fromTo(start, end),
  ),
  rule(
    'phrase',
    'between Monday and Friday',
    'between <start:when> and|to|-|until|through <end:when>',
    ({ start, end }) => fromTo(start, end),
  ),
  rule('phrase', 'Sat and Sun', 'on|over? <start:day> and|&|/ <end:day>', ({ start, end }) =>
    pair(start, end),
  ),
  rule('phrase', 'Saturday or Sunday', 'on? <start:when> or <end:when>', () => fixed(() => ambiguous)),
  rule('phrase', 'for five days from 3 May', 'for <count> <unit> from <day>', ({ count, unit, day }) =>
    within(count, unit, day),
  ),
  rule('phrase', 'from 3 May for five days', 'from <day> for <count> <unit>', ({ count, unit, day }) =>
    within(count, unit, day),
  ),
  // Without "between", what "and" joins is another matter ("forgot to water yesterday and now they droop").
  rule('phrase', 'between now and Friday', 'between now and <end:when>', ({ end }) => fromTo(today, end)),
  rule('phrase', 'from now until Friday', 'from|between? now to|until|- <end:when>', ({ end }) =>
    fromTo(today, end),
  ),
  rule('phrase', 'between Monday and now', 'between <start:when> and now', ({ start }) =>
    fromTo(start, today),
  ),
  rule('phrase', 'from Monday until now', 'between|from? <start:when> to|until|- now', ({ start }) =>
    fromTo(start, today),
  ),
  rule('phrase', 'since Monday', 'since <when>', ({ when: start }) =>
    changed({ ...start, mean: (_, now) => start.mean('past', now) }, ({ from }, now) =>
      from <= now.today ? { from, to: now.today } : impossible,
    ),
  ),
];

export const bounds = [
  rule('whole', '', '<phrase>', ({ phrase }) => phrase),
  rule('phrase', '', '<when>', ({ when: phrase }) => phrase),
  rule(
    'phrase',
    'on Monday',
    'on|in|at|from|for|around|during|over|come|back|throughout around|in|on? <when>',
    ({ when: phrase }) => ({ ...phrase, certain: true }),
  ),
  rule('phrase', 'sometime in June', 'sometime in|on|over|during|around? <when>', ({ when: phrase }) => ({
    ...phrase,
    certain: true,
  })),
  rule(
    'phrase',
    'one day last week',
    'some|one|a|any time|day in|of|over|during? <when>',
    ({ when: phrase }) => ({ ...phrase, certain: true }),
  ),
  rule('phrase', 'all last week', 'for|over|during? all|most of? <span>', ({ span }) => ({
    ...span,
    certain: true,
  })),
  rule('phrase', 'through the week', 'all? through <span>', ({ span }) => ({ ...span, certain: true })),
  rule('phrase', 'next week sometime', '<when> sometime', ({ when: phrase }) => phrase),
  rule('phrase', 'towards the end of May', 'towards <when>', ({ when: phrase }) => ({
    ...phrase,
    certain: true,
  })),
  rule('phrase', 'by Friday at the latest', 'by? <when> at the? latest', ({ when: phrase }) =>
    lastDayOf(phrase),
  ),
  rule('phrase', 'before the end of May', 'before the? end of the? <span>', ({ span }) => lastDayOf(span)),
  rule('phrase', 'by the end of May', 'by|until|through for? the? <when>', ({ when: phrase }) =>
    lastDayOf(phrase),
  ),
  rule(
    'phrase',
    'before breakfast yesterday',
    'before|after breakfast|lunchtime|teatime on? <when>',
    ({ when: phrase }) => phrase,
  ),
  rule('phrase', 'before Easter', 'before <when>', ({ when: phrase }) =>
    changed({ ...phrase, certain: true }, ({ from }) => ({ date: addDays(from, -1) })),
  ),
  rule('phrase', 'after Easter', 'after <when>', ({ when: phrase }) =>
    changed({ ...phrase, certain: true }, ({ to }) => ({ date: addDays(to, 1) })),
  ),
];

function lastDayOf(phrase: When): When {
  return changed({ ...phrase, certain: true }, ({ to }) => ({ date: to }));
}
