/** "No, I'm wrong, Tuesday, it was bin day": a correction without the talk around it, where the whole says nothing. */
import { WEATHER } from '../../language/amending/weather.js';
import { CALLED } from '../../language/grammar/called.js';
import { LONGEST, withoutDoubts } from './doubts.js';

/** "Pet", "love", "everyone", called out to somebody. */
const TO_SOMEBODY = `(?:${CALLED}|man|flower|all|everyone|everybody|you two|team)`;
const TO_SOMEBODY_ALONE = new RegExp(`^${TO_SOMEBODY}$`, 'i');
const BEFORE_SOMEBODY = new RegExp(`^(.{2,30}?) ${TO_SOMEBODY}$`, 'i');
const EXCLAIMED =
  /^(?:oh|ooh|ah|aw|och|um|er|erm|well|hey|hi|god|heavens|goodness|my|blimey|crikey|drat|dang|damn|darn|shoot|sugar|bother|right|so|and|but|yes|aye|silly me|i['’]m wrong(?: there)?|i was wrong|wrong one|wrong (?:pot|batch|lot|plant)|you['’]?re right|hands up|my fault|apologies)$/i;
/** Something to come, only thought of, or put off, is no correction. */
const NOT_DONE =
  /\?|\b(?:i['’]ll|we['’]ll|will|going to|gonna|tomorrow|next|later|if|would|could|maybe|perhaps|might|until|till|unless|shall|years?|o['’]clock|not (?:yet|today|now|this|till|until))\b/i;
const PAUSE = /[,;:!]|\.(?=\s|$)|\s[–—-](?=\s)/u;
const MOST = 7;

/** Whether it only takes back, exclaims or calls somebody. */
function isTalk(part: string): boolean {
  const bare = BEFORE_SOMEBODY.exec(part)?.[1] ?? part;
  const rest = withoutDoubts(`${bare},`).replace(/,$/, '').trim();
  return rest === '' || TO_SOMEBODY_ALONE.test(rest) || EXCLAIMED.test(rest);
}

const TAKES_BACK =
  /^(?:no|nope|nah|sorry|wrong|oops|whoops|wait|hang on|hold on|actually|i tell a lie|scratch that|correction)\b|\b(?:wrong|mistake|tell a lie)\b/i;

/** What a text may put right at its heart, the likeliest first. */
export interface Hearts {
  /** Each is part of the text, with "sorry" before it where something is taken back. */
  readonly parts: readonly string[];
  readonly doubted: boolean;
}

export function heartsOf(text: string): Hearts {
  const none = { parts: [], doubted: false };
  if (text.length > LONGEST || NOT_DONE.test(text) || WEATHER.test(text.toLowerCase())) return none;
  const parts = text
    .trim()
    .split(PAUSE)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length < 2 || parts.length > MOST) return none;
  const doubted = parts.some((part) => isTalk(part) && TAKES_BACK.test(part));
  const told = parts
    .filter((part) => !isTalk(part))
    .map((part) => part.replace(/^(?:so|and|but|because|cos) /i, ''));
  const pairs = told.slice(1).map((part, at) => `${told[at] ?? ''}, ${part}`);
  const hearts = [...pairs, ...told].map((part) => (doubted ? `sorry, ${part}` : part));
  return { parts: hearts.filter((each) => each !== text.trim()), doubted };
}
