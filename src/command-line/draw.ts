/** `draw season OUT.png`, `draw labels OUT.pdf` and their kin, from the ledger or from a conversation played through. */
import { writeFileSync } from 'node:fs';
import { addDays, year } from '../calendar/day.js';
import type { Viewpoint } from '../conversation/prompts/looking-ahead.js';
import { batchLabelled, liveBatches } from '../ledger/ledger.js';
import { batchesSince, labelPaper } from '../papers/label-paper.js';
import type { Paper } from '../papers/paper.js';
import { reviewPaper } from '../papers/review-paper.js';
import { rootingPaper } from '../papers/rooting-paper.js';
import { seasonPaper } from '../papers/season-paper.js';
import {
  labelSizes,
  type LabelSizeName,
  type Paper as Sheet,
  paperMillimetres,
} from '../pictures/label-layout.js';
import { labelsNothing, missingLettersWords } from '../words/paper-words.js';
import type { CommandStreams } from './commands.js';
import { ledgerView, replayedView } from './papers-at-hand.js';
import { argumentsOf, CommandFault, plainly, UsageFault } from './usage.js';

const usage =
  'npm run -s draw -- season|review|rooting|labels OUT [--replay FILE] [--batch LABEL,…] [--year YEAR] [--all] [--blank N] [--paper A4|Letter] [--size MM] [--fonts FOLDER] [--bot NAME]';

const options = {
  replay: { type: 'string' },
  batch: { type: 'string' },
  year: { type: 'string' },
  all: { type: 'boolean' },
  blank: { type: 'string' },
  paper: { type: 'string', default: 'A4' },
  size: { type: 'string', default: '63.5x38.1' },
  fonts: { type: 'string' },
  bot: { type: 'string' },
} as const;

const NEW_DAYS = 14;

export const draw = plainly(async (args, streams) => {
  const { positionals, values } = argumentsOf(args, options, usage);
  const [what, out] = positionals;
  if (what === undefined || out === undefined)
    throw new UsageFault(`Say what to draw, and into which file. Usage: ${usage}`);
  const { view } = values.replay === undefined ? await ledgerView() : replayedView(values.replay);
  const paper = await drawn(what, view, values, streams);
  writeFileSync(out, paper.bytes);
  streams.output.write(`${paper.caption}\nWritten to ${out}.\n`);
  return 0;
});

type Values = ReturnType<typeof argumentsOf<typeof options>>['values'];

async function drawn(what: string, view: Viewpoint, values: Values, streams: CommandStreams): Promise<Paper> {
  switch (what) {
    case 'season':
      return seasonPaper(view);
    case 'review':
      return reviewPaper(
        view,
        values.year === undefined ? year(view.today) : wholeNumber('--year', values.year),
      );
    case 'rooting':
      return rooting(view, values.batch);
    case 'labels':
      return labels(view, values, streams);
    default:
      throw new UsageFault(`"${what}" can't be drawn: season, review, rooting or labels. Usage: ${usage}`);
  }
}

async function rooting(view: Viewpoint, label: string | undefined): Promise<Paper> {
  const batch = label === undefined ? liveBatches(view.ledger).at(-1) : batchLabelled(view.ledger, label);
  const paper = batch && (await rootingPaper(view, batch));
  if (!paper)
    throw new CommandFault(`There is no batch of cuttings ${label ?? ''} to draw: name one with --batch.`);
  return paper;
}

async function labels(view: Viewpoint, values: Values, { errors }: CommandStreams): Promise<Paper> {
  const { paper = 'A4', size = '63.5x38.1', fonts, bot } = values;
  if (!isPaper(paper)) throw new UsageFault(`--paper is A4 or Letter, not "${paper}".`);
  if (!isSize(size))
    throw new UsageFault(`--size is one of ${Object.keys(labelSizes).join(', ')}, not "${size}".`);
  const named = values.batch?.split(',').map((label) => {
    const batch = batchLabelled(view.ledger, label.trim());
    if (!batch) throw new CommandFault(`There is no batch ${label.trim()}.`);
    return batch;
  });
  const batches =
    named ?? (values.all ? liveBatches(view.ledger) : batchesSince(view, addDays(view.today, -NEW_DAYS)));
  if (batches.length === 0 && values.blank === undefined) throw new CommandFault(labelsNothing);
  const made = await labelPaper(view, {
    batches,
    sheet: paper,
    size,
    ...(values.blank === undefined ? {} : { blank: wholeNumber('--blank', values.blank) }),
    ...(fonts === undefined ? {} : { fontFolder: fonts }),
    ...(bot === undefined ? {} : { bot }),
    progress: (done, of) => {
      if (of >= 100 && done % 50 === 0) errors.write(`${done} of ${of} labels\n`);
    },
  });
  if ('missing' in made) throw new CommandFault(missingLettersWords(made.missing));
  return made;
}

function wholeNumber(option: string, value: string): number {
  const number = Number(value);
  if (!Number.isInteger(number) || number < 1)
    throw new UsageFault(`${option} is a whole number, not "${value}".`);
  return number;
}

function isPaper(name: string): name is Sheet {
  return name in paperMillimetres;
}

function isSize(name: string): name is LabelSizeName {
  return name in labelSizes;
}
