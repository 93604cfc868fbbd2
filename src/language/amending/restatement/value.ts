/** The value that a restatement sets, to the end of the sentence, and the one that it denies. */
import type { Cause } from '../../../ledger/entry.js';
import { wordAt } from '../../grammar/rule.js';
import { causes, phraseAt } from '../../row/lexicon.js';
import type { Piece } from '../../pieces/pieces.js';
import { valueSaid } from '../../pieces/value-said.js';

const POLITE =
  /^(?:start|begin|with|originally|first|please|sorry|thanks|then|in|total|altogether|instead|actually|mate|ok|my|mistake|though|tho)$/;
const BETWEEN =
  /^(?:actually|really|only|just|all|in|fact|on|at|of|the|a|about|meant|to|be|with|into|it|was)$/;
const NOUN =
  /^(?:cuttings|cutting|slips|plants|plugs|plantlets|tubers|stools|crowns|corms|roots?tocks?|stock|them|of|struck|taken|pots|altogether)$/;

/** "It was rot", "that was the slugs", "it was mould, not rot": what did it, and no more. */
export function causeAt(pieces: readonly Piece[], from: number): Cause | undefined {
  const start = /^(?:the|just|only)$/.test(wordAt(pieces, from)) ? from + 1 : from;
  const words = pieces.map((_, at) => wordAt(pieces, at));
  const found = phraseAt(causes, words, start);
  if (!found) return undefined;
  let end = start + found.words.length;
  if (pieces[end]?.is === 'break') end++;
  const denied = words[end] === 'not' ? phraseAt(causes, words, end + 1) : undefined;
  if (denied) end += 1 + denied.words.length;
  return end >= pieces.length ? found.value : undefined;
}

export interface Value {
  readonly set: Readonly<Record<string, unknown>>;
  readonly kinds: readonly Piece['is'][];
  readonly denied?: Piece;
}

/** "Nine from the Salt Harrier". */
const isOff = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:from|off)$/.test(wordAt(pieces, at)) &&
  pieces[at - 1]?.is === 'count' &&
  pieces[/^(?:the|my)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1]?.is === 'plant';

/** The value to the end of the sentence, and the one denied beside it. */
export function valueAt(pieces: readonly Piece[], from: number): Value | undefined {
  const set: Record<string, unknown> = {};
  const kinds: Piece['is'][] = [];
  let denied: Piece | undefined;
  for (let at = from; at < pieces.length; at++) {
    const piece = pieces[at];
    if (!piece) break;
    if (piece.is === 'word') {
      const { text } = piece;
      if (/^(?:not|instead)$/.test(text)) {
        at++;
        if (/^(?:of|in|on|the|at)$/.test(wordAt(pieces, at))) at++;
        if (wordAt(pieces, at) === 'the') at++;
        denied = pieces[at];
        if (denied?.is === 'word' && /^(?:tips?|heels?|nodal|basal)$/.test(denied.text)) continue;
        if (!denied || denied.is === 'word') return undefined;
        continue;
      }
      if (
        kinds.length === 0
          ? BETWEEN.test(text)
          : NOUN.test(text) || POLITE.test(text) || /^(?:in|on|at|the|to)$/.test(text) || isOff(pieces, at)
      )
        continue;
      return undefined;
    }
    const slots = valueSaid(piece);
    if (!slots || Object.keys(slots).some((slot) => slot in set)) return undefined;
    Object.assign(set, slots);
    kinds.push(piece.is);
  }
  if (kinds.length === 0) return undefined;
  // "9 trays not 10", "mist bench 2 not 1": a bare number denies what has a number.
  if (
    denied &&
    denied.is !== 'word' &&
    !kinds.includes(denied.is) &&
    !(denied.is === 'count' && kinds.some((kind) => /^(?:pots|place|size|when)$/.test(kind)))
  )
    return undefined;
  return { set, kinds, ...(denied ? { denied } : {}) };
}
