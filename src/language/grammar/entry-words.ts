/** What growers call the entries of a ledger: by a noun ("that loss", "the last sale") or by the verb that told of one. */
import type { Care, LoggedEntry, Manner } from '../../ledger/entry.js';
import type { Posting } from '../../ledger/posting.js';

/** The entries that a word means: of a kind, some only of one manner or care. */
interface Meant<Kind extends Posting['kind'] = Posting['kind']> {
  readonly kind: Kind;
  readonly how?: Manner;
  readonly care?: Care;
}

/** Deeds of a day, whose slots may be put right in a word ("the sale was on Sunday"). */
const deeds = new Map<string, Meant<LoggedEntry['kind']>>([
  ['strike', { kind: 'strike' }],
  ['delivery', { kind: 'receive' }],
  ['loss', { kind: 'loss' }],
  ['losses', { kind: 'loss' }],
  ['death', { kind: 'loss' }],
  ['deaths', { kind: 'loss' }],
  ['check', { kind: 'check' }],
  ['move', { kind: 'move' }],
  ['pinch', { kind: 'pinch' }],
  ['pinching', { kind: 'pinch' }],
  ['sale', { kind: 'dispatch', how: 'sold' }],
  ['gift', { kind: 'dispatch', how: 'given' }],
  ['swap', { kind: 'dispatch', how: 'swapped' }],
  ['reading', { kind: 'reading' }],
  ['potting', { kind: 'potOn' }],
  ['potting on', { kind: 'potOn' }],
  ['planting out', { kind: 'plantOut' }],
  ['hardening off', { kind: 'hardenOff' }],
  ['watering', { kind: 'tend', care: 'water' }],
  ['feed', { kind: 'tend', care: 'feed' }],
  ['feeding', { kind: 'tend', care: 'feed' }],
  ['misting', { kind: 'tend', care: 'mist' }],
]);

const entries = new Map<string, Meant>([
  ...deeds,
  ['split', { kind: 'split' }],
  ['merge', { kind: 'merge' }],
  ['remark', { kind: 'remark' }],
  ['reminder', { kind: 'remind' }],
]);

const verbs = new Map<string, LoggedEntry['kind']>([
  ['took', 'strike'],
  ['taken', 'strike'],
  ['made', 'strike'],
  ['struck', 'strike'],
  ['cut', 'strike'],
  ['potted on', 'potOn'],
  ['potted up', 'potOn'],
  ['potted', 'potOn'],
  ['planted out', 'plantOut'],
  ['planted', 'plantOut'],
  ['lost', 'loss'],
  ['binned', 'loss'],
  ['chucked', 'loss'],
  ['threw out', 'loss'],
  ['died', 'loss'],
  ['rotted', 'loss'],
  ['gave away', 'dispatch'],
  ['gave', 'dispatch'],
  ['sold', 'dispatch'],
  ['swapped', 'dispatch'],
  ['pinched', 'pinch'],
  ['moved', 'move'],
  ['got', 'receive'],
  ['bought', 'receive'],
  ['had', 'receive'],
]);

/** Alternatives of a pattern for each set of words. */
export const deedNouns = [...deeds.keys()].join('|');
export const entryNouns = [...entries.keys()].join('|');
export const deedVerbs = [...verbs.keys()].join('|');

/** The kind of entry that a noun means ("the planting out"). */
export function kindCalled(noun: string): Posting['kind'] | undefined {
  return entries.get(noun.toLowerCase())?.kind;
}

/** Whether a grower may call the entry by this noun. */
export function isCalled(noun: string, entry: Posting | LoggedEntry): boolean {
  const meant = entries.get(noun.toLowerCase());
  if (meant?.kind !== entry.kind) return false;
  if (entry.kind === 'dispatch') return meant.how === (entry.how ?? 'given');
  return entry.kind !== 'tend' || meant.care === entry.care;
}

/** The kind of deed that a verb tells of ("the ones I took"). */
export function kindDone(verb: string): LoggedEntry['kind'] | undefined {
  return verbs.get(verb.toLowerCase());
}

/** The words by which a deed of each kind is told, whoever did it. */
const told: Readonly<Partial<Record<LoggedEntry['kind'], string>>> = {
  strike: 'took take taken struck strike stuck cut came',
  receive: 'came got arrived received bought plugs delivered',
  stock: 'potted woke woken tubers stools bought',
  loss: 'lost lose died dead went gone killed chucked binned threw out ate eaten took rotted',
  check: 'rooted roots root checked check have has',
  potOn: 'potted pot potting up on put',
  pinch: 'pinched pinch',
  move: 'moved move put shifted',
  plantOut: 'planted plant out',
  dispatch: 'gave give given sold swapped sale gift swap took taken bought paid received kept away',
};

/** Whether the word belongs to the telling of such a deed, or of any where no kind is given. */
export function tellsOf(kind: Posting['kind'] | undefined, word: string): boolean {
  const all = kind === undefined ? Object.values(told) : [told[kind as LoggedEntry['kind']] ?? ''];
  return all.some((words) => words.split(' ').includes(word));
}
