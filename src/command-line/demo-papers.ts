/** What the demo season yields beside the talk; each is made from the ledger at its end. */
import type { Instant } from '../calendar/clock.js';
import { year } from '../calendar/day.js';
import { viewFrom } from '../conversation/prompts/looking-ahead.js';
import type { World } from '../conversation/world.js';
import { ledgerCsv } from '../exchange/ledger-csv.js';
import { ledgerJson } from '../exchange/ledger-json.js';
import { calendarPaper } from '../papers/calendar-paper.js';
import { fold } from '../ledger/fold.js';
import { labelPaper } from '../papers/label-paper.js';
import { reviewPaper } from '../papers/review-paper.js';
import { rootingPaper } from '../papers/rooting-paper.js';
import { seasonPaper } from '../papers/season-paper.js';

export interface Paper {
  /** File name. */
  readonly name: string;
  readonly make: (world: World) => Promise<string | Uint8Array>;
}

const endOf = ({ journal }: World) => journal.at(-1)?.postedAt ?? 0;
const seen = (world: World) => viewFrom(world, endOf(world));
/** Into the season, for the picture with most to see. */
const WEEKS_IN = 9;

/** The world as it stood then. */
function asOf(world: World, at: Instant): World {
  const journal = world.journal.filter(({ postedAt }) => postedAt <= at);
  return { ...world, journal, ledger: fold(journal).ledger };
}

/** In the midst of the season, some weeks after the first strike, when there is most to see. */
function midSeason(world: World): ReturnType<typeof viewFrom> {
  const first = world.journal.find(({ what }) => 'kind' in what && what.kind === 'strike')?.postedAt ?? 0;
  const at = first + WEEKS_IN * 7 * 86_400_000;
  return viewFrom(asOf(world, at), at);
}

const batchesOf = (world: World) => [...world.ledger.batches.values()];

export const demoPapers: readonly Paper[] = [
  { name: 'season.png', make: async (world) => (await seasonPaper(midSeason(world))).bytes },
  {
    name: 'rooting.png',
    make: async (world) => {
      const batch = batchesOf(world).find(({ struck }) => struck !== null);
      return (batch && (await rootingPaper(seen(world), batch))?.bytes) ?? '';
    },
  },
  {
    name: 'review.png',
    make: async (world) => (await reviewPaper(seen(world), year(midSeason(world).today))).bytes,
  },
  {
    name: 'labels.pdf',
    make: async (world) => {
      const sheet = await labelPaper(seen(world), {
        batches: batchesOf(world),
        sheet: 'A4',
        size: '63.5x38.1',
      });
      return 'missing' in sheet ? '' : sheet.bytes;
    },
  },
  {
    name: 'due.ics',
    make: async (world) => calendarPaper(seen(world), world.current.name, endOf(world)).bytes,
  },
  { name: 'ledger.csv', make: async ({ ledger }) => ledgerCsv(ledger) },
  {
    name: 'ledger.json',
    make: async (world) =>
      ledgerJson(
        { name: world.current.name, settings: { ...world.settings }, journal: world.journal },
        endOf(world),
      ),
  },
];
