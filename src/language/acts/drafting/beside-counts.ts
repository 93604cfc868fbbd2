/** What stands beside a number and says what it counts: days, what each pot holds, what there was. */
import type { Clause } from '../../clauses/clauses.js';
import { wordAt } from '../../grammar/rule.js';
import { EDGES } from '../../pieces/sizes.js';
import type { Piece } from '../../pieces/pieces.js';
import { exceptsOfAll } from './except-words.js';

/** Behind a break or "and", with no plant since the number before it. */
export function isBesideAct(pieces: readonly Piece[], at: number): boolean {
  let parted = false;
  for (let before = at - 1; before >= 0 && pieces[before]?.is !== 'count'; before--) {
    if (pieces[before]?.is === 'plant') return false;
    // "Had six Salt Harrier but only four rooted".
    if (wordAt(pieces, before) === 'but') return true;
    parted ||= pieces[before]?.is === 'break' || wordAt(pieces, before) === 'and';
  }
  return parted;
}

/** "3 cuttings each", "seven in each", "two in every one": how many each container, or each plant of a list, has. */
export function isOfEach(pieces: readonly Piece[], at: number): boolean {
  let next = at + 1;
  if (/^(?:cuttings|cutting|of|plants|them|pieces|bits|slips|tips)$/.test(wordAt(pieces, next))) next++;
  // "Three pots with four Salt Harrier in each".
  if (
    pieces[next]?.is === 'plant' &&
    /^in (?:each|every)$/.test(`${wordAt(pieces, next + 1)} ${wordAt(pieces, next + 2)}`)
  )
    next++;
  const word = wordAt(pieces, next);
  const after = wordAt(pieces, next + 1);
  const behind = pieces[next + 1];
  // "Six pots, three round the edge of each".
  if (/^(?:round|around)$/.test(word)) return isRoundEach(pieces, next + 1);
  if (/^(?:each|apiece|per)$/.test(word)) return true;
  // "Six cuttings of each".
  if (word === 'of' && after === 'each') return true;
  // "Three to a 4 inch pot".
  if (word === 'to' && behind?.is === 'pots' && behind.pots === 1) return true;
  if (
    word === 'in' &&
    (/^(?:each|every|it)$/.test(after) ||
      // "Four in all of them"; "12 in all" are twelve.
      (behind?.is === 'count' &&
        behind.quantity.whole === 'all' &&
        (behind.to > behind.from + 1 || pieces[next + 2]?.is === 'pots' || wordAt(pieces, next + 2) !== '')))
  )
    return true;
  return (
    word === 'to' &&
    /^(?:a|each|every|the)$/.test(after) &&
    // "Two to a pot", "two to a 1 l".
    (/^(?:pot|tray|jar|cell|one|tub|trough|urn|basket|box|barrel|planter|bucket)$/.test(
      wordAt(pieces, next + 2),
    ) ||
      pieces[next + 2]?.is === 'size')
  );
}

/** Behind "round": "the edge of each". */
function isRoundEach(pieces: readonly Piece[], at: number): boolean {
  const edge = wordAt(pieces, at) === 'the' ? at + 1 : at;
  if (!EDGES.test(wordAt(pieces, edge)) || wordAt(pieces, edge + 1) !== 'of') return false;
  const each = pieces[edge + 2];
  // "Of every one" is read as all of them.
  return each?.is === 'count'
    ? each.quantity.whole === 'all'
    : /^(?:each|every)$/.test(wordAt(pieces, edge + 2));
}

const POINTING = /^(?:the|my|those|these|all)$/;

/** The place of the word that leads to a number, those that only point at it passed over. */
function leadingTo(pieces: readonly Piece[], at: number): number {
  let before = at - 1;
  while (POINTING.test(wordAt(pieces, before))) before--;
  return before;
}

/** Behind "of the", "from": what a smaller number was counted among. */
export const isOutOf = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:of|from)$/.test(wordAt(pieces, leadingTo(pieces, at)));

/** Behind "from the", "out of the" at the head of a clause: what there was. "Took the tops out of five" is the act's own "out". */
export function isSource(pieces: readonly Piece[], at: number, { hit }: Clause): boolean {
  const before = leadingTo(pieces, at);
  const word = wordAt(pieces, before);
  const opens = before === 0 || pieces[before - 1]?.is === 'break';
  const isOut = wordAt(pieces, before - 1) === 'out' && !(hit?.own.includes(before - 1) ?? false);
  return word === 'of' ? isOut || opens : word === 'from' && opens;
}

/** Behind "bar", "except", "apart from", or the break behind them. */
export function isExcepted(pieces: readonly Piece[], at: number): boolean {
  const before = /^(?:the|those|my)$/.test(wordAt(pieces, at - 1)) ? at - 1 : at;
  return exceptsOfAll(pieces, pieces[before - 1]?.is === 'break' ? before - 2 : before - 1);
}

/** "Off the big one by the gate": the plant that they were taken from. */
function isOneTakenFrom(pieces: readonly Piece[], at: number): boolean {
  const one = pieces[at];
  if (one?.is !== 'count' || one.quantity.weak !== true || one.quantity.value !== 1) return false;
  let before = at - 1;
  while (
    before > at - 4 &&
    /^(?:the|that|this|my|her|his|our|big|old|large|good|best|white|red|blue|pink)$/.test(
      wordAt(pieces, before),
    )
  )
    before--;
  return before < at - 1 && /^(?:off|from)$/.test(wordAt(pieces, before));
}

/** "Three weeks", "five leaves", "bench 4", "down to two": no plants are counted. */
export function countsNoPlants(pieces: readonly Piece[], at: number): boolean {
  const before = wordAt(pieces, at - 1);
  return (
    isOneTakenFrom(pieces, at) ||
    // "To get some cuttings going".
    (/^(?:get|give|for|make)$/.test(before) && isSomeGrowth(pieces, at)) ||
    /^(?:day|days|week|weeks|month|months|year|years|hour|hours|minute|minutes|mins|times|people|folk|friends|inches|mugs|leaves|pairs|sets|nodes|joints|eyes|left|remaining|remain|remains|still)$/.test(
      wordAt(pieces, at + 1),
    ) ||
    /^(?:day|week|bench|batch|pot|tray|row|shelf|box|number|round|version|page|stage|step|leaving|leaves|order|invoice|docket)$/.test(
      before,
    ) ||
    (/^(?:to|with|at)$/.test(before) &&
      /^(?:down|left|up)$/.test(wordAt(pieces, at - 2)) &&
      !pieces.slice(at + 1, at + 4).some(({ is }) => is === 'plant'))
  );
}

const isSomeGrowth = (pieces: readonly Piece[], at: number): boolean => {
  const count = pieces[at];
  return (
    count?.is === 'count' &&
    count.quantity.value === undefined &&
    (pieces[at + 1]?.is === 'cutting' ||
      /^(?:cuttings|slips|shoots|growth|basals|new)$/.test(wordAt(pieces, at + 1)))
  );
};

/** Behind "each of", "in every pot", "each time": told of one container. */
export function isToldOfEach(pieces: readonly Piece[], at: number): boolean {
  let before = at - 1;
  while (
    /^(?:of|with|has|have|holds|holding|had|time|pot|tray|one|contains|are|is)$/.test(wordAt(pieces, before))
  )
    before--;
  return /^(?:each|every)$/.test(wordAt(pieces, before));
}

/** "Three cuttings in one pot", where there are several. */
export function isInOnePot(pieces: readonly Piece[], at: number): boolean {
  const next = /^(?:cuttings|pieces|of|them)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1;
  const pot = pieces[next + 1];
  return wordAt(pieces, next) === 'in' && pot?.is === 'pots' && pot.pots === 1;
}

/** "Three by the gate": a number and where so many of them went. */
export const isShareOf = (pieces: readonly Piece[], at: number): boolean =>
  LEADS_TO_PLACE.test(wordAt(pieces, at + 1));

/** What leads to where a share of them went. */
export const LEADS_TO_PLACE =
  /^(?:in|by|on|at|under|along|near|beside|behind|to|into|onto|outside|round|around)$/;
