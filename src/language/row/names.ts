/** Known variety names and batch labels, found first so that the numbers, months and verbs inside them stay names. */
import { isEnglish } from './english.js';
import { isKnown, verbSense } from './lexicon.js';
import { candidatesAt, type FoundName, knownNames } from './names/known.js';
import { findLabels } from './names/labels.js';
import { partsOfNames } from './names/in-part.js';
import { nameAt } from './names/whole.js';
import type { NoteContext } from '../note.js';
import { numberAt } from '../pieces/numbers.js';
import type { Token } from './tokens.js';

/** Names and labels in the order of the text, none overlapping; longer and more exact finds win. */
export function findNames(tokens: readonly Token[], context: NoteContext): readonly FoundName[] {
  const { names, index, owners } = knownNames(context);
  const finds: FoundName[] = [...findLabels(tokens, context)];
  for (const [at, token] of tokens.entries()) {
    if (token.is === 'mark' || token.is === 'line') continue;
    for (const name of candidatesAt(token, index)) {
      const find = nameAt(tokens, at, name);
      if (find) finds.push(find);
    }
  }
  finds.push(...partsOfNames(tokens, names, owners));
  finds.sort((a, b) => a.slips - b.slips || b.to - b.from - (a.to - a.from) || a.from - b.from);
  const taken = new Set<number>();
  const kept: FoundName[] = [];
  for (const find of finds) {
    let free = true;
    for (let at = find.from; at < find.to; at++) if (taken.has(at)) free = false;
    if (!free || isOrdinaryUse(tokens, find)) continue;
    for (let at = find.from; at < find.to; at++) taken.add(at);
    kept.push(find);
  }
  return kept.sort((a, b) => a.from - b.from);
}

const FOLLOWS_VERB = new Set([
  'cutting',
  'cuttings',
  'basal',
  'nodal',
  'more',
  'of',
  'tip',
  'heel',
  'softwood',
  'semi',
]);

/**
 * A name made of everyday words, written without capitals, that is plainly used as those words: "take two cuttings of …"
 * where *Take Two* is a variety, "a second helping of pudding" where *Second Helping* is one.
 */
function isOrdinaryUse(tokens: readonly Token[], find: FoundName): boolean {
  if (find.variety === undefined) return false;
  if (isMeasure(tokens, find) || isHour(tokens, find)) return true;
  for (let at = find.from; at < find.to; at++) {
    const token = tokens[at];
    if (token && token.capital && at > find.from) return false;
    if (token && !isKnown(token.text) && token.is !== 'number') return false;
  }
  const next = tokens[find.to]?.text ?? '';
  if (find.slips >= 2 && /^(?:the|a|an|my|some|is|are|it|them)$/.test(next)) return true;
  const last = tokens[find.to - 1];
  const numeral =
    last !== undefined && /^(?:one|two|three|four|five|six|seven|eight|nine|ten|to|too|for)$/.test(last.text);
  // "Took six half past nine cuttings": behind a number, or a deed that has no other object, it is the name.
  const before = tokens[find.from - 1]?.text ?? '';
  const isNamed = numberAt(tokens, find.from - 1) !== undefined || verbSense(before)?.form === 'past';
  return numeral && FOLLOWS_VERB.has(next) && !isNamed;
}

/** "At half past nine": in small letters, an hour. */
const isHour = (tokens: readonly Token[], { from, to }: FoundName): boolean =>
  /^(?:at|around|about|since|till|until)$/.test(tokens[from - 1]?.text ?? '') &&
  /^(?:half|quarter)$/.test(tokens[from]?.text ?? '') &&
  tokens.slice(from, to).every(({ capital }) => !capital);

/** "A second helping of pudding": in small letters, so much of something. */
const isMeasure = (tokens: readonly Token[], { from, to }: FoundName): boolean =>
  /^(?:a|an)$/.test(tokens[from - 1]?.text ?? '') &&
  tokens[to]?.text === 'of' &&
  !/^(?:mine|ours|yours)$/.test(tokens[to + 1]?.text ?? 'mine') &&
  tokens.slice(from, to).every(({ capital, text }) => !capital && (isKnown(text) || isEnglish(text)));
