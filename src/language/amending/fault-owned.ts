/** A fault owned up to, with the plant and what is right: "got the day wrong for the Ebony Fern, that was Monday", "put 4 where I wrote 5". */
import { anyOf, wordsOf } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { valueSaid } from '../pieces/value-said.js';
import type { Utterance } from '../pieces/utterance.js';
import type { Proposal } from '../proposal.js';
import { lineOf, plantsIn } from '../sentences/sentences.js';
import { isSettable } from './settable.js';

/** Nobody owns up in more pieces. */
export const LONGEST = 32;

/** What a note holds, and the note itself. */
export const SLOT = anyOf`
  day|date|number|count|total|amount|figure|place|spot|names?|variety|plant|labels?|thing|size
  bit|one|entry|entry's|entries|entrys|note|record|info|details?
`;
export const PLANT = `(?:(?:the|my|those|our) )*plantname(?: (?:cuttings|slips|lot|batch|ones))?`;
export const OF_PLANT = `(?:(?:for|about|on|with|of|by|against|under) ${PLANT})`;
const I = anyOf`i|we|i've|we've|i'd|we'd|i have|you|you've|you have`;
const WROTE = anyOf`
  said|say|put|wrote|write|written|told|tell|gave|give|given|typed|entered|logged|noted|got|had|have|sent|made|was|were
`;
const WRONG = anyOf`((all|completely|quite) )?(wrong|false|incorrect|mistaken|backwards|not right)`;
const BEFORE = anyOf`(before|earlier|just now|there|here|down|in|then|last time|in there)`;

/** The fault as it is told, in a line where plants are "plantname" and every other value "val0", "val1" … */
const FAULTS = [
  // "Got the day wrong for X", "I told you wrong about X", "I wrote false number by X", "was wrong about X".
  `(?:(?:i )?think )?(?:${I} )?${WROTE} (?:you )?(?:down )?(?:(?:the|a|that|it|its|their|you) )?(?:${SLOT} )?(?:${OF_PLANT} )?${WRONG}(?: ${SLOT})?(?: down)?(?: ${OF_PLANT})?(?: ${BEFORE})*`,
  // "You've got X in the wrong place".
  `${I} ${WROTE} ${PLANT} (?:(?:down|in|under|on|as|at|by|with) )+(?:the |a )?${WRONG} ${SLOT}`,
  // "Wrong day for X", "bit of a mistake on X".
  `(?:${WRONG} ${SLOT}|(?:(?:bit of )?a )?(?:mistake|slip|error|typo)) ${OF_PLANT}`,
  // "The date on X is out", "the date's wrong on X", "X entry's wrong".
  `(?:(?:the|that|my) )?${SLOT} ${OF_PLANT} (?:is|was|are|were) (?:${WRONG}|out|off)`,
  `(?:(?:the|that|my) )?${SLOT}(?:'s| is| was| are| were) (?:${WRONG}|out|off) ${OF_PLANT}`,
  `${PLANT} ${SLOT}(?:'s| is| was| are| were)? (?:${WRONG}|out|off)`,
  // "The date you have for X is wrong".
  `(?:(?:the|that|your) )?${SLOT} (?:that )?${I} ${WROTE}(?: down)?(?: ${OF_PLANT})? (?:is|was|are|were) (?:${WRONG}|out|off)`,
  `(?:(?:the|that|your) )?${SLOT} (?:that )?(?:${I})(?: down)?(?: ${OF_PLANT})? (?:is|was|are|were) (?:${WRONG}|out|off)`,
  // "Miscounted X", "made a mistake with X".
  `(?:${I} )?(?:miscounted|mistyped|misread|muddled|mislabelled|(?:messed|mixed|slipped|muddled) up|made (?:a )?(?:mistake|slip|mess|hash|error))(?: (?:the )?${SLOT})?(?: (?:${OF_PLANT}|${PLANT}))?(?: ${BEFORE})*`,
  // "You've got 3 X down there. Wrong."
  `${I} (?:${WROTE} )?(?:val\\d+ )?(?:of )?${PLANT}(?: (?:${BEFORE}|as val\\d+))* ${WRONG}`,
  // "Ignore the number I gave you just now".
  `(?:ignore|forget|disregard|scrap|scratch|bin) (?:the|that|what|whatever) (?:${SLOT} )?(?:${OF_PLANT} )?(?:that )?(?:i|we) ${WROTE}(?: you)?(?: ${OF_PLANT})?(?: ${BEFORE})*`,
  // "She says 16 but it was 18 X".
  `(?:she|he|they|you|i|we) (?:says|said|say|put|wrote|typed|logged) (?:down )?val\\d+(?: ${OF_PLANT})? but`,
  // "Did I say X? I meant Y"; by itself it asks.
  `did (?:i|we) (?:really )?(?:say|put|write|type|tell you) (?:the )?(?:plantname|val\\d+)(?: ${OF_PLANT})?`,
  // "Put Y where I wrote X".
  `where (?:i|we|i've) (?:wrote|written|said|typed|told you|logged|noted) (?:the )?(?:plantname|val\\d+)(?: ${OF_PLANT})?`,
].map((source) => new RegExp(`\\b${source}(?=$| )`));

/** One of these is in every fault. */
const OWNS_UP = new Set(
  wordsOf`
    wrong false incorrect mistaken backwards right out off mistake slip error typo mess hash miscounted mistyped misread muddled mislabelled
    messed mixed slipped ignore forget disregard scrap scratch bin did where but
  `,
);

/** What is denied beside the value: "it wasn't today I did that", "not on Monday". */
const DENIED =
  /\b(?:(?:it|that|they|there) )?(?:not|wasn't|weren't|isn't|aren't|never) (?:(?:on|in|at|by) )?(?:the )?val\d+(?: (?:i|we) (?:did|took|had|got) (?:it|that|them|those|these))?(?= |$)/g;

/** What else such a line may say: nothing that tells a deed of its own. */
export const TOLD = new Set(
  wordsOf`
    about hi hiya hello hey so killed did which got had has said do when while
    it that they there this those these them was were is are be been should have make put call meant mean i we did took taken done struck
    it's that's there's they're only just really actually rather fact of to at on in for the my a right correct proper real true but and
    number count date day one figure place went gone no oh sorry please pls silly me daft mistake bad excuse instead thanks ta cheers well so yes
    cuttings ones aye hang wait counted checked
  `,
);

/** What the fault was said to be in, and the slots that it may set. */
const OF_SLOT: readonly (readonly [RegExp, RegExp])[] = [
  [/\b(?:day|date)\b/, /^date$/],
  [/\b(?:number|count|total|amount|figure|miscounted)\b/, /^(?:count|pots)$/],
  [/\b(?:place|spot)\b/, /^place$/],
  [/\b(?:name|variety)\b/, /^(?:variety|crop|batch)$/],
];

/** The amendment; undefined where the sentence owns no fault, or says anything besides. */
export function proposeFaultOwned(pieces: readonly Piece[], utterance: Utterance): Proposal | undefined {
  if (pieces.length > LONGEST) return undefined;
  if (!pieces.some((piece) => piece.is === 'word' && OWNS_UP.has(piece.text))) return undefined;
  const values = pieces.filter((piece) => piece.is !== 'plant' && isSettable(piece));
  const plants = plantsIn(pieces).map(({ plant }) => plant);
  if (values.length + plants.length === 0 || plants.length > 2) return undefined;
  const line = markedLine(pieces, values, utterance);
  for (const pattern of FAULTS) {
    const fault = pattern.exec(line);
    if (!fault) continue;
    const before = line.slice(0, fault.index);
    const told = `${before} | ${line.slice(fault.index + fault[0].length)}`.replace(DENIED, '');
    if (fault[0].startsWith('did ') && !EQUALS.test(told)) continue;
    const words = told.split(' ').filter((word) => word !== '' && word !== '|');
    const marks = words.filter((word) => /^val\d+$/.test(word));
    if (words.some((word) => !TOLD.has(word) && word !== 'plantname' && !marks.includes(word))) continue;
    const set = setBy(marks.map((mark) => values[Number(mark.slice(3))]));
    if (!set) continue;
    const inFault = plantname(fault[0]);
    const [first, another] = plants;
    const [old, fresh] = plantname(before) > 0 && inFault > 0 ? [another, first] : [first, another];
    // "Put Y where I wrote X": another plant.
    if (fresh ? inFault !== 1 || fresh.variety === old?.variety || !EQUALS.test(told) : marks.length === 0)
      continue;
    const slots = { ...set, ...fresh };
    const ofSlot = OF_SLOT.filter(([said]) => said.test(fault[0])).map(([, slot]) => slot);
    // "The number I gave you just now": when it was told, and no new day.
    const right = Object.entries(slots).filter(([key]) => ofSlot.every((slot) => slot.test(key)));
    if (right.length === 0) continue;
    return {
      kind: 'amend',
      rule: 'got the <slot> wrong for <plant>, it was <x>',
      slots: { set: Object.fromEntries(right) },
      draft: old ? { plant: old } : {},
    };
  }
  return undefined;
}

/** The row, where a fault is a sentence and what is right the next: "Miscounted the Ebony Fern. 3 is the right number". */
export function withFaultsJoined(pieces: readonly Piece[], utterance: Utterance): readonly Piece[] {
  const row = [...pieces];
  const hard = row.flatMap((piece, at) => (piece.is === 'break' && piece.hard ? [at] : []));
  let from = 0;
  for (const [n, at] of hard.entries()) {
    const ends = [hard[n + 2], hard[n + 1]].map((end) => end ?? row.length);
    const isUntold = proposeFaultOwned(row.slice(from, at), utterance) === undefined;
    const end = isUntold
      ? ends.find((to) => to > at + 1 && proposeFaultOwned(row.slice(from, to), utterance))
      : undefined;
    if (end !== undefined)
      for (const mark of hard.slice(n)) {
        const piece = row[mark];
        if (mark < end && piece?.is === 'break') row[mark] = { ...piece, hard: false, mark: ',' };
      }
    from = at + 1;
  }
  return row;
}

/** Sets one equal to the other. */
const EQUALS = /\b(?:was|were|is|are|be|been|it's|that's|they're|meant|mean|put|make|call)\b/;

const plantname = (line: string): number => line.split(' ').filter((word) => word === 'plantname').length;

/** What the values set; undefined where one says nothing certain, or two the same slot. */
function setBy(values: readonly (Piece | undefined)[]): Readonly<Record<string, unknown>> | undefined {
  const set: Record<string, unknown> = {};
  for (const value of values) {
    const said = value && valueSaid(value);
    if (!said || Object.keys(said).some((slot) => slot in set)) return undefined;
    Object.assign(set, said);
  }
  return set;
}

/** The line of a row, with what may be set as "val0", "val1" … */
export function markedLine(pieces: readonly Piece[], values: readonly Piece[], utterance: Utterance): string {
  return pieces
    .map((piece) => (values.includes(piece) ? `val${values.indexOf(piece)}` : lineOf([piece], utterance)))
    .filter((word) => word !== '')
    .join(' ');
}
