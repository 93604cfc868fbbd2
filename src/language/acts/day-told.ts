/** What a day was like, told before it is named: "busy one yesterday, took …", "great day Saturday: …". */
import { wordAt } from '../grammar/rule.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

const LIKE = whole`
  a|another|what|bit|of|very|quite|rather|really|so|right|on
  busy|good|grand|great|big|long|quiet|slow|mad|hectic|full|lovely|productive|cracking|decent|proper|wet|dry|hot|cold
  one|day|session|morning|afternoon|evening|stint|time|weekend|shift
`;
/** Of these one at least. */
const SPAN = /^(?:one|day|session|morning|afternoon|evening|stint|time|weekend|shift)$/;
const LONGEST = 6;
const LONGEST_EVENT = 12;

/** Where the day stands that the row opens with in such words; undefined where it does not. */
export function dayToldAt(row: readonly Piece[]): number | undefined {
  let at = 0;
  let isSpan = false;
  while (at < LONGEST) {
    const piece = row[at];
    const word = piece?.is === 'count' && piece.quantity.value === 1 ? 'one' : wordAt(row, at);
    if (!LIKE.test(word)) break;
    isSpan ||= SPAN.test(word);
    at++;
  }
  return isSpan && at > 1 && row[at]?.is === 'when' ? at : undefined;
}

/** "School fair on Saturday was a triumph: …": where the day of what was stands before the colon; nothing of plants is told there. */
export function dayOfEvent(row: readonly Piece[]): number | undefined {
  const colon = row.findIndex((piece) => piece.is === 'break');
  const mark = row[colon];
  if (mark?.is !== 'break' || !/^[:\u2013\u2014-]$/.test(mark.mark) || colon > LONGEST_EVENT)
    return undefined;
  const event = row.slice(0, colon);
  const [day, another] = event.flatMap(({ is }, at) => (is === 'when' ? [at] : []));
  const isOver = event.some((_, at) => /^(?:was|were|went)$/.test(wordAt(event, at)));
  const isOfPlants = event.some(({ is }) => is === 'plant' || is === 'count');
  return isOver && !isOfPlants && another === undefined ? day : undefined;
}
