/** "Remind me to feed them on Friday, would you? Half past three, before the gate is locked.": the hour of a reminder, told behind it. */
import { wordAt } from '../grammar/rule.js';
import type { Proposal } from '../proposal.js';
import type { Sentence } from '../sentences/sentences.js';

/** An hour and no day. */
const HOUR =
  /^(?:at |about |around )*(?:half|quarter|five|ten|twenty|\d|noon|midday|one|two|three|four|six|seven|eight|nine|eleven|twelve)/i;

/** What may follow an hour: why then, or what it is before. */
const WHY = /^(?:before|after|when|while|as|because|cos|since|so|if|or|please|thanks|ta)$/;

/** The reminder at that hour; undefined where the sentence tells anything else. */
export function atHour(last: Proposal, { pieces }: Sentence): Proposal | undefined {
  if (last.slots['time'] !== undefined || last.draft.when === undefined) return undefined;
  const first = pieces.findIndex(
    (_, at) => !/^(?:at|about|around|say|make|it|for)$/.test(wordAt(pieces, at)),
  );
  const hour = pieces[first];
  if (hour?.is !== 'when' || hour.when.time === undefined || !HOUR.test(hour.when.words)) return undefined;
  const behind = pieces.slice(first + 1).filter(({ is }) => is !== 'break');
  const isReason = behind.length === 0 || WHY.test(wordAt(behind, 0));
  if (!isReason || behind.some(({ is }) => is === 'plant' || is === 'when' || is === 'count'))
    return undefined;
  return { ...last, slots: { ...last.slots, time: hour.when.time } };
}
