/** Names nobody knows yet: words in a plant's position that are no words of the trade. */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import type { Token } from '../row/tokens.js';
import { isCapitalOf } from './new-names/capitals.js';
import { isJointOfTakers, namedTaker } from './new-names/giver-or-taker.js';
import { isCropOfTwo, looksLikeCrop } from './new-names/crop-like.js';
import { isName } from './new-names/is-name.js';
import { inPlantPosition, isCrop } from './new-names/position.js';
import { type NameSeen, runAt } from './new-names/run.js';
import { nameBeforeTimes, nameHoldingCrop } from './new-names/words-in-names.js';
import { titleCase } from '../pieces/told-names/name-piece.js';

/** Turns runs of unknown words behind a count, "cuttings of" or beside a crop into plants. */
export function joinNewNames(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  text: string,
): readonly Piece[] {
  const capitals = tokens.filter(
    ({ capital, start, text: word }) => capital && start > 0 && !/^i(?:'|$)/.test(word),
  ).length;
  const shouted = isShouted(tokens);
  const result: Piece[] = [];
  for (let at = 0; at < pieces.length; at++) {
    const piece = pieces[at];
    if (!piece) continue;
    // "Sold Marsh and Sons 60 Salt Harrier": one name.
    if (
      wordAt(pieces, at) === 'and' &&
      !shouted &&
      isJointOfTakers(result, pieces.slice(at + 1), (word) => isCapitalOf(tokens, word))
    ) {
      result.push({ ...piece, is: 'word', text: '&' });
      continue;
    }
    const somebody = shouted ? 0 : namedTaker(result, pieces.slice(at), (word) => isCapitalOf(tokens, word));
    for (let n = 0; n < somebody; n++) {
      const word = pieces[at + n];
      if (word?.is === 'word') result.push({ ...word, somebody: true });
    }
    if (somebody > 0) {
      at += somebody - 1;
      continue;
    }
    const length =
      nameHoldingCrop(pieces, tokens, at, inPlantPosition(result)) ||
      nameBeforeTimes(pieces, tokens, at) ||
      nameLength({ pieces, tokens, at, before: result, isLower: capitals === 0, isShouted: shouted });
    if (length === 0) {
      result.push(piece);
      continue;
    }
    const from = piece.from;
    const last = pieces[at + length - 1];
    const to = last?.to ?? piece.to;
    const start = tokens[from]?.start ?? 0;
    const end = tokens[to - 1]?.end ?? start;
    const name = text.slice(start, end).replace(/'s$/, '').replace(/"/g, '');
    const beside = isCrop(result.at(-1)) || isCrop(pieces[at + length]);
    const single = length === 1 && tokens[from]?.capital === false;
    result.push({
      is: 'plant',
      known: false,
      from,
      to,
      plant:
        (single && !beside && looksLikeCrop(name)) || isCropOfTwo(name)
          ? { crop: singular(name) }
          : { variety: titleCase(name) },
    });
    at += length - 1;
  }
  return result;
}

/** Of how many pieces the name is that begins there; 0 where none does. */
function nameLength(seen: NameSeen): number {
  const run = runAt(seen);
  return run.length > 0 && isName(seen, run) ? run.length : 0;
}

/** Written in capitals throughout, so that a capital says nothing. */
function isShouted(tokens: readonly Token[]): boolean {
  return tokens.length > 3 && tokens.every(({ is, raw }) => is !== 'word' || raw === raw.toUpperCase());
}

function singular(name: string): string {
  const lower = name.toLowerCase();
  return /[^su]s$/.test(lower) ? lower.slice(0, -1) : lower;
}
