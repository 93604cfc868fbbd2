/** What only excuses that a note comes late: "should have written this up at the time: on Friday I took five". */
import { wordAt } from '../grammar/rule.js';
import { leading } from '../grammar/runs.js';
import { closing } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

const TOLD = 'written|put|said|logged|noted|told|mentioned|recorded|entered|posted|sent|reported';
const TELL = 'write|say|log|note|tell|mention|record|enter|put|post|send|report';
const WHAT = '(?: you)?(?: (?:this|that|it|these|all this))?(?: (?:up|down|in))?(?: (?:here|about it))?';
const SOONER =
  ' (?:at the time|sooner|earlier|before|before now|then|straight away|straightaway|right away|there and then|ages ago|days ago)';

/** The excuses by themselves; a pattern for each, so that none is longer than it must be. */
const EXCUSES: readonly RegExp[] = [
  `(?:(?:i|we) )?(?:should|ought to|meant to) (?:have |of )?(?:${TOLD}|${TELL})${WHAT}(?:${SOONER})?`,
  `(?:(?:i|we) )?could (?:have |of )?(?:${TOLD}|${TELL})${WHAT}${SOONER}`,
  `(?:(?:i|we) )?(?:never|forgot to|didn't|haven't|clean forgot to) (?:${TELL}|wrote|${TOLD})${WHAT}(?:${SOONER})?`,
  'what (?:really |actually )?happened (?:is|was)',
  'sorry to (?:be (?:a pain|a nuisance|a bother)|bother you|pester you|trouble you|keep on|go on)(?: again)?',
  '(?:(?:i|we) )?(?:nearly |almost |clean |completely |quite )?(?:forgot|forgotten)',
  `(?:(?:i'm|i am|we're) )?(?:a bit |a little |very |rather )?late (?:telling|writing|logging|noting|with|in telling)${WHAT}`,
].map((excuse) => new RegExp(`^${leading('sorry(?! to)|oops|oh|ah|and|i know')}${excuse}$`));

/** "Marv says we need a ledger so here goes: …": what is told comes behind. */
const ANNOUNCES = closing`
  here goes|here we go|here it is|here's (the|my) first( one)?|first (note|entry|one)( of (many|the year))?|for the record
`;

/** No excuse is longer. */
const LONGEST = 14;

/** Where the telling begins behind such an excuse and its break, or a "but"; the start where there is none. */
export function pastExcuse(row: readonly Piece[]): number {
  for (let at = 1; at < row.length - 1 && at <= LONGEST; at++) {
    // "Meant to say on Monday I took five".
    if (row[at]?.is === 'when' && tellsOwnDeed(row, at + 1) && isExcuse(said(row, at))) return at;
    // "I never told you that I took five".
    const leads = wordAt(row, at) === 'that' && /^(?:i|we)$/.test(wordAt(row, at + 1));
    const ends = row[at]?.is === 'break' || wordAt(row, at) === 'but' || leads;
    if (ends) return isExcuse(said(row, at)) || ANNOUNCES.test(said(row, at)) ? at + 1 : 0;
  }
  return 0;
}

function tellsOwnDeed(row: readonly Piece[], at: number): boolean {
  const verb = row[at + 1];
  return (
    /^(?:i|we)$/.test(wordAt(row, at)) &&
    verb?.is === 'word' &&
    verb.verb?.form === 'past' &&
    row.slice(at + 2).some(({ is }) => is === 'plant')
  );
}

const isExcuse = (words: string): boolean => EXCUSES.some((excuse) => excuse.test(words));

/** "Did the lavender and clean forgot to tell you: …" from what was done alone. */
export function withoutExcuse(row: readonly Piece[]): readonly Piece[] {
  const end = row.findIndex(({ is }) => is === 'break');
  const from = row.findLastIndex((_, at) => at < end && /^(?:and|but)$/.test(wordAt(row, at)));
  const isWithin = from > 1 && end - from > 1 && end < row.length - 1;
  return isWithin && isExcuse(said(row.slice(from + 1), end - from - 1))
    ? [...row.slice(0, from), ...row.slice(end)]
    : row;
}

const said = (row: readonly Piece[], to: number): string =>
  row
    .slice(0, to)
    .map((piece) =>
      piece.is === 'word' ? piece.text : piece.is === 'when' ? piece.when.words.toLowerCase() : '?',
    )
    .join(' ');
