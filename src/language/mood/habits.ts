/** What is told as it always goes, and was not done once: "as a rule the Salt Harrier gets potted at five weeks". */
import { isBoundary } from '../clauses/boundaries.js';
import type { Clause } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import { anyOf, within } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { plantsIn } from '../sentences/sentences.js';

const HABIT = within`
  as a (general )?rule|in general|by and large|on the whole|(most|some|other) years|every year|each year
  usually|normally|generally|typically|traditionally|always (gets?|are|is|have|has|do|does)
`;
/** How often, which makes a habit of what is told in the present ("every day I mist", "on Sundays I water"). */
const HOW_OFTEN = within`
  (every|each|most) (single )?${anyOf`
    day|morning|evening|night|week|weekend|month|spring|summer|autumn|fall|winter|time
  `}
  most (days|mornings|evenings|nights|weeks|weekends|springs|summers|autumns|winters|times)
  (mon|tues|wednes|thurs|fri|satur|sun)days|weekends
  always|often|sometimes|occasionally|rarely|seldom|mostly|mainly|only ever|(tend|like|prefer|try) to
`;
/** Behind what is told in the present: "I take cuttings when the moon's waxing", "I pinch them three times". */
const WHENEVER = /\b(?:when|whenever|if|until|till|unless|once|twice|times)\b/;
/** What is only said. */
const SAYS =
  /\b(?:say|says|reckon|reckons|swear|swears|recommend|recommends|tell you|tells you|tell me|tells me)\b/;
/** Straight before what is told, in whatever time: "I've always potted on in May"; no "as always, took five". */
const EVER = /^(?:always|often|usually|rarely|seldom|sometimes|generally|normally)$/;

/**
 * Whether the words around a head say so: "most years, we lost two", "I take mine in August as a rule"; "water the porch
 * every day" asks for it.
 */
export function isHabit(pieces: readonly Piece[], from: number, { hit, to }: Clause): boolean {
  const head = hit?.from ?? to;
  const word = pieces[head];
  const words = wordsOf(pieces.slice(from, head));
  const told = words.join(' ');
  if (words.at(-1) === 'gets' || (HABIT.test(told) && !isApart(pieces.slice(from, head), word))) return true;
  if (EVER.test(words.at(-1) ?? '') && words.at(-2) !== 'as') return true;
  if (word?.is !== 'word' || word.verb?.form !== 'base') return false;
  const behind = /(?:^| )(?:i|we|you|they|people|folk)(?: (?:only|just|never|still|first|then))?$/.test(told)
    ? wordsOf(pieces.slice(hit?.to ?? to, to)).join(' ')
    : '';
  return HOW_OFTEN.test(told) || HABIT.test(behind) || HOW_OFTEN.test(behind) || WHENEVER.test(behind);
}

/** "On the whole looking good, lost two": of a past deed only its own part counts, and an adverbial alone before it. */
function isApart(before: readonly Piece[], head: Piece | undefined): boolean {
  const last = before.findLastIndex(({ is }) => is === 'break');
  if (last < 1 || head?.is !== 'word' || head.verb?.form !== 'past') return false;
  const talk = before.slice(0, last);
  return (
    !HABIT.test(wordsOf(before.slice(last)).join(' ')) &&
    talk.every((piece) => piece.is === 'word' && piece.verb?.form !== 'past') &&
    wordsOf(talk).join(' ').replace(HABIT, '').trim() !== ''
  );
}

/**
 * "I usually pot on in May, potted on six Salt Harrier yesterday": the row without the habit, whose day is none of the
 * deed's; the same of hearsay ("they say 9cm, but I potted them into 1 litre"). A plant that only the habit names opens it,
 * a place stands for its "it". As it was where the habit itself is told in the past ("every year we took ten, lost five") or
 * no deed stands behind it.
 */
export function withoutHabit(row: readonly Piece[]): readonly Piece[] {
  const counted = countedHabit(row);
  if (counted) return counted;
  const deed = row.findIndex(toldInPast);
  const joint = row.slice(0, Math.max(0, deed)).findLastIndex((_, at) => isBoundary(row[at]));
  if (joint < 1) return row;
  const habit = row.slice(0, joint);
  const words = wordsOf(habit).join(' ');
  const isHearsay =
    SAYS.test(words) && wordAt(row, joint) === 'but' && /^(?:i|we)$/.test(wordAt(row, joint + 1));
  if (!isHearsay && !(habit.some(tellsDoing) && (HABIT.test(words) || HOW_OFTEN.test(words)))) return row;
  const [place] = habit.filter(({ is }) => is === 'place');
  const rest = row
    .slice(joint + 1)
    .map((piece, at, all) => (place && wordAt(all, at) === 'it' ? place : piece));
  const [named, another] = plantsIn(habit);
  return named && !another && plantsIn(rest).length === 0 ? [named, ...rest] : rest;
}

/** "I always take heel cuttings of the lavender: six today": what is always done, and how many there were this time. */
function countedHabit(row: readonly Piece[]): readonly Piece[] | undefined {
  const joint = row.findIndex(({ is }) => is === 'break');
  const count = row[joint + 1];
  if (joint < 1 || count?.is !== 'count' || count.quantity.value === undefined) return undefined;
  const habit = row.slice(0, joint);
  const behind = row.slice(joint + 1);
  const words = wordsOf(habit).join(' ');
  const isDated = behind.some((piece) => piece.is === 'when' && typeof piece.when.past === 'string');
  const isDeed = behind.some((piece) => piece.is === 'word' && piece.verb !== undefined);
  if (!isDated || isDeed || !habit.some(tellsDoing) || !(HABIT.test(words) || HOW_OFTEN.test(words)))
    return undefined;
  return [
    ...habit.flatMap((piece): readonly Piece[] =>
      piece.is !== 'word'
        ? [piece]
        : EVER.test(piece.text)
          ? []
          : [tellsDoing(piece) && piece.verb ? { ...piece, verb: { ...piece.verb, form: 'past' } } : piece],
    ),
    ...row.slice(joint),
  ];
}

const toldInPast = (piece: Piece): boolean => piece.is === 'word' && piece.verb?.form === 'past';

/** "I lose some": more than an adverbial. */
const tellsDoing = (piece: Piece): boolean => piece.is === 'word' && piece.verb?.form === 'base';

/** Its words; a time keeps its own ("every morning", "Sundays"). */
const wordsOf = (pieces: readonly Piece[]): readonly string[] =>
  pieces.flatMap((piece) =>
    piece.is === 'word' ? [piece.text] : piece.is === 'when' ? [piece.when.words.toLowerCase()] : [],
  );
