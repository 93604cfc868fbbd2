/** What stands beside a phrase of time and makes it something else, or not understood. */
import type { When } from './meaning.js';
import type { Token } from './token.js';

/** Things that are counted off: "the third pot", "the first to root", "the second of them". */
const counted = new Set(
  (
    'pot pots tray trays batch batches shelf bench cutting cuttings one ones lot lots time row node leaf leaves flush go ' +
    'attempt frost flower flowers bud buds root roots plant plants pair set round of to rooted stem shoot shoots tuber'
  ).split(' '),
);

/** How many of them: "the first two". */
const several = new Set(['two', 'three', 'four', 'five', 'six', 'few', 'couple']);

/** What one of several does: "three are dead, the fourth comes again". */
const lives = new Set(
  'comes came looks looked seems seemed survived recovered perked pulled made might may has had'.split(' '),
);

/** What says that a day comes again and again ("every Friday"): a habit is no date. */
const habits = new Set(['every', 'each', 'most']);

/** Words that change what the phrase beside them means. */
const modifiersBehind = new Set(['week', 'fortnight', 'ago', 'gone', 'past', 'hence']);
const modifiersBefore = new Set('last next previous past week weeks fortnight half nearly almost'.split(' '));

/** Words behind a sun that is no Sunday: what it shines into ("sun porch"), and how it shone ("the sun was"). */
const sunny = new Set('porch deck lounge room house terrace trap lamp hat too very so was is got'.split(' '));

/** What the sun is at: "sun's splitting the stones", "sun's out". */
const shining = new Set(
  (
    'splitting shining beating blazing beaming blinding scorching burning roasting baking melting belting streaming pouring ' +
    'out up high low back come finally hot warm strong gone been not'
  ).split(' '),
);

/** Words before a sun that is no Sunday. */
const shines = new Set(
  'the full hot strong direct more much enough midday noon afternoon blazing bright'.split(' '),
);

/** Whether the tokens from `at` to `end` (exclusive) name a thing or a habit, for all that they read like a day. */
export function isOfSomethingElse(phrase: When, tokens: readonly Token[], at: number, end: number): boolean {
  if (habits.has(tokens[at - 1]?.word ?? '')) return true;
  if (isBelowZero(tokens, at)) return true;
  const last = tokens[end - 1];
  // "Burned from the sun.", "into full sun.": the mark ends the sentence and shortens no word. "Died due to sun".
  const isSun = (token: Token, n: number): boolean =>
    token.everyday &&
    token.word.startsWith('sun') &&
    (shines.has(tokens[at + n - 1]?.word ?? '') || tokens[at + n - 2]?.word === 'due');
  if (tokens.slice(at, end).some(isSun)) return true;
  // "Two are just sat there", "they're sat in the tray": sitting.
  if (last?.word === 'saturday' && last.end - last.start === 3 && isSitting(tokens, end)) return true;
  if (last?.everyday && last.word.startsWith('sun') && sunny.has(tokens[end]?.word ?? '')) return true;
  // "Sun's", by its length.
  if (last?.word === 'sunday' && last.end - last.start === 5 && shining.has(tokens[end]?.word ?? ''))
    return true;
  // "Three of last month's lot": how many, and of which.
  const isCounted =
    tokens[at + 1]?.word === 'of' && (isPossessive(last) || counted.has(tokens[end]?.word ?? ''));
  if (isCounted && !phrase.ordinal && tokens[at]?.word !== 'the') return true;
  // "The second to root", but "at 5 to shut the vents".
  if (phrase.time !== undefined && tokens[end]?.word === 'to' && tokens[end + 1]?.digits !== true)
    return false;
  // "On the 20th to take more", but "the first to root".
  if (tokens[end]?.word === 'to' && (tokens[at]?.word === 'on' || tokens[at - 1]?.word === 'on'))
    return false;
  if (phrase.ordinal !== true) return false;
  // "Three of the first lot have gone and one of the second".
  const isLot =
    tokens[at]?.word === 'the' &&
    tokens[at - 1]?.word === 'of' &&
    tokens.slice(0, at).some(({ word }) => word === 'lot' || word === 'batch');
  if (isLot) return true;
  // "The second two were limp", but "on the second two rooted".
  const isSpelt = last?.digits !== true && tokens[at]?.word !== 'on' && tokens[at - 1]?.word !== 'on';
  const next = tokens[end]?.word ?? '';
  // "The first 5", but "the first 5pm", "the first at 5".
  const isMany = several.has(next) || (tokens[end]?.digits === true && !/^\d+(?:st|nd|rd|th)$/.test(next));
  return counted.has(next) || (isSpelt && (isMany || lives.has(next)));
}

/** "Are just sat", "sat there doing nothing"; no "sat there were three", "on sat doing the rounds". */
function isSitting(tokens: readonly Token[], end: number): boolean {
  let be = end - 2;
  while (/^(?:just|all|still|now|only)$/.test(tokens[be]?.word ?? '')) be--;
  return (
    /^(?:are|were|they're|been)$/.test(tokens[be]?.word ?? '') ||
    (/^(?:there|sulking|waiting)$/.test(tokens[end]?.word ?? '') &&
      !/^(?:was|were|are|is)$/.test(tokens[end + 1]?.word ?? '') &&
      !/^(?:on|last|this|since)$/.test(tokens[be]?.word ?? ''))
  );
}

/** "Cold frame -1.5.", where the full stop ends the sentence: a minus straight before the number, and behind no other. */
function isBelowZero(tokens: readonly Token[], at: number): boolean {
  const minus = tokens[at - 1];
  return (
    tokens[at]?.digits === true &&
    tokens[at].glued &&
    minus?.word === '-' &&
    !minus.glued &&
    tokens[at - 2]?.digits !== true
  );
}

/** "Last month's": written with two characters more than the word has. */
const isPossessive = (token: Token | undefined): boolean =>
  token !== undefined && !token.digits && token.end - token.start === token.word.length + 2;

/** Whether a word that changes the meaning was left over beside the phrase: then it is not understood. */
export function leavesModifier(tokens: readonly Token[], at: number, end: number): boolean {
  return modifiersBehind.has(tokens[end]?.word ?? '') || modifiersBefore.has(tokens[at - 1]?.word ?? '');
}
