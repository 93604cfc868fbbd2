/** What the capitals of a note say of a word. */
import type { Piece } from '../../pieces/pieces.js';
import type { Token } from '../../row/tokens.js';

export const isCapitalOf = (tokens: readonly Token[], piece: Piece): boolean =>
  tokens[piece.from]?.capital === true;
