/** The day of an entry, where a phrase of time tells when it was done or is due. */
import { daysBetween } from '../../calendar/day.js';
import { firstDay } from '../../calendar/span.js';
import type { When } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { ask, type OpenEntry, say } from './open-entry.js';

/** Fills in the day, or asks for it. */
export function tellDate({ kind, draft, future, slots, rule }: Proposal, entry: OpenEntry): void {
  const { when } = draft;
  if (!when) {
    if (kind === 'remind') ask(entry, 'date');
    return;
  }
  // Of what is only seen no day is asked about.
  if (kind === 'remark' && (when.past === 'ask' || isLong(when))) return;
  const begins =
    kind === 'hardenOff' ||
    (kind === 'move' && slots['fromPlace'] !== undefined) ||
    (/^(?:move|plantOut|potOn)$/.test(kind) && TELLS_STATE.test(rule));
  const isSince = begins && /^since/i.test(when.words);
  // "Since March" tells how long and "by June" when it is wanted, not when it was done.
  // "What I put down for Monday": the day of an entry that is to be put right.
  const isEntrys = kind === 'amend' && /^for\b/i.test(when.words);
  if (!future && !isSince && !isEntrys && /^(?:since|for|after|by)\b/i.test(when.words)) return;
  const date = future ? when.future : when.past;
  if (date === 'ask') ask(entry, 'date');
  // Hardening off since Monday began on Monday, and what was in the porch is on the sill since then.
  else say(entry, 'date', isSince && date !== undefined ? firstDay(date) : date);
}

/** Rules for plants told by where they are: "<plant> in the ground". */
const TELLS_STATE = /^<plant> (?:are |now |live |went )?in /;

/** A remark on how things are this year is dated to the day. */
const isLong = ({ past }: When): boolean =>
  past !== undefined && typeof past !== 'string' && daysBetween(past.from, past.to) > 45;
