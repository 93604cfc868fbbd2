/** Sentences that amendments look like and that put no note right. */
import { deedNouns } from '../grammar/entry-words.js';
import { OBSERVED } from '../grammar/remark.js';
import { wordAt } from '../grammar/rule.js';
import { whole, within } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { isSettable } from './settable.js';

/** What is wanted, hoped, still to come or seen of something else ("Ines wants 20, not 12", "4 are in bud, not 10"). */
const NOT_NOTED = within`
  wants?|wanted (?!to (say|put|write|type|log))|needs?|needed|asked for|hopes?|hoped|hoping|wish|wished
  would|could|will|i'll|we'll|they'll|going to|next (time|year|week|month|lot|batch|round)
  in bud|in flower|leaves|buds|shoots|people|only had
`;

/** What else may be counted: "three people", "ten minutes". */
const NO_PLANTS = whole`
  people|visitors|folk|friends|slugs|snails|aphids|bees|leaves|buds|flowers|bags|sacks
  texts|messages|emails|calls|bus|train|tram|cups|mugs|goes|attempts|typos
  degrees|pounds|quid|euros|dollars|minutes|hours|days|weeks|times
`;

/** "It was 28 in the greenhouse at midday", "the propagator was at 20, not 12": a place is warm or cold, and no note wrong. */
function isWarmth(line: string, pieces: readonly Piece[], not: number): boolean {
  const has = (...kinds: readonly Piece['is'][]) => pieces.some(({ is }) => kinds.includes(is));
  const denied = not < 0 ? undefined : pieces.slice(not + 1, not + 4).find(isSettable);
  return (
    has('place') &&
    has('count', 'celsius') &&
    !has('plant', 'pots', 'size') &&
    denied?.is !== 'place' &&
    /\bat \d|^(?:it's|it is|it was|it'll|was|only|still|the|change|should|shd|going)\b/.test(line)
  );
}

/** "Is really lovely this year": how it looks. */
const isLooks = (pieces: readonly Piece[]): boolean =>
  pieces.some(
    (piece, at) =>
      piece.is === 'word' &&
      OBSERVED.test(piece.text) &&
      /^(?:really|actually)$/.test(wordAt(pieces, at - 1)) &&
      /^(?:is|are|was|were|looks?|it's|they're)$/.test(wordAt(pieces, at - 2)),
  );

/** "It was Tuesday the vet came, not Monday": the day of somebody's visit; a parcel's is noted. */
const OF_A_VISIT =
  /^(?:\w+ )?(?:it|that) was (?:on )?\w+ (?:that |when )?(?:the|my|our|a|he|she) (?:(?!(?:plugs?|liners|delivery|parcel|order|consignment|box|plantname) )\w+ ){1,4}?(?:came|went|called|rang|visited|left|had|got|was|died)\b/;

/** "It wasn't Sunday we went to the show, it was Saturday": the day of something that no note tells. */
const OF_AN_OUTING =
  /^(?:\w+ ){0,3}?(?:it|that) (?:was|were|wasn't|weren't|was not) (?:on )?(?:\w+ ){1,4}?(?:that |when )?(?:i|we) (?:all |both )?(?:went|was|were|visited|saw|met|drove|called|rang|came|left|flew|stayed|slept|talked|spoke|heard|walked)\b/;

/** "The show was Saturday, not Sunday". */
const OF_AN_EVENT = new RegExp(
  `^(?:\\w+ ){0,2}?(?:the|my|our) (?!(?:${deedNouns}|plantname|cuttings?|slips|plugs?|liners|parcel|order|consignment|box|batch|lot|ones?|date|day|note|entry|last|first|second|other|pots?|trays?)\\b)\\w+ (?:was|wasn't|is|isn't) (?:on |not )*(?:yesterday|today|(?:mon|tues|wednes|thurs|fri|satur|sun)day)\\b`,
);

/** "It was me took the Tallow Bell, not Colm": who did it. */
const OF_THE_DOER = /^(?:\w+ ){0,3}?(?:it|that) (?:was|wasn't|was not) (?:me|you|him|her|us) \w/;

/** Whether the numbers are of wishes and plans, or of a place, and not of a note. */
export function isOfSomethingElse(line: string, pieces: readonly Piece[], not: number): boolean {
  return (
    [NOT_NOTED, OF_A_VISIT, OF_AN_OUTING, OF_AN_EVENT, OF_THE_DOER].some((what) => what.test(line)) ||
    isWarmth(line, pieces, not)
  );
}

/** "Those should have been watered yesterday": a job that nobody did. */
const isRegret = (line: string): boolean =>
  /\bshould(?: have|'ve| of) been (?:watered|fed|misted|aired|vented|shaded|covered|uncovered|checked)\b/.test(
    line,
  ) ||
  (/\bshould(?: have|'ve| of) been (?:pinched|potted|moved|planted|taken|brought|cut|struck|done|thinned|staked)\b/.test(
    line,
  ) &&
    !/^(?:\S+ )?(?:it|that|this) should\b/.test(line));

/** Lines that amendments look like and that put no note right. */
export function putsNothingRight(line: string, pieces: readonly Piece[], not: number): boolean {
  return (
    isOfSomethingElse(line, pieces, not) ||
    isLooks(pieces) ||
    // "Should have potted them on by now": not done, and nothing to put right.
    /^(?:(?:i|we) )?(?:should|ought to) have put (?:them|those|these)\b/.test(line) ||
    /^(?:(?:i|we) )?(?:should|ought to) have (?!been|said|read|put|written|told|logged)/.test(line) ||
    (not < 0 && isRegret(line)) ||
    /^(?:if|i'd|maybe|perhaps|i should|we should|you should)\b/.test(line) ||
    /\bmust be (?:a|an|the|some)\b/.test(line) ||
    // "Should have told you, gave two to Ines": told late.
    /^(?:sorry |oh )?(?:(?:i|we) )?(?:should have|should've|meant to have|ought to have) (?:told you|mentioned)\b(?! (?:it was |that was )?\d)/.test(
      line,
    ) ||
    // "That was one undo too many".
    /\btoo (?:many|much|far|late|soon)\b/.test(line) ||
    // "That should be it for today", "should be all right".
    /\bshould be (?:it|all|enough|plenty|fine|ok|okay|good|able)\b/.test(line) ||
    /\b(?:reckons?|says|said i|told me|thinks)\b/.test(line)
  );
}

/** "There were 20 people at the club". */
export function countsSomethingElse(pieces: readonly Piece[], at: number): boolean {
  const next = pieces[at + 1];
  return (
    pieces[at]?.is === 'count' && next?.is === 'word' && next.verb === undefined && NO_PLANTS.test(next.text)
  );
}
