/** "Into 9cm", "two pots of four, in the propagator": what the grower's last note left unsaid, said behind it. */
import type { LoggedEntry } from '../../ledger/entry.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import { actWords } from '../reading/act-words.js';
import { setSlotsOfEach } from '../correcting/amending.js';
import { ofLastNote } from './last-note.js';
import { postEntry } from '../noting.js';
import { readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';

/** So long a note may still be added to. */
const OPEN_MS = 15 * 60_000;
/** So long, where the words say that it comes late. */
const LATE_MS = 3 * 24 * 3_600_000;
/** No bench holds so many, so that a number in what is added shows itself. */
const NUMBER = 7_000;
const KINDS: ReadonlySet<string | undefined> = new Set(['strike', 'potOn', 'plantOut', 'dispatch']);
const ADDED = ['pots', 'potSize', 'medium', 'hormone', 'place', 'cutting', 'to'] as const;

const LATE =
  /^(?:and |oh |sorry |ps )*(?:(?:i )?(?:forgot|meant) to (?:say|add|mention|put)|(?:i )?should have (?:said|added)|didn['’]t say)(?: that)?\b[ ,:–-]*/i;
/** "They are in a jam jar on the windowsill", "all in the propagator". */
const THEY_ARE =
  /^(?:(?:and|oh|also) )*(?:they|they['’]re|these|those|it|it['’]s|all|both|each)(?: are| is| were| went)?(?: all| both| now| just)? (?=(?:in|into|on|at|under|by|with|to|up|down|round|behind|beside|near|outside) |(?:tips?|nodal|internodal|heel|basal)\b)/i;

/** Whether the words are a slot or two that the last note lacks, and they are set; "all in the propagator" sets those of several plants. */
export function addsToLast(sitting: Sitting, text: string): boolean {
  const told = text.trim().replace(/(?<![.!])[.!]+$/, '');
  const now = told.replace(LATE, '');
  const words = now.replace(THEY_ARE, '');
  const isUpOrDown = words !== now && /^(?:up|down|round|behind|beside|near|outside) /i.test(words);
  if (
    (!isUpOrDown &&
      !/^(?:and |oh and |oh |also )?(?:in|into|to|with|on|at|for|all in|one|two|three|four|five|six|\d{1,2}|tips?|nodal|internodal|heel|basal)(?: |$)/i.test(
        words,
      )) ||
    words.length > 60
  )
    return false;
  const entries = ofLastNote(sitting, now === told ? OPEN_MS : LATE_MS);
  const [first, another] = entries;
  if (!first || (another && words === now)) return false;
  if (!entries.every(({ entry }) => entry.kind === first.entry.kind) || !KINDS.has(first.entry.kind))
    return false;
  const added = words.replace(/^(?:and|oh and|oh|also) /i, '');
  if (slotsTold(sitting, first, added, NUMBER) === null) return false;
  const sets = entries.flatMap((each) => {
    const { count } = each.entry as { count?: unknown };
    const set = slotsTold(sitting, each, added, typeof count === 'number' ? count : NUMBER);
    return set && Object.keys(set).length > 0 ? [[each, set] as const] : [];
  });
  if (sets.length === 0) return words !== now && movesToo(sitting, first, added);
  setSlotsOfEach(sitting, sets);
  if (!('place' in first.entry)) movesToo(sitting, first, added);
  return true;
}

/** What the words say of an act on so many that the entry does not say; null where they are not said of it. */
export function slotsTold(
  sitting: Sitting,
  { entry }: { readonly entry: StandingEntry['entry'] | LoggedEntry },
  words: string,
  number: number,
): Record<string, unknown> | null {
  const act = `${actWords[entry.kind as LoggedEntry['kind']]} ${number} dahlia`;
  const [told, more] = readIn(sitting, `${act}, ${words}`).entries;
  if (!told || more || told.entry.kind !== entry.kind) return null;
  const says = told.entry as unknown as Record<string, unknown>;
  if (says.count !== number || says.date !== undefined) return null;
  return Object.fromEntries(
    ADDED.filter((slot) => slot in says && !(slot in entry)).map((slot) => [slot, says[slot]]),
  );
}

/** "They're in 9s in the cold frame", of plants potted on: where they went is a move. */
function movesToo(sitting: Sitting, { entry, touched }: StandingEntry, words: string): boolean {
  const [label, another] = touched;
  if (entry.kind !== 'potOn' || label === undefined || another !== undefined) return false;
  const [told] = readIn(sitting, `took ${NUMBER} dahlia, ${words}`).entries;
  const place = told?.entry.kind === 'strike' ? told.entry.place : undefined;
  return place !== undefined && postEntry(sitting, { kind: 'move', batch: label, place }).length > 0;
}
