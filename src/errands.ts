/** What a grower asks for that lies outside the ledger: an invitation, pictures, labels, the ledger as a file. */
import { addDays } from './calendar/day.js';
import { type Admission, spacedCode } from './conversation/settings/admission.js';
import { type Viewpoint, viewFrom } from './conversation/prompts/looking-ahead.js';
import type { Incoming, Outgoing } from './conversation/turn.js';
import type { Errand, World } from './conversation/world.js';
import { ledgerCsv } from './exchange/ledger-csv.js';
import { ledgerJson } from './exchange/ledger-json.js';
import { year as yearOf } from './calendar/day.js';
import { type Batch } from './ledger/batch.js';
import type { Erased } from './ledger/erasure.js';
import { matching } from './ledger/ledger.js';
import { calendarPaper } from './papers/calendar-paper.js';
import { batchesSince, labelPaper } from './papers/label-paper.js';
import type { Paper } from './papers/paper.js';
import { reviewPaper } from './papers/review-paper.js';
import { rootingPaper } from './papers/rooting-paper.js';
import { seasonPaper } from './papers/season-paper.js';
import { doorWords } from './words/door-words.js';
import { erasedWords } from './words/erase.js';
import { errandWords } from './words/errand-words.js';
import { labelsNothing, missingLettersWords, noSuchBatch, nothingToDraw } from './words/paper-words.js';

export interface ErrandPorts {
  readonly admission: Admission;
  readonly worldOf: (incoming: Incoming) => World;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Erases a grower for good, copies and all. */
  readonly erase: (grower: string) => Erased;
  /** Erases a group's ledger likewise. */
  readonly eraseShared: (ledger: number) => Erased;
  /** Name of the Telegram bot, once it is known. */
  readonly bot?: () => string | undefined;
}

type Brought = Omit<Outgoing, 'chat' | 'key'>;

/** Labels that are asked for without a name are for batches that began so lately. */
const NEW_DAYS = 14;

/** Runs an errand after its turn was committed, and answers what is said to it. */
export async function runErrand(errand: Errand, incoming: Incoming, ports: ErrandPorts): Promise<Brought> {
  const world = ports.worldOf(incoming);
  const view = viewFrom(world, ports.now());
  switch (errand.kind) {
    case 'invite':
      return {
        text: doorWords.invitation(spacedCode(ports.admission.invite(incoming.from.id, ports.now()))),
      };
    case 'export':
      return exported(errand.format, world, view, ports.now());
    case 'picture':
      return pictured(errand, view);
    case 'erase':
      return {
        text: erasedWords(
          world.group ? ports.eraseShared(world.current.id) : ports.erase(incoming.from.id),
          world.group,
        ),
      };
    case 'labels':
      return labelled(errand, view, ports.bot?.());
    default:
      return { text: errandWords.fromCommandLine };
  }
}

function exported(format: 'csv' | 'ics' | 'json', world: World, view: Viewpoint, now: number): Brought {
  if (format === 'ics') return broughtBy(calendarPaper(view, world.current.name, now));
  const text =
    format === 'csv'
      ? ledgerCsv(world.ledger)
      : ledgerJson(
          { name: world.current.name, settings: { ...world.settings }, journal: world.journal },
          now,
        );
  return {
    text: errandWords.exported(world.journal.length),
    file: { name: `ledger.${format}`, kind: 'document', bytes: Buffer.from(text) },
  };
}

async function pictured(
  { of, plant, year }: Extract<Errand, { kind: 'picture' }>,
  view: Viewpoint,
): Promise<Brought> {
  if (view.ledger.batches.size === 0) return { text: nothingToDraw };
  if (of === 'season') return broughtBy(await seasonPaper(view));
  if (of === 'review') return broughtBy(await reviewPaper(view, year ?? yearOf(view.today)));
  const batch = plant === undefined ? undefined : newest(matching(view.ledger, plant));
  const paper = batch === undefined ? null : await rootingPaper(view, batch);
  return paper === null ? { text: noSuchBatch } : broughtBy(paper);
}

async function labelled(
  { plant, blank }: Extract<Errand, { kind: 'labels' }>,
  view: Viewpoint,
  bot: string | undefined,
): Promise<Brought> {
  const batches =
    plant === undefined ? batchesSince(view, addDays(view.today, -NEW_DAYS)) : matching(view.ledger, plant);
  if (batches.length === 0 && blank === undefined) return { text: labelsNothing };
  const made = await labelPaper(view, {
    batches,
    sheet: view.settings.units === 'us' ? 'Letter' : 'A4',
    size: '63.5x38.1',
    ...(blank === undefined ? {} : { blank }),
    ...(bot === undefined ? {} : { bot }),
  });
  return 'missing' in made ? { text: missingLettersWords(made.missing) } : broughtBy(made);
}

function newest(batches: readonly Batch[]): Batch | undefined {
  return batches.at(-1);
}

function broughtBy({ name, kind, bytes, caption }: Paper): Brought {
  return { text: caption, file: { name, kind, bytes } };
}
