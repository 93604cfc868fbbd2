/** A text with the names of known plants in full: "the Petticoats were five" of the one that is Skellig Petticoat. */
import { findNames } from './names.js';
import { normalise } from './normalise.js';
import type { Note } from '../note.js';
import { tokenise } from './tokens.js';

/** The words as they were written, but for names told in part, in the plural or with a slip. */
export function withWholeNames({ text: said, context = {} }: Note): string {
  const text = normalise(said);
  const tokens = tokenise(text);
  let whole = '';
  let done = 0;
  for (const { from, to, variety } of findNames(tokens, context)) {
    const [first, last] = [tokens[from], tokens[to - 1]];
    if (variety === undefined || !first || !last) continue;
    const owned = /['’]s$/.exec(text.slice(first.start, last.end))?.[0] ?? '';
    whole += text.slice(done, first.start) + variety + owned;
    done = last.end;
  }
  return done === 0 ? said : whole + text.slice(done);
}
