/**
 * Names that nobody knows yet, found by supposing them: runs of words with capitals, or in small letters where what was
 * struck is not understood, are taken for varieties, the note read once more with them, and the better reading kept.
 */
import type { Entry } from '../../ledger/entry.js';
import type { Note, ReadNote } from '../note.js';
import type { Piece } from '../pieces/pieces.js';
import type { Token } from '../row/tokens.js';
import { titleCase } from '../pieces/told-names/name-piece.js';
import { smallRuns } from './small-runs.js';
import { type Run, titleRuns } from './title-runs.js';

/** More new names than these no grower tells in one note, and none in a note of more words: each costs a reading. */
const MOST_NAMES = 6;
const LONGEST = 120;

/** Where a name is told for the first time; of what was bought or given more must tell that it is a plant. */
const isNew = (kind: string, plain: ReadNote): boolean =>
  kind === 'strike' ||
  (/^(?:stock|receive)$/.test(kind) && plain.entries.some(({ entry }) => entry.kind === kind));

interface Seen {
  readonly utterance: { readonly text: string; readonly tokens: readonly Token[] };
  readonly pieces: readonly Piece[];
  readonly outcome: ReadNote;
}

interface Supposed {
  readonly name: string;
  readonly isSource: boolean;
  /** In small letters nothing but the whole telling shows that it is one. */
  readonly isSmall?: true;
}

/** `read` reads a note by the rules alone. */
export function withNamesSupposed<Reading extends Seen>(
  plain: Reading,
  note: Note,
  read: (note: Note) => Reading,
): Reading {
  if (plain.outcome.instruction) return plain;
  const { text, tokens } = plain.utterance;
  if (tokens.length > LONGEST) return plain;
  const named = ({ from, to, isSource }: Run): Supposed => ({
    name: text.slice(tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0).replace(/'s$/, ''),
    isSource,
  });
  const titles = titleRuns(tokens, plain.pieces)
    .map(named)
    .filter(({ name }) => !plain.outcome.entries.some(({ entry }) => varietyOf(entry) === name))
    .slice(0, MOST_NAMES);
  const small =
    titles.length === 0 && lacksName(plain.outcome)
      ? smallRuns(tokens, plain.pieces)
          .map((run): Supposed => ({ ...named(run), isSmall: true }))
          .slice(0, MOST_NAMES)
      : [];
  const alone = [...titles, ...small].map((name) => [name]);
  const context = note.context ?? {};
  for (const some of titles.length > 1 ? [titles, ...alone] : alone) {
    const varieties = [...(context.varieties ?? []), ...some.map(({ name }) => ({ name: titleCase(name) }))];
    const supposed = read({ ...note, context: { ...context, varieties } });
    if (isBetter(supposed.outcome, plain.outcome, some)) return supposed;
  }
  return plain;
}

/** Nothing was understood, or what was struck is asked or was only assumed. */
const lacksName = ({ entries, asks }: ReadNote): boolean =>
  entries.length === 0 ||
  asks.some(({ slot }) => slot === 'variety') ||
  entries.some(({ entry, sources }) => entry.kind === 'strike' && sources['variety'] === 'assumed');

/** Every name is of something new, nothing else that was told is lost, and no more is asked unless what was told was mistaken. */
function isBetter(supposed: ReadNote, plain: ReadNote, names: readonly Supposed[]): boolean {
  const isTold = ({ name, isSource }: Supposed): boolean =>
    supposed.entries.some(
      ({ entry }) =>
        (isSource ? entry.kind === 'strike' : isNew(entry.kind, plain)) &&
        varietyOf(entry) === titleCase(name),
    );
  if (!names.every(isTold)) return false;
  if (plain.entries.length === 0) return supposed.asks.length === 0 || !names.some(({ isSmall }) => isSmall);
  const mistaken = plain.entries.filter(({ entry }) => {
    const variety = varietyOf(entry);
    return variety !== undefined && names.some(({ name }) => overlap(titleCase(name), variety));
  });
  return (
    supposed.entries.length >= plain.entries.length - Math.max(0, mistaken.length - names.length) &&
    (mistaken.length > 0 || supposed.asks.length <= plain.asks.length)
  );
}

const varietyOf = (entry: Entry): string | undefined => (entry as { variety?: string }).variety;

/** "Past" and "Five Past Nine". */
const overlap = (name: string, other: string): boolean =>
  name !== other && (` ${name} `.includes(` ${other} `) || ` ${other} `.includes(` ${name} `));
