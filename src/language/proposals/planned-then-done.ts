/** A deed told by the plan before it: "meant to take ten Salt Harrier, only got six in". */
import { clausesOf } from '../clauses/clauses.js';
import { draftsOf } from '../acts/drafting.js';
import type { Draft, OpenDraft } from '../acts/drafting/draft.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import { whole, within } from '../phrases.js';
import type { Piece, PlantWords } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { lineOf, LONGEST_TWOFOLD, type Sentence, sentenceOf } from '../sentences/sentences.js';
import { slotsOf } from '../slots.js';
import type { Utterance } from '../pieces/utterance.js';
import { withWhereTo } from '../acts/where-to.js';

const PLAN = within`
  meant to|meaning|going to|gonna|planned (to|on)|planning to|(hoped|hoping|wanted|intended|intending) to
  should have|should've|ought to have|supposed to|about to|(was|were) to|i'd|i would|we'd|we would
  (potting|pinching|moving|hardening)( \w+)? due|due (potting|pinching|moving|hardening)
`;
/** What is owed still, of which "got two" may be a gift. */
const OWED = /\b(?:(?:need|needs|want|wants|have|has|got) to|must)\b/;
/** "Did it", "did them all", "got six in"; what follows can only be a day, a place of its own or an aside. */
const ADVERB = /^(?:and|but|so|then|well|i|we|just|only|finally|actually|anyway|have|in|the|end|ended|up)$/;
const AFTER = whole`
  in|done|of|them|all|today|before|after|when|while|as|because|though|instead|anyway|at|by|with|and|but|so
  first|last|finally|straight|just
`;

/** A sentence and the next, "remember I said I'd shift them? Did it last night", as one. */
export function withDeeds(sentences: readonly Sentence[], utterance: Utterance): readonly Sentence[] {
  const joined: Sentence[] = [];
  for (const sentence of sentences) {
    const last = joined.at(-1);
    const length = (last?.pieces.length ?? 0) + sentence.pieces.length;
    if (last && length < LONGEST_TWOFOLD && isPlanned(last.line, deedAt(sentence.pieces, 0))) {
      const mark: Piece = { is: 'break', from: last.to, to: last.to, hard: false, mark: ',' };
      joined[joined.length - 1] = {
        ...sentenceOf([...last.pieces, mark, ...sentence.pieces], utterance),
        from: last.from,
        to: sentence.to,
      };
    } else joined.push(sentence);
  }
  return joined;
}

interface Deed {
  readonly verb: string;
  readonly count?: Draft['quantity'];
  readonly plant?: PlantWords;
  readonly to: number;
}

/** Whether a line tells the plan of a deed. */
const isPlanned = (line: string, deed: Deed | undefined): deed is Deed =>
  deed !== undefined && (PLAN.test(line) || (OWED.test(line) && deed.verb !== 'got'));

/** Where the words of doing end that open at `from`, with how many were done. */
function deedAt(pieces: readonly Piece[], from: number): Deed | undefined {
  let at = from;
  while (pieces[at]?.is === 'when' || ADVERB.test(wordAt(pieces, at))) at++;
  const verb = wordAt(pieces, at);
  if (!/^(?:did|done|got|managed)$/.test(verb)) return undefined;
  if (/^(?:the|my|our)$/.test(wordAt(pieces, at + 1)) && pieces[at + 2]?.is === 'plant') at++;
  const what = pieces[at + 1];
  const next = pieces[at + 2];
  const ends =
    next === undefined || /^(?:break|when|place)$/.test(next.is) || AFTER.test(wordAt(pieces, at + 2));
  if (!ends) return undefined;
  // "Need to pot on the Tallow Bell, did the Salt Harrier this morning".
  if (what?.is === 'plant') return /^d/.test(verb) ? { verb, plant: what.plant, to: at + 2 } : undefined;
  if (what?.is === 'count' && (what.quantity.value !== undefined || what.quantity.whole !== undefined))
    return what.quantity.value === 0 ? undefined : { verb, count: what.quantity, to: at + 2 };
  const it = /^(?:it|them|that|those|both|all)$/.test(wordAt(pieces, at + 1));
  return it && /^d/.test(verb) ? { verb, to: at + 2 } : undefined;
}

/** The plan's own day is none of the deed's. */
function withoutDay(planned: Draft): Draft {
  const rest: OpenDraft = { ...planned };
  delete rest.when;
  return rest;
}

/** "I'd shift", "meant to shift": as if it were told in the past, which most rules want. */
function asDone(piece: Piece, at: number, pieces: readonly Piece[]): Piece {
  return piece.is === 'word' &&
    piece.verb?.form === 'base' &&
    /^(?:to|i'd|we'd|would|gonna|just|i'll|we'll)$/.test(wordAt(pieces, at - 1))
    ? { ...piece, verb: { ...piece.verb, form: 'past' } }
    : piece;
}

/** The deed, by the plan's act, plant and place, with its own number and day; undefined where there is no plan or deed. */
export function plannedThenDone(sentence: Sentence, utterance: Utterance): readonly Proposal[] | undefined {
  const { pieces, line } = sentence;
  if (pieces.length > LONGEST_TWOFOLD || !(PLAN.test(line) || OWED.test(line))) return undefined;
  for (let at = 1; at < pieces.length; at++) {
    if (pieces[at]?.is !== 'break' && !/^(?:and|but|so|then)$/.test(wordAt(pieces, at))) continue;
    const deed = deedAt(pieces, pieces[at]?.is === 'break' ? at + 1 : at);
    if (!deed) continue;
    if (!isPlanned(lineOf(pieces.slice(0, at), utterance), deed)) return undefined;
    const plan = pieces
      .slice(0, at)
      .filter((_, n) => wordAt(pieces, n) !== 'due')
      .map(asDone);
    const clause = clausesOf(plan, rules).findLast(({ hit }) => hit && hit.rule.kind !== 'aside');
    const rule = clause?.hit?.rule;
    if (!clause || !rule || rule.kind === 'aside' || rule.kind === 'check') return undefined;
    const [planned, another] = draftsOf(plan, clause);
    if (!planned || another) return undefined;
    const { quantity, ...rest } = withWhereTo(withoutDay(planned), rule, plan, clause, utterance);
    const own = pieces.slice(at);
    const when = own.find((piece) => piece.is === 'when');
    const count = deed.count ?? quantity;
    const draft: Draft = {
      ...rest,
      ...(deed.plant ? { plant: deed.plant } : count === undefined ? {} : { quantity: count }),
      ...(when?.is === 'when' ? { when: when.when } : {}),
    };
    return [{ kind: rule.kind, draft, slots: slotsOf(rule, draft), rule: `${rule.name}, planned and done` }];
  }
  return undefined;
}
