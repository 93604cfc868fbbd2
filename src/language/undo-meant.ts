/** Which entry an undo means: by what it calls it ("that loss"), and by its plant ("the Ember Fox sale"). */
import { nounTakenBack } from './grammar/undo.js';
import type { Note } from './note.js';
import type { PlantWords } from './pieces.js';
import { lineOf, partsAtMarks, plantsIn } from './sentences.js';
import { utteranceOf } from './utterance.js';

export interface UndoMeant {
  readonly noun?: string;
  readonly plant?: PlantWords;
}

/** What each undo of the note names, in order; words beside it name nothing. */
export function undosMeant(note: Note): readonly UndoMeant[] {
  const utterance = utteranceOf(note);
  return partsAtMarks(utterance.pieces).flatMap((part) => {
    const noun = nounTakenBack(lineOf(part, utterance));
    if (noun === undefined) return [];
    const [named] = plantsIn(part);
    return [{ ...(noun === null ? {} : { noun }), ...(named ? { plant: named.plant } : {}) }];
  });
}
