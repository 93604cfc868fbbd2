/** Judges an answer of the reader against a note's gold: exact, wrong, missed or a needless ask. */
import type { CorpusNote, Gold, GoldEntry } from './corpus-note.js';
import { slotFits, wantedValues } from './slot-comparison.js';

export interface AnsweredEntry {
  readonly kind: string;
  readonly [slot: string]: unknown;
}

export interface Answer {
  readonly entries: readonly AnsweredEntry[];
  readonly asks: readonly { readonly entry: number; readonly slot: string; readonly options?: unknown }[];
}

/**
 * `wrong`: something was logged that was not said (an entry too many, a slot with another value);
 * `missed`: something was said and not understood; `needless`: asked where the note is plain.
 */
export type Outcome = 'exact' | 'needless' | 'missed' | 'wrong';

const gravest: readonly Outcome[] = ['exact', 'needless', 'missed', 'wrong'];

export interface Judgement {
  readonly outcome: Outcome;
  /** What was amiss, in words, for whoever mends the grammar. */
  readonly faults: readonly string[];
}

interface Fault {
  readonly outcome: Outcome;
  readonly says: string;
}

/** The mildest judgement among the golds that are as good as each other. */
export function judge(note: CorpusNote, answer: Answer): Judgement {
  const golds = [note.gold, ...(note.gold.alts ?? [])];
  const judgements = golds.map((gold) => judgeAgainst(gold, note, answer));
  return judgements.reduce((best, next) => (isMilder(next, best) ? next : best));
}

function isMilder(a: Judgement, b: Judgement): boolean {
  return gravest.indexOf(a.outcome) < gravest.indexOf(b.outcome);
}

function judgeAgainst(gold: Gold, note: CorpusNote, answer: Answer): Judgement {
  const faults = [...entryFaults(gold, note, answer), ...askFaults(gold, answer)];
  const outcome = faults.reduce<Outcome>(
    (worst, fault) => (gravest.indexOf(fault.outcome) > gravest.indexOf(worst) ? fault.outcome : worst),
    'exact',
  );
  return { outcome, faults: faults.map((fault) => fault.says) };
}

/** Entries stand in the order told; those of one kind are paired so that the fewest are left over. */
function entryFaults(gold: Gold, note: CorpusNote, answer: Answer): Fault[] {
  const faults: Fault[] = [];
  const pairs = pairByKind(gold.entries, answer.entries);
  const paired = new Set(pairs.map(([, got]) => got));
  const met = new Set(pairs.map(([want]) => want));
  for (const [want, got] of pairs) {
    const wanted = gold.entries[want];
    const given = answer.entries[got];
    if (wanted && given) faults.push(...slotFaults(wanted, given, note, asked(answer, got)));
  }
  gold.entries.forEach((entry, index) => {
    if (!met.has(index)) faults.push({ outcome: 'missed', says: `no ${entry.kind}` });
  });
  answer.entries.forEach((entry, index) => {
    if (paired.has(index)) return;
    // An entry that waits for an answer is not logged yet.
    const outcome = asked(answer, index).size > 0 ? 'needless' : 'wrong';
    faults.push({ outcome, says: `a ${entry.kind} too many` });
  });
  return faults;
}

function asked(answer: Answer, entry: number): Set<string> {
  return new Set(answer.asks.filter((ask) => ask.entry === entry).map((ask) => ask.slot));
}

/** Longest common run of kinds, in order. */
function pairByKind(wanted: readonly GoldEntry[], got: readonly AnsweredEntry[]): [number, number][] {
  const best: [number, number][][][] = Array.from({ length: wanted.length + 1 }, () =>
    Array.from({ length: got.length + 1 }, () => []),
  );
  for (let i = wanted.length - 1; i >= 0; i -= 1)
    for (let j = got.length - 1; j >= 0; j -= 1) {
      const skip = longer(best[i + 1]?.[j] ?? [], best[i]?.[j + 1] ?? []);
      const take: [number, number][] =
        wanted[i]?.kind === got[j]?.kind ? [[i, j], ...(best[i + 1]?.[j + 1] ?? [])] : [];
      (best[i] as [number, number][][])[j] = longer(take, skip);
    }
  return best[0]?.[0] ?? [];
}

function longer<T>(a: T[], b: T[]): T[] {
  return a.length >= b.length ? a : b;
}

function slotFaults(
  gold: GoldEntry,
  got: AnsweredEntry,
  note: CorpusNote,
  asks: ReadonlySet<string>,
): Fault[] {
  const faults: Fault[] = [];
  for (const slot of new Set([...Object.keys(gold), ...Object.keys(got)])) {
    const value = got[slot];
    if (slot === 'kind' || slotFits(slot, value, gold, note)) continue;
    if (value === undefined && asks.has(slot)) continue; // judged as an ask
    const outcome = value === undefined ? 'missed' : 'wrong';
    const wanted = wantedValues(gold[slot])
      .map((v) => JSON.stringify(v))
      .join(' or ');
    faults.push({
      outcome,
      says: `${got.kind}.${slot} is ${JSON.stringify(value) ?? 'absent'}, not ${wanted}`,
    });
  }
  if (lacksPlant(gold, got) && !asks.has('batch') && !asks.has('variety'))
    faults.push({ outcome: 'missed', says: `${got.kind} has no plant` });
  return faults;
}

/** A gold reached through a pronoun leaves open how the plant is named, not whether. */
function lacksPlant(gold: GoldEntry, got: AnsweredEntry): boolean {
  if (['amend', 'answer', 'remind', 'question', 'tend', 'remark'].includes(gold.kind)) return false;
  if ('fromPlace' in gold) return false;
  const slots = ['variety', 'crop', 'batch'];
  return slots.some((slot) => gold[slot] !== undefined) && slots.every((slot) => got[slot] === undefined);
}

function askFaults(gold: Gold, answer: Answer): Fault[] {
  const faults: Fault[] = [];
  for (const slot of gold.mustAsk) {
    if (!answer.asks.some((ask) => ask.slot === slot))
      faults.push({ outcome: 'missed', says: `does not ask for ${slot}` });
  }
  for (const { entry, slot } of answer.asks) {
    const allowed =
      gold.mustAsk.includes(slot) || gold.mayAsk?.some((may) => may.entry === entry && may.slot === slot);
    if (!allowed) faults.push({ outcome: 'needless', says: `asks for ${slot}` });
  }
  return faults;
}
