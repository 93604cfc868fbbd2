/** Phrases of time as the reader uses them: where each stands among the tokens, and what it would mean. */
import { NUMBER_WORDS } from './numbers.js';
import { addDays, type Day } from '../../calendar/day.js';
import { firstDay } from '../../calendar/span.js';
import { localDay, localTime } from '../../calendar/zone.js';
import { datesIn, type Moment, type Resolved } from '../dates.js';
import { crops } from '../row/lexicon.js';
import {
  isCounted,
  isCountedLot,
  isCountedOnDay,
  isOneOfThem,
  isShare,
  isShareOfPlant,
  isTaker,
  MONTH,
} from './no-days.js';
import type { Note } from '../note.js';
import type { When } from './pieces.js';
import { isOfGroup } from './meets-on.js';
import { CONTAINERS } from './sizes.js';
import { textAt, type Token } from '../row/tokens.js';

export interface FoundWhen {
  readonly from: number;
  readonly to: number;
  readonly when: When;
}

/** Phrases of time outside the tokens that `isName` protects; bare numbers and "may" that could be otherwise are left. */
export function findWhens(
  tokens: readonly Token[],
  note: Note,
  isName: (at: number) => boolean,
): readonly FoundWhen[] {
  const { text, starts } = spelled(tokens);
  const moment: Moment = {
    today: localDay(note.now, note.zone),
    timeNow: localTime(note.now, note.zone),
    zone: note.zone,
    dateOrder: note.dateOrder ?? 'DMY',
  };
  const exclude: [number, number][] = [];
  tokens.forEach((token, at) => {
    // "In September, one tray": a number of trays, no first of the month.
    const contained =
      CONTAINERS.has(tokens[at + 1]?.text ?? '') && /^(?:one|two|three|four|five|six|\d+)$/.test(token.text);
    // "Mon 4x84": four trays of 84, no fourth of the month.
    const multiplied =
      token.is === 'number' && tokens[at + 1]?.text === 'x' && tokens[at + 2]?.is === 'number';
    // "Aiming at 1,200": a number, no hour.
    const grouped = token.is === 'number' && /^\d{1,3}(?:,\d{3})+$/.test(token.raw);
    // "In the 9cm": a size, no ninth.
    const next = tokens[at + 1];
    const sized =
      token.is === 'number' && next?.glued === true && /^(?:cm|mm|in|l|ml|litre|inch)$/.test(next.text);
    // "Sun 7 of 10 rooted": a share, no seventh.
    const shared =
      token.is === 'number' &&
      next?.text === 'of' &&
      tokens[at + 2]?.is === 'number' &&
      token.glued === false;
    // "The winter garden", "the summer room": places.
    const placed =
      /^(?:winter|summer)$/.test(token.text) && /^(?:garden|house|room|quarters)$/.test(next?.text ?? '');
    // "Roots at last on Saturday": no last Saturday.
    const atLast = token.text === 'last' && tokens[at - 1]?.text === 'at';
    if (
      isName(at) ||
      atLast ||
      multiplied ||
      contained ||
      grouped ||
      isCountedOnDay(tokens, at, isName) ||
      sized ||
      placed ||
      shared ||
      isTaker(tokens, at)
    )
      exclude.push([starts[at] ?? 0, (starts[at] ?? 0) + token.text.length]);
  });
  const finds: FoundWhen[] = [];
  let reached = 0;
  for (const find of datesIn(text, moment, { exclude })) {
    while (
      reached < tokens.length &&
      (starts[reached] ?? 0) + (tokens[reached]?.text.length ?? 0) <= find.start
    )
      reached++;
    let from = reached < tokens.length ? reached : -1;
    if (PARTICLE.test(find.text)) from++;
    let to = from;
    while (to < tokens.length && (starts[to] ?? 0) < find.end) to++;
    if (from < 0 || to <= from) continue;
    if (/^half an?\b|^half doz/i.test(find.text)) continue;
    // "Last year's tubers": which, not when.
    if (
      /^last (?:year|season|spring|summer|autumn|winter)(?:'s)?$/i.test(find.text) &&
      /'s$/.test(tokens[to - 1]?.raw ?? '')
    )
      continue;
    const isEvent =
      /\b(?:christmas|xmas|easter|halloween|summer|winter|spring|autumn)$/i.test(find.text) &&
      /^(?:market|markets|fair|party|bazaar|show|sale|stall|fete|festival)$/.test(tokens[to]?.text ?? '');
    if (
      isEvent ||
      isOfGroup(tokens, from, to) ||
      isShare(tokens, from, to, isName) ||
      isCounted(tokens, from, to, isName) ||
      isOneOfThem(tokens, from, to, isName) ||
      isCountedLot(tokens, from, to, isName) ||
      (!find.certain && !plausible(tokens, from, to) && !isBareWeekend(tokens, from, to, isName))
    )
      continue;
    const past = done(dayOf(find.past), moment.today, find.text);
    const future = dayOf(find.future);
    finds.push({
      from,
      to,
      when: {
        past,
        future,
        ...(find.time === undefined ? {} : { time: find.time }),
        words: find.text.replace(MEAL, ''),
      },
    });
  }
  for (let at = 0; at + 2 < tokens.length; at++) {
    // "Several weeks back" names no day.
    if (!/^(?:several|some|many|few)$/.test(tokens[at]?.text ?? '')) continue;
    const phrase = tokens.slice(at, at + 3).map(({ text }) => text);
    if (
      /^(?:several|some|many|few) (?:days|weeks|months) (?:ago|back|since)$/.test(phrase.join(' ')) &&
      !finds.some(({ from, to }) => from < at + 3 && to > at)
    )
      finds.push({ from: at, to: at + 3, when: { past: 'ask', future: undefined, words: phrase.join(' ') } });
  }
  return finds.sort((a, b) => a.from - b.from);
}

/**
 * A verb's own "in", "on" or "over" before a day, which stands in no day ("went in today", "put six in last Sunday",
 * "keeled over Wednesday", "several weeks back"): only spans and parts of the day take one.
 */
const PARTICLE =
  /^(?:in|on)\b.*\b(?:ago|back)$|^over (?=(?:mon|tues?|wed(?:nes)?|thu(?:r|rs)?|fri|sat(?:ur)?|sun)(?:day)?\b)|^in (?:last|yesterday|yest|today|tonight|on|this (?:morning|arvo|afternoon|evening)|(?:mon|tues?|wed(?:nes)?|thu(?:r|rs)?|fri|sat(?:ur)?|sun)(?:day)?)\b(?!'s)/i;

/** "After lunch on Saturday": that day, and no day behind it. */
const MEAL = /^(?:before|after) (?:breakfast|lunch|lunchtime|dinner|dinnertime|tea|teatime) (?=\S)/i;

/** The row as one text, each token as the trade spells it, with where each begins. */
function spelled(tokens: readonly Token[]): { text: string; starts: readonly number[] } {
  let text = '';
  const starts: number[] = [];
  for (const token of tokens) {
    if (text !== '' && !token.glued) text += ' ';
    starts.push(text.length);
    // "At won degree": a number that was misheard tells no hour.
    const isMisheard = token.raw.length === token.text.length && NUMBER_WORDS.has(token.text);
    text += isMisheard || token.raw.toLowerCase() === token.text ? token.raw : token.text;
  }
  return { text, starts };
}

function dayOf(resolved: Resolved): When['past'] {
  if ('problem' in resolved) return 'ask';
  return 'date' in resolved ? resolved.date : resolved;
}

/** What was done lies in the past: a day to come is asked about, and "in ten days" tells how long it took. */
function done(past: When['past'], today: Day, words: string): When['past'] {
  if (past === undefined || past === 'ask') return past;
  // "In November", told in August: only last year's, more than six months back.
  if (typeof past !== 'string' && MONTH.test(words) && past.to < addDays(today, -183)) return 'ask';
  if (firstDay(past) <= today) return past;
  return /^(?:with)?in\b/i.test(words) ? undefined : 'ask';
}

/** Words that may be no time at all: taken only where something speaks for it. */
function plausible(tokens: readonly Token[], from: number, to: number): boolean {
  const words = tokens.slice(from, to).map(({ text }) => text);
  const phrase = words.join(' ');
  const before = tokens[from - 1]?.text ?? '';
  const next = tokens[to]?.text ?? '';
  if (/^\d+ ?\/ ?\d+$/.test(phrase)) {
    if (/^(?:rooted|have|had|with|are|dead|died|showing|roots|of)$/.test(next)) return false;
    if (isShareOfPlant(tokens, to, phrase)) return false;
    const [, second = '0'] = phrase.split('/');
    return Number(second) <= 12 || Number(phrase.split('/')[0]) <= 12;
  }
  if (/^(?:on )?(?:the )?\d+$/.test(phrase)) return false;
  // "The sixth is broken": one of six.
  if (
    /^the (?:[a-z]+|\d+(?:st|nd|rd|th))$/.test(phrase) &&
    /^(?:is|was|has|had|one|looks|looked|died|rotted|snapped)$/.test(next)
  )
    return false;
  if (words.length === 1 && /^(?:mon|tue|tues|wed|weds|thu|thur|thurs|fri|sat|sun)$/.test(phrase))
    return (
      !/^(?:was|were|is|had|have|has|i|they|we|and|it|the|that|he|she|dog|cat|in|some|more|full|hot|enough|much|any|bit|of|bright|strong)$/.test(
        before,
      ) &&
      !/^(?:in|on|by|down|up|there|here|and|was|is|shone|came|out|light|over|around|under|next|beside|at|with|through|my|the|them|these|those|em|'em|it|everything)$/.test(
        next,
      )
    );
  if (/\bmay$/.test(phrase) && !/\d/.test(phrase))
    return (
      /^(?:sorry|mean|meant|actually)$/.test(before === ',' ? (tokens[from - 2]?.text ?? '') : before) ||
      /^(?:in|by|for|of|since|last|next|this|early|late|mid|until|end|from|during)\b/.test(phrase) ||
      /^(?:in|by|for|of|since|last|next|this|early|late|mid|until)$/.test(before)
    );
  if (/\b(?:spring|fall|summer|winter|autumn)\b/.test(phrase))
    return (
      !/^(?:party|fair|show|sale|fete|garden|house|festival|term|bedding|tyres)$/.test(next) &&
      (words.length > 1 || /^(?:in|by|for|since|last|next|this|early|late|back|until|before)$/.test(before))
    );
  if (/\b(?:christmas|easter|halloween)$/.test(phrase))
    return !/^(?:market|markets|fair|party|do|bazaar|show|sale|stall|cactus)$/.test(next);
  if (/^\d+(?:st|nd|rd|th)$/.test(phrase))
    return !/^(?:flower|flowers|cutting|cuttings|batch|tray|time|year|lot|one|attempt|go|bud|leaf|leaves|pot|place|week|floor|shelf)$/.test(
      next,
    );
  return words.length > 1;
}

/** "Took 5 Ember Fox weekend": at the end, behind what was dealt with; "have a good weekend" tells of none. */
function isBareWeekend(
  tokens: readonly Token[],
  from: number,
  to: number,
  isName: (at: number) => boolean,
): boolean {
  const [behind, before] = [tokens[to], textAt(tokens, from - 1)];
  return (
    to - from === 1 &&
    textAt(tokens, from) === 'weekend' &&
    (behind === undefined || behind.is === 'mark' || behind.is === 'line') &&
    (isName(from - 1) || /^(?:cuttings?|plants|pots)$/.test(before) || crops.has(before))
  );
}
