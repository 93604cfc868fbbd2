/** "I've put Silky Baker in as Sulky Baker", "Mad Vicar went down as Mud Vicar": a plant told by another's name, and the right one. */
import { wordAt } from '../grammar/rule.js';
import type { NamePutRight } from './name-denied.js';
import { beginning } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { type Sentence, textOf } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

/** The words that lead up to the right name where somebody put it in. */
const PUT_BY =
  /^(?:put|got|had|have|entered|logged|wrote|written|recorded|noted|listed|typed|saved|told|given)$/;
/** What says so of the plant itself. */
const WENT = /^(?:went|gone|is|are|was|were|got|been|put|has|have|entered|logged|written|recorded|listed)$/;
const BESIDE = /^(?:in|down|up|on|here|there|it|them|you|written|entered|logged|recorded|listed)$/;
const LEAD = beginning`(oh|no|sorry|oops|ah|wait|actually|damn|argh|think|reckon|that|i|we)`;

/** Where the name that stands in the ledger is, and the right one; undefined where nothing says so. */
export function putInAs({ pieces }: Sentence, utterance: Utterance): NamePutRight | undefined {
  const as = pieces.findIndex((_, at) => wordAt(pieces, at) === 'as' && pieces[at + 1]?.is === 'plant');
  const old = pieces[as + 1];
  if (old?.is !== 'plant' || !old.known || old.plant.variety === undefined) return undefined;
  const behind = pieces[as + 2];
  if (
    behind &&
    behind.is !== 'break' &&
    !/^(?:by|please|sorry|can|could|instead|so)$/.test(wordAt(pieces, as + 2))
  )
    return undefined;
  let end = as;
  while (BESIDE.test(wordAt(pieces, end - 1))) end--;
  const told = ofOwner(pieces, end) ?? ofItself(pieces, end);
  if (!told || told.length === 0) return undefined;
  const [only] = told;
  const name = textOf(told, utterance).trim();
  const { variety } = old.plant;
  if (name.toLowerCase() === variety.toLowerCase()) return undefined;
  if (only?.is === 'plant' && told.length === 1) return { old, told, name };
  // "Mad Vicar": its second word is known of the other.
  const isWords =
    told.length < 5 &&
    told.every((piece) => piece.is === 'word' || (piece.is === 'plant' && piece.plant.variety === variety));
  return isWords && isLike(name, variety) ? { old, told, name } : undefined;
}

/** "I've put Silky Baker in …": the name behind who put it there. */
function ofOwner(pieces: readonly Piece[], end: number): readonly Piece[] | undefined {
  const put = pieces.findIndex((_, at) => at < end && PUT_BY.test(wordAt(pieces, at)));
  const isOwn = pieces
    .slice(0, put)
    .some((_, at) => /^(?:i|we|i've|we've|i'd|we'd)$/.test(wordAt(pieces, at)));
  if (put < 0 || !isOwn) return undefined;
  let from = put + 1;
  while (PUT_BY.test(wordAt(pieces, from)) || /^(?:the|my|down|in)$/.test(wordAt(pieces, from))) from++;
  return pieces.slice(from, end);
}

/** "Mad Vicar went down as …": the name at the beginning. */
function ofItself(pieces: readonly Piece[], end: number): readonly Piece[] | undefined {
  let to = end;
  while (WENT.test(wordAt(pieces, to - 1))) to--;
  let from = 0;
  while (LEAD.test(wordAt(pieces, from)) || pieces[from]?.is === 'break') from++;
  return to === end ? undefined : pieces.slice(from, to);
}

/** Written with capitals, or with a word of the other. */
function isLike(name: string, other: string): boolean {
  const words = name.split(' ');
  const own = other.toLowerCase().split(' ');
  return (
    words.every((word) => /^\p{Lu}/u.test(word)) || words.some((word) => own.includes(word.toLowerCase()))
  );
}
