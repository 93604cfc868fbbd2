/** The acts that a row of pieces tells of: its clauses, their moods, and what each names or carries over. */
import { acrossTheRow } from './across-row.js';
import { tellDone } from './done.js';
import { lackRoots, tellElided, tellsLook, tellUnrooted } from './looks.js';
import type { Act, Telling } from './telling.js';
import { pastDay } from './day-of-all.js';
import { clausesOf } from '../clauses/clauses.js';
import { isSupposed } from '../mood/conditions.js';
import { draftsOf } from './drafting.js';
import { isCutOff } from '../mood/given-up.js';
import { findHits } from '../grammar/hits.js';
import { rules } from '../grammar/rules.js';
import { moodsMeant } from '../mood/moods-meant.js';
import { allButKept } from '../sentences/kept-back.js';
import { doneAndLeft, leftForLater } from './left-undone.js';
import type { Note } from '../note.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { asLogged } from './as-logged.js';
import { standingApart } from './standing-apart.js';
import type { Utterance } from '../pieces/utterance.js';

export interface Acts {
  readonly proposals: readonly Proposal[];
  /** How many acts were named, done or not. */
  readonly hits: number;
}

export function proposeActs(
  row: readonly Piece[],
  earlier: readonly Proposal[],
  utterance: Utterance,
  note: Note,
): Acts {
  if (isSupposed(row) || isCutOff(row)) return { proposals: [], hits: findHits(rules, row).length };
  const { done, later } = doneAndLeft(row);
  const { proposals, hits } = actsOfDay(done, earlier, utterance, note);
  return { proposals: [...acrossTheRow(proposals, done, row), ...leftForLater(later, utterance)], hits };
}

/** "Saturday: order picked and away: …": words that must open the row do so behind its day, too. */
function actsOfDay(
  row: readonly Piece[],
  earlier: readonly Proposal[],
  utterance: Utterance,
  note: Note,
): Acts {
  const acts = actsApart(row, earlier, utterance, note);
  const behind = pastDay(row);
  return acts.proposals.length > 0 || behind === 0
    ? acts
    : actsApart(row.slice(behind), earlier, utterance, note);
}

/** What stands by itself is read by itself. */
function actsApart(
  row: readonly Piece[],
  earlier: readonly Proposal[],
  utterance: Utterance,
  note: Note,
): Acts {
  const together = actsTogether(row, earlier, utterance);
  const parts = standingApart(row, asLogged(together.proposals, note), (part, before) => {
    const earlier = before ? actsTogether(before, [], utterance).proposals : [];
    return asLogged(actsTogether(part, earlier, utterance).proposals, note);
  });
  if (!parts) return together;
  const before = actsTogether(parts[0], earlier, utterance);
  const behind = actsApart(parts[1], [...earlier, ...before.proposals], utterance, note);
  return { proposals: [...before.proposals, ...behind.proposals], hits: before.hits + behind.hits };
}

function actsTogether(pieces: readonly Piece[], earlier: readonly Proposal[], utterance: Utterance): Acts {
  const clauses = clausesOf(pieces, rules);
  const moods = moodsMeant(pieces, clauses);
  const telling: Telling = { pieces, clauses, moods, utterance, earlier, proposals: [] };
  const acts = clauses.flatMap((clause, n) => (clause.hit ? [{ n, clause, hit: clause.hit }] : []));
  for (const act of acts) tell(telling, act);
  return { proposals: telling.proposals, hits: acts.length };
}

function tell(telling: Telling, act: Act): void {
  const { pieces, clauses, moods } = telling;
  const { n, clause, hit } = act;
  const { kind, sense } = hit.rule;
  const mood = moods[n] ?? 'done';
  if (kind === 'aside') tellAside(telling, act);
  else if (mood === 'done') {
    if (tellsLook(telling, act)) return;
    if (lackRoots(telling, act)) return void tellUnrooted(telling, act);
    tellDone(telling, act, kind);
    tellElided(telling, act);
  } else if (mood === 'denied' && kind === 'check' && sense !== 'look') tellUnrooted(telling, act);
  else {
    // "Wanted to check the Salt Harrier, found roots on three", "meant to take ten Ember Fox but took six": theirs.
    const again = mood === 'supposed' && clauses[n + 1]?.hit?.rule.kind === kind;
    if (sense === 'look' || again)
      telling.plantNamed = draftsOf(pieces, clause)[0]?.plant ?? telling.plantNamed;
  }
}

/** "Kept two back": nothing of its own, but those of the act before it, and a plant for what follows. */
function tellAside(telling: Telling, { clause, hit }: Act): void {
  const { pieces, proposals } = telling;
  const [aside] = draftsOf(pieces, clause);
  const others = allButKept(proposals.at(-1), hit.rule, aside);
  if (others) proposals[proposals.length - 1] = others;
  telling.plantNamed = aside?.plant ?? telling.plantNamed;
  const isLook = hit.rule.sense === 'sample';
  telling.lookedAt = isLook ? aside?.quantity?.value : undefined;
  telling.lookedOn = isLook ? (aside?.when ?? telling.lookedOn) : telling.lookedOn;
}
