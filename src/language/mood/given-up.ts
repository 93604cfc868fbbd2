/**
 * Doings named and not done: put off, given up, owed still or only wanted ("postponed potting on", "gave the watering a
 * miss", "need 15 potted by Friday").
 */
import type { Clause } from '../clauses/clauses.js';
import { endsAt, wordAt } from '../grammar/rule.js';
import { leading } from '../grammar/runs.js';
import { anyOf, opening, whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

/** "Postponed potting on", "put off the watering". */
const PUT_OFF = anyOf`
  postpon(e|ed|ing)|deferred|shelved|abandoned|scrapped|ditched|stopped|quit|missed|against
  cancell?ed|cancelling|skipp(ed|ing)|delay(ed|ing)
  (put|putting|call(ed|ing)|begged|cried|hold|holding|held) (off|back on|off on)
  gave up|given up|giving up|giving up on
`;

/** "Dodged repotting", "got out of the watering". */
const KEPT_CLEAR_OF = anyOf`
  dodg(ed|ing)|duck(ed|ing)|swerved|resisted|resisting|bailed on|better of
  (talked|got|wriggled|backed|chickened|weaselled|bottled)( \w+)? (out of|out on)
  (stopped|kept|prevented|saved|spared|put) \w+( \w+)?( from| off)?
  rather than|instead of
`;

/** "Hate pricking out", "dreaming of planting out", "get on with potting". */
const ONLY_IN_MIND = anyOf`
  dread(ed|ing)?|hate[ds]?|hating|fanc(y|ied)|contemplat(ed|ing)|remember|recall|mind about
  (dream(ed|t|ing)?|thinking|fan|talk) of|believer in|believe in|swear by|swore by|keen on
  (sick|tired) of|fed up (of|with)|looking forward to|(crack|get) on with|worth
`;

/** What the words before a doing end in where it was let be. */
const LET_BE = new RegExp(
  `(?:^| )(?:${PUT_OFF}|${KEPT_CLEAR_OF}|${ONLY_IN_MIND})(?: (?:the|my|our|any|all the|more))?$`,
);
/** So many words tell it. */
const LONGEST = 6;

/** "Decided against pinching", "rather than pot on": words that govern a doing and leave it undone. */
const isLetBe = (before: readonly string[], form: string | undefined): boolean =>
  (form === 'ing' || /^(?:than|of)$/.test(before.at(-1) ?? '')) &&
  LET_BE.test(before.slice(-LONGEST).join(' '));

/** "Took six Ember Fox instead of the Tallow Bell": the row without what something else stood in for. */
export function withoutInstead(row: readonly Piece[]): readonly Piece[] {
  const from = row.findIndex((_, at) =>
    /^(?:instead of|rather than)$/.test(`${wordAt(row, at)} ${wordAt(row, at + 1)}`),
  );
  if (from < 0) return row;
  let to = from + 2;
  while (row[to]?.is === 'count' || /^(?:the|my|our|of|in|to|into|any|some)$/.test(wordAt(row, to))) to++;
  const named = row[to]?.is;
  return named === 'plant' || named === 'place' ? [...row.slice(0, from), ...row.slice(to + 1)] : row;
}

/** "Started potting on, but the phone went before I'd done one": nothing came of what was begun. */
export function isCutOff(row: readonly Piece[]): boolean {
  const at = row.findIndex(
    (_, n) =>
      wordAt(row, n) === 'before' &&
      (/^(?:i'd|we'd)$/.test(wordAt(row, n + 1)) ||
        /^(?:i|we) (?:had|could|got)$/.test(`${wordAt(row, n + 1)} ${wordAt(row, n + 2)}`)),
  );
  return (
    at >= 0 &&
    row.slice(at, at + 8).some(
      (piece, n) =>
        (piece.is === 'count' && piece.quantity.value === 1 && row[at + n + 1]?.is !== 'plant') ||
        /^(?:begun|started)$/.test(wordAt(row, at + n)) ||
        // No "before I had any breakfast".
        (/^(?:any|anything|single)$/.test(wordAt(row, at + n)) && endsAt(row, at + n + 1)),
    )
  );
}

/** "… got rained off", "… has to wait", "… a miss". */
const COMES_OF_IT = opening`
  ${leading`
    was|is|were|are|has|have|had|been|got|gets|getting|being|be|to|will
    all|now|then|therefore|again|it|really
  `}${anyOf`
    postponed|cancell?ed|called off|put (off|back|on hold)|on hold|held up|deferred|delayed|suspended
    abandoned|shelved|scrapped|skipped|scuppered|rained off|snowed off
    a (miss|swerve|body swerve|pass)|the swerve
    (next|first|top|still|high) on|on (the|my) (list|cards)|next up|a job for|(tomorrow|today|saturday|sunday)'s job
    ((can|must|may|have to) )?wait
    (did not|didn't|never|not) (happen|happened|get done|got done|come off)
  `}
`;

/** What a doing is named with. */
const NAMED_WITH = /^(?:of|the|my|our|on|out|up|over|off|from|cuttings|plants|lot|batch)$/;

const isDoing = (piece: Piece | undefined): boolean => piece?.is === 'word' && piece.verb?.form === 'ing';

/** "The watering got rained off", "gave the watering a miss": what is told behind a doing came of it instead. */
function isCalledOff(pieces: readonly Piece[], { hit, to }: Clause): boolean {
  if (!hit?.own.some((own) => isDoing(pieces[own]))) return false;
  let at = hit.to;
  while (
    at < to &&
    (/^(?:plant|place|count|when)$/.test(pieces[at]?.is ?? '') || NAMED_WITH.test(wordAt(pieces, at)))
  )
    at++;
  return COMES_OF_IT.test(
    pieces
      .slice(at, at + LONGEST)
      .flatMap((piece) => (piece.is === 'word' ? [piece.text] : []))
      .join(' '),
  );
}

/** Whether words around the head say that it was not done. */
export function isGivenUp(
  pieces: readonly Piece[],
  clause: Clause,
  before: readonly string[],
  form: string | undefined,
): boolean {
  return isLetBe(before, form) || isCalledOff(pieces, clause);
}

const WANTS =
  /^(?:need|needs|needed|needing|want|wants|wanted|wanting|require|requires|required|requiring|owed|owes)$/;
const HOPES = whole`
  need|want|have|has|got|hope|hoping|aim|aiming|plan|planning|like|love|going|intend|trying
  wanted|hoped|needed|planned|meant
`;

/** What may stand between a wish and the plants it is for. */
const WHICH = whole`
  the|my|our|all|of|them|these|those|it|both|more|another|some|about|at|least|around
  see|have|get|be|being|properly|well|nicely|safely|and
  cuttings|plants|ones|lot|lots|batch|rest|others|whole
`;

/** "Need 15 Salt Harrier potted by Friday", "60 Loud Uncle required potted": the state that a wish is for. */
export function isWished(pieces: readonly Piece[], { from, hit }: Clause): boolean {
  let at = (hit?.from ?? from) - 1;
  while (
    at > from &&
    (/^(?:plant|place|count|when)$/.test(pieces[at]?.is ?? '') || WHICH.test(wordAt(pieces, at)))
  )
    at--;
  return (
    at >= from &&
    // No "the six I wanted have rooted".
    ((WANTS.test(wordAt(pieces, at)) && wordAt(pieces, at + 1) !== 'have') ||
      // "Got to have 24 hardened off"; no "had to get six potted".
      (wordAt(pieces, at) === 'to' && HOPES.test(wordAt(pieces, at - 1))) ||
      // "I'd like 15 potted"; no "looks like six rooted".
      (/^(?:like|love|prefer)$/.test(wordAt(pieces, at)) &&
        /^(?:i'd|we'd|would|i|we)$/.test(wordAt(pieces, at - 1))))
  );
}

/** "Tallow Bell overdue a pinch": owed to them still. */
export const isOwed = (before: readonly string[]): boolean =>
  /(?:^| )(?:over)?due(?: for| for an?| an?| some| its| their)(?: good| proper)?$/.test(
    before.slice(-4).join(' '),
  );
