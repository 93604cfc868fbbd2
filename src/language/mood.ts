/** Whether a clause tells of something done, or denies it, intends it, supposes it, reports it, advises or asks it. */
import { ofAnother } from './another-grower.js';
import { wordAt } from './grammar/rule.js';
import type { Clause } from './clauses.js';
import { isHabit } from './habits.js';
import type { Piece } from './pieces.js';
import { isArranged, isHoped, isOnOrder, isToBe } from './yet-to-be.js';

export type Mood = 'done' | 'denied' | 'intended' | 'supposed' | 'reported' | 'asked';

const DENIAL =
  /^(?:not|never|neither|nor|no|cannot|nobody|without|forgot|forgotten|failed|haven't|hasn't|hadn't|didn't|don't|doesn't|won't|can't|couldn't|isn't|aren't|wasn't|weren't|ain't|refused|nearly|almost|avoid|avoided)$/;
const SUPPOSED =
  /^(?:if|would|wouldn't|would've|could've|should've|might've|could|might|may|unless|wish|wished|wishing|regret|supposed|hypothetically|suppose|imagine|whether|shouldn't|meant|dreamt|dreamed|dream|tempted|wondering|wonder|considered|considering|thinking|thought)$/;
const INTENDED =
  /^(?:will|i'll|we'll|shall|gonna|going|must|need|needs|plan|planning|intend|want|hoping|hope|tomorrow|should|ought|let's|aim|aiming|intention|ready|due|they'll|you'll|he'll|she'll|it'll)$/;
const REPORT =
  /^(?:says|said|say|saying|reckon|reckons|reckoned|thinks|told|tells|asked|asks|ask|suggests|suggested|advised|advises|recommends|recommended|swears|swore|claims|claimed|insists|insisted|apparently|according|heard|read|wants|mentioned)$/;
const MANAGED =
  /^(?:found|managed|got|able|remembered|started|began|begun|helped|stopped|went|decided|chance|starting|continued)$/;
const PAST_AFTER = /^(?:to|on|of)$/;

/** The mood of a clause, from the words before its head (and few behind). */
export function moodOf(pieces: readonly Piece[], clause: Clause): Mood {
  if (clause.asked) return 'asked';
  const { hit } = clause;
  if (!hit) return 'done';
  const head = pieces[hit.from];
  const form = head?.is === 'word' ? head.verb?.form : undefined;
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
  if (form === 'past') start = Math.max(start, pastChat(pieces, clause.from, hit.from));
  for (let at = start; at < hit.from; at++) {
    const text = wordAt(pieces, at);
    // "No hormone" denies nothing but the hormone.
    const bare =
      text === 'no' &&
      // "The four with no roots went in the bin": which ones.
      ((/^roots?$/.test(wordAt(pieces, at + 1)) && wordAt(pieces, at - 1) === 'with') ||
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
  // "Planting out can wait till they are bigger".
  if (wordAt(pieces, hit.to) === 'can' && wordAt(pieces, hit.to + 1) === 'wait') return 'supposed';
  // "Roots soon, I hope".
  if (hit.rule.kind === 'check' && isHoped(pieces, clause)) return 'supposed';
  if (before.at(-1) === 'resist') return 'done';
  // "A video on pinching out fuchsias"; no "made a start on potting them".
  if (
    form === 'ing' &&
    (before.at(-1) === 'for' ||
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
    .some((piece) => piece.is === 'word' && /^(?:only|instead|never|ran|gave)$/.test(piece.text));
  if (form === 'base' && before.includes('went') && cutShort) return 'supposed';
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
  if (before[0] === 'without' || isHabit(pieces, start, hit.from, form === 'past')) return 'supposed';
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

/** Words between a break and a deed told anew. */
const ANEW = /^(?:i|we|i've|we've|have|just|also|then|and|so|but|only|still|anyway|anyways|finally)$/;
/** What still waits for its verb behind an aside ("I haven't, sadly, fed them"), or denies alone ("not, never"). */
const WAITING =
  /^(?:not|never|no|cannot|without|nearly|almost|haven't|hasn't|hadn't|didn't|don't|doesn't|won't|can't|couldn't|isn't|aren't|wasn't|weren't|ain't|ever|yet|have|had|has|been|to|or|nor|and|but)$/;
/** "Not yet, fed them": an answer by itself, whatever was asked. */
const NOT_YET = /^(?:no |nope |sorry )?(?:not|none|nothing)(?: just| quite)? yet$/;
/** Doubt that hangs over what follows ("can't remember, took 4 or so"). */
const DOUBT = /^(?:sure|certain|remember|recall|know|idea|think|clue|positive)$/;

/**
 * "Can't sleep, fed the Salt Harrier": past a sentence of talk that denies something of its own, no plant and no number
 * in it, where a deed is told behind its break; else the start.
 */
function pastChat(pieces: readonly Piece[], from: number, head: number): number {
  let at = head;
  while (at > from && (ANEW.test(wordAt(pieces, at - 1)) || pieces[at - 1]?.is === 'when')) at--;
  if (pieces[at - 1]?.is !== 'break') return from;
  const talk = pieces.slice(from, at - 1);
  const words = talk.flatMap((piece) => (piece.is === 'word' ? [piece.text] : []));
  // "No, I potted on five": it denies what was said before.
  if (words.length === 1 && words[0] === 'no' && talk.length === 1) return at;
  // Of two breaks the first may open an aside ("I haven't so far, mind you, fed them").
  const isTalk =
    words.length > 1 &&
    words.some((word) => DENIAL.test(word)) &&
    (NOT_YET.test(words.join(' ')) || !WAITING.test(words.at(-1) ?? '')) &&
    // "No idea why, lost three": that they were lost is no doubt.
    (/^(?:why|how)$/.test(words.at(-1) ?? '') || !words.some((word) => DOUBT.test(word))) &&
    !words.some((word) => SUPPOSED.test(word) || REPORT.test(word)) &&
    talk.every(({ is }) => is === 'word' || is === 'when');
  return isTalk ? at : from;
}

const isZero = (piece: Piece | undefined): boolean => piece?.is === 'count' && piece.quantity.value === 0;

/** "Helped Edna strike a dozen": hers; "Edna helped me strike a dozen" is ours. */
function helpsAnother(before: readonly string[]): boolean {
  const helped = before.findLastIndex((word) => /^(?:helped|helping|watched|showed)$/.test(word));
  return helped >= 0 && before.length > helped + 1 && !/^(?:me|us|to)$/.test(before[helped + 1] ?? '');
}

/** "The winter the boiler packed in we lost the lot": a season told by what happened in it, long ago. */
function isRecalled(pieces: readonly Piece[], { from, to, hit }: Clause): boolean {
  const season = pieces[from];
  // "This time last year they had all rooted", "last spring they had all rotted by now": told for the sake of this year.
  const before = pieces.slice(from, hit?.to ?? from);
  const own = pieces.slice(from, to);
  if (
    season?.is === 'when' &&
    (/^(?:by )?this time last year$/i.test(season.when.words) ||
      (/^last\b/i.test(season.when.words) &&
        own.some((_, at) => wordAt(own, at) === 'by' && wordAt(own, at + 1) === 'now') &&
        before.some((piece) => piece.is === 'word' && /^(?:had|were|was)$/.test(piece.text))))
  )
    return true;
  return (
    season?.is === 'when' &&
    hit !== undefined &&
    hit.from > from + 2 &&
    /^the (?:year|winter|spring|summer|autumn|fall|season)$/i.test(season.when.words) &&
    /^(?:the|my|our|her|his|we|i|it|that|when|mum|dad)$/.test(wordAt(pieces, from + 1))
  );
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
