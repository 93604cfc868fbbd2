/** A lot that was told without a name which the reader knew for one, and that gets it when the grower uses it. */
import type { ReadNote } from '../../language/note.js';
import { read } from '../../language/read.js';
import { type Batch, isLive } from '../../ledger/batch.js';
import type { Plant } from '../../ledger/entry.js';
import { type Ledger, matching, type StandingEntry } from '../../ledger/ledger.js';
import { named as namedIn } from '../../ledger/reach.js';
import { lotCalled } from '../../words/answers.js';
import { amendmentsOf } from '../correcting/amending.js';
import { noteOf } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import type { Heard } from '../talk.js';

/**
 * "All the Neon Gravy have roots", of a lot noted as "5 coleus, stripy, Neon Gravy": the only one without a name whose
 * own note holds these words has it from now on. Answers whether one was named.
 */
export function namesLots(sitting: Sitting, { entries }: ReadNote): boolean {
  let named = false;
  for (const { entry } of entries) {
    const { variety } = entry as Plant;
    if (variety === undefined || BEGINS.has(entry.kind)) continue;
    if (matching(sitting.ledger, { variety }).length > 0) continue;
    const [lot, another] = lotsToldWith(sitting.ledger, sitting.talk.heard, variety);
    if (lot && !another) named = nameLot(sitting, lot, variety) || named;
  }
  return named;
}

/** What is said of a plant that is there, and so tells that a name is a plant's: "Aunt Joan" may be anyone in a gift. */
const OF_PLANTS: ReadonlySet<string> = new Set(['amend', 'question', 'move']);
/** A place or a person follows. */
const LEADS_AWAY = /^(?:at|for|from|to|in|with|by|near|beside|behind|on|and|under)$/i;

/**
 * "The Neon Gravy was Friday", "split the neon gravy into 2 and 3": where nothing that is named was read, and the text
 * would tell of such a plant if the lot's own note had named it so. Answers whether the lot was named.
 */
export function namesLotTold(sitting: Sitting, text: string, { entries, instruction }: ReadNote): boolean {
  if (instruction || entries.some(({ entry }) => namedIn(entry as Plant))) return false;
  const { ledger, talk } = sitting;
  const words = inWords(text);
  const found = [...ledger.batches.values()].flatMap((lot) => {
    if (lot.variety !== null || !isLive(lot)) return [];
    const message = beginningOf(ledger, lot)?.journal.source?.message;
    const told = talk.heard.find((each) => each.message === message)?.text ?? '';
    return namesIn(told).flatMap((name) => {
      const isPlace = [...ledger.places].some((place) => place.toLowerCase() === name.toLowerCase());
      return isPlace || !words.includes(inWords(name)) ? [] : [{ lot, name }];
    });
  });
  const [only, another] = found;
  if (!only || another || !tellsOf(sitting, text, only.lot, only.name)) return false;
  return nameLot(sitting, only.lot, only.name);
}

/** Two to four words with capitals that stand together, where no word before them leads to a place or a person. */
function namesIn(text: string): string[] {
  const names: string[] = [];
  let run: string[] = [];
  let before = '';
  for (const word of [...text.split(/\s+/), '']) {
    const bare = word.replace(/[,.;:!?]$/, '');
    const isName = /^\p{Lu}[\p{L}’']+$/u.test(bare);
    if (isName) run.push(bare);
    if (isName && bare === word) continue;
    if (run.length > 1 && run.length < 5 && !LEADS_AWAY.test(before)) names.push(run.join(' '));
    run = [];
    before = bare;
  }
  return names;
}

/** Whether the text would be read as of that plant, were the lot called so. */
function tellsOf(sitting: Sitting, text: string, lot: Batch, variety: string): boolean {
  const note = noteOf(sitting, text);
  const { varieties = [], batches = [], ...context } = note.context ?? {};
  const { entries, instruction } = read({
    ...note,
    byRules: true,
    context: {
      ...context,
      varieties: [...varieties, { name: variety, ...(lot.crop === null ? {} : { crop: lot.crop }) }],
      batches: batches.map((each) => (each.label === lot.label ? { ...each, variety } : each)),
    },
  });
  if (instruction) {
    const plants =
      instruction.kind === 'split'
        ? [instruction.plant]
        : instruction.kind === 'merge'
          ? instruction.plants
          : [];
    return plants.some((plant) => plant.variety === variety);
  }
  return entries.some(({ entry }) => OF_PLANTS.has(entry.kind) && (entry as Plant).variety === variety);
}

/** What may be told of plants that are not there yet. */
const BEGINS: ReadonlySet<string> = new Set(['receive', 'stock', 'target']);

/** Gives a lot its name, in the note that it began with; answers false where it has one already. */
export function nameLot(sitting: Sitting, lot: Batch, variety: string): boolean {
  const begun = lot.variety === null ? beginningOf(sitting.ledger, lot) : undefined;
  if (!begun || sitting.amend(amendmentsOf(sitting.ledger, [begun], { variety })).length > 0) return false;
  sitting.reply.text.push(lotCalled(lot.label, variety));
  return true;
}

/** Live lots without a name whose note holds the words. */
export function lotsToldWith(ledger: Ledger, heard: readonly Heard[], name: string): Batch[] {
  const wanted = inWords(name);
  return [...ledger.batches.values()].filter((batch) => {
    if (batch.variety !== null || !isLive(batch)) return false;
    const source = beginningOf(ledger, batch)?.journal.source;
    return heard.some(({ message, text }) => message === source?.message && inWords(text).includes(wanted));
  });
}

const beginningOf = (ledger: Ledger, { label }: Batch): StandingEntry | undefined =>
  ledger.standing.find(
    ({ entry }) => (entry.kind === 'strike' || entry.kind === 'receive') && entry.label === label,
  );

const inWords = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `;
