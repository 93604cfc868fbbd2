/** A case of what a run of words is, and what its cases ask of it. */
import { inPlantPosition } from '../position.js';
import { isSentenceStart, lastWord, type RunSeen } from '../run.js';

export interface NameCase {
  /** Like what is written. */
  readonly name: string;
  readonly isName: boolean;
  readonly when: (seen: RunSeen) => boolean;
}

/** Written as names are: two capitals or more, and nothing else. */
export const isWritten = ({ isCapital, length }: RunSeen): boolean => isCapital && length > 1;

/** The first words of a sentence, each with a capital, and no verb. */
export function opensSentence({ pieces, tokens, at, length, capital, isShouted }: RunSeen): boolean {
  const opening = pieces[at];
  return (
    opening?.is === 'word' &&
    opening.verb === undefined &&
    (opening.from === 0 || isSentenceStart(tokens, opening.from)) &&
    !isShouted &&
    length > 1 &&
    tokens[opening.from]?.capital === true &&
    capital === length - 1
  );
}

/** Where a plant's name would stand, "three rooted Blue Note" included. */
export const standsForPlant = (seen: RunSeen): boolean =>
  inPlantPosition(seen.before) ||
  (seen.isCapital &&
    lastWord(seen) === 'rooted' &&
    seen.before.at(seen.before.at(-2)?.is === 'pots' ? -3 : -2)?.is === 'count');
