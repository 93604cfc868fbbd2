/** The last entry taken back. */
import { entryNouns } from './entry-words.js';
import { leading, trailing } from './runs.js';

interface UndoRule {
  readonly name: string;
  readonly pattern: RegExp;
}

const OPEN = leading(
  "and|as you were|didn't mean that|i didn't mean that|please|kindly|nvm|nah|nope|arra|ach|och|oops|whoops|no|omg|sorry|actually|oh|wait|hang on|hold on|damn|ah|argh|can you|could you|can we|lets|let's|just|ok|hmm|my mistake|mistake|wrong|that was wrong|i was wrong|um|erm|i need to|i want to|pls",
);
/** What an entry may be called ("undo that loss", "the Ember Fox sale"); the only group of a rule that is caught. */
const KIND = `(?:plantname )?(${entryNouns})(?: (?:of|for|on|with) (?:the )?plantname)?(?: to (?!be\\b|plantname)[a-z']+(?: [a-z']+)?)?`;
const THAT = `(?:that(?: (?:one|last one|last entry|last bit|note|entry|last note|last|${KIND}))?|it|this|(?:the |my |that )?(?:very )?(?:last|previous|latest|most recent)(?: (?:one|entry|note|thing|bit|log|message|line|record|post|update|${KIND}))?(?: (?:i|you) (?:just )?(?:said|sent|wrote|logged|made|put(?: in| down)?|entered|told you|gave you|typed))?|(?:what )?i (?:just )?(?:said|wrote|sent|logged|put(?: in)?|told you|spoke|mentioned)(?: that| it| anything)?(?: (?:about|on|for) (?:the |my )?plantname)?|(?:the|my) entry|last one|(?:the|that) one before(?: it| that)?)`;

const AFTER = trailing(
  "i was (?:looking at|on|thinking of) (?:the wrong|my \\w+|another|the other) \\w+|lol|too|as well|also|please|pls|thanks|then|again|from the (?:record|records|log|ledger|books?|list)|off the (?:record|records|log|ledger|list)|out|off|sorry|mate|would you|will you|wrong (?:plant|one|pot|batch|button|entry|person|chat|window|group)(?: entirely| altogether)?|i (?:got|had) (?:it|that) wrong|it was (?:wrong|a mistake)|it's wrong|that was (?:wrong|a mistake)|its wrong|mistake|my mistake|i made a mistake",
);

const undoRules: readonly UndoRule[] = [
  {
    name: 'undo that',
    pattern: new RegExp(
      `^${OPEN}(?:undo|del|scrap|scrub|cancel|delete|scratch|void|forget|ignore|disregard|remove|erase|revert|reverse|rub out|wipe|strike|bin|withdraw|retract|discard|drop|strike out|scrub out|unlog|lose|knock off|wipe off|back out|take off|take out|take away|take back|get rid of|cross out|kill|skip)(?: undo)?(?: ${THAT})?${AFTER}$`,
    ),
  },
  {
    name: 'take that back',
    pattern: new RegExp(
      `^${OPEN}(?:take|put|rub|cross|strike|knock|wipe)(?: (?:back|out|off) ${THAT}| ${THAT} (?:back out|back off|back|out|off))(?: will you| would you)?(?: please| again| thanks)*$`,
    ),
  },
  {
    name: 'that never happened',
    pattern: new RegExp(
      `^${OPEN}(?:that|it|this|(?:the|that|my) ${KIND}) (?:never happened|didn't happen)${AFTER}$`,
    ),
  },
  // Behind verbs that nobody would say of plants: "take off the watering" and "drop the feed" may be anything.
  {
    name: 'undo the watering',
    pattern: new RegExp(`^${OPEN}(?:undo|unlog|revert|scratch|retract) (?:the|my) ${KIND}${AFTER}$`),
  },
  {
    name: 'undo the <plant> loss',
    pattern: new RegExp(
      `^${OPEN}(?:undo|unlog|revert|scratch|retract|delete|cancel|ignore|forget|disregard|remove|erase|scrap|withdraw|take back)(?: about)? (?:the|my|that) (?:last )?plantname (?:(${entryNouns})|one|entry|note|line)${AFTER}$`,
    ),
  },
  {
    name: 'undo that one, the <plant>',
    pattern: new RegExp(
      `^${OPEN}(?:undo|revert|scratch|delete|cancel) that one (?:the |my )?plantname${AFTER}$`,
    ),
  },
  // Behind an undo; alone it would say nothing.
  {
    name: 'and the one before',
    pattern: /^(?:and|also|plus) (?:also )?(?:undo )?the one before(?: that| it| too| as well)*$/,
  },
  { name: 'as you were', pattern: /^as you were$/ },
  { name: 'never mind that', pattern: new RegExp(`^${OPEN}(?:never mind|nevermind) ${THAT}$`) },
  {
    name: 'that was a mistake',
    pattern:
      /^(?:oops |sorry |no |oh |wait |hang on |hold on |actually |whoops )*(?:that|the last one|last one|last entry|that last one) was (?:a mistake|wrong|an error|not right|the wrong (?:one|plant|batch))(?: please)?(?: undo(?: it| that)?| delete it| scrap it| forget it| ignore it)?$/,
  },
];

/** The noun by which a line that undoes calls the entry; null where it calls it by none, undefined where it undoes nothing. */
export function nounTakenBack(line: string): string | null | undefined {
  const undo = undoIn(BOTH.exec(line)?.[1] ?? line);
  return undo && (undo.slice(1).find((noun) => noun !== undefined) ?? null);
}

/** "Undo that and the one before". */
const BOTH = /^(.+?) and (?:also )?the one before(?: that| it)?$/;

/** How many entries the line takes back: "undo the last two" two, most one, other lines none. */
export function undosIn(line: string): number {
  const both = BOTH.exec(line);
  if (both?.[1] !== undefined && isUndo(both[1])) return 2;
  if (!isUndo(line)) return 0;
  const number = NUMBERED.exec(line)?.[2];
  return number === undefined ? 1 : (COUNTS[number] ?? Number(number));
}

const COUNTS: Readonly<Record<string, number>> = { couple: 2, two: 2, three: 3, four: 4, five: 5 };
/** "The last two entries". */
const NUMBERED =
  /\b(last|previous) (couple|two|three|four|five|[2-5])(?: (?:of )?(?:entries|notes|ones|things|messages|lines|bits))?\b/;

/** "Scratch that the last entry was wrong take it out": an undo, then reasons and undoes, with no mark between. */
function undoWithReason(line: string): RegExpExecArray | undefined {
  const words = line.split(' ');
  if (words.length > 24) return undefined;
  const failed = new Set<number>();
  const isRun = (from: number): boolean => {
    if (from === words.length) return true;
    if (failed.has(from)) return false;
    for (let to = words.length; to > from; to--) {
      const part = words.slice(from, to).join(' ');
      if ((WHY.test(part) || matched(part)) && isRun(to)) return true;
    }
    failed.add(from);
    return false;
  };
  if (!isRun(0)) return undefined;
  for (let from = 0; from < words.length; from++)
    for (let to = words.length; to > from; to--) {
      const undo = matched(words.slice(from, to).join(' '));
      if (undo) return undo;
    }
  return undefined;
}

function matched(line: string): RegExpExecArray | undefined {
  for (const { pattern } of undoRules) {
    const match = pattern.exec(line);
    if (match) return match;
  }
  return undefined;
}

/** The line that was looked at last: a note is asked whole, by its parts and by its sentences, which mostly are the same. */
let last: { readonly line: string; readonly undo: RegExpExecArray | undefined } | undefined;

/** Where an undo stands in the line, if one may. */
function undoIn(line: string): RegExpExecArray | undefined {
  if (last?.line !== line) last = { line, undo: undoFound(line.replace(NUMBERED, '$1 one')) };
  return last.undo;
}

/** "Take off" and "drop" alone are no undo. */
function undoFound(line: string): RegExpExecArray | undefined {
  if (/^(?:take off|take out|scrub out|take away|drop|skip|lose|kill|bin|strike|wipe|discard)$/.test(line))
    return undefined;
  return matched(line) ?? undoWithReason(line);
}

/** Whether the line takes something back. */
export function isUndo(line: string): boolean {
  return undoIn(line) !== undefined;
}

/** Reasons given beside an undo. */
export const WHY =
  /^(?:(?:(?:it|that|this|they|those|these|(?:the|that|my) last (?:one|entry|note|message|bit)|that message)(?: was| were| is)? )?(?:only |really |just )?(?:meant|intended|sent|(?<=(?:was|is) )for) ?(?:for|to)? (?:(?:my|our) \w+(?: \w+)?|(?:someone|somebody|anybody)(?: else)?|(?:the other|another|the wrong|a different) \w+|(?!the |my |a |plantname)\w+)|(?:it |that )?(?:wasn't|was not|weren't|isn't) (?:meant )?for (?:you|here|this(?: \w+)?)|(?:i )?(?:only )?meant to (?:text|message|tell|ring|send it to) (?:my )?\w+|(?:the |my )?(?:cat|dog|kitten|puppy|baby|toddler|kid) (?:walked|sat|trod|stood|jumped|ran|stepped) (?:on|over|across) (?:the |my )?(?:phone|screen|keyboard|tablet)|whoops|oops|oh no|oh|oh bother|bother|blast|drat|no|wait|sorry|damn|argh|no wait|hang on|hold on|wrong \w+(?: (?:entirely|altogether|sorry))?|i (?:was|am|must have been) (?:looking at|on|in|thinking of) the wrong \w+(?: lol)?|i misread (?:the|it|my)(?: \w+)?|would you|wrong|my mistake|mistake|(?:fat|cold|clumsy|wet) (?:fingers|thumbs)|butterfingers|silly me|autocorrect|(?:i'd|i had|had|i was holding|was holding|holding|i picked up|picked up|i grabbed|grabbed|i read|read) (?:got )?the wrong \w+(?: in my hands?| in front of me| out)?|that was wrong|i (?:didn't|did not) mean (?:that|it|to)|i got (?:it|that|mixed up|muddled|confused)(?: wrong)?|got (?:it|that) wrong|wrongly entered|i made a mistake|that's not right|not right|please|pls|thanks|thank you|ta|would you|will you|actually no|actually|no actually|that's wrong|thats wrong|(?:it|that|this|the last (?:one|entry|note)|that last (?:one|entry|note|bit)|last one|last entry) (?:was|is) (?:wrong|a mistake|an error|not right|rubbish|nonsense|incorrect)|it was in error|in error|it never happened|that never happened|that isn't right|i misspoke|typo|i (?:pressed|hit|tapped|clicked|touched|picked|chose|typed|put) the wrong (?:thing|one|button|key|plant|pot|batch|name|place|entry|person|number|date|day)|i had the wrong end of the stick|(?:i )?(?:wasn't|wasnt|was not) (?:looking|thinking|concentrating|paying attention))$/;
