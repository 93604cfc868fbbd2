/** Moods told by the words before the head alone. */
import { isHabit } from './habits.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import { back, has, hasPair, type MoodCase, type MoodSeen } from './case.js';
import { DENIAL, INTENDED, MANAGED, REPORT, SUPPOSED } from './words.js';

export const wordsAhead: readonly MoodCase[] = [
  {
    name: '<someone> says she potted on <count>',
    mood: 'reported',
    phrasings: ['the book says pot on Salt Harrier in May'],
    when: ({ before }) => isReported(before),
  },
  {
    name: 'should have watered',
    mood: 'supposed',
    phrasings: [
      'should have watered the Salt Harrier',
      'two Salt Harrier damped off, shoud of watered less',
      'should really have watered the Salt Harrier',
    ],
    when: (seen) =>
      seen.form === 'past' &&
      (hasPair(seen, /^(?:should|ought)$/, /^(?:have|of|'ve|to|a|ov|off)$/) ||
        (hasPair(seen, /^(?:should|ought)$/, /^(?:really|probably|maybe|just|also|only|never|i|we)$/) &&
          has(seen, /^(?:have|of)$/))),
  },
  {
    name: "I'd pot on",
    mood: 'supposed',
    phrasings: ["I'd pot on the Salt Harrier"],
    when: (seen) =>
      has(seen, /^(?:i'd|we'd|he'd|she'd|they'd)$/) &&
      // "I'd to bin two": had to.
      !hasPair(seen, /^(?:i'd|we'd)$/, /^to$/) &&
      (seen.form === 'base' || has(seen, /^(?:have|love|like|rather|better|be|end|get|see)$/)),
  },
  {
    name: 'you can take cuttings',
    mood: 'supposed',
    phrasings: ['you can take Salt Harrier any time up to September'],
    when: (seen) => seen.form === 'base' && back(seen, 1) === 'can',
  },
  {
    name: 'most years we lose some',
    mood: 'supposed',
    phrasings: ['most years, we lost two', "I've always potted on in May"],
    when: ({ pieces, start, clause }) => isHabit(pieces, start, clause),
  },
  {
    name: 'hardly ever lost one',
    mood: 'denied',
    phrasings: ['hardly ever lost a Salt Harrier'],
    when: (seen) => back(seen, 1) === 'ever' && /^(?:hardly|scarcely|rarely)$/.test(back(seen, 2)),
  },
  {
    name: 'had I potted them on',
    mood: 'supposed',
    phrasings: ['had I potted on the Salt Harrier they would be bigger'],
    when: ({ before }) => before[0] === 'had' && /^(?:i|we|they)$/.test(before[1] ?? ''),
  },
  {
    name: 'was on the point of potting on',
    mood: 'supposed',
    phrasings: [
      'was on the point of potting on the Salt Harrier when the rain came',
      'on the verge of potting on the Salt Harrier',
    ],
    when: (seen) => seen.form === 'ing' && hasPair(seen, /^(?:point|verge|brink)$/, /^of$/),
  },
  {
    name: 'have wanted to look for roots',
    mood: 'supposed',
    phrasings: ['have wanted to look for roots on the Salt Harrier'],
    when: (seen) => seen.form !== 'past' && hasPair(seen, /^(?:wanted|hoped|planned|intended)$/, /^to$/),
  },
  {
    name: 'too soft to harden off',
    mood: 'supposed',
    phrasings: ['Salt Harrier still too soft to harden off'],
    when: (seen) =>
      seen.form === 'base' && back(seen, 1) === 'to' && seen.before.slice(-4, -1).includes('too'),
  },
  {
    name: 'thought I had lost <count>',
    mood: 'supposed',
    phrasings: ['thought I had lost two Salt Harrier but they have come round'],
    when: ({ form, before }) =>
      form === 'past' && /\bthought (?:that )?(?:(?:i|we) had|i'd|we'd)$/.test(before.join(' ')),
  },
  {
    name: 'if they rooted',
    mood: 'supposed',
    phrasings: ['it would be nice if five Salt Harrier had rooted', 'tempted to pot on the Salt Harrier'],
    when: (seen) =>
      has(seen, SUPPOSED) && !(seen.form === 'past' && has(seen, /^thought$/) && has(seen, /^i$/)),
  },
  {
    name: 'hope <count> of <plant> have rooted',
    mood: 'supposed',
    phrasings: [
      'hope two Salt Harrier have rooted by Friday',
      'hoping another Salt Harrier has rooted',
      'just hoping the Salt Harrier have rooted',
      'fingers crossed another Salt Harrier has rooted by then',
    ],
    when: ({ form, pieces, hit, clause, start }) =>
      form === 'past' && isHoped(pieces, Math.min(start, clause.from), hit.from),
  },
  {
    name: "didn't water",
    mood: 'denied',
    phrasings: ["didn't water the Salt Harrier", 'never potted on the Salt Harrier'],
    when: (seen) => has(seen, DENIAL),
  },
  {
    // No "nothing rooted", which is what a look found, and no "nothing potted but the Salt Harrier".
    name: 'nothing potted on',
    mood: 'denied',
    phrasings: [
      'nothing potted on today, all hands on the sale',
      'nothing stuck today',
      'nothing was sold at the market, all back on the bench',
      'nothing planted out today, too wet',
      'nowt moved today',
      'nothing lost today',
    ],
    when: ({ pieces, hit, form }) =>
      form === 'past' &&
      hit.rule.kind !== 'check' &&
      isNothing(pieces, hit.from) &&
      !isButSome(pieces, hit.to),
  },
  {
    name: 'managed to pot on <count>',
    mood: 'done',
    phrasings: ['managed to pot on five Salt Harrier'],
    when: (seen) =>
      back(seen, 1) === 'to' &&
      has(seen, MANAGED) &&
      !isStillToDo(seen) &&
      !has(seen, /^(?:will|i'll|must|going|need|want|plan|not|hope|hoping)$/),
  },
  {
    name: 'out to harden off',
    mood: 'done',
    phrasings: ['moved the Salt Harrier to the cold frame to harden off'],
    when: (seen) => seen.hit.rule.kind === 'hardenOff' && back(seen, 1) === 'to' && !has(seen, INTENDED),
  },
  {
    name: 'going to pot on <count>',
    mood: 'intended',
    phrasings: [
      'going to pot on the Salt Harrier',
      'time to pot on the Salt Harrier',
      'still got 4 Salt Harrier to plant out',
      'got loads to do, Salt Harrier to pot on',
    ],
    when: (seen) =>
      (seen.form === 'base' || seen.form === 'ing') && (has(seen, INTENDED) || back(seen, 1) === 'to'),
  },
  {
    name: 'need a new <plant>',
    mood: 'intended',
    phrasings: ['I need a new stock plant of Salt Harrier'],
    when: ({ form, before }) =>
      (form === undefined || form === 's') &&
      before
        .slice(-4)
        .some((word) => /^(?:will|i'll|we'll|shall|must|need|needs|should|it'll|they'll)$/.test(word)),
  },
];

/** "Nothing", "nothing else was": what the head is told of. */
function isNothing(pieces: readonly Piece[], head: number): boolean {
  let at = head - 1;
  while (/^(?:else|was|were|is|has|have|had|been|got|getting|really|actually|ever)$/.test(wordAt(pieces, at)))
    at--;
  return /^(?:nothing|nowt|nothin|nout)$/.test(wordAt(pieces, at));
}

/** "… but the Salt Harrier", "…, only the six": what was done after all. */
const isButSome = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(from)
    .some(
      (_, n) =>
        /^(?:but|bar|except|apart|only|save|besides|just)$/.test(wordAt(pieces, from + n)) &&
        pieces.slice(from + n, from + n + 5).some(({ is }) => is === 'plant' || is === 'count'),
    );

/** "Got six Salt Harrier to pot on", "found two to pinch": a number or a plant stands between. */
function isStillToDo({ pieces, start, hit }: MoodSeen): boolean {
  if (hit.rule.kind === 'check') return false;
  const got = pieces.findLastIndex((_, at) => at < hit.from && /^(?:got|found)$/.test(wordAt(pieces, at)));
  return got >= start && pieces.slice(got, hit.from).some(({ is }) => is === 'count' || is === 'plant');
}

/** A hope straight before what is hoped; no "hope you are well", "hoping for ten but two have rooted". */
function isHoped(pieces: readonly Piece[], start: number, head: number): boolean {
  let at = head - 1;
  while (at >= start && !HOPE.test(wordAt(pieces, at))) {
    if (pieces[at]?.is === 'break' || NO_HOPE.test(wordAt(pieces, at))) return false;
    at--;
  }
  if (at < start) return false;
  return wordAt(pieces, at) !== 'crossed' || /^(?:fingers|everything)$/.test(wordAt(pieces, at - 1));
}

const HOPE = /^(?:hope|hoping|crossed)$/;
const NO_HOPE =
  /^(?:you|your|ye|u|for|so|not|to|of|but|though|only|because|as|since|and|already|all's|it's|is|are|this|finds)$/;

/** By another; "I reckon" and "I said" are one's own, "had to say" is talk. */
function isReported(before: readonly string[]): boolean {
  const at = before.findIndex((word) => REPORT.test(word));
  if (at < 0) return false;
  const [twoBefore = '', oneBefore = ''] = [before[at - 2], before[at - 1]];
  if (before[at] === 'reckon' && /^(?:i|we)?$/.test(oneBefore)) return false;
  if (oneBefore === 'to' && !/^(?:rang|phoned|called|texted|messaged|emailed)$/.test(twoBefore)) return false;
  // "No use moaning", "not complaining".
  return !/^(?:checked|i|use|point|not|stop|no)$/.test(oneBefore);
}
