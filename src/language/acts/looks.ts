/** Looks told before what they found, looks without their verb, and roots that are not there. */
import type { Clause } from '../clauses/clauses.js';
import { draftsOf } from './drafting.js';
import type { Draft } from './drafting/draft.js';
import { plantsWithNumber } from './elided.js';
import { wordAt } from '../grammar/rule.js';
import { lookBefore } from './number-meant.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { type Act, carriedHere, endOf, type Telling } from './telling.js';

/** "Tipped out ten, six had roots": ten were looked at. Whether a look was told that the next clause tells the find of. */
export function tellsLook(telling: Telling, { n, clause, hit }: Act): boolean {
  const found = telling.clauses[n + 1];
  if (hit.rule.sense !== 'look' || found?.hit?.rule.kind !== 'check') return false;
  const look = lookBefore(telling.pieces, clause, found);
  if (!look) return false;
  telling.plantNamed = look.plant ?? telling.plantNamed;
  telling.lookedAt = look.quantity?.value;
  telling.lookedOn = look.when;
  return true;
}

/** "The Salt Harrier haven't rooted": a check that found none. */
export function tellUnrooted(telling: Telling, { clause, hit }: Act): void {
  const { pieces, proposals } = telling;
  const drafts = draftsOf(pieces, clause);
  const [draft] = drafts;
  // "Six of them haven't rooted": of the others nothing is said.
  if (draft?.quantity?.value !== undefined && draft.quantity.value > 0 && !isNotOne(pieces, clause)) {
    telling.unrooted = draft.quantity;
    telling.unrootedOf = drafts.length > 1 ? drafts : undefined;
    telling.plantNamed = draft.plant ?? telling.plantNamed;
    return;
  }
  // "Binned eight of them, never rooted": why those went.
  if (draft?.plant === undefined && isWhyLost(pieces, clause, proposals.at(-1))) return;
  const carried = draft?.plant === undefined ? carriedHere(telling) : undefined;
  const when = draft?.when ?? telling.lookedOn;
  proposals.push({
    kind: 'check',
    draft: {
      ...(draft?.plant ? { plant: draft.plant } : {}),
      ...(when ? { when } : {}),
      ...(telling.lookedAt === undefined ? {} : { quantity: { value: 0, outOf: telling.lookedAt } }),
    },
    slots: telling.lookedAt === undefined ? { rooted: 'none' } : {},
    rule: `not ${hit.rule.name}`,
    ...(carried ? { carried } : {}),
  });
}

/** "Three Salt Harrier had no roots": so many of them, told as "haven't rooted" is. */
export function lackRoots({ pieces }: Telling, { clause, hit }: Act): boolean {
  if (hit.rule.name !== 'no roots' || !LACKING.test(wordAt(pieces, hit.from - 1))) return false;
  const own = pieces.slice(clause.from, hit.from - 1);
  return (
    own.every(({ is }) => is !== 'break') &&
    draftsOf(pieces, clause).every(({ quantity }) => (quantity?.value ?? 0) > 0)
  );
}

const LACKING = /^(?:had|have|has|got|with|showed|showing|show|made|grew)$/;

/** What was thrown out behind several plants of which so many had no roots: so many of each. */
export function eachUnrooted(
  { unrootedOf }: Telling,
  kind: string,
  drafts: readonly Draft[],
): readonly Draft[] {
  const [only, another] = drafts;
  const isThose =
    kind === 'loss' &&
    only !== undefined &&
    another === undefined &&
    only.plant === undefined &&
    (only.quantity === undefined || only.quantity.whole === 'all');
  return isThose && unrootedOf
    ? unrootedOf.map(({ plant, quantity }) => ({
        ...only,
        ...(plant ? { plant } : {}),
        ...(quantity ? { quantity } : {}),
      }))
    : drafts;
}

/** "Not a root on one of the Soft Anchor": one stands for each of them. */
function isNotOne(pieces: readonly Piece[], clause: Clause): boolean {
  const own = pieces.slice(clause.from, clause.to);
  return own.some((_, at) => wordAt(own, at) === 'not' && /^(?:a|single)$/.test(wordAt(own, at + 1)));
}

/** Told of no plant behind a comma, straight behind a loss of so many. */
function isWhyLost(pieces: readonly Piece[], { from, hit }: Clause, before: Proposal | undefined): boolean {
  const start = hit?.from ?? from;
  return (
    before?.kind === 'loss' &&
    before.draft.quantity?.value !== undefined &&
    (pieces[start - 1]?.is === 'break' || pieces[start - 2]?.is === 'break')
  );
}

const DEEDS = /^(?:loss|strike|potOn|pinch|plantOut)$/;

/** "Checked the Salt Harrier, three rooted, Tallow Bell five", "Salt Harrier 2 dead, Tallow Bell all of them": the same of another plant. */
export function tellElided(telling: Telling, act: Act): void {
  const { pieces, proposals } = telling;
  const { kind } = act.hit.rule;
  // "Twenty Salt Harrier stuck, Tallow Bell fifteen".
  const isDeed = DEEDS.test(kind) && act.clause.subjectFirst && proposals.every((one) => one.kind === kind);
  const before = proposals.findLast((one) => one.kind === (isDeed ? kind : 'check'));
  if (!before) return;
  const { when } = before.draft;
  for (const found of plantsWithNumber(pieces, act.clause.to, endOf(telling, act))) {
    if (isDeed && (found.quantity?.value === 0 || found.quantity?.outOf !== undefined)) continue;
    const draft = { ...found, ...(when ? { when } : {}) };
    proposals.push({ kind: before.kind, draft, slots: {}, rule: '<plant> <count>, behind the like' });
    telling.plantNamed = found.plant;
  }
}
