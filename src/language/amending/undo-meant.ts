/** Which entry an undo means: by what it calls it ("that loss"), and by its plant ("the Ember Fox sale"). */
import { nounTakenBack } from '../grammar/undo.js';
import { TELLS_CAME_ROUND } from '../grammar/undo/reasons.js';
import type { Note } from '../note.js';
import type { PlantWords } from '../pieces/pieces.js';
import { lineOf, partsAtMarks, plantsIn } from '../sentences/sentences.js';
import { utteranceOf } from '../pieces/utterance.js';

export interface UndoMeant {
  readonly noun?: string;
  readonly plant?: PlantWords;
  /** Who had the plants ("the gift to Ines"). */
  readonly to?: string;
}

/** What each undo of the note names, in order; words beside it name nothing. */
export function undosMeant(note: Note): readonly UndoMeant[] {
  const utterance = utteranceOf(note);
  const parts = partsAtMarks(utterance.pieces);
  return parts.flatMap((part, at) => {
    const line = lineOf(part, utterance);
    const noun = nounTakenBack(line);
    if (noun === undefined) return [];
    // "Undo that one, the Ember Fox".
    const behind = parts[at + 1] ?? [];
    const isPlantAlone = /^(?:the |my )?plantname$/.test(lineOf(behind, utterance));
    const [named] = plantsIn(isPlantAlone ? [...part, ...behind] : part);
    // "Undo that last one, the Salt Harrier have perked up": what was taken for their loss.
    const [alive] =
      noun === null && !named && TELLS_CAME_ROUND.test(lineOf(behind, utterance)) ? plantsIn(behind) : [];
    if (alive) return [{ noun: 'loss', plant: alive.plant }];
    const to = noun === null ? undefined : / to ([a-z']+)/.exec(line)?.[1];
    return [
      {
        ...(noun === null ? {} : { noun }),
        ...(to === undefined ? {} : { to }),
        ...(named ? { plant: named.plant } : {}),
      },
    ];
  });
}
