/** A ledger whole as JSON: every line of its journal, so that reading it back gives the same ledger to the letter. */
import { formatInstant, parseInstant } from '../calendar/zone.js';
import type { Instant } from '../calendar/clock.js';
import type { JournalLine } from '../ledger/posting.js';
import type { LedgerFileFault } from '../words/bringing-in-words.js';

export const jsonFormat = 'slipnote-ledger';
export const jsonVersion = 1;

export interface WholeLedger {
  readonly name: string;
  /** As the ledger's growers set them; carried, not interpreted. */
  readonly settings: Readonly<Record<string, unknown>>;
  readonly journal: readonly JournalLine[];
}

/** The JSON document, of the shape that `shared/ledger.schema.json` gives; moments are UTC with milliseconds. */
export function ledgerJson({ name, settings, journal }: WholeLedger, now: Instant): string {
  const lines = journal.map((line) => ({ ...line, at: moment(line.at), postedAt: moment(line.postedAt) }));
  const document = { format: jsonFormat, version: jsonVersion, exportedAt: formatInstant(now, 'UTC'), name, settings, journal: lines }; // prettier-ignore
  return `${JSON.stringify(document, null, 1)}\n`;
}

/** Reads such a document back; unknown fields are left out, a line that lacks what a line needs is a fault. */
export function readLedgerJson(text: string): WholeLedger | LedgerFileFault {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { fault: 'notJson' };
  }
  if (!isObject(value) || value['format'] !== jsonFormat || !Array.isArray(value['journal']))
    return { fault: 'notALedger' };
  const version = value['version'];
  if (typeof version !== 'number' || version > jsonVersion)
    return { fault: 'newerVersion', version: Number(version) };
  const journal: JournalLine[] = [];
  for (const [index, each] of value['journal'].entries()) {
    const line = isObject(each) ? lineOf(each, index + 1) : null;
    if (line === null) return { fault: 'line', line: index + 1 };
    journal.push(line);
  }
  const { name, settings } = value;
  return {
    name: typeof name === 'string' ? name : '',
    settings: isObject(settings) ? settings : {},
    journal,
  };
}

function lineOf(value: Record<string, unknown>, number: number): JournalLine | null {
  const { line, at, postedAt, by, source, what } = value;
  const [sent, posted] = [parseInstant(String(at)), parseInstant(String(postedAt))];
  if (line !== number || sent === null || posted === null || !isWhat(what)) return null;
  return {
    line: number,
    at: sent,
    postedAt: posted,
    by: typeof by === 'string' ? by : null,
    source: isSource(source) ? { chat: source.chat, message: source.message } : null,
    what,
  };
}

function isWhat(value: unknown): value is JournalLine['what'] {
  if (!isObject(value)) return false;
  if ('amends' in value) return Number.isInteger(value['amends']) && Array.isArray(value['entries']) && value['entries'].every(isPosting); // prettier-ignore
  return isPosting(value);
}

function isPosting(value: unknown): boolean {
  return isObject(value) && typeof value['kind'] === 'string' && value['date'] !== undefined;
}

function isSource(value: unknown): value is { chat: string; message: string } {
  return isObject(value) && typeof value['chat'] === 'string' && typeof value['message'] === 'string';
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function moment(instant: Instant): string {
  return new Date(instant).toISOString();
}
