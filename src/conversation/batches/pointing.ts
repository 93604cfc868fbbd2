/** Which of several batches a note points at without naming it: the one that was just spoken of, or all of them. */
import { SMALL } from '../../language/pieces/number-names.js';
import { alive, type Batch, placeOf } from '../../ledger/batch.js';
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import { type Ledger, batchLabelled } from '../../ledger/ledger.js';
import { named } from '../../ledger/reach.js';
import { meansEverything } from './means-everything.js';
import { askedJustBefore } from '../answers/asked-before.js';
import type { Sitting } from '../sitting.js';
import { batchToldByPlace } from './told-by-place.js';

/** So long "them" may mean what was last told of. */
export const SPOKEN_OF_MS = 3_600_000;
/** What is carried may come back the same day. */
const CARRIED_MS = 24 * 3_600_000;

/** "Them", "the seven", "the rest". */
const THEM =
  /\b(?:them|these|those|they|the (?:rest|others?|remaining|\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|dozen))\b/i;

const THOSE = new RegExp(`\\b(?:the|those|these) (\\d+|${SMALL.slice(2).join('|')})\\b`, 'i');

/** "Two of the eight", and no "two of the three pots". */
const OF_THE =
  /\bof (?:the|those) [\p{L}\d]+(?=$|[,.;:!]| (?:have|has|are|were|is|was|to|into|in|on|and|but|died|rotted|rooted)\b)/iu;

/** "Another gone", "two more dead", behind the same of a batch. */
const ONE_MORE = /\b(?:another|more)\b/i;
/** Within so long it is one trouble. */
const ONE_MORE_MS = 3 * 24 * 3_600_000;

/** Null where the words point at none of them; the words alone do not say it. */
export function batchPointedAt(
  sitting: Sitting,
  entry: LoggedEntry,
  labels: readonly string[],
): Batch | null {
  const came =
    ofTheGrower(sitting, labels) ??
    cameOrCut(sitting, labels) ??
    theOther(sitting, entry, labels) ??
    fromWhere(sitting, entry, labels);
  if (came) return came;
  if (named(entry as Plant)) return null;
  const asked = askedJustBefore(sitting);
  if (asked && labels.includes(asked.label)) return asked;
  const there = 'place' in entry ? null : batchToldByPlace(sitting);
  if (there && labels.includes(there.label)) return there;
  const told = thoseTold(sitting, labels);
  if (told) return told;
  const oneMore = ONE_MORE.test(sitting.text) && sitting.ledger.standing.at(-1)?.entry.kind === entry.kind;
  if (!oneMore && !THEM.test(sitting.text)) return null;
  const spoken = lastSpokenOf(sitting, oneMore ? ONE_MORE_MS : SPOKEN_OF_MS);
  return spoken !== null && labels.includes(spoken) ? (batchLabelled(sitting.ledger, spoken) ?? null) : null;
}

/** "Those seven", "the seven": of the one batch that seven were lately told of. */
function thoseTold({ ledger, origin, text }: Sitting, labels: readonly string[]): Batch | null {
  const [, number = ''] = THOSE.exec(text) ?? [];
  if (number === '') return null;
  const small = SMALL.indexOf(number.toLowerCase());
  const many = small < 0 ? Number(number) : small;
  const told = ledger.standing.filter(({ entry, journal }) => {
    const { count, rooted } = entry as { readonly count?: unknown; readonly rooted?: unknown };
    return origin.at - journal.at <= CARRIED_MS && (rooted ?? count) === many;
  });
  const lots = labels.flatMap((label) => batchLabelled(ledger, label) ?? []);
  // "Two of the eight", where one lot holds eight and no eight of another have come on.
  const fits = lots.filter((lot) => [alive(lot), lot.rooted, lot.pottedOn, lot.plantedOut].includes(many));
  if (told.length === 0 && fits.length === 1 && lots.length > 1 && OF_THE.test(text)) return fits[0] ?? null;
  const [only, another] = new Set(told.flatMap(({ touched }) => touched));
  return only !== undefined && another === undefined && labels.includes(only)
    ? (batchLabelled(ledger, only) ?? null)
    : null;
}

/** So long may "the other one" mean what is left of what was told of. */
export const OTHER_MS = 14 * 24 * 3_600_000;

/** "The other one has died too", of two: what is left of the batch that was spoken of; "the other lot": its fellow. */
function theOther(sitting: Sitting, entry: LoggedEntry, labels: readonly string[]): Batch | null {
  const said = /\bthe other(?: (one|lot|batch|pot|tray))?\b/i.exec(sitting.text);
  if (!said || named(entry as Plant)) return null;
  const { ledger } = sitting;
  const spoken = ledger.batches.get(lastSpokenOf(sitting, OTHER_MS) ?? '');
  if (!spoken) return null;
  if (/^(?:lot|batch)$/i.test(said[1] ?? '')) {
    const [only, another] = labels.filter(
      (label) => label !== spoken.label && batchLabelled(ledger, label)?.variety === spoken.variety,
    );
    return only === undefined || another !== undefined ? null : (batchLabelled(ledger, only) ?? null);
  }
  return alive(spoken) === 1 && spoken.count > 1 && labels.includes(spoken.label) ? spoken : null;
}

/** "Sold 4 from the greenhouse", "lost 2 in the porch": the only one on offer that stands there. */
function fromWhere(
  { ledger, text }: Sitting,
  { kind }: LoggedEntry,
  labels: readonly string[],
): Batch | null {
  const words = ` ${text.toLowerCase().replace(/[^\p{L}\d'’]+/gu, ' ')} `;
  const leads = [
    'from',
    'out of',
    'off',
    'fae',
    'frae',
    ...(kind === 'loss' || kind === 'check' ? ['in', 'on'] : []),
  ];
  const [only, another] = labels
    .flatMap((label) => batchLabelled(ledger, label) ?? [])
    .filter((batch) => {
      const place = placeOf(batch)?.toLowerCase();
      return (
        place !== undefined &&
        leads.some((lead) => ['the ', 'my ', ''].some((the) => words.includes(` ${lead} ${the}${place} `)))
      );
    });
  return only && !another && labels.length > 1 ? only : null;
}

const MINE =
  /\b(?:mine|(?:my|me) (?:lot|batch|ones|own|\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve))\b/i;

/** Whether a text says so of one's own. */
export const saysMine = (text: string): boolean => MINE.test(text);

/** "Two of my Bells": "my" before a word of the plant's name. */
function isMyPlant(text: string, labels: readonly string[], ledger: Ledger): boolean {
  const [, said = ''] = /\bmy (?:own |old |little |poor )?([\p{L}’']+)/iu.exec(text) ?? [];
  const word = said.toLowerCase().replace(/s$/, '');
  return (
    word.length > 2 &&
    labels.some((label) =>
      (batchLabelled(ledger, label)?.variety ?? '')
        .toLowerCase()
        .split(' ')
        .some((each) => each.replace(/s$/, '') === word),
    )
  );
}

/** "Pinched mine out", where several write in one ledger: the only batch that the one who speaks took, of those on offer. */
function ofTheGrower({ ledger, origin, text }: Sitting, labels: readonly string[]): Batch | null {
  if (origin.by === null || !(MINE.test(text) || isMyPlant(text, labels, ledger))) return null;
  const takenBy = (label: string): string | null | undefined =>
    ledger.standing.find(
      ({ entry, touched }) => /^(?:strike|receive)$/.test(entry.kind) && touched.includes(label),
    )?.by;
  const [only, another] = labels.filter((label) => takenBy(label) === origin.by);
  return only === undefined || another !== undefined ? null : (batchLabelled(ledger, only) ?? null);
}

const CAME =
  /\b(?:plugs?|plug plants?|liners?|young plants|bought(?:[- ]in)?(?: ones| lot| plants)?|shop(?:[- ]bought)?|ones (?:i|we) (?:bought|got))\b/i;
const CUT =
  /\b(?:cuttings?|slips|(?:my|our) own(?! (?:pot|fault|way))|home[- ]grown|(?:i|we) (?:took|struck)(?: myself| ourselves)?)\b/i;
const DENIED =
  /\b(?:not|none of|no) (?:(?:the|my|any of|those|\p{L}+['’]s) ){0,2}(?:bought[- ]in |shop[- ]bought |bought )?(?:plugs?|plug plants?|liners?|young plants|ones|cuttings?|slips)\b/iu;

/** "Two of the Copperplate plugs", "the cuttings": the only batch that came in, or was cut, of those on offer. */
export function cameOrCut({ ledger, text }: Sitting, labels: readonly string[]): Batch | null {
  // "Two, not the plugs": those that are not denied.
  const [denied = ''] = DENIED.exec(text) ?? [];
  const said = text.replace(DENIED, ' ');
  const came = CAME.test(said) || (CUT.test(denied) && !CUT.test(said));
  const cut = CUT.test(said) || (CAME.test(denied) && !CAME.test(said));
  if (came === cut) return null;
  const fitting = labels
    .flatMap((label) => batchLabelled(ledger, label) ?? [])
    .filter(({ struck }) => (struck === null) === came);
  const [only, another] = fitting;
  return only && !another && labels.length > 1 ? only : null;
}

/** "Stuck them in water on the sill": what goes elsewhere without a name is what was last told of, not all that lives. */
export function movedAsSpoken(sitting: Sitting, entry: LoggedEntry): LoggedEntry {
  if (entry.kind !== 'move' && entry.kind !== 'hardenOff') return entry;
  if (named(entry as Plant) || ('fromPlace' in entry && entry.fromPlace !== undefined)) return entry;
  if (!THEM.test(sitting.text) || meansEverything(sitting.text, 0)) return entry;
  const spoken = lastSpokenOf(sitting, CARRIED_MS);
  return spoken === null ? entry : { ...entry, batch: spoken };
}

/** What "them" means where a note told of another batch since that one was asked about; else null. */
export function spokenOfSince(sitting: Sitting, asked: string): string | null {
  if (!THEM.test(sitting.text)) return null;
  const given = Math.max(
    0,
    ...sitting.talk.prompts.filter(({ about }) => about.batch === asked).map(({ givenAt }) => givenAt),
  );
  const spoken = lastSpokenOf(sitting, Math.min(SPOKEN_OF_MS, sitting.origin.at - given));
  return spoken === asked ? null : spoken;
}

/** The only batch of the chat's last note, where the same grower said that lately. */
function lastSpokenOf(sitting: Sitting, within: number): string | null {
  const [only, another] = spokenOfLast(sitting, within);
  return only === undefined || another !== undefined ? null : only;
}

/** "Three of those", said to another of the group right behind what they told. */
const OF_THOSE = /\bof (?:those|them|these)\b/i;

/** The batches of the chat's last note, where the same grower said that lately. */
export function spokenOfLast({ ledger, origin, text, world }: Sitting, within: number): readonly string[] {
  const last = ledger.standing.at(-1);
  const source = last?.journal.source;
  if (!last || source?.chat !== world.chat) return [];
  if (last.by !== origin.by && !(OF_THOSE.test(text) && origin.at - last.journal.at <= SPOKEN_OF_MS))
    return [];
  if (origin.at - last.journal.at > within) return [];
  const together = ledger.standing.filter(
    ({ journal }) => journal.source?.message === source.message && journal.source.chat === source.chat,
  );
  return [...new Set(together.flatMap((each) => each.touched))];
}
