/** Phrases of time as the reader uses them: where each stands among the tokens, and what it would mean. */
import { localDay, localTime } from '../calendar/zone.js';
import { datesIn, type Moment, type Resolved } from './dates.js';
import type { Note } from './note.js';
import type { When } from './pieces.js';
import type { Token } from './tokens.js';

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
    if (isName(at)) exclude.push([starts[at] ?? 0, (starts[at] ?? 0) + token.text.length]);
  });
  const finds: FoundWhen[] = [];
  for (const find of datesIn(text, moment, { exclude })) {
    const from = starts.findIndex((start, at) => start + (tokens[at]?.text.length ?? 0) > find.start);
    let to = from;
    while (to < tokens.length && (starts[to] ?? 0) < find.end) to++;
    if (from < 0 || to <= from) continue;
    if (!find.certain && !plausible(tokens, from, to)) continue;
    const past = dayOf(find.past);
    const future = dayOf(find.future);
    finds.push({
      from,
      to,
      when: { past, future, ...(find.time === undefined ? {} : { time: find.time }), words: find.text },
    });
  }
  return finds;
}

/** The row as one text, each token as the trade spells it, with where each begins. */
function spelled(tokens: readonly Token[]): { text: string; starts: readonly number[] } {
  let text = '';
  const starts: number[] = [];
  for (const token of tokens) {
    if (text !== '' && !token.glued) text += ' ';
    starts.push(text.length);
    const asWritten = token.raw.toLowerCase() === token.text || token.raw.length === token.text.length;
    text += asWritten ? token.raw : token.text;
  }
  return { text, starts };
}

function dayOf(resolved: Resolved): When['past'] {
  if ('problem' in resolved) return 'ask';
  return 'date' in resolved ? resolved.date : resolved;
}

/** Words that may be no time at all: taken only where something speaks for it. */
function plausible(tokens: readonly Token[], from: number, to: number): boolean {
  const words = tokens.slice(from, to).map(({ text }) => text);
  const phrase = words.join(' ');
  const before = tokens[from - 1]?.text ?? '';
  const next = tokens[to]?.text ?? '';
  if (/^\d+ ?\/ ?\d+$/.test(phrase)) {
    if (/^(?:rooted|have|had|with|are|dead|died|showing|roots|of)$/.test(next)) return false;
    const [, second = '0'] = phrase.split('/');
    return Number(second) <= 12 || Number(phrase.split('/')[0]) <= 12;
  }
  if (/^(?:on )?(?:the )?\d+$/.test(phrase)) return false;
  if (/\bmay$/.test(phrase) && !/\d/.test(phrase))
    return (
      /^(?:in|by|for|of|since|last|next|this|early|late|mid|until|end|from|during)\b/.test(phrase) ||
      /^(?:in|by|for|of|since|last|next|this|early|late|mid|until)$/.test(before)
    );
  if (/\b(?:spring|fall|summer|winter|autumn)\b/.test(phrase))
    return (
      words.length > 1 || /^(?:in|by|for|since|last|next|this|early|late|back|until|before)$/.test(before)
    );
  return words.length > 1;
}
