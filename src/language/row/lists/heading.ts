/** What stands over a list: an act, without what it was done to ("potted on this morning", "losses", "given to Jan"). */
import { verbSense } from '../lexicon.js';
import { takenOfCrop } from './of-crop.js';
import { mark, textAt, type Token } from '../tokens.js';

/** Nouns that name an act by themselves; other headings hold a verb of the past. */
const HEADS =
  /^(?:cuttings|slips|stickings|rooting|roots?|checks?|losses|deaths|casualties|failures|dead|sales|gifts|arrivals|plugs|deliveries|potting|pinching|planting|need|want|wanted|targets?)$/;
/** What such a noun says was done, where the list is of things counted: "losses this week" are what was lost. */
const DONE: ReadonlyMap<string, string> = new Map(
  Object.entries({
    losses: 'lost',
    deaths: 'lost',
    casualties: 'lost',
    failures: 'lost',
    sales: 'sold',
    gifts: 'gave',
    arrivals: 'received',
    deliveries: 'received',
  }),
);
const LONGEST_HEADING = 8;

/** What stands over a list, without its colon: an act of no number ("potted on this morning", "cuttings 3/4"). */
export function headingOf(line: readonly Token[]): readonly Token[] | undefined {
  const last = line.at(-1)?.text ?? '';
  const heading = /^[:-]$/.test(last) ? line.slice(0, -1) : line;
  const tellsAct = ({ text, is }: Token): boolean =>
    is === 'word' && (HEADS.test(text) || verbSense(text)?.form === 'past');
  if (heading.length === 0 || heading.length > LONGEST_HEADING) return undefined;
  if (!heading.some(tellsAct) && !takenOfCrop(heading)) return undefined;
  const isCount = (token: Token, at: number): boolean =>
    token.is === 'number' && textAt(heading, at + 1) !== '/' && textAt(heading, at - 1) !== '/';
  return heading.some(isCount) ? undefined : heading;
}

/** "Losses this week:" as "lost this week:", "cuttings taken today" as "took cuttings today:", "given to Jan:" as "gave Jan". */
export function headedBy(heading: readonly Token[]): readonly Token[] {
  const [first, second, ...rest] = heading;
  const colon = colonBehind(heading);
  const taken = takenOfCrop(heading);
  if (taken) return [...taken, ...colon];
  if (!first || !second) return [...(first ? [asDone(first)] : []), ...colon];
  if (/^(?:gave|given)$/.test(first.text))
    return /^(?:to|away)$/.test(second.text)
      ? [{ ...first, text: 'gave' }, ...(second.text === 'to' ? rest : [second, ...rest])]
      : heading;
  if (first.text === 'cuttings' && /^(?:taken|struck|done)$/.test(second.text))
    return [
      { ...second, text: 'took', start: first.start },
      { ...first, end: second.end },
      ...rest,
      ...colon,
    ];
  return [asDone(first), second, ...rest, ...colon];
}

const asDone = (noun: Token): Token => ({ ...noun, text: DONE.get(noun.text) ?? noun.text });

const colonBehind = (heading: readonly Token[]): readonly Token[] => [mark(':', heading.at(-1)?.end ?? 0)];
