/** Plant labels for batches, or blanks, as a PDF to print. */
import type { Day } from '../calendar/day.js';
import type { Viewpoint } from '../conversation/prompts/looking-ahead.js';
import { alive, type Batch } from '../ledger/batch.js';
import { liveBatches } from '../ledger/ledger.js';
import { labelSizes, type LabelSizeName, type Paper as Sheet } from '../pictures/label-layout.js';
import { labelSheet, type MissingLetters, type PlantLabel } from '../pictures/label-sheet.js';
import { typefaces } from '../pictures/typeface.js';
import { labelCaption, labelDetail } from '../words/paper-words.js';
import type { Paper } from './paper.js';

export interface LabelWish {
  /** Nothing named: every batch that lives and began within `NEW_DAYS`. */
  readonly batches: readonly Batch[];
  /** So many blanks instead of batches. */
  readonly blank?: number;
  readonly sheet: Sheet;
  readonly size: LabelSizeName;
  /** Folder of fonts of the user's own, for scripts that the shipped ones lack. */
  readonly fontFolder?: string;
  /** Name of the Telegram bot, whose link the square code then carries. */
  readonly bot?: string;
  readonly progress?: (done: number, of: number) => void;
}

const BLANKS_AT_MOST = 500;

export async function labelPaper(view: Viewpoint, wish: LabelWish): Promise<Paper | MissingLetters> {
  const labels =
    wish.blank === undefined
      ? wish.batches.map((batch) => labelOf(view, batch, wish.bot))
      : blanks(wish.blank);
  const bytes = await labelSheet(labels, {
    paper: wish.sheet,
    size: labelSizes[wish.size],
    faces: typefaces(wish.fontFolder),
    ...(wish.progress ? { progress: wish.progress } : {}),
  });
  if ('missing' in bytes) return bytes;
  return {
    name: 'labels.pdf',
    kind: 'document',
    bytes,
    caption: labelCaption(labels.length, wish.sheet, wish.blank !== undefined),
  };
}

/** Batches that live and have begun since a day: those that are likely to want a label. */
export function batchesSince(view: Viewpoint, since: Day): Batch[] {
  return liveBatches(view.ledger).filter((batch) => (batch.struck ?? batch.received ?? since) >= since);
}

function labelOf({ settings, today }: Viewpoint, batch: Batch, bot: string | undefined): PlantLabel {
  const name = batch.variety ?? batch.crop ?? '';
  return {
    label: batch.label,
    name,
    detail: labelDetail(batch, alive(batch), { wording: settings.wording, units: settings.units, today }),
    code: bot === undefined ? `${batch.label} ${name}` : `https://t.me/${bot}?start=b_${batch.label}`,
  };
}

function blanks(count: number): 'blank'[] {
  return Array.from({ length: Math.max(1, Math.min(count, BLANKS_AT_MOST)) }, () => 'blank' as const);
}
