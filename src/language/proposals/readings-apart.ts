/** Temperatures told in a part of a sentence that tells of no act. */
import { findHits } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import { tellsHeat } from './heat-told.js';
import type { Note } from '../note.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { proposeReading } from './reading-proposal.js';
import { lineOf, type Sentence, sentenceOf } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

/** A sentence without its readings, and those told before and behind what was done. */
export interface ReadingsApart {
  readonly rest: readonly Piece[];
  readonly before: readonly Proposal[];
  readonly behind: readonly ReadingBehind[];
}

/** A temperature told behind an act; `of` where its words say that it was that of the act's place, or of another. */
export interface ReadingBehind {
  readonly reading: Proposal;
  readonly of?: 'there' | 'outside';
}

const THERE = /^(?:where|which)\b|\bin (?:there|it)\b/;
const OUTSIDE = /\b(?:outside|outdoors|out)\b/;

/** "38 degrees in the igloo so I vented it": parts of a sentence that tell a temperature and no act are taken apart. */
export function withoutReadings(sentence: Sentence, utterance: Utterance, note: Note): ReadingsApart {
  const { pieces } = sentence;
  const before: Proposal[] = [];
  const behind: ReadingBehind[] = [];
  const rest: Piece[] = [];
  if (!pieces.some(({ is }) => is === 'celsius' || is === 'place')) return { rest: pieces, before, behind };
  let from = 0;
  for (let at = 0; at <= pieces.length; at++) {
    const piece = pieces[at];
    if (isSpan(pieces, at)) continue;
    // "Cold frame: 6C": where it was read.
    if (
      piece?.is === 'break' &&
      piece.mark === ':' &&
      at > from &&
      pieces
        .slice(from, at)
        .every(
          (each) =>
            each.is === 'place' ||
            (each.is === 'word' &&
              /^(?:thermometer|temp|temperature|sensor|probe|the|reading)$/.test(each.text)),
        )
    )
      continue;
    if (piece && piece.is !== 'break' && !(piece.is === 'word' && joins(pieces, at))) continue;
    const whole = pieces.slice(from, at);
    const ends = rest.length === 0 && before.length === 0 ? readingBefore(whole) : 0;
    const opening = ends > 0 ? proposeReading(sentenceOf(whole.slice(0, ends), utterance), note) : undefined;
    if (opening) before.push(...opening);
    const part = opening ? whole.slice(ends) : whole;
    const readings =
      part.some(({ is }) => is === 'celsius' || is === 'count') &&
      !part.some(({ is }) => is === 'plant') &&
      !mayCount(part, rest) &&
      findHits(rules, part).length === 0
        ? proposeReading(sentenceOf(part, utterance), note, {
            place: rest.some(({ is }) => is === 'place'),
            care: tellsOfCare(rest),
            heat: rest.length === 0 && tellsHeat(part, pieces.slice(at)),
          })
        : undefined;
    if (!readings) rest.push(...part);
    else if (rest.some(({ is }) => is === 'word'))
      behind.push(...readings.map((reading) => toldBehind(reading, lineOf(part, utterance))));
    else before.push(...readings);
    if (piece) rest.push(piece);
    from = at + 1;
  }
  return {
    rest: before.length + behind.length === 0 ? pieces : rest,
    before: /\b(?:max|maximum|min|minimum|high|low|highs|lows)\b/.test(sentence.line)
      ? inOnePlace(before)
      : before,
    behind,
  };
}

/** Whether what was told so far is care of plants alone. */
const tellsOfCare = (told: readonly Piece[]): boolean => {
  const hits = findHits(rules, told);
  return hits.length > 0 && hits.every(({ rule }) => rule.kind === 'tend');
};

/** "Max 31, min 9 in the greenhouse yesterday": both of one thermometer. */
function inOnePlace(readings: readonly Proposal[]): readonly Proposal[] {
  const places = new Set(readings.flatMap(({ slots }) => slots['place'] ?? []));
  const [place] = places;
  const when = readings.find(({ draft }) => draft.when)?.draft.when;
  if (places.size !== 1 || readings.length < 2) return readings;
  return readings.map((reading) => ({
    ...reading,
    slots: { ...reading.slots, place },
    draft: when ? { ...reading.draft, when } : reading.draft,
  }));
}

/** "Minus two in the polytunnel last night lost three": where the first deed begins behind a temperature, with no mark between. */
function readingBefore(part: readonly Piece[]): number {
  if (!part.some((piece, at) => piece.is === 'celsius' || isWarmthAt(part, at))) return 0;
  const [first] = findHits(rules, part);
  const head = first && part[first.from];
  if (!first || first.rule.shape !== 'object' || head?.is !== 'word' || head.verb?.form !== 'past') return 0;
  const opening = part.slice(0, first.from);
  const isNumber = opening.some((_, at) => isWarmthAt(opening, at));
  const isWarmth = opening.every(
    (piece) =>
      piece.is === 'celsius' ||
      (isNumber && piece.is === 'count') ||
      piece.is === 'place' ||
      piece.is === 'when' ||
      (piece.is === 'word' && BESIDE_WARMTH.test(piece.text)),
  );
  return isWarmth && (isNumber || opening.some(({ is }) => is === 'celsius')) ? first.from : 0;
}

/** "Propagator at twenty two": a number said of a place. */
const isWarmthAt = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at]?.is === 'count' &&
  pieces[at - 2]?.is === 'place' &&
  /^(?:at|is|was|reading|hit|showing|reads)$/.test(wordAt(pieces, at - 1));

const BESIDE_WARMTH =
  /^(?:frost|first|late|hard|light|heavy|air|temperature|temp|it|it's|was|is|only|just|about|around|the|in|on|inside|outside|out|down|up|to|at|of|overnight|a|cold|warm|snap|spell|night|day|we|had|got|went|dropped|fell|hit|hot|chilly|nippy|freezing)$/;

/** A word that joins, or "because it", "as it's" before what was so. */
const joins = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:and|so|but|then)$/.test(wordAt(pieces, at)) ||
  (/^(?:because|as|since)$/.test(wordAt(pieces, at)) && /^(?:it|it's)$/.test(wordAt(pieces, at + 1)));

/** "Moved the Soot Angel to the greenhouse, it's 24 in there": so many plants, it may be. */
const mayCount = (part: readonly Piece[], before: readonly Piece[]): boolean =>
  !part.some(({ is }) => is === 'celsius' || is === 'place') && before.some(({ is }) => is === 'plant');

/** "20-22C": one warmth, from one to the other. */
const isSpan = (pieces: readonly Piece[], at: number): boolean => {
  const dash = pieces[at];
  return (
    dash?.is === 'break' &&
    dash.mark === '-' &&
    /^(?:count|celsius)$/.test(pieces[at - 1]?.is ?? '') &&
    pieces[at + 1]?.is === 'celsius'
  );
};

const toldBehind = (reading: Proposal, line: string): ReadingBehind =>
  THERE.test(line) ? { reading, of: 'there' } : OUTSIDE.test(line) ? { reading, of: 'outside' } : { reading };

/**
 * "Opened the vents in the greenhouse, 28 degrees", "carried them to the spare room, where it's 14": it was that warm
 * where something was just done.
 */
export function placedAs(acts: readonly Proposal[], readings: readonly ReadingBehind[]): readonly Proposal[] {
  const tended = acts.at(-1)?.kind === 'tend' ? acts.at(-1)?.slots['place'] : undefined;
  const there = acts.findLast(({ slots }) => slots['place'] !== undefined)?.slots['place'];
  return readings.map(({ reading, of }) => {
    const place = of === 'there' ? there : of === 'outside' ? undefined : tended;
    return place === undefined || reading.slots['place'] !== undefined
      ? reading
      : { ...reading, slots: { ...reading.slots, place } };
  });
}
