/** Plans under a heading: "To do" and, a line each, "pot on Salt Harrier", "pinch Tallow Bell". None of them is done. */
import type { Token } from '../tokens.js';

/** Over plans of no day; they are read as behind "to do". */
const TO_DO =
  /^(?:(?:still|things|jobs|more|left) )?(?:to do|todo|to be done)(?: list)?$|^(?:must|need to|needs|jobs|next|next up|next jobs?|reminders?|remember|remember to|don't forget|outstanding)(?: do)?(?: list)?$/;
/** Over plans of a day, which stays. */
const PLANS =
  /^(?:(?:jobs|plans?|to do|todo|things to do|list)(?: list)? (?:for )?)?(?:the |this |next |on )*(?:tomorrow|weekend|week|(?:mon|tues|wednes|thurs|fri|satur|sun)day)(?: jobs| plans?| list)?$/;
const LONGEST_HEADING = 7;

/** The tokens, each run of lines (or of parts between semicolons) under such a heading as one sentence; `undefined` where there is none. */
export function plansListed(tokens: readonly Token[]): readonly Token[] | undefined {
  const end = tokens.findIndex(({ is, text }) => is === 'line' || text === ':');
  const heading = tokens.slice(0, end);
  if (end < 1 || heading.length > LONGEST_HEADING) return undefined;
  const words = heading
    .filter(({ text }) => text !== '-')
    .map(({ text }) => text)
    .join(' ');
  const undated = TO_DO.test(words);
  if (!undated && !PLANS.test(words)) return undefined;
  const mark = tokens[end];
  const below = tokens.slice(end + 1);
  const listed = below[0]?.is === 'line' ? below.slice(1) : below;
  if (!mark || listed.length === 0) return undefined;
  const head = undated ? toDo(heading) : heading;
  return [...head, { ...mark, text: ':', raw: ':', is: 'mark' }, ...listed.map(joined)];
}

/** What parts one plan from the next is a comma. */
const joined = (token: Token): Token =>
  token.is === 'line' || token.text === ';' ? { ...token, text: ',', raw: ',', is: 'mark' } : token;

function toDo(heading: readonly Token[]): readonly Token[] {
  const [first] = heading;
  if (!first) return heading;
  return ['to', 'do'].map((text) => ({ ...first, text, is: 'word' as const, capital: false }));
}
