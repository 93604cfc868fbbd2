/** "No, I'm wrong, Tuesday, it was bin day": a correction without the talk around it, where the whole says nothing. */
import { WEATHER } from '../../language/amending/weather.js';
import { CALLED } from '../../language/grammar/called.js';
import { LONGEST, withoutDoubts } from './doubts.js';

/** "Pet", "love", "everyone", called out to somebody, and "Col love". */
const TO_SOMEBODY = `(?:${CALLED}|man|flower|all|everyone|everybody|you two|team)`;
const CALLS = new RegExp(`^(?:\\p{Lu}\\p{L}+ )?${TO_SOMEBODY}(?:$|[, ]+)`, 'u');
/** What is exclaimed and takes nothing back. */
const EXCLAIMS =
  /^(?:oh|ooh|ah|aw|och|um|er|erm|well|hey|hi|lol|ha|haha|hahaha|god|heavens|goodness|my|blimey|crikey|right|so|and|but|yes|aye)(?:$|[, ]+)/i;
/** What is exclaimed over a mistake. */
const VEXED =
  /^(?:drat|dang|damn|darn|shoot|sugar|bother|blast|duh|d['’]oh|argh|ugh|flip|daft|silly me|hands up|apologies|you['’]?re right|for (?:goodness|heaven['’]?s?|pete['’]?s|flip['’]?s|crying out) ?(?:sakes?|loud)?|i['’]m an? (?:\p{L}+ )?(?:eejit|idiot|fool|numpty|twit|muppet|dope|clown)|(?:what )?an? (?:eejit|idiot|fool|numpty|twit|muppet)(?: i am)?|what am i like)(?:$|[, ]+)/iu;
/** How it came about, without a value of its own: "I'm looking at the wrong tray", "didn't have my specs on". */
const EXPLAINS =
  /^\D*\b(?:wrong|mixed up|muddled|upside down|specs|glasses|miscounted|misread|can['’]?t (?:count|read|add)|counted (?:them )?again)\b\D*$/i;
/** A "no" that denies nothing told before. */
const NO_DENIAL =
  /^no (?:rush|worr(?:y|ies)|problem|bother|harm|matter|way|idea|doubt|wonder|need|hurry|luck|joy|change|signs?|roots?|more|point|fear|offence|pressure|chance)\b/i;
/** Something to come, only thought of, or put off, is no correction. */
const NOT_DONE =
  /\?|\b(?:i['’]ll|we['’]ll|will|going to|gonna|tomorrow|next|later|if|would|could|maybe|perhaps|might|until|till|unless|shall|years?|o['’]clock|not (?:yet|today|now|this|till|until))\b/i;
const PAUSE =
  /[,;:!]|\.(?=\s|$)|\s[–—-](?=\s)|\s(?:because|cos|coz|seeing as)(?=\s)|\sso(?=\s(?:one|two|they|it|the rest|i|we)\b)/iu;
const MOST = 7;

/** A part without what is only called out before its matter, and whether that takes something back. */
function stripped(part: string): { readonly rest: string; readonly doubted: boolean } {
  if (NO_DENIAL.test(part)) return { rest: part, doubted: false };
  let rest = part;
  let doubted = false;
  for (;;) {
    const before = rest;
    rest = rest.replace(CALLS, '').replace(EXCLAIMS, '');
    const sure = withoutDoubts(`${rest},`).replace(/,$/, '').trim().replace(VEXED, '');
    doubted ||= sure.length < rest.trim().length;
    rest = sure;
    if (rest.length === before.length) break;
  }
  return EXPLAINS.test(rest) ? { rest: '', doubted: true } : { rest, doubted };
}

/** What a text may put right at its heart, the likeliest first. */
export interface Hearts {
  /** Each is part of the text, with "sorry" before it where something is taken back. */
  readonly parts: readonly string[];
  readonly doubted: boolean;
}

/** `nameless` is the text without names of plants, which may hold any word. */
export function heartsOf(text: string, nameless: string): Hearts {
  const none = { parts: [], doubted: false };
  if (text.length > LONGEST || NOT_DONE.test(nameless) || WEATHER.test(nameless.toLowerCase())) return none;
  const parts = text
    .trim()
    .split(PAUSE)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length < 2 || parts.length > MOST) return none;
  const bare = parts.map(stripped);
  const doubted = bare.some((part) => part.doubted);
  const told = bare.flatMap(({ rest }) =>
    rest === '' ? [] : [rest.replace(/^(?:so|and|but|because|cos) /i, '')],
  );
  const pairs = told.slice(1).map((part, at) => `${told[at] ?? ''}, ${part}`);
  const hearts = [...pairs, ...told].map((part) => (doubted ? `sorry, ${part}` : part));
  return { parts: hearts.filter((each) => each !== text.trim()), doubted };
}
