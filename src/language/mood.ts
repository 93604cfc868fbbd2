/** Whether a clause tells of something done, or denies it, intends it, supposes it, reports it, advises or asks it. */
import { ofAnother } from './another-grower.js';
import type { Clause } from './clauses.js';
import { isGivenUp, isOwed, isWished } from './given-up.js';
import { wordAt } from './grammar/rule.js';
import { isHabit } from './habits.js';
import { DENIAL, INTENDED, MANAGED, REPORT, SUPPOSED, WISHES } from './mood-words.js';
import { isRecalled } from './other-times.js';
import { pastTalk } from './past-talk.js';
import type { Piece } from './pieces.js';
import {
  isArranged,
  isBeingDone,
  isHoped,
  isOnOrder,
  isPutSomewhere,
  isTimeFor,
  isToBe,
} from './yet-to-be.js';

export type Mood = 'done' | 'denied' | 'intended' | 'supposed' | 'reported' | 'asked';

const PAST_AFTER = /^(?:to|on|of)$/;

/** The mood of a clause, from the words before its head (and few behind). */
export function moodOf(pieces: readonly Piece[], clause: Clause): Mood {
  if (clause.asked) return 'asked';
  const { hit } = clause;
  if (!hit) return 'done';
  const head = pieces[hit.from];
  const told = head?.is === 'word' ? head.verb?.form : undefined;
  // "Fixing to set out": a verb that is the same in the past.
  const form =
    told === 'past' && wordAt(pieces, hit.from - 1) === 'to' && WISHES.test(wordAt(pieces, hit.from - 2))
      ? 'base'
      : told;
  const before: string[] = [];
  // A verb told in the past stands for itself behind "and" ("forgot to water and lost three").
  let start = clause.from;
  if (form === 'past' || (head?.is === 'word' && head.text === 'done'))
    for (let at = clause.from; at < hit.from; at++)
      if (
        /^(?:and|but|so|then)$/.test(wordAt(pieces, at)) &&
        ((/^(?:but|so)$/.test(wordAt(pieces, at)) &&
          /^(?:i|we|i've|we've|it|only)$/.test(wordAt(pieces, at + 1))) ||
          pieces
            .slice(clause.from, at)
            .some(
              (piece, n) =>
                /^(?:forgot|forgotten|didn't|said|told|asked)$/.test(wordAt(pieces, clause.from + n)) &&
                piece.is === 'word',
            ))
      )
        start = at + 1;
  // "Wasn't going to bother but ended up sticking five": done after all.
  for (let at = clause.from; at + 1 < hit.from; at++)
    if (/^(?:ended|wound|finished)$/.test(wordAt(pieces, at)) && wordAt(pieces, at + 1) === 'up') start = at;
  if (form === 'past') start = Math.max(start, pastTalk(pieces, clause.from, hit.from));
  for (let at = start; at < hit.from; at++) {
    const text = wordAt(pieces, at);
    // "No hormone" denies nothing but the hormone.
    const bare =
      text === 'no' &&
      // "The four with no roots went in the bin": which ones.
      ((/^roots?$/.test(wordAt(pieces, at + 1)) && wordAt(pieces, at - 1) === 'with') ||
        // "No I gave one": what was said before is denied.
        /^(?:i|we|i've|we've|i'd|we'd|they|they've|it)$/.test(wordAt(pieces, at + 1)) ||
        /^(?:good|use|hormone|powder|rooting|gel|dip|cover|lid|bag)$/.test(wordAt(pieces, at + 1)));
    if (text !== '' && !bare && !isUntold(pieces, at, hit.from)) before.push(text);
    // "Neither watered nor fed".
    if (hit.rule.kind === 'tend' && isZero(pieces[at])) before.push('not');
  }
  for (const at of hit.own)
    if (
      at > hit.from &&
      /^(?:not|never)$/.test(wordAt(pieces, at)) &&
      hit.rule.kind !== 'check' &&
      hit.rule.kind !== 'loss'
    )
      before.push('not');
  // "Fed nothing today".
  if (
    hit.rule.kind === 'tend' &&
    (isZero(pieces[hit.to]) || /^(?:nothing|nowt|nobody)$/.test(wordAt(pieces, hit.to)))
  )
    return 'denied';
  if (form === 'ing' && isArranged(pieces, clause)) return 'intended';
  if (isGivenUp(pieces, clause, before, form)) return 'denied';
  // "Hardly watered a thing"; no "barely rooted".
  if (/^(?:hardly|barely|scarcely)$/.test(before.at(-1) ?? '') && !/^(?:check|loss)$/.test(hit.rule.kind))
    return 'denied';
  if (form !== 'past' && before.some((word, n) => WISHES.test(word) && before[n + 1] === 'to'))
    return 'intended';
  // "High time I pinched the Tallow Bell", "getting moved next Monday", "Dahlias get planted out in June".
  if (
    isTimeFor(before) ||
    (form === 'past' &&
      ((before.at(-1) === 'get' && hit.rule.kind !== 'hardenOff') || isBeingDone(pieces, clause)))
  )
    return 'supposed';
  // "It's wise to water before you take cuttings": anyone does.
  if (form === 'base' && before.at(-1) === 'you') return 'supposed';
  if (isOwed(before) || (form === 'past' && isWished(pieces, clause))) return 'intended';
  // "Roots soon, I hope".
  if (hit.rule.kind === 'check' && isHoped(pieces, clause)) return 'supposed';
  if (before.at(-1) === 'resist') return 'done';
  // "A video on pinching out fuchsias"; no "made a start on potting them".
  if (
    form === 'ing' &&
    ((before.at(-1) === 'for' &&
      !(hit.rule.kind === 'hardenOff' && isPutSomewhere(pieces, clause, hit.from))) ||
      (/^(?:on|about)$/.test(before.at(-1) ?? '') &&
        !/^(?:carried|carry|kept|went|cracked|got|start|started|moved|on)$/.test(before.at(-2) ?? '')))
  )
    return 'supposed';
  if (ofAnother(pieces, clause, before) || isRecalled(pieces, clause)) return 'reported';
  if (form === 'base' && helpsAnother(before)) return 'reported';
  // "Oh to have somebody water the greenhouse"; no "had somebody water it".
  if (
    form === 'base' &&
    /^(?:somebody|someone|anybody|anyone)$/.test(before.at(-1) ?? '') &&
    before.at(-2) !== 'had'
  )
    return 'supposed';
  if (isToBe(before) || (/^(?:receive|stock)$/.test(hit.rule.kind) && isOnOrder(pieces, clause)))
    return 'intended';
  // "Went out to take cuttings, ran out of steam, only took six": gone for, and not done.
  const cutShort = pieces
    .slice(hit.to)
    .some(
      (piece, n) =>
        piece.is === 'word' &&
        (/^(?:only|instead|never|ran|gave)$/.test(piece.text) || isObstacle(pieces, hit.to + n)),
    );
  if ((form === 'base' || before.at(-1) === 'to') && before.includes('went') && cutShort) return 'supposed';
  const has = (pattern: RegExp): boolean => before.some((word) => pattern.test(word));
  const reported = before.findIndex((word) => REPORT.test(word));
  const own = before[reported] === 'reckon' && /^(?:i|we)?$/.test(before[reported - 1] ?? '');
  if (
    reported >= 0 &&
    !own &&
    (before[reported - 1] !== 'to' ||
      /^(?:rang|phoned|called|texted|messaged|emailed)$/.test(before[reported - 2] ?? '')) &&
    !/^(?:checked|i)$/.test(before[reported - 1] ?? '')
  )
    return 'reported';
  if (
    before.some(
      (word, n) =>
        /^(?:should|ought)$/.test(word) &&
        /^(?:have|of|'ve|to)$/.test(before[n + 1] ?? '') &&
        form === 'past',
    )
  )
    return 'supposed';
  if (has(/^(?:would|could|might)$/)) return 'supposed';
  if (
    has(/^(?:i'd|we'd|he'd|she'd|they'd)$/) &&
    (form === 'base' || has(/^(?:have|love|like|rather|better|be|end|get|see)$/))
  )
    return 'supposed';
  if (before[0] === 'without' || isHabit(pieces, start, clause)) return 'supposed';
  // "Mum used to root them in a jar", "hardly ever lost one": as it always was, and no deed.
  if (before.some((word, n) => word === 'used' && before[n + 1] === 'to')) return 'supposed';
  if (before.at(-1) === 'ever' && /^(?:hardly|scarcely|rarely)$/.test(before.at(-2) ?? '')) return 'denied';
  if (before[0] === 'had' && /^(?:i|we|they)$/.test(before[1] ?? '')) return 'supposed';
  // "Have wanted to look for roots but …": no look.
  if (
    form !== 'past' &&
    before.some((word, n) => /^(?:wanted|hoped|planned|intended)$/.test(word) && before[n + 1] === 'to')
  )
    return 'supposed';
  // "Still too soft to harden off".
  if (form === 'base' && before.at(-1) === 'to' && before.slice(-4, -1).includes('too')) return 'supposed';
  // "Thought I had lost two but they have come round".
  if (form === 'past' && /\bthought (?:that )?(?:(?:i|we) had|i'd|we'd)$/.test(before.join(' ')))
    return 'supposed';
  if (has(SUPPOSED) && !(form === 'past' && has(/^thought$/) && has(/^i$/))) return 'supposed';
  if (has(DENIAL)) return 'denied';
  if (
    before.at(-1) === 'to' &&
    before.some((word) => MANAGED.test(word)) &&
    !has(/^(?:will|i'll|must|going|need|want|plan|not|hope|hoping)$/)
  )
    return 'done';
  if (before.at(-1) === 'me' && before.at(-2) === 'let') return 'done';
  if (hit.rule.kind === 'hardenOff' && before.at(-1) === 'to' && !has(INTENDED)) return 'done';
  const infinitive = before.at(-1) === 'to';
  if (form === 'base' || form === 'ing') {
    if (has(INTENDED) || (infinitive && !PAST_AFTER.test(''))) return 'intended';
  } else if (
    before.some(
      (word, n) =>
        /^(?:will|i'll|we'll|shall|must|need|needs|should|it'll|they'll)$/.test(word) &&
        n >= before.length - 4,
    ) &&
    form !== 'past'
  )
    return 'intended';
  if (
    before.some((word) => /^(?:will|i'll|we'll|must|they'll|should|tomorrow|needs|need)$/.test(word)) &&
    hit.rule.shape === 'subject'
  )
    return 'intended';
  return 'done';
}

const isZero = (piece: Piece | undefined): boolean => piece?.is === 'count' && piece.quantity.value === 0;

/** "Helped Edna strike a dozen": hers; "Edna helped me strike a dozen" is ours. */
function helpsAnother(before: readonly string[]): boolean {
  const helped = before.findLastIndex((word) => /^(?:helped|helping|watched|showed)$/.test(word));
  return helped >= 0 && before.length > helped + 1 && !/^(?:me|us|to)$/.test(before[helped + 1] ?? '');
}

/** "Forgot to say, took six on Sunday", "nearly forgot to say, …": only the telling was forgotten. */
function isUntold(pieces: readonly Piece[], at: number, head: number): boolean {
  const forgot = /^(?:nearly|almost)$/.test(wordAt(pieces, at)) ? at + 1 : at;
  return (
    forgot + 2 < head &&
    /^forgot(?:ten)?$/.test(wordAt(pieces, forgot)) &&
    wordAt(pieces, forgot + 1) === 'to' &&
    /^(?:say|tell|mention|add|log|note|record|write|put|report|text)$/.test(wordAt(pieces, forgot + 2))
  );
}

/** "Went to plant them out, bed was waterlogged": a state told behind a break, and no number of what was done. */
const isObstacle = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:was|were|too|no|had|couldn't|wouldn't|didn't)$/.test(wordAt(pieces, at)) &&
  !pieces.slice(at).some(({ is }) => is === 'count');
