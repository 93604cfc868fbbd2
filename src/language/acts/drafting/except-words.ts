/** Words of exception: "except", "bar", "apart from". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';

const EXCEPT = /^(?:except|excepting|excluding|bar|barring|minus)$/;
const EXCEPT_PAIR =
  /^(?:(?:apart|aside) from|(?:except|bar|save|apart|aside) for|except from|other than|exception of)$/;
/** These join as well, or tell how: they leave something out only of all there is. */
const OF_ALL_ONLY = /^(?:but|save|besides|without)$/;

/** Whether the words up to `at` leave out what follows. */
export const excepts = (pieces: readonly Piece[], at: number): boolean =>
  EXCEPT.test(wordAt(pieces, at)) || EXCEPT_PAIR.test(`${wordAt(pieces, at - 1)} ${wordAt(pieces, at)}`);

/** Whether the words up to `at` leave out what follows, where all there is was told before. */
export const exceptsOfAll = (pieces: readonly Piece[], at: number): boolean =>
  excepts(pieces, at) || OF_ALL_ONLY.test(wordAt(pieces, at));
