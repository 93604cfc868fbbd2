/** The notes of the corpus: their shape, and how they are brought in. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A value, or several that are equally good; `null` among them means that the slot may be absent. */
export type Wanted = unknown;

export interface GoldEntry {
  readonly kind: string;
  readonly [slot: string]: Wanted;
}

export interface Gold {
  readonly entries: readonly GoldEntry[];
  /** Slots that have to be asked about. */
  readonly mustAsk: readonly string[];
  /** Slots where asking is no fault. */
  readonly mayAsk?: readonly { readonly entry: number; readonly slot: string }[];
  /** Other golds as good as this one. */
  readonly alts?: readonly Gold[];
}

export interface ContextBatch {
  readonly label: string;
  readonly variety?: string;
  readonly crop?: string;
  readonly struck?: string;
  readonly count?: number;
  readonly place?: string;
}

export interface CorpusNote {
  readonly id: string;
  readonly text: string;
  readonly now: string;
  readonly zone: string;
  readonly dateOrder?: string;
  readonly context?: {
    readonly varieties?: readonly { readonly name: string; readonly crop?: string }[];
    readonly batches?: readonly ContextBatch[];
    readonly places?: readonly string[];
    readonly pending?: { readonly kind: string; readonly batch?: string };
  };
  readonly gold: Gold;
  /** What the note is there to show; the name of its file. */
  readonly family: string;
  /** Who could have written it. */
  readonly voice: string;
}

/** `dev` is read while the grammar grows; `unseen` was written before it and only its figures are looked at. */
export const halves = ['dev', 'unseen'] as const;
export type Half = (typeof halves)[number];

const folder = 'fixtures/notes';

/** All notes of one half, in the order of their files; paths are relative to the project's root. */
export function bringIn(half: Half): CorpusNote[] {
  const files = readdirSync(join(folder, half)).filter((name) => name.endsWith('.jsonl'));
  return files.sort().flatMap((name) =>
    readFileSync(join(folder, half, name), 'utf8')
      .split('\n')
      .filter((line) => line !== '')
      .map((line) => JSON.parse(line) as CorpusNote),
  );
}

/** The examples that the note contract gives, as one family. */
export function bringInExamples(): CorpusNote[] {
  return readFileSync('fixtures/contract/examples.jsonl', 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => ({ ...(JSON.parse(line) as CorpusNote), family: 'examples', voice: 'examples' }));
}

/** The local day on which the note was sent, as `YYYY-MM-DD`. */
export function dayOfNote(note: CorpusNote): string {
  return new Intl.DateTimeFormat('en-CA', {
    timeZone: note.zone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).format(new Date(note.now));
}
