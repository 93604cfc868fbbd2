/** Containers and what each holds: "three pots of five", "four pots, two per pot", "two trays of 24", "2 9cm pots". */
import { countApart } from './containers/apart.js';
import { countHeld } from './containers/held.js';
import { countAt, eachAt, isContainer, type Joined, perContainer } from './containers/per-container.js';
import { wordAt } from './grammar/rule.js';
import type { Piece, PieceOf } from './pieces.js';

/** Joins numbers and container words into pieces of their own. */
export function joinContainers(pieces: readonly Piece[]): readonly Piece[] {
  const joined: Piece[] = [];
  for (let at = 0; at < pieces.length;) {
    const found = containerAt(pieces, at) ?? eachAt(pieces, at);
    if (found) {
      joined.push(...found.pieces);
      at = found.to;
    } else {
      const piece = pieces[at];
      if (piece) joined.push(piece);
      at++;
    }
  }
  return countApart(countHeld(joined));
}

function containerAt(pieces: readonly Piece[], start: number): Joined | undefined {
  const first = pieces[start];
  if (!first) return undefined;
  let number: number | undefined;
  let vague = false;
  let at = start;
  const count = countAt(pieces, at);
  const article =
    /^(?:a|an|single|same)$/.test(wordAt(pieces, at)) &&
    // "Split into single pots".
    !(wordAt(pieces, at) === 'single' && /^(?:pots|modules|cells)$/.test(wordAt(pieces, at + 1)));
  if (count) {
    number = count.quantity.value;
    vague = count.quantity.vague === true;
    if (number === undefined && !vague) return undefined;
    if (count.quantity.outOf !== undefined) return undefined;
  } else if (article) number = 1;
  else return undefined;
  at++;
  if (wordAt(pieces, at) === 'single') at++;
  if (wordAt(pieces, at) === 'x') at++;
  while (
    /^(?:big|small|little|large|jam|seed|half|full|plug|module|cell|new|clay|plastic|terracotta|different|deep|quarter|root|coffee|yoghurt|yogurt|clean|old|standard|community|communal|shared)$/.test(
      wordAt(pieces, at),
    ) &&
    at - start < 4
  )
    at++;
  // "6 x 84 trays": six trays of 84.
  const cellsEach = wordAt(pieces, start + 1) === 'x' ? countAt(pieces, at)?.quantity.value : undefined;
  if (
    cellsEach !== undefined &&
    number !== undefined &&
    /^(?:trays|tray|modules|plugs)$/.test(wordAt(pieces, at + 1))
  )
    return {
      pieces: [
        { is: 'count', quantity: { value: number * cellsEach }, from: first.from, to: first.to },
        { is: 'pots', pots: number, from: pieces[at]?.from ?? first.to, to: pieces[at + 1]?.to ?? first.to },
      ],
      to: at + 2,
    };
  // "84 tray": the size of the tray, not how many.
  if (count?.quantity.value !== undefined && count.quantity.value >= 24 && wordAt(pieces, at) === 'tray')
    return {
      pieces: [
        {
          is: 'size',
          size: `${count.quantity.value}cell`,
          container: true,
          from: first.from,
          to: pieces[at]?.to ?? first.to,
        },
      ],
      to: at + 1,
    };
  // "4x84": four trays of 84.
  const multiplied = wordAt(pieces, start + 1) === 'x' ? countAt(pieces, start + 2) : undefined;
  if (
    number !== undefined &&
    multiplied?.quantity.value !== undefined &&
    multiplied.quantity.value >= 20 &&
    multiplied.from === first.to + 1 &&
    !isContainer(pieces, start + 3)
  )
    return {
      pieces: [
        {
          is: 'count',
          quantity: { value: number * multiplied.quantity.value },
          from: first.from,
          to: first.to,
        },
        { is: 'pots', pots: number, from: first.to, to: multiplied.to },
      ],
      to: start + 3,
    };
  // "5x4" alone: five of four, or four of five, or pots of that size.
  if (
    multiplied?.quantity.value !== undefined &&
    number !== undefined &&
    (pieces[start + 3] === undefined || pieces[start + 3]?.is === 'break')
  )
    return {
      pieces: [{ is: 'count', quantity: { vague: true }, from: first.from, to: multiplied.to }],
      to: start + 3,
    };
  // "2x5 tip cuttings": ten.
  const counted = pieces[start + 3];
  if (
    number !== undefined &&
    multiplied?.quantity.value !== undefined &&
    (counted?.is === 'cutting' || counted?.is === 'plant' || /^cuttings?$/.test(wordAt(pieces, start + 3)))
  )
    return {
      pieces: [
        {
          is: 'count',
          quantity: { value: number * multiplied.quantity.value },
          from: first.from,
          to: multiplied.to,
        },
      ],
      to: start + 3,
    };
  let size: PieceOf<'size'> | undefined;
  const sized = pieces[at];
  if (sized?.is === 'size' && !isContainer(pieces, at)) {
    size = sized;
    at++;
    const named = sized.container || isContainer(pieces, at);
    if (!sized.container && named) at++;
    // "2 x 104 plug trays": so many in each; no "potted into 2 x 40 cell trays".
    const holdsThem =
      wordAt(pieces, start + 1) === 'x' && !/^(?:in|into|to|onto)$/.test(wordAt(pieces, start - 1));
    const cells = holdsThem ? /^(\d+)cell$/.exec(size.size)?.[1] : undefined;
    if (number !== undefined && cells !== undefined && Number(cells) >= 20)
      return {
        pieces: [
          { is: 'count', quantity: { value: number * Number(cells) }, from: first.from, to: first.to },
          { is: 'pots', pots: number, from: first.from, to: size.to },
          size,
        ],
        to: at,
      };
    if (!named) {
      // "3 x 9cm" without a word for the container.
      if (wordAt(pieces, start + 1) !== 'x') return undefined;
    }
  } else if (isContainer(pieces, at)) {
    // "Seven Glass Pheasant": more than one container is plural.
    if (
      number !== undefined &&
      number > 1 &&
      !/[^s]s$/.test(wordAt(pieces, at)) &&
      !isContainer(pieces, at + 1)
    )
      return undefined;
    at++;
    if (isContainer(pieces, at)) at++;
  } else return undefined;
  const base = { from: first.from, to: pieces[at - 1]?.to ?? first.to };
  const potsPiece = (extra: object = {}): Piece => ({
    is: 'pots',
    ...(vague ? { vague: true as const } : { pots: number ?? 1 }),
    ...base,
    ...extra,
  });
  const out: Piece[] = [potsPiece()];
  if (size) out.push(size);
  // "of five", "with five in each", ", 2 per pot", "x 5"
  let next = at;
  if (pieces[next]?.is === 'break' && !(pieces[next] as PieceOf<'break'>).hard) next++;
  const link = wordAt(pieces, next);
  // "3 pots with each 6 cuttings", "3 pots each with 6".
  const eachSaid = /^(?:with each|each with|each holding)$/.test(`${link} ${wordAt(pieces, next + 1)}`);
  const eachAtIndex = eachSaid ? next + 2 : /^(?:of|with|x|holding|at)$/.test(link) ? next + 1 : next;
  const each = countAt(pieces, eachAtIndex);
  if (each && each.quantity.value !== undefined && !vague && number !== undefined) {
    const per = eachSaid ? eachAtIndex + 1 : perContainer(pieces, eachAtIndex + 1);
    // "One little pot with 4 of these" holds four in all.
    const plain = link === 'of' || link === 'x' || (link === 'with' && number === 1 && !size);
    if (
      per !== undefined ||
      (plain && !(each.quantity.outOf !== undefined) && !isContainer(pieces, eachAtIndex + 1))
    ) {
      const to = per ?? eachAtIndex + 1;
      out.unshift({
        is: 'count',
        quantity: { value: number * each.quantity.value },
        from: each.from,
        to: each.to,
      });
      return { pieces: out, to };
    }
  } else if (each && each.quantity.vague && link === 'of') {
    out.unshift({ is: 'count', quantity: { vague: true }, from: each.from, to: each.to });
    return { pieces: out, to: eachAtIndex + 1 };
  }
  return { pieces: out, to: at };
}
