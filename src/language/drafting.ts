/** The fifth stage: a clause's pieces to drafts, one for each plant it names, with shared slots shared out. */
import type { Cause, CuttingType } from '../ledger/entry.js';
import { type Clause, wholeOf } from './clauses.js';
import { wordAt } from './grammar/rule.js';
import { causes, phraseAt } from './lexicon.js';
import type { Piece, PlantWords, When } from './pieces.js';
import type { Quantity } from './quantities.js';
import { type WhichBatch, whichAt } from './which-batch.js';

export interface Draft {
  readonly quantity?: Quantity;
  readonly plant?: PlantWords;
  readonly known?: boolean;
  /** "Them", "those": what was named before. */
  readonly pronoun?: boolean;
  readonly pots?: number;
  readonly each?: number;
  readonly potsVague?: boolean;
  readonly size?: string;
  readonly place?: string;
  readonly fromPlace?: string;
  readonly medium?: string;
  readonly cutting?: CuttingType;
  readonly hormone?: boolean;
  readonly cause?: Cause;
  readonly when?: When;
  readonly celsius?: number;
  readonly to?: string;
  /** Which of several batches is meant; it is no slot. */
  readonly which?: WhichBatch;
  /** "Everything except the Marble Wren": a plant that is left out; which others are meant, nobody has said. */
  readonly leftOut?: true;
}

type Loose = { -readonly [Slot in keyof Draft]: Draft[Slot] };

const PRONOUN = /^(?:them|em|those|they|these|it|they're|they've|that|that'd|thatd|both)$/;
const AFTER_COUNT =
  /^(?:of|the|my|those|these|more|cuttings|cutting|basal|little|new|good|nice|big|small|extra|healthy|strong|plants|plant|plugs|pots|out|our|fresh|rooted|young|from|off|remaining|different|tiny|baby|poor|lovely|other|older|oldest|newer|newest|younger|youngest|earlier|for)$/;

/** What the pieces [from, to) of a clause say, group by group. */
export function draftsOf(pieces: readonly Piece[], clause: Clause): readonly Draft[] {
  const groups: Loose[] = [{}];
  const where: Partial<Record<keyof Draft, number[]>> = {};
  const current = (): Loose => groups.at(-1) ?? {};
  const note = (slot: keyof Draft): void => {
    where[slot] = [...(where[slot] ?? []), groups.length - 1];
  };
  const own = new Set(clause.hit?.own ?? []);
  let eachOfPots = false;
  let ofEach: Quantity | undefined;
  // A number that stands before the act.
  let countedBefore = false;
  // "From the 16 … are rooted 11": the first number is what there was.
  let sourced = false;
  for (let at = clause.from; at < clause.to; at++) {
    const piece = pieces[at];
    // "…, found the label under the bench": what was come upon meanwhile.
    if (
      at > (clause.hit?.to ?? 0) &&
      pieces[at - 1]?.is === 'break' &&
      /^(?:found|saw|noticed|spotted|discovered|heard)$/.test(wordAt(pieces, at))
    )
      break;
    // "…, half to do tomorrow": what was not done.
    if (
      at > (clause.hit?.to ?? 0) &&
      pieces[at - 1]?.is === 'break' &&
      piece?.is === 'count' &&
      wordAt(pieces, at + 1) === 'to' &&
      /^(?:do|go)$/.test(wordAt(pieces, at + 2))
    )
      break;
    // A reason given is no part of what was done.
    if (
      at > (clause.hit?.to ?? 0) &&
      /^(?:because|since)$/.test(wordAt(pieces, at)) &&
      pieces[at + 1]?.is === 'word'
    )
      break;
    if (!piece || own.has(at)) {
      // "Roots all round the edge": no number of plants.
      if (piece?.is === 'count' && clause.hit?.rule.rooted !== 'some') current().quantity ??= piece.quantity;
      else if (piece && piece.is !== 'plant' && piece.is !== 'word' && piece.is !== 'count')
        slotOf(piece, current(), note);
      else if (piece?.is === 'plant' && current().plant === undefined) setPlant(current(), piece);
      continue;
    }
    const which = whichAt(pieces, at, clause);
    if (which) {
      current().which = { ...which, ...current().which };
      continue;
    }
    if (piece.is === 'plant') {
      const group = current();
      if (group.quantity?.whole === 'all' && group.plant === undefined && isLeftOut(pieces, at)) {
        group.leftOut = true;
        continue;
      }
      // "Three of these and four of those, both fuchsias".
      const told = pieces[at - 1];
      if (groups.length > 1 && told?.is === 'count' && told.quantity.both && isCropAlone(piece.plant)) {
        for (const each of groups)
          if (each.plant && each.plant.crop === undefined) each.plant = { ...each.plant, ...piece.plant };
        continue;
      }
      const article = /^(?:a|an|another|single)$/.test(nearestWord(pieces, at));
      if (group.plant === undefined) {
        setPlant(group, piece);
        if (article && group.quantity === undefined) group.quantity = { value: 1 };
      } else if (
        joins(group.plant, piece.plant, pieces, at) ||
        (group.plant.crop === undefined &&
          piece.plant.crop !== undefined &&
          piece.plant.variety === undefined &&
          definesCrop(pieces, at))
      ) {
        group.plant = { ...group.plant, ...piece.plant };
      } else if (!samePlant(group.plant, piece.plant)) {
        groups.push(article ? { quantity: { value: 1 } } : {});
        setPlant(current(), piece);
      }
    } else if (piece.is === 'count') {
      // "Three each of these and those, tips off both": the plants just named, and no number of its own.
      if (piece.quantity.both && groups.length > 1 && groups.every(({ plant }) => plant !== undefined))
        continue;
      // "Roots out of three of the four pots": no number of plants.
      if (clause.hit?.rule.kind === 'check' && /^(?:pots?|trays?)$/.test(wordAt(pieces, at + 1))) continue;
      const group = current();
      const leads = leadsToPlant(pieces, at, clause.to);
      if (group.quantity === undefined && sourcedCount(pieces, at)) sourced = true;
      if (
        (/^(?:bar|but|except|without|minus|save|excepting)$/.test(wordBefore(pieces, at)) ||
          (/^(?:from|for)$/.test(wordBefore(pieces, at)) &&
            /^(?:apart|aside|except|bar|save)$/.test(wordAt(pieces, at - 2)))) &&
        group.quantity?.whole === 'all' &&
        piece.quantity.value !== undefined
      )
        group.quantity = { allBut: piece.quantity.value };
      else if (
        clause.hit?.rule.kind === 'check' &&
        at > clause.hit.to &&
        /^(?:of|from)$/.test(wordAt(pieces, at - 1)) &&
        !leads &&
        group.quantity?.value !== undefined &&
        group.quantity.value <= (piece.quantity.value ?? 0)
      )
        // "190 rooted of 240".
        group.quantity = { ...group.quantity, outOf: piece.quantity.value ?? 0 };
      else if (isTimeSpan(pieces, at)) continue;
      // "Took five, potted three - all Marble Wren": of which sort, not how many.
      else if (
        piece.quantity.whole === 'all' &&
        group.quantity?.value !== undefined &&
        leads &&
        pieces[at - 1]?.is === 'break'
      )
        continue;
      // "Two from the pot of four".
      else if (
        group.quantity?.value !== undefined &&
        wordAt(pieces, at - 1) === 'of' &&
        /^(?:pot|tray|batch|lot)$/.test(wordAt(pieces, at - 2))
      )
        continue;
      else if (
        group.quantity?.value !== undefined &&
        sourced &&
        piece.quantity.value !== undefined &&
        !leads
      ) {
        group.quantity = { ...piece.quantity, outOf: group.quantity.value };
        sourced = false;
      } else if (sourced && (piece.quantity.whole !== undefined || piece.quantity.allBut !== undefined)) {
        group.quantity = piece.quantity;
        sourced = false;
      } else if (
        piece.quantity.value !== undefined &&
        /^each$/.test(wordAt(pieces, at + 1)) &&
        (groups.length > 1 || wordAt(pieces, at + 2) === 'of')
      ) {
        ofEach = piece.quantity;
      } else if (piece.quantity.value !== undefined && toldOfEach(pieces, at)) {
        // "Three pots of these and two pots of those, four in each".
        const potted = groups.filter(({ pots, each, quantity }) => pots !== undefined && !each && !quantity);
        if (potted.length > 0) for (const group of potted) group.each = piece.quantity.value;
        else if (groups.length === 1) current().each ??= piece.quantity.value;
        else for (const each of groups) each.quantity ??= piece.quantity;
      } else if (group.quantity?.vague && piece.quantity.value !== undefined && !leads)
        group.quantity = piece.quantity;
      // "24 of these: potted 20": the number behind the act.
      else if (
        !clause.subjectFirst &&
        at >= (clause.hit?.to ?? pieces.length) &&
        countedBefore &&
        clause.hit?.rule.kind !== 'check' &&
        group.plant !== undefined &&
        piece.quantity.value !== undefined &&
        !leads
      ) {
        group.quantity = piece.quantity;
        countedBefore = false;
      }
      // "9 fine, 3 dead": the number beside the act.
      else if (
        clause.subjectFirst &&
        at < (clause.hit?.from ?? 0) &&
        group.quantity?.value !== undefined &&
        piece.quantity.value !== undefined &&
        !leads &&
        isBesideAct(pieces, at)
      )
        group.quantity = piece.quantity;
      // "Five and the rest are dead".
      else if (
        piece.quantity.whole === 'rest' &&
        group.quantity?.value !== undefined &&
        !leads &&
        at < (clause.hit?.from ?? 0)
      )
        group.quantity = piece.quantity;
      // "Tugged on all of them and eleven are holding": the number beside the act.
      else if (
        group.quantity?.whole !== undefined &&
        piece.quantity.value !== undefined &&
        !leads &&
        at < (clause.hit?.from ?? 0)
      )
        group.quantity = piece.quantity;
      else if (group.quantity === undefined && (group.plant === undefined || !leads)) {
        group.quantity = piece.quantity;
        countedBefore = groups.length === 1 && at < (clause.hit?.from ?? 0);
      } else if (
        group.plant !== undefined &&
        group.quantity !== undefined &&
        group.size !== undefined &&
        wordAt(pieces, at - 1) === 'and' &&
        pieces.slice(at + 1, at + 3).some(({ is }) => is === 'size')
      ) {
        groups.push({ quantity: piece.quantity, plant: group.plant, known: group.known ?? true });
      } else if (leads && (group.plant !== undefined || group.quantity !== undefined)) {
        if (group.plant === undefined) group.quantity = piece.quantity;
        else {
          groups.push({ quantity: piece.quantity });
        }
      }
    } else if (piece.is === 'word' && PRONOUN.test(piece.text)) {
      if (current().plant === undefined) current().pronoun = true;
    } else if (
      piece.is === 'word' &&
      /^(?:cutting|plug|tuber|crown)$/.test(piece.text) &&
      /^(?:a|an|another)$/.test(wordBefore(pieces, at)) &&
      current().quantity === undefined
    )
      current().quantity = { value: 1 };
    else if (
      piece.is === 'pots' &&
      piece.pots !== undefined &&
      /^(?:each|every|of|the)$/.test(wordAt(pieces, at - 1)) &&
      pieces
        .slice(Math.max(0, at - 3), at)
        .some((each) => each.is === 'word' && /^(?:each|every)$/.test(each.text))
    ) {
      slotOf(piece, current(), note);
      eachOfPots = true;
    } else if (
      piece.is === 'pots' &&
      piece.pots === 1 &&
      wordAt(pieces, at - 1) === 'to' &&
      pieces[at - 2]?.is === 'count'
    )
      continue;
    else if (piece.is === 'pots' && wordAt(pieces, at + 1) === 'each' && groups.length > 1) {
      // "Three of these and two of those, one pot each".
      for (const group of groups) if (piece.pots !== undefined) group.pots ??= piece.pots;
    } else if (
      piece.is === 'pots' &&
      current().plant !== undefined &&
      leadsToAnother(pieces, at, clause.to)
    ) {
      // "Two pots of these, one pot of those".
      groups.push({});
      slotOf(piece, current(), note);
    } else if (
      piece.is === 'place' &&
      clause.hit?.rule.kind === 'move' &&
      clause.subjectFirst &&
      at < clause.hit.from &&
      piece.prep !== undefined
    )
      // "Everything in the propagator is now in the greenhouse".
      current().fromPlace ??= piece.place;
    // "…, the windowsills are groaning": no place of the cuttings.
    else if (
      piece.is === 'place' &&
      piece.prep === undefined &&
      clause.hit?.rule.kind === 'strike' &&
      at > clause.hit.to &&
      /^(?:is|are|was|were)$/.test(wordAt(pieces, at + 1))
    )
      continue;
    else if (
      piece.is === 'when' &&
      wordAt(pieces, at - 1) === 'for' &&
      !/^(?:target|remind)$/.test(clause.hit?.rule.kind ?? 'target')
    )
      continue;
    else slotOf(piece, current(), note);
  }
  for (const group of groups) if (ofEach) group.quantity ??= ofEach;
  words(pieces, clause, groups, note);
  for (const group of groups)
    if (eachOfPots && group.pots !== undefined && group.quantity?.value !== undefined)
      group.quantity = { value: group.pots * group.quantity.value };
  return share(groups, where).map(countedByContainers);
}

/** Behind a break or "and", with no plant since the number before it. */
function isBesideAct(pieces: readonly Piece[], at: number): boolean {
  let parted = false;
  for (let before = at - 1; before >= 0 && pieces[before]?.is !== 'count'; before--) {
    if (pieces[before]?.is === 'plant') return false;
    parted ||= pieces[before]?.is === 'break' || wordAt(pieces, before) === 'and';
  }
  return parted;
}

/** The plants that a row names, each once, a crop joined to the variety beside it. */
export function mergedPlants(pieces: readonly Piece[]): readonly PlantWords[] {
  return draftsOf(pieces, wholeOf(pieces)).flatMap(({ plant }) => (plant ? [plant] : []));
}

/** "3 cuttings each", "seven in each", "two in every one": how many each container, or each plant of a list, has. */
function toldOfEach(pieces: readonly Piece[], at: number): boolean {
  let next = at + 1;
  if (/^(?:cuttings|cutting|of|plants|them)$/.test(wordAt(pieces, next))) next++;
  // "Three pots with four Salt Harrier in each".
  if (
    pieces[next]?.is === 'plant' &&
    /^in (?:each|every)$/.test(`${wordAt(pieces, next + 1)} ${wordAt(pieces, next + 2)}`)
  )
    next++;
  const word = wordAt(pieces, next);
  const after = wordAt(pieces, next + 1);
  const every = pieces[next + 1];
  if (/^(?:each|apiece|per)$/.test(word)) return true;
  // "Three to a 4 inch pot".
  const container = pieces[next + 1];
  if (word === 'to' && container?.is === 'pots' && container.pots === 1) return true;
  if (
    word === 'in' &&
    (/^(?:each|every|it)$/.test(after) || (every?.is === 'count' && every.quantity.whole === 'all'))
  )
    return true;
  if (
    word === 'to' &&
    /^(?:a|each|every|the)$/.test(after) &&
    /^(?:pot|tray|jar|cell|one)$/.test(wordAt(pieces, next + 2))
  )
    return true;
  return false;
}

/** Containers that are counted, and what each holds, give the cuttings ("six pots, three to a pot"). */
function countedByContainers(draft: Draft): Draft {
  const { pots, each, quantity, size } = draft;
  if (each === undefined) return draft;
  const cells = size?.endsWith('cell') ? Number(size.slice(0, -4)) : undefined;
  const value = quantity?.value;
  if (cells === undefined && pots === undefined && value !== undefined && value % each === 0)
    return { ...draft, pots: value / each };
  if (quantity !== undefined && quantity.whole === undefined) return draft;
  // "Put them in the greenhouse, ten to a pot": how they stand, not how many.
  if (pots === undefined && draft.pronoun) return draft;
  if (cells !== undefined) return { ...draft, quantity: { value: cells * each * (pots ?? 1) } };
  return pots === undefined
    ? { ...draft, quantity: { value: each } }
    : { ...draft, quantity: { value: pots * each } };
}

/** The word before a piece, articles and adjectives of size passed over only to find an article. */
function nearestWord(pieces: readonly Piece[], at: number): string {
  let before = at - 1;
  while (
    /^(?:mouldy|moldy|dead|rotten|rotted|poor|sad|mushy|soggy|limp|wilted|broken|sickly|manky|good|big|new|old|little|nice|rooted|spare|whole|lovely|small|large|fine|decent|of|the|my|her|his)$/.test(
      wordAt(pieces, before),
    ) &&
    at - before < 5
  )
    before--;
  return wordAt(pieces, before);
}

function wordBefore(pieces: readonly Piece[], at: number): string {
  return pieces[at - 1]?.is === 'break' ? wordAt(pieces, at - 2) : wordAt(pieces, at - 1);
}

/** Behind "from the", "out of the" at the head of a clause. */
function sourcedCount(pieces: readonly Piece[], at: number): boolean {
  let before = at - 1;
  while (/^(?:the|my|those|these|all)$/.test(wordAt(pieces, before))) before--;
  const word = wordAt(pieces, before);
  if (word === 'of')
    return wordAt(pieces, before - 1) === 'out' || before === 0 || pieces[before - 1]?.is === 'break';
  return word === 'from' && (before === 0 || pieces[before - 1]?.is === 'break');
}

/** "Three weeks" counts no plants. */
function isTimeSpan(pieces: readonly Piece[], at: number): boolean {
  const before = wordAt(pieces, at - 1);
  return (
    /^(?:day|days|week|weeks|month|months|year|years|hour|hours|minute|minutes|mins|times|people|folk|friends|inches|mugs|leaves|pairs|eyes|left|remaining|remain|remains|still)$/.test(
      wordAt(pieces, at + 1),
    ) ||
    /^(?:day|week|bench|batch|pot|tray|row|shelf|box|number|round|version|page|stage|step|leaving|leaves)$/.test(
      before,
    ) ||
    (/^(?:to|with|at)$/.test(before) &&
      /^(?:down|left|up)$/.test(wordAt(pieces, at - 2)) &&
      pieces[at]?.is === 'count' &&
      !pieces.slice(at + 1, at + 4).some(({ is }) => is === 'plant'))
  );
}

function setPlant(group: Loose, piece: Extract<Piece, { is: 'plant' }>): void {
  group.plant = piece.plant;
  group.known = piece.known;
}

/** Behind "except the", "bar", "apart from". */
function isLeftOut(pieces: readonly Piece[], at: number): boolean {
  let before = at - 1;
  while (/^(?:the|my|our|for)$/.test(wordAt(pieces, before))) before--;
  const word = wordAt(pieces, before);
  return (
    /^(?:except|excepting|bar|but|save|besides)$/.test(word) ||
    (word === 'from' && /^(?:apart|aside)$/.test(wordAt(pieces, before - 1)))
  );
}

const isCropAlone = ({ variety, batch, crop }: PlantWords): boolean =>
  crop !== undefined && variety === undefined && batch === undefined;

function samePlant(a: PlantWords, b: PlantWords): boolean {
  return a.variety === b.variety && a.crop === b.crop && a.batch === b.batch;
}

/** "Brindle Gate westringia", "dahlia 'Ember Fox'", "PE31 Tallow Bell": two names of one plant, side by side. */
function joins(a: PlantWords, b: PlantWords, pieces: readonly Piece[], at: number): boolean {
  if (
    (a.variety !== undefined && b.variety !== undefined) ||
    (a.crop !== undefined && b.crop !== undefined) ||
    (a.batch !== undefined && b.batch !== undefined)
  )
    return false;
  for (let before = at - 1; before >= 0 && before >= at - 5; before--) {
    const piece = pieces[before];
    if (piece?.is === 'plant') return true;
    if (piece?.is === 'break' && /^[,(:-]$/.test(piece.mark)) continue;
    if (piece?.is === 'when' && pieces[before + 1]?.is === 'break') continue;
    if (
      piece?.is === 'word' &&
      /^(?:the|called|named|labelled|she|he|they|calls|it|stock|plant|cuttings|my|new|of|a|variety|plants|from|name|is|its|it's)$/.test(
        piece.text,
      )
    )
      continue;
    return false;
  }
  return false;
}

/** "Sad Trombone, it's a coleus", "which is a dahlia": the crop of the plant named before. */
function definesCrop(pieces: readonly Piece[], at: number): boolean {
  const before = /^(?:a|an)$/.test(wordAt(pieces, at - 1)) ? at - 2 : at - 1;
  const word = wordAt(pieces, before);
  return (
    /^(?:it's|its|that's|they're|which's)$/.test(word) ||
    // "…, also hydrangea, one pot".
    (word === 'also' && pieces[before - 1]?.is === 'break') ||
    (/^(?:is|are|being)$/.test(word) &&
      /^(?:it|that|which|they|these|those)$/.test(wordAt(pieces, before - 1)))
  );
}

/** Whether the containers are of a plant that the clause names behind them. */
function leadsToAnother(pieces: readonly Piece[], at: number, end: number): boolean {
  return wordAt(pieces, at + 1) === 'of' && leadsToPlant(pieces, at, end);
}

function leadsToPlant(pieces: readonly Piece[], at: number, end: number): boolean {
  for (let next = at + 1; next < Math.min(end, at + 6); next++) {
    const piece = pieces[next];
    if (!piece) return false;
    if (piece.is === 'plant') return true;
    if (piece.is === 'cutting' || piece.is === 'size' || piece.is === 'pots') continue;
    if (piece.is === 'word' && AFTER_COUNT.test(piece.text)) continue;
    return false;
  }
  return false;
}

function slotOf(piece: Piece, group: Loose, note: (slot: keyof Draft) => void): void {
  // "In the ground, bottom garden": the ground is anywhere.
  if (piece.is === 'place' && group.place !== undefined && /^(?:open )?ground$/.test(group.place))
    delete group.place;
  const put = <Slot extends keyof Draft>(slot: Slot, value: Draft[Slot]): void => {
    if (group[slot] === undefined) {
      (group as Record<string, unknown>)[slot] = value;
      note(slot);
    }
  };
  switch (piece.is) {
    case 'pots':
      if (piece.pots !== undefined) put('pots', piece.pots);
      if (piece.each !== undefined) put('each', piece.each);
      if (piece.vague) put('potsVague', true);
      break;
    case 'size':
      put('size', piece.size);
      break;
    case 'place':
      put(piece.prep === 'from' || piece.prep === 'off' ? 'fromPlace' : 'place', piece.place);
      break;
    case 'medium':
      put('medium', piece.medium);
      break;
    case 'cutting':
      put('cutting', piece.cutting);
      break;
    case 'when':
      put('when', piece.when);
      break;
    case 'celsius':
      put('celsius', piece.celsius);
      break;
    default:
  }
}

/** Hormone and cause, which are told by plain words. */
function words(
  pieces: readonly Piece[],
  clause: Clause,
  groups: Loose[],
  note: (slot: keyof Draft) => void,
): void {
  const texts: string[] = [];
  for (let at = Math.max(0, clause.from - 4); at < clause.to; at++) texts[at] = wordAt(pieces, at);
  for (let at = clause.from; at < clause.to; at++) {
    const text = texts[at] ?? '';
    if (
      /^(?:hormone|clonex|rootgrow)$/.test(text) ||
      (/^(?:powder|gel)$/.test(text) &&
        (/^(?:rooting|root|hormone|no|without|dip)$/.test(texts[at - 1] ?? '') ||
          (texts[at - 1] === 'the' && /^(?:without|no|skipped|with)$/.test(texts[at - 2] ?? ''))))
    ) {
      const lead = texts.slice(Math.max(clause.from, at - 4), at);
      const last = groups.at(-1);
      if (last && last.hormone === undefined) {
        last.hormone = !lead.some((word) => /^(?:no|without|not|skipped|forgot|didn't|sans)$/.test(word));
        note('hormone');
      }
    }
    if (
      /^(?:iba|dipped)$/.test(text) &&
      groups.at(-1)?.hormone === undefined &&
      !/^in$/.test(texts[at + 1] ?? '')
    ) {
      const last = groups.at(-1);
      if (last) last.hormone = !/^(?:not|never|un|without|no)$/.test(texts[at - 1] ?? '');
    }
    if (/^(?:undipped|undoctored)$/.test(text)) groups.at(-1)!.hormone ??= false;
    const cause = phraseAt(causes, texts, at);
    if (cause && text !== 'root') {
      const group = groups.at(-1);
      if (group && group.cause === undefined) {
        group.cause = cause.value;
        note('cause');
      }
    }
  }
}

const SHARED = [
  'pots',
  'each',
  'size',
  'place',
  'fromPlace',
  'medium',
  'cutting',
  'hormone',
  'cause',
  'when',
  'to',
  'celsius',
] as const;

/** A slot said once, before or with the last of several plants, belongs to all of them; a day belongs to all wherever said. */
function share(groups: readonly Loose[], where: Partial<Record<keyof Draft, number[]>>): readonly Draft[] {
  const kept = groups.filter(
    (group, n) => n === 0 || group.plant !== undefined || group.quantity !== undefined,
  );
  if (kept.length < 2) return kept;
  if (groups[0]?.quantity?.both) delete kept[0]?.quantity;
  for (const slot of SHARED) {
    const at = where[slot] ?? [];
    if (at.length !== 1) continue;
    const said = at[0] ?? 0;
    if (said !== groups.length - 1 && slot !== 'when') continue;
    if (slot === 'pots' || slot === 'each') continue;
    const value = groups[said]?.[slot];
    for (const group of kept) if (group[slot] === undefined) (group as Record<string, unknown>)[slot] = value;
  }
  return kept;
}
