/** The heads in a row that tell of an act, without those that only say which plants another act befell. */
import { excepts } from '../acts/drafting/except-words.js';
import { findHits, type Hit } from '../grammar/hits.js';
import { type Rule, wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import { onlyDescribes } from '../joined/new-names/describing.js';
import { sourceBefore } from './source-led.js';

/** Hits in the order of the row. */
export function actHits(rules: readonly Rule[], row: readonly Piece[]): readonly Hit[] {
  return (
    findHits(rules, row)
      .filter((hit, n, all) => hit.rule.kind !== all[n - 1]?.rule.kind || !isRelative(row, hit.from))
      // "The three that had snapped went in the bin": which, before what befell them.
      .filter((hit, n, all) => all[n + 1]?.rule.kind !== hit.rule.kind || !isRelative(row, hit.from))
      .filter(
        (hit, n, all) =>
          !(
            isWithoutRoots(row, hit) &&
            (all[n - 1]?.rule.kind === 'loss' ||
              (n > 0 && isLeftOut(row, hit.from - 2)) ||
              // "Those 3 with no roots I chucked".
              (all[n + 1]?.rule.kind === 'loss' && row[hit.from - 2]?.is === 'count'))
          ),
      )
      .filter((hit, n, all) => !isWithRoots(row, hit, all[n - 1], all[n + 1]))
      .filter((hit, n, all) => !isSameFate(row, all[n - 1], hit))
      .filter((hit, n) => n === 0 || !isWhichWeTook(row, hit))
      .filter((hit, n, all) => !isHowCut(row, all[n - 1], hit))
      .filter((hit) => !isWhichOnes(row, hit))
      .filter((hit, n, all) => !(hit.rule.kind === 'check' && isThatRooted(row, hit, all[n + 1])))
      .filter((hit, n, all) => !isForHardening(row, hit, all[n + 1]))
      .filter((hit, n, all) => !isOfWhatKind(row, hit, all[n - 1]))
  );
}

/** "Potted on 8 well rooted salvias", "took 6 frosted purple heuchera": of what kind those are that the deed before it befell. */
function isOfWhatKind(row: readonly Piece[], hit: Hit, deed: Hit | undefined): boolean {
  if (deed?.rule.shape !== 'object') return false;
  // "Gave Joan 3 nicely rooted salvias".
  const count = row.findIndex((piece, at) => at >= deed.to && piece.is !== 'word');
  const plant = row.findIndex((piece, at) => at > count && piece.is !== 'word');
  if (row[count]?.is !== 'count' || count > deed.to + 2 || row[plant]?.is !== 'plant') return false;
  if (hit.from <= count || hit.to > plant + 1) return false;
  const words = row.slice(count + 1, plant).map((_, n) => wordAt(row, count + 1 + n));
  return words.length > 0 && onlyDescribes(words);
}

/** "Moved these and those to the cold frame to harden off": carried there for what is told behind. */
function isForHardening(row: readonly Piece[], hit: Hit, next: Hit | undefined): boolean {
  if (hit.rule.kind !== 'move' || next?.rule.kind !== 'hardenOff') return false;
  const between = row.slice(hit.to, next.to);
  const plants = between.filter(({ is }) => is === 'plant').length;
  const purpose = between.some(
    (piece, at) =>
      wordAt(between, at) === 'to' && /^(?:harden|toughen)$/.test(wordAt(between, at + 1)) && piece,
  );
  return plants > 1 && purpose && !between.some(({ is }) => is === 'break');
}

/** "Planted out the ones I took last August", "moved the Salt Harrier I potted on to the frame": which, behind another act. */
function isWhichWeTook(row: readonly Piece[], { from, to, rule }: Hit): boolean {
  const named = row[from - 2]?.is === 'plant' || /^(?:ones|lot|batch|cuttings)$/.test(wordAt(row, from - 2));
  if (!named || !/^(?:i|we)$/.test(wordAt(row, from - 1))) return false;
  // "…, and off the Tallow Bell I took six": what was taken behind, and off what.
  if (row[to]?.is === 'count' && sourceBefore(row, from - 2) !== undefined) return false;
  if (wordAt(row, from) === 'took') return true;
  // "Watered the Salt Harrier I potted on six Tallow Bell" runs two deeds together.
  const behind = row.slice(to, to + 3).some(({ is }) => is === 'plant' || is === 'count');
  return rule.shape === 'object' && /^(?:the|those|my)$/.test(wordAt(row, from - 3)) && !behind;
}

/** "Took six Salt Harrier cut just under a node": how they were taken. */
const isHowCut = (row: readonly Piece[], before: Hit | undefined, { rule, from, to }: Hit): boolean =>
  before?.rule.kind === 'strike' &&
  rule.kind === 'strike' &&
  /^(?:cut|trimmed|snipped|sliced)$/.test(wordAt(row, from)) &&
  to === from + 1 &&
  /^(?:plant|when|cutting)$/.test(row[from - 1]?.is ?? '') &&
  !row.slice(to).some(({ is }) => is === 'plant' || is === 'count');

/** "The six Salt Harrier I potted on are doing well", "of the twenty I potted on, three wilted": which. */
function isWhichOnes(row: readonly Piece[], { from, to }: Hit): boolean {
  const who = /^(?:have|had|just|only|last)$/.test(wordAt(row, from - 1)) ? from - 2 : from - 1;
  const named = row[who - 1];
  if (!/^(?:i|we|i've|we've)$/.test(wordAt(row, who))) return false;
  // "All planted out, bar one I gave to Nuala": of that one a deed of its own is told.
  const bar = /^(?:the|those)$/.test(wordAt(row, who - 2)) ? who - 3 : who - 2;
  if (bar > 0 && excepts(row, bar)) return false;
  if (
    named?.is !== 'plant' &&
    named?.is !== 'count' &&
    !/^(?:ones|lot|cuttings|batch)$/.test(wordAt(row, who - 1))
  )
    return false;
  // "Of the Salt Harrier I have lost five" tells how many of them.
  // "Of my twelve Salt Harrier, two I gave to Pat" tells of the two.
  const isPart = named?.is === 'count' && row.slice(0, who - 1).some(({ is }) => is === 'count');
  if (/^(?:of|out)$/.test(wordAt(row, 0)) && !isPart)
    return (
      named?.is !== 'plant' ||
      !row.slice(from, from + 4).some(({ is }) => is === 'count') ||
      row
        .slice(to)
        .some((piece) => piece.is === 'break' || (piece.is === 'word' && piece.verb?.form === 'past'))
    );
  let end = to;
  while (
    row[end]?.is === 'when' ||
    row[end]?.is === 'size' ||
    /^(?:on|up|out|into|in)$/.test(wordAt(row, end))
  )
    end++;
  // "The two I gave to Pat are doing well".
  if (/^(?:to|with)$/.test(wordAt(row, end)) && wordAt(row, end + 1) !== '')
    end += BEFELL.test(wordAt(row, end + 2)) ? 2 : 3;
  while (/^(?:all|both|already|now|since|just|then)$/.test(wordAt(row, end))) end++;
  return BEFELL.test(wordAt(row, end));
}

/** What is told of plants, by a word that no grower is the subject of. */
const BEFELL =
  /^(?:are|is|have|has|look|looks|looked|were|was|seem|seems|died|rotted|wilted|rooted|failed|collapsed|flopped|keeled|shrivelled|survived|snapped|went|got|perished|croaked)$/;

/** "Binned one that had gone to mush": says again what befell those just told of. */
function isRelative(row: readonly Piece[], from: number): boolean {
  let at = from - 1;
  while (/^(?:had|have|has|was|were|already|just|all)$/.test(wordAt(row, at))) at--;
  return /^(?:that|which|that'd|thatd|that's|thats|that've|thatve)$/.test(wordAt(row, at)) && at > 0;
}

/** "Two wilted and died": what became of them, in two words. */
const isSameFate = (row: readonly Piece[], before: Hit | undefined, { rule, from }: Hit): boolean =>
  before?.rule.kind === 'loss' &&
  rule.kind === 'loss' &&
  before.rule.shape === 'subject' &&
  rule.shape === 'subject' &&
  before.to === from - 1 &&
  wordAt(row, before.to) === 'and';

/** "The Salt Harrier that rooted have been potted on": which were potted on. */
const isThatRooted = (row: readonly Piece[], { from, to }: Hit, next: Hit | undefined): boolean =>
  // "All the Salt Harrier with roots went into 9cm pots".
  (next !== undefined &&
    wordAt(row, from) === 'with' &&
    /^(?:went|go|got|are|is|were|was|have|has|now|all)$/.test(wordAt(row, to))) ||
  (/^(?:that|which)$/.test(wordAt(row, /^(?:have|had)$/.test(wordAt(row, from - 1)) ? from - 2 : from - 1)) &&
    (next ? /^(?:have|has|are|were|was|is|got|went)$/ : /^(?:look|looks|seem|seems)$/).test(wordAt(row, to)));

/** "All potted, bar the three with no roots": which were not. */
const isLeftOut = (row: readonly Piece[], at: number): boolean =>
  row[at]?.is === 'count' && excepts(row, /^(?:the|those)$/.test(wordAt(row, at - 1)) ? at - 2 : at - 1);

/** "Doreen gave me three plants with roots", "has brought me three with roots": which came, no look at them. */
const isWithRoots = (
  row: readonly Piece[],
  { rule, to, own }: Hit,
  ...beside: (Hit | undefined)[]
): boolean =>
  rule.kind === 'check' &&
  beside.some(
    (hit) =>
      hit &&
      /^(?:stock|receive)$/.test(hit.rule.kind) &&
      row.slice(hit.from, to).every(({ is }) => is !== 'break'),
  ) &&
  own.some((at) => /^roots?$/.test(wordAt(row, at))) &&
  [2, 3, 4].some((n) => wordAt(row, to - n) === 'with');

/** "Dumped the 18 with no roots": which were dumped, no look at the others. */
function isWithoutRoots(row: readonly Piece[], { rule, from }: Hit): boolean {
  return rule.kind === 'check' && rule.rooted === 'none' && /^(?:with|without)$/.test(wordAt(row, from - 1));
}
