/** What is told on behind the doings of another is theirs too: "Bernie reckons she took forty and only two struck". */
import type { Clause } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import type { Mood } from './case.js';
import type { Piece } from '../pieces/pieces.js';
import { plantsIn } from '../sentences/sentences.js';
import { FOLK, KIN } from './somebody-else.js';

/** The grower, and what is the grower's. */
const OURS = /^(?:i|we|i've|we've|i'd|we'd|i'm|me|us|my|our|mine|ours|myself|ourselves)$/;
/** Begins what was done upon it. */
const UPON_IT = /^(?:so|hence|therefore|then|now|today|anyway|meanwhile|whereas|instead)$/;
const OTHERS =
  /^(?:she|he|they|she'd|he'd|they'd|she's|he's|they've|her|his|their|hers|theirs|someone|somebody)$/;

/** The moods of clauses, with what goes on from the doings of another told as heard of, like those. */
export function asHeardOf(
  pieces: readonly Piece[],
  clauses: readonly Clause[],
  own: readonly Mood[],
): readonly Mood[] {
  const moods = [...own];
  for (let n = 1; n < clauses.length; n++)
    if (moods[n - 1] === 'reported' && moods[n] === 'done' && goesOn(pieces, clauses, n))
      moods[n] = 'reported';
  return moods;
}

/** In the same sentence, of nobody else and of no plant by its name. */
function goesOn(pieces: readonly Piece[], clauses: readonly Clause[], n: number): boolean {
  const [before, here] = [clauses[n - 1], clauses[n]];
  if (!before?.hit || !here?.hit || before.sentence !== here.sentence) return false;
  const said = pieces.slice(before.from, here.hit.from);
  const ofSomebody = (word: string): boolean => OTHERS.test(word) || KIN.test(word) || FOLK.test(word);
  if (!said.some((_, at) => ofSomebody(wordAt(said, at).replace(/'s$/, '')))) return false;
  const between = pieces.slice(before.hit.to, here.hit.from);
  const behind = pieces.slice(here.hit.from, here.to);
  const joined =
    between.some((_, at) => /^(?:and|but|though|yet)$/.test(wordAt(between, at))) ||
    here.hit.rule.shape === 'subject';
  return (
    joined &&
    !between.some((_, at) => OURS.test(wordAt(between, at)) || UPON_IT.test(wordAt(between, at))) &&
    !behind.some((_, at) => OURS.test(wordAt(behind, at))) &&
    plantsIn(pieces.slice(lastJoint(pieces, before, here), here.to)).length === 0
  );
}

/** Where the clause's own words begin, behind the joint before it. */
function lastJoint(pieces: readonly Piece[], before: Clause, here: Clause): number {
  const from = before.hit?.to ?? before.from;
  const to = here.hit?.from ?? here.to;
  for (let at = to - 1; at >= from; at--)
    if (pieces[at]?.is === 'break' || /^(?:and|but|though|yet)$/.test(wordAt(pieces, at))) return at;
  return from;
}
