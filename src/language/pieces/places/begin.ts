/** Where places begin, for whoever asks it of few words. */
import type { NoteContext } from '../../note.js';
import { findPlaces } from '../places.js';
import type { Token } from '../../row/tokens.js';
import { placeNamesOf } from './known.js';

/** Where a place begins in a row, found when first asked for. */
export function placesBegin(
  tokens: readonly Token[],
  context: NoteContext,
  isName: (at: number) => boolean,
): (at: number) => boolean {
  let starts: ReadonlySet<number> | undefined;
  return (at) => {
    starts ??= new Set(
      findPlaces(tokens, placeNamesOf(context), (at) => at < tokens.length && !isName(at)).map(
        ({ from }) => from,
      ),
    );
    return starts.has(at);
  };
}
