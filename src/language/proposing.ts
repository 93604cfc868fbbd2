/** Sentences that are no act of the bench: questions, amendments, reminders, targets, temperatures, remarks, bare answers. */
import { addDays } from '../calendar/day.js';
import { localDay, localTime } from '../calendar/zone.js';
import type { AnswerValue } from '../ledger/entry.js';
import type { Clause } from './clauses.js';
import { type Draft, draftsOf } from './drafting.js';
import { AMEND_CUE, amendRules } from './grammar/amend.js';
import { answerRules, bareQuantity } from './grammar/answer.js';
import { OPENS_QUESTION, PREAMBLE, questionRules } from './grammar/question.js';
import { STRONG_CUE } from './grammar/reading.js';
import { IDLE, OBSERVED, OBSERVED_ALONE, STATIVE } from './grammar/remark.js';
import { findRemind } from './grammar/remind.js';
import { wordAt } from './grammar/rule.js';
import { targetRules, wantsAnAct } from './grammar/target.js';
import type { KnownBatch, Note } from './note.js';
import type { Piece, PieceOf, When } from './pieces.js';
import type { Proposal } from './refining.js';
import { firstOf, lineOf, plantsIn, type Sentence, textOf, trimmed } from './sentences.js';
import { isAmerican, type Utterance } from './utterance.js';

/** Patterns over a whole line look at no more than this many characters of it. */
const LINE_LIMIT = 300;

const wholeOf = (pieces: readonly Piece[]): Clause => ({
  from: 0,
  to: pieces.length,
  hit: undefined,
  sentence: 0,
  asked: false,
  subjectFirst: false,
});

/** A bare reply, where the note is nothing else. */
export function proposeAnswer(line: string, pieces: readonly Piece[], note: Note): Proposal | undefined {
  if (
    line === '' ||
    line.length > 80 ||
    plantsIn(pieces).length > 0 ||
    pieces.some(({ is }) => is === 'place' || is === 'size' || is === 'celsius')
  )
    return undefined;
  const when = firstOf(pieces, 'when')?.when;
  const rest = when === undefined ? line : lineWithoutTimes(line, when);
  const batch = pendingBatch(note);
  const propose = (value: AnswerValue | undefined, rule: string): Proposal => ({
    kind: 'answer',
    rule,
    slots: { ...(value === undefined ? {} : { value }) },
    draft: { ...(when ? { when } : {}), ...(batch ? { plant: undefinedless({ batch: batch.label }) } : {}) },
    ...(value === undefined ? { ask: 'value' } : {}),
  });
  const rule = answerRules.find(({ pattern }) => pattern.test(rest));
  if (rule) return propose(rule.value, rule.name);
  const quantity = bareQuantity(pieces);
  if (!quantity) return undefined;
  if (quantity.whole === 'all') return propose('all', 'all');
  if (quantity.allBut !== undefined || quantity.half) {
    const alive = batch?.count;
    const value =
      alive === undefined
        ? undefined
        : quantity.half
          ? alive % 2 === 0
            ? alive / 2
            : undefined
          : alive - (quantity.allBut ?? 0);
    return propose(
      value !== undefined && value >= 0 ? value : undefined,
      quantity.half ? 'half of them' : 'all but <number>',
    );
  }
  if (
    quantity.more &&
    batch?.rooted !== undefined &&
    quantity.value !== undefined &&
    note.context?.pending?.kind === 'check'
  )
    return propose(batch.rooted + quantity.value, '<number> more');
  if (quantity.value !== undefined && !quantity.negative && !quantity.vague)
    return propose(quantity.value === 0 ? 'none' : quantity.value, '<number>');
  return note.context?.pending || quantity.vague ? propose(undefined, 'a vague number') : undefined;
}

const undefinedless = <Value>(value: Value): Value => value;

function lineWithoutTimes(line: string, when: When): string {
  return line.replace(when.words.toLowerCase().replace(/\s+/g, ' '), ' ').replace(/\s+/g, ' ').trim();
}

function pendingBatch(note: Note): KnownBatch | undefined {
  const { batches = [], pending } = note.context ?? {};
  if (pending?.batch !== undefined) return batches.find(({ label }) => label === pending.batch);
  return pending && batches.length === 1 ? batches[0] : undefined;
}

/** Whether a sentence asks. */
export function isQuestion({ asked, line }: Sentence): boolean {
  const bare = line.replace(PREAMBLE, '');
  return (
    asked ||
    OPENS_QUESTION.test(bare) ||
    (OPENS_QUESTION.test(line) && !/^(?:what|how) (?:a|an|nice|lovely)\b/.test(line))
  );
}

export function proposeQuestion(sentence: Sentence, utterance: Utterance): readonly Proposal[] | undefined {
  const { pieces } = sentence;
  const plants = plantsIn(pieces);
  const place = firstOf(pieces, 'place')?.place;
  const full = sentence.line.slice(0, LINE_LIMIT);
  const bare = full.replace(PREAMBLE, '');
  const lines = [bare, full, afterBreak(pieces, utterance)];
  const asks = isQuestion(sentence);
  for (const rule of questionRules) {
    if (!asks && !rule.unmarked) continue;
    if (
      !asks &&
      !/^(?:help|due today|<plant> status|history of <plant>|how many <plant>|strike rate of <plant>)$/.test(
        rule.name,
      )
    )
      continue;
    if (
      rule.needsPlant &&
      plants.length === 0 &&
      !(place && /^how|^what's up|^any/.test(bare)) &&
      !/\b(?:cuttings|they|them|those|these|everything|plants|babies|batches|it)\b/.test(bare)
    )
      continue;
    if (
      !asks &&
      plants.length === 0 &&
      !/^(?:help|due today)$/.test(rule.name) &&
      !/^(?:history|count|total|tally)/.test(bare)
    )
      continue;
    if (
      !asks &&
      rule.name === 'history of <plant>' &&
      !/\bhistory\b|^(?:log|diary|record|summary|recap)\b/.test(bare)
    )
      continue;
    if (
      !asks &&
      rule.name === 'how many <plant>' &&
      !/\b(?:count|total|tally)$|^(?:count|total|tally|number of|how many)/.test(bare)
    )
      continue;
    if (
      !asks &&
      rule.name === 'strike rate of <plant>' &&
      !/\b(?:strike rate|success rate|rooting rate|percentage|what %|percent)\b/.test(bare)
    )
      continue;
    if (!lines.some((line) => rule.pattern.test(line))) continue;
    if (/^(?:do|did) you remember when|^remember when/.test(full)) return [];
    if (
      /^(?:how are you|how's it going|how are things|how do you do|what do you think|what's up|who are you|is this thing on|are you there|you there|can you hear me|is anyone there|what's new|you ok|are you ok|hello is this|is it me)\b/.test(
        bare,
      ) &&
      plants.length === 0
    )
      return [];
    const when = firstOf(pieces, 'when')?.when;
    const past =
      /^(?:history|count|rate)$/.test(rule.topic) || (rule.topic === 'when' && /\bdid\b/.test(bare));
    const span =
      when && rule.topic !== 'when'
        ? past && !/\bwill\b/.test(bare)
          ? (when.past ?? when.future)
          : (when.future ?? when.past)
        : undefined;
    const bounds =
      span === undefined || span === 'ask'
        ? {}
        : typeof span === 'string'
          ? { from: span, to: span }
          : { from: span.from, to: span.to };
    const slots = {
      topic: rule.topic,
      ...(place === undefined ? {} : { place }),
      ...(/^(?:now|right now|tonight)$/.test(when?.words ?? '') ? {} : bounds),
    };
    const told = plants.length === 0 ? [undefined] : mergedPlants(pieces);
    return told
      .slice(0, 3)
      .map((plant) => ({ kind: 'question', rule: rule.name, slots, draft: plant ? { plant } : {} }));
  }
  return asks ? [] : undefined;
}

function mergedPlants(pieces: readonly Piece[]): readonly NonNullable<Draft['plant']>[] {
  return draftsOf(pieces, wholeOf(pieces)).flatMap(({ plant }) => (plant ? [plant] : []));
}

function afterBreak(pieces: readonly Piece[], utterance: Utterance): string {
  const at = pieces.findIndex((piece) => piece.is === 'break');
  return at < 0
    ? ''
    : lineOf(pieces.slice(at + 1), utterance)
        .slice(0, LINE_LIMIT)
        .replace(PREAMBLE, '');
}

type Settable = 'count' | 'pots' | 'when' | 'place' | 'size' | 'plant' | 'celsius' | 'cutting' | 'medium';
const SETTABLE: ReadonlySet<Piece['is']> = new Set<Settable>([
  'count',
  'pots',
  'when',
  'place',
  'size',
  'plant',
  'celsius',
  'cutting',
  'medium',
]);

/** "Should be 5 not 4", "I meant Marble Wren", "rename X to Y". */
export function proposeAmend(
  sentence: Sentence,
  utterance: Utterance,
  hasAct: boolean,
): Proposal | undefined {
  const line = sentence.line.slice(0, LINE_LIMIT);
  const { pieces } = sentence;
  const not = pieces.findIndex(
    (_, at) =>
      at >= 0 &&
      (wordAt(pieces, at) === 'not' ||
        (wordAt(pieces, at) === 'instead' && wordAt(pieces, at + 1) === 'of')) &&
      (SETTABLE.has(pieces[at + 1]?.is ?? 'word') ||
        !/^(?:did|do|is|are|was|have|has|does|should|could|would)$/.test(wordAt(pieces, at - 1))),
  );
  const fits = amendRules.filter((rule) => rule.pattern.test(line) && (!rule.needsNot || not >= 0));
  const copula = not > 0 && /\b(?:was|were|is|are|it's|that's)\b/.test(line) && contrasted(pieces, not);
  if (fits.length === 0 && !copula) return undefined;
  const rule =
    fits.find(({ name }) => name === 'rename <plant> to <name>')?.name ?? fits[0]?.name ?? 'were <x> not <y>';
  if (rule === 'rename <plant> to <name>') return proposeRename(sentence, utterance);
  // "It was 28 in the greenhouse at midday": the weather of a place, not another number for a note.
  if (
    /^(?:it was|it is|it's|was|only|still)\b/.test(line) &&
    not < 0 &&
    plantsIn(pieces).length === 0 &&
    pieces.some(({ is }) => is === 'place') &&
    pieces.some(({ is }) => is === 'count' || is === 'celsius')
  )
    return undefined;
  if (
    /^(?:if|i'd|maybe|perhaps|i should|we should|you should)\b/.test(line) ||
    /\b(?:reckons?|says|said i|told me|thinks)\b/.test(line)
  )
    return undefined;
  const strong =
    AMEND_CUE.test(line) ||
    /^(?:should|make that|amend|change|update|edit|recount|miscounted|mistyped|it|that|they|not|was|call that|i said|i put|i mistyped|i miscounted|wrong)\b/.test(
      line,
    ) ||
    /\b(?:i meant|should have said|should (?:be|have been))\b/.test(line);
  if (hasAct && !strong && !(not > 0 && /\b(?:was|were|should)\b/.test(line) && contrasted(pieces, not)))
    return undefined;
  const set: Record<string, unknown> = {};
  const put = (piece: Piece | undefined, past = true): void => {
    if (!piece) return;
    switch (piece.is) {
      case 'count':
        if (piece.quantity.value !== undefined && !piece.quantity.vague)
          set[
            /\b(?:rooted|roots)\b/.test(line) && !/\b(?:cuttings|struck|took)\b/.test(line)
              ? 'rooted'
              : 'count'
          ] ??= piece.quantity.value;
        break;
      case 'pots':
        if (piece.pots !== undefined) set['pots'] ??= piece.pots;
        break;
      case 'when': {
        const date = past ? piece.when.past : piece.when.future;
        if (date !== undefined && date !== 'ask') set['date'] ??= date;
        break;
      }
      case 'place':
        set['place'] ??= piece.place;
        break;
      case 'size':
        set['potSize'] ??= piece.size;
        break;
      case 'celsius':
        set['celsius'] ??= piece.celsius;
        break;
      case 'cutting':
        set['cutting'] ??= piece.cutting;
        break;
      case 'medium':
        set['medium'] ??= piece.medium;
        break;
      case 'plant':
        for (const [slot, value] of Object.entries(piece.plant)) set[slot] ??= value;
        break;
      default:
    }
  };
  let plant: Draft['plant'];
  let when: When | undefined;
  if (not >= 0 && pieces.slice(not + 1).some((piece) => SETTABLE.has(piece.is))) {
    const denied = pieces.slice(not + 1).find((piece) => SETTABLE.has(piece.is));
    const wanted = [...pieces.slice(0, not)].reverse().find((piece) => piece.is === denied?.is);
    const after = wanted
      ? undefined
      : pieces
          .slice(pieces.indexOf(denied ?? (pieces[not] as Piece)) + 1)
          .find((piece) => piece.is === denied?.is);
    put(wanted ?? after);
    if (denied?.is === 'plant') plant = denied.plant;
    for (const piece of pieces) {
      if (piece === wanted || piece === denied) continue;
      if (piece.is === 'plant' && denied?.is !== 'plant') plant ??= piece.plant;
      if (piece.is === 'when' && denied?.is !== 'when') when ??= piece.when;
    }
  } else {
    const turn =
      rule === 'I said <x> but it was <y>'
        ? pieces.findIndex((_, at) => /^(?:but|and)$/.test(wordAt(pieces, at)))
        : -1;
    const cue = turn >= 0 ? turn + 1 : cueEnd(pieces);
    if (cue < 0) return undefined;
    const behind = pieces.slice(cue);
    const told = behind.filter((piece) => SETTABLE.has(piece.is));
    const onlyPlant = told.every(({ is }) => is === 'plant');
    for (const piece of told) {
      if (piece.is === 'plant' && !onlyPlant) plant ??= piece.plant;
      else if (
        turn >= 0 &&
        piece.is === 'count' &&
        pieces.slice(0, turn).some(({ is }) => is === 'pots') &&
        piece.quantity.value !== undefined
      )
        set['pots'] = piece.quantity.value;
      else put(piece);
    }
    for (const piece of pieces.slice(0, cue)) {
      if (piece.is === 'plant') plant ??= piece.plant;
      if (piece.is === 'when') when ??= piece.when;
    }
  }
  if (Object.keys(set).length === 0) return undefined;
  return {
    kind: 'amend',
    rule,
    slots: { set },
    draft: { ...(plant ? { plant } : {}), ...(when ? { when } : {}) },
  };
}

/** A piece before "not" of the same kind as the one behind it. */
function contrasted(pieces: readonly Piece[], not: number): boolean {
  const denied = pieces.slice(not + 1, not + 4).find((piece) => SETTABLE.has(piece.is));
  return denied !== undefined && pieces.slice(0, not).some((piece) => piece.is === denied.is);
}

/** The piece past the last word that announces the new value. */
function cueEnd(pieces: readonly Piece[]): number {
  let end = -1;
  for (let at = 0; at < pieces.length; at++) {
    const text = wordAt(pieces, at);
    if (
      /^(?:be|been|meant|mean|read|said|say|actually|really|correction|amend|to|was|were|mistyped|miscounted|last)$/.test(
        text,
      )
    )
      end = at + 1;
    else if (/^(?:that|it)$/.test(text) && /^(?:make|call)$/.test(wordAt(pieces, at - 1))) end = at + 1;
    else if (text === 'should' && end < 0) end = at + 1;
    if (
      end >= 0 &&
      pieces.slice(end).some((piece) => SETTABLE.has(piece.is)) &&
      !pieces.slice(end).some((_, n) => /^(?:be|been|to|meant|actually)$/.test(wordAt(pieces, end + n)))
    )
      return end;
  }
  return end;
}

function proposeRename(sentence: Sentence, utterance: Utterance): Proposal | undefined {
  const { pieces } = sentence;
  const plants = plantsIn(pieces);
  const old = plants[0];
  if (!old) return undefined;
  const to = pieces.findIndex(
    (piece, at) => piece.from >= old.to && /^(?:to|as|into)$/.test(wordAt(pieces, at)),
  );
  if (to < 0) return undefined;
  const name = trimmed(textOf(pieces.slice(to + 1), utterance)).replace(/^(?:the|be) /i, '');
  if (name === '') return undefined;
  const known = pieces[to + 1];
  const variety =
    known?.is === 'plant' &&
    pieces.length === to + 2 &&
    known.plant.variety?.toLowerCase() === name.toLowerCase() &&
    known.known
      ? known.plant.variety
      : name.replace(/(^|[\s-])(\p{Ll})/gu, (_, gap: string, letter: string) => gap + letter.toUpperCase());
  return {
    kind: 'amend',
    rule: 'rename <plant> to <name>',
    slots: { set: { variety } },
    draft: { plant: old.plant },
  };
}

/** A reminder and the part of the sentence before it. */
export function proposeRemind(
  sentence: Sentence,
  utterance: Utterance,
  note: Note,
): { readonly proposals: readonly Proposal[]; readonly before: readonly Piece[] } | undefined {
  const { pieces } = sentence;
  const found = findRemind(pieces) ?? bareTomorrow(pieces);
  if (!found) return undefined;
  const line = sentence.line.slice(0, LINE_LIMIT);
  const lead = pieces.slice(0, found.from);
  const leadWords = lead.map((_, at) => wordAt(lead, at));
  if (
    leadWords.some((word) =>
      /^(?:if|says|said|reckons|told|asked|thinks|would|wish|suggested|suggests|apparently|didn't|don't|not|never|might|could|forgot|haven't|wouldn't|forgotten|who|meant|supposed|used|advised|advises|recommends|says)$/.test(
        word,
      ),
    ) &&
    found.rule.beforeVerb
  )
    return undefined;
  const bounds = clauseBounds(pieces, found.from);
  const start = found.rule.beforeVerb ? bounds.from : Math.min(bounds.from, found.from);
  const end = nextDoneClause(pieces, found.to);
  const own = pieces.slice(start, end);
  const times = own.filter((piece): piece is PieceOf<'when'> => piece.is === 'when').map(({ when }) => when);
  const whenDay = times.find(({ future }) => future !== undefined);
  const named = times.find((each) => each.time !== undefined)?.time;
  // "Tonight at seven" is no morning.
  const evening =
    /\b(?:tonight|this evening|in the evening|after tea|after dinner|this afternoon|pm)\b/.test(line) &&
    !/\b(?:am|morning)\b/.test(line);
  const time =
    named !== undefined && evening && named < '12:00'
      ? `${String(Number(named.slice(0, 2)) + 12).padStart(2, '0')}${named.slice(2)}`
      : named;
  const matter = pieces.slice(found.to, end);
  let text = textOf(stripLead(matter), utterance, (piece) => piece.is === 'when');
  const askedFor = !found.rule.beforeVerb;
  if (text === '')
    text = textOf(
      own.filter((_, n) => n + start < found.from),
      utterance,
      (piece) => piece.is === 'when',
    );
  text = text
    .replace(
      /^(?:to|about|that|for|i need to|i have to|i must|of|and|on|at|by|i should|me to|please|would you|will you|:)\s+/iu,
      '',
    )
    .replace(
      /[ ,](?:please|pls|would you|will you|thanks|ok|okay|could you|can you|on|at|by|in|for|from|to|before|around|about|until|till|and|or so|if i can)$/iu,
      '',
    );
  if (text === '') return undefined;
  const today = localDay(note.now, note.zone);
  let when = whenDay;
  if (when === undefined && time !== undefined) {
    const passed = time <= localTime(note.now, note.zone);
    const day = passed ? addDays(today, 1) : today;
    when = { past: day, future: day, words: '' };
  }
  // An intention without a day is talk, unless it was asked to be kept.
  if (!askedFor && when === undefined && !isDuty(line))
    return { proposals: [], before: pieces.slice(0, start) };
  if (
    !askedFor &&
    when !== undefined &&
    when.future === today &&
    when.past === today &&
    !/\b(?:later|tonight|this (?:evening|afternoon|arvo)|today|after (?:lunch|tea|work|dinner))\b/.test(line)
  )
    return { proposals: [], before: pieces.slice(0, start) };
  const plants = draftsOf(own, wholeOf(own)).flatMap(({ plant }) => (plant ? [plant] : []));
  const draft: Draft = {
    ...(when ? { when } : {}),
    ...(plants.length === 1 && plants[0] ? { plant: plants[0] } : {}),
  };
  return {
    proposals: [
      {
        kind: 'remind',
        rule: found.rule.name,
        slots: { text, ...(time === undefined ? {} : { time }) },
        draft,
        future: true,
      },
    ],
    before: pieces.slice(0, start),
  };
}

/** Duties without a day are asked about only when they say "must" or "need to". */
function isDuty(_line: string): boolean {
  return false;
}

function stripLead(pieces: readonly Piece[]): readonly Piece[] {
  let at = 0;
  while (
    at < pieces.length &&
    (pieces[at]?.is === 'when' ||
      pieces[at]?.is === 'break' ||
      /^(?:to|about|that|for|please|and|then|,|also|just|on|at|by)$/.test(wordAt(pieces, at)))
  )
    at++;
  return pieces.slice(at);
}

function clauseBounds(pieces: readonly Piece[], at: number): { from: number } {
  let from = at;
  while (from > 0) {
    const piece = pieces[from - 1];
    if (piece?.is === 'break' || (piece?.is === 'word' && /^(?:and|but|then|so|or)$/.test(piece.text))) break;
    from--;
  }
  return { from };
}

/** Where a clause of things done begins behind the reminder. */
function nextDoneClause(pieces: readonly Piece[], from: number): number {
  for (let at = from; at < pieces.length; at++) {
    const piece = pieces[at];
    const boundary =
      piece?.is === 'break' || (piece?.is === 'word' && /^(?:and|but|then|so|because|as)$/.test(piece.text));
    if (!boundary) continue;
    for (let next = at + 1; next < Math.min(at + 5, pieces.length); next++) {
      const word = pieces[next];
      if (word?.is === 'break') break;
      if (
        word?.is === 'word' &&
        word.verb?.form === 'past' &&
        !/^(?:was|were|had|been|are|is|set|put|cut|has|have|rooted|potted|given|left)$/.test(word.text) &&
        !/^(?:be|get|have)$/.test(wordAt(pieces, next - 1))
      )
        return at;
      if (word?.is === 'word' && /^(?:be|been|get|getting|will|to)$/.test(word.text)) break;
    }
  }
  return pieces.length;
}

const CHORES =
  /^(?:pot|repot|mist|water|feed|take|strike|move|check|pinch|plant|vent|harden|shift|sell|cover|shade|bring|put|sow|prick|transplant|clean|order|dispatch|send|give|stop|look|open|close|uncover|start|finish|do|get|label|load|deliver|collect|buy|pick|stick|cut|book|ring|call)$/;

/** "Tomorrow pot on Bitter Tom": a future day and the plain form of a chore. */
function bareTomorrow(pieces: readonly Piece[]): ReturnType<typeof findRemind> {
  const when = pieces.findIndex((piece) => piece.is === 'when' && isFutureOnly(piece.when));
  if (when < 0) return undefined;
  for (let at = 0; at < pieces.length; at++) {
    const piece = pieces[at];
    if (piece?.is !== 'word' || !piece.verb) continue;
    const open =
      at === 0 ||
      pieces[at - 1]?.is === 'when' ||
      pieces[at - 1]?.is === 'break' ||
      /^(?:and|then|please|to|job|jobs|plan)$/.test(wordAt(pieces, at - 1));
    if (
      open &&
      wordAt(pieces, at + 1) !== 'note' &&
      CHORES.test(piece.verb.lemma) &&
      (piece.verb.form === 'base' || piece.verb.form === 'ing')
    )
      return { rule: { name: '<day>: <chore>', words: [], beforeVerb: true }, from: at, to: at };
    if (piece.verb.form === 'past') return undefined;
  }
  return undefined;
}

export function isFutureOnly(when: When): boolean {
  return (
    /\b(?:tomorrow|next|coming|tonight|later|week today)\b|\bin (?:a|\w+) (?:day|days|week|weeks|fortnight|month|months|hour|hours)\b|\bweekend\b|\b(?:mon|tues|wednes|thurs|fri|satur|sun)day\b|\b(?:mon|tue|tues|wed|weds|thu|thur|thurs|fri|sat|sun)\b/i.test(
      when.words,
    ) && !/\b(?:last|gone|past|ago|yesterday)\b/i.test(when.words)
  );
}

/** "I'd love forty Gone Paddling by June". */
export function proposeTarget(
  sentence: Sentence,
  _utterance: Utterance,
  hasAct: boolean,
): readonly Proposal[] | undefined {
  const line = sentence.line.slice(0, LINE_LIMIT);
  const { pieces } = sentence;
  const rule = targetRules.find(({ pattern }) => pattern.test(line));
  if (!rule || plantsIn(pieces).length === 0) return undefined;
  if (!pieces.some(({ is }) => is === 'count')) return undefined;
  if (hasAct || wantsAnAct(pieces)) return undefined;
  if (
    /\b(?:don't|didn't|doesn't|won't|wouldn't|not|never|no longer|if|reckons?|thinks|used to|wanted to|says|said you)\b/.test(
      line,
    ) &&
    !/\bnot (?:later|before|after) than\b/.test(line)
  )
    return undefined;
  const drafts = draftsOf(pieces, wholeOf(pieces)).filter(
    ({ plant, quantity }) => plant !== undefined && (quantity !== undefined || plantsIn(pieces).length === 1),
  );
  if (drafts.length === 0) return undefined;
  return drafts.map((draft) => ({ kind: 'target', rule: rule.name, slots: {}, draft, future: true }));
}

/** "Propagator at 20", "minus two last night": one entry a temperature. */
export function proposeReading(sentence: Sentence, note: Note): readonly Proposal[] | undefined {
  const { pieces } = sentence;
  const line = sentence.line.slice(0, LINE_LIMIT);
  if (
    /\b(?:set|turned|turn|cranked|want|need|should|could|would|if|forecast|forecasts|going to|expecting|expected|tomorrow|tonight|will|says it'll|aim|aiming|until|when it|prefer|prefers|like it|likes|ideal|recommended|supposed|says to|thermostat|oven|bake|gas)\b/.test(
      line,
    )
  )
    return undefined;
  const marked = pieces.filter((piece): piece is PieceOf<'celsius'> => piece.is === 'celsius');
  const [draft = {}] = draftsOf(pieces, wholeOf(pieces));
  const base: Draft = { ...(draft.when ? { when: draft.when } : {}) };
  const place = draft.place ?? draft.fromPlace;
  const slots = place === undefined ? {} : { place };
  const propose = (celsius: number): Proposal => ({
    kind: 'reading',
    rule: '<place> at <celsius>',
    slots: { celsius, ...slots },
    draft: base,
  });
  if (marked.length > 0) {
    const bare = /\b(?:min|max|minimum|maximum|low|high)\b/.test(line)
      ? pieces.filter(
          (piece): piece is PieceOf<'count'> => piece.is === 'count' && piece.quantity.value !== undefined,
        )
      : [];
    return [...marked, ...bare]
      .sort((a, b) => a.from - b.from)
      .map((piece) =>
        propose(piece.is === 'celsius' ? piece.celsius : degrees(piece.quantity.value ?? 0, note)),
      );
  }
  if (plantsIn(pieces).length > 0 || !STRONG_CUE.test(line)) return undefined;
  if (place === undefined && !/\b(?:temp|temperature|thermometer|min|max|minimum|maximum)\b/.test(line))
    return undefined;
  const counts = pieces.filter(
    (piece): piece is PieceOf<'count'> =>
      piece.is === 'count' && piece.quantity.value !== undefined && !piece.quantity.vague,
  );
  if (counts.length === 0 || counts.length > 2 || pieces.some(({ is }) => is === 'pots' || is === 'money'))
    return undefined;
  if (
    /\b(?:cuttings|pots|plants|trays|people|minutes|hours|days|weeks|times|twice|o'clock|cats?|eggs?)\b/.test(
      line,
    )
  )
    return undefined;
  return counts.map(({ quantity }) => propose(degrees(quantity.value ?? 0, note)));
}

/** A bare number in the grower's own scale; above 45 no bench is so warm but in °F. */
function degrees(value: number, note: Note): number {
  return isAmerican(note) || value > 45 ? Math.round((((value - 32) * 5) / 9) * 10) / 10 : value;
}

/** What is left about a plant: an observation. */
export function proposeRemark(sentence: Sentence, utterance: Utterance): readonly Proposal[] | undefined {
  const { pieces } = sentence;
  const line = sentence.line.slice(0, LINE_LIMIT);
  const plants = plantsIn(pieces);
  if (IDLE.test(line) && !OBSERVED_ALONE.test(line)) return undefined;
  const when = firstOf(pieces, 'when')?.when;
  if (plants.length === 0) {
    if (!OBSERVED_ALONE.test(line)) return undefined;
    return [
      {
        kind: 'remark',
        rule: '<observation>',
        slots: { text: textOf(pieces, utterance, (piece) => piece.is === 'when') },
        draft: when ? { when } : {},
      },
    ];
  }
  const stative = pieces.some(
    (piece) => piece.is === 'word' && piece.verb !== undefined && STATIVE.test(piece.verb.lemma),
  );
  const others = pieces.filter(
    (piece) => piece.is === 'word' && !/^(?:the|my|a|of|in|on|and|our|some|these|those)$/.test(piece.text),
  ).length;
  const behindLabel = pieces[0]?.is === 'plant' && pieces[0].plant.batch !== undefined;
  if (others === 0) return undefined;
  const counted = pieces.some(
    (piece) => piece.is === 'count' && !piece.quantity.weak && !piece.quantity.vague,
  );
  const personal = /\b(?:i|i've|i'm|we|we've|my|me)\b/.test(line);
  const seen = OBSERVED.test(line);
  // An act that no rule knows must not pass for an observation.
  if (pieces.some((piece) => piece.is === 'pots' || piece.is === 'size' || piece.is === 'medium'))
    return undefined;
  if (counted && !stative && !seen) return undefined;
  if (!seen && !(stative && others >= 2 && !counted && !personal) && !(behindLabel && !counted))
    return undefined;
  if (personal && !stative && !OBSERVED_ALONE.test(line)) return undefined;
  if (/\b(?:cuttings|cutting)\b/.test(line) && counted) return undefined;
  const [first] = pieces;
  const leading = first?.is === 'plant' || (wordAt(pieces, 0) === 'the' && pieces[1]?.is === 'plant');
  const rest = leading ? pieces.slice(first?.is === 'plant' ? 1 : 2) : pieces;
  const told = mergedPlants(pieces);
  const text = told.length > 1 ? textOf(pieces, utterance) : textOf(rest, utterance);
  if (text === '') return undefined;
  return told.map((plant) => ({
    kind: 'remark',
    rule: '<plant> <observation>',
    slots: { text },
    draft: { plant, ...(when ? { when } : {}) },
  }));
}
