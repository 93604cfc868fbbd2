/** What is told while a question is open and shares a word with it, but is a note of its own and no answer. */
import { numberAt } from '../../language/pieces/numbers.js';
import { tokenise } from '../../language/row/tokens.js';
import { alive, placeOf } from '../../ledger/batch.js';
import type { Entry } from '../../ledger/entry.js';
import { type Ledger, liveBatches } from '../../ledger/ledger.js';
import { named } from '../../ledger/reach.js';
import type { SlotAsk } from '../talk.js';

/** "The 1/17 ones", "the lot from Friday". */
export const NAMES_LOT = /\b(?:ones?|lots?|batch|bunch|cuttings|from|of the)\b/i;

/** "And 24 Parish Gossip fuchsia from me", "the Marble Wren look nice" to "Which was lost?": told beside the question, and no choice of a lot. */
export function isOwnNote(ask: SlotAsk, text: string, ledger: Ledger, read: Entry | undefined): boolean {
  if (FROM_ME.test(text) || (ask.slot !== 'date' && tellsNewPlant(text, ledger))) return true;
  return ask.slot === 'batch' && read?.kind === 'remark' && named(read) && LOOKS.test(text);
}

/** "Fuchsia: 24 Rook Tailor", "got 6 fuchsia off my sister" to "Which was lost?": another number than was lost, and no lot's. */
export function countsOthers(
  ask: SlotAsk,
  text: string,
  ledger: Ledger,
  day: (text: string) => unknown,
): boolean {
  if (ask.slot !== 'batch' || NAMES_LOT.test(text) || day(text) !== null) return false;
  const { count } = ask.entry as { readonly count?: unknown };
  const told = [OPENS_WITH.exec(text)?.[1], ...(text.match(/(?<![\p{L}\d])\d+\b/gu) ?? [])].flatMap(
    (words) => (words === undefined ? [] : (numberAt(tokenise(words), 0)?.value ?? [])),
  );
  const live = liveBatches(ledger);
  // "The 12 Marble Wren" is the lot of that many, "bench 3" where it stands.
  return told.some(
    (number) =>
      number !== count &&
      !live.some(
        (batch) =>
          batch.count === number ||
          alive(batch) === number ||
          new RegExp(`\\b${number}\\b`).test(`${placeOf(batch) ?? ''} ${batch.variety ?? ''}`),
      ),
  );
}

const FROM_ME = /\b(?:from|by) (?:me|us|my side)\b|^(?:and )?mine:/i;
const LOOKS =
  /^(?:the |my |those |all )?(?!.*\b(?:that|which|who)\b).*\b(?:looks?|looking|seems?|needs?|smells?) \p{L}/iu;
/** A number that counts plants, and no day or share of a lot. */
const OPENS_WITH =
  /^(?:(?:and|also|plus|then|got|had|i['’]ve|with)[, ]+)*(?:(?:got|another|a further) )?(\d+|[a-z]+) (?!of\b|from\b|in\b|on\b|one\b|lot\b)\p{L}{3}/iu;

/** "And 6 Rook Tailor coleus": a plant of its own, which may be new. */
export const tellsNewPlant = (text: string, { varieties }: Ledger): boolean =>
  (/\d (?:of )?(?:the |my )?\p{Lu}[\p{L}'’]+ (?:\p{Lu}|\p{L}{4})/u.test(text) ||
    // "And a fuchsia of mine, Rook Tailor, 24".
    /\ban? \p{L}+\b.{0,20}, \p{Lu}[\p{L}'’]+ \p{Lu}[\p{L}'’]+, \d/u.test(text)) &&
  ![...varieties.keys()].some((variety) => text.toLowerCase().includes(variety.toLowerCase()));
