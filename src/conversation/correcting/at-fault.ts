/** "The date for the Moss Cardinal is wrong. It was Friday": of which plant something is wrong, said before what is right. */
import { withWholeNames } from '../../language/row/whole-names.js';
import { noteOf } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import { LONGEST } from './doubts.js';

const WRONG = '(?:wrong|false|not right|not correct|incorrect|a mistake|mistaken)';
const SLOT = '(?:day|date|number|count|figure|total)';
const LEADS = [
  // "That's not right about …".
  `(?:that|it|this)(?:['’]s| is| was) ${WRONG} (?:about|for|with|on)`,
  // "I had the wrong day down for …", "I made a mistake with …".
  `(?:i|we)(?:['’]ve| have)? (?:had|got|have|put|gave you|told you|wrote|made) (?:(?:the |a )?wrong ${SLOT}|an? (?:mistake|error)|the ${SLOT} wrong)(?: down)? (?:for|with|about|on|in)`,
  `(?:the )?(?:wrong ${SLOT}|mistake|error) (?:for|with|about|on|in)`,
];
const AT_FAULT = new RegExp(
  `^(?:(?:no|sorry|oops|ah|oh|wait)[,. ]+)*(?:(?:${LEADS.join('|')}) (?:the |my )?(?<plant>.{2,60}?)|(?:the )?${SLOT} (?:for|of|by|on|with) (?:the |my )?(?<of>.{2,60}?) (?:is|was) ${WRONG})(?:[,.;:]| [–—-]) *(?<right>.{4,120})$`,
  'iu',
);
const FIRST = /^(?:it|that|they|those|these) (?=was\b|were\b|is\b|are\b|should\b)/i;
const LATER = /\b(?:them|those|these|it)\b/i;

/** The text with the plant in what is right; as it is where it says no such thing. */
export function withPlantAtFault(sitting: Sitting, text: string): string {
  if (text.length > LONGEST) return text;
  const told = AT_FAULT.exec(withWholeNames(noteOf(sitting, text)).trim())?.groups;
  const name = told?.['plant'] ?? told?.['of'];
  const right = told?.['right'] ?? '';
  const variety = [...sitting.ledger.varieties.keys()].find(
    (each) => each.toLowerCase() === name?.toLowerCase(),
  );
  if (variety === undefined) return text;
  if (FIRST.test(right)) return right.replace(FIRST, `the ${variety} `);
  return LATER.test(right) ? `no, ${right.replace(LATER, `the ${variety}`)}` : text;
}
