/** The number that a correction denies. */
import { numberAt } from '../../language/pieces/numbers.js';
import { tokenise } from '../../language/row/tokens.js';

/** “Not five, four”: the number that is denied. */
export function deniedNumber(text: string): number | undefined {
  const denied = /\bnot (?:the )?([\p{L}\d]+)/iu.exec(text)?.[1];
  return denied === undefined ? undefined : numberAt(tokenise(denied), 0)?.value;
}
