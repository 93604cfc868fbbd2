/** Chores in their plain form beside a day to come, with no word that tells them to be a plan: "tomorrow pot on …", "Friday: feed …". */
import { type findRemind, isPlantSale } from './grammar/remind.js';
import { wordAt } from './grammar/rule.js';
import type { Piece, When } from './pieces.js';

const CHORES =
  /^(?:pot|repot|mist|water|feed|take|strike|move|check|pinch|plant|vent|harden|shift|sell|cover|shade|bring|put|sow|prick|transplant|clean|order|dispatch|send|give|stop|look|open|close|uncover|start|finish|do|get|label|load|deliver|collect|buy|pick|stick|cut|book|ring|call)$/;

const BEGUN = /^(?:kicked|began|started|begun|finished|complete|completed|done)$/;

/** Where the plant and number that stand before `at` begin; what is told begins there too. */
function named(pieces: readonly Piece[], at: number): { from: number; to: number } {
  let from = at;
  while (from > 0 && /^(?:count|plant|break)$/.test(pieces[from - 1]?.is ?? '')) from--;
  return { from, to: from };
}

/** "Tomorrow pot on Bitter Tom": a future day and the plain form of a chore. */
export function bareTomorrow(pieces: readonly Piece[]): ReturnType<typeof findRemind> {
  const when = pieces.findIndex((piece) => piece.is === 'when' && isFutureOnly(piece.when));
  if (when < 0) return undefined;
  // "Potted on 20, another 20 to do Thursday".
  const left = pieces.findIndex(
    ({ is }, at) =>
      is === 'count' &&
      at < when &&
      pieces[at - 1]?.is === 'break' &&
      /^to (?:do|go)$/.test(`${wordAt(pieces, at + 1)} ${wordAt(pieces, at + 2)}`),
  );
  if (left > 0)
    return { rule: { name: '<count> to do <day>', words: [], beforeVerb: true }, from: left, to: left };
  const begun = pieces.findLastIndex((piece) => piece.is === 'word' && BEGUN.test(piece.text));
  for (let at = 0; at < pieces.length; at++) {
    const piece = pieces[at];
    if (piece?.is !== 'word' || !piece.verb) continue;
    const before = pieces[at - 1];
    // "60 going to the farm shop tomorrow".
    if (
      piece.text === 'going' &&
      /^(?:to|out|off)$/.test(wordAt(pieces, at + 1)) &&
      (before?.is === 'count' || before?.is === 'plant')
    )
      return {
        rule: { name: '<count> going to <someone> <day>', words: [], beforeVerb: true },
        ...named(pieces, at),
      };
    const open =
      at === 0 ||
      before?.is === 'when' ||
      before?.is === 'break' ||
      /^(?:and|then|please|to|job|jobs|plan)$/.test(wordAt(pieces, at - 1));
    if (
      open &&
      at >= begun &&
      !isPlantSale(pieces, at) &&
      !/^(?:note|of)$/.test(wordAt(pieces, at + 1)) &&
      CHORES.test(piece.verb.lemma) &&
      (piece.verb.form === 'base' || piece.verb.form === 'ing')
    )
      return { rule: { name: '<day>: <chore>', words: [], beforeVerb: true }, from: at, to: at };
    if (piece.verb.form === 'past') return undefined;
  }
  return undefined;
}

function isFutureOnly(when: When): boolean {
  return (
    /\b(?:tomorrow|next|coming|tonight|later|week today)\b|\bin (?:a|\w+) (?:day|days|week|weeks|fortnight|month|months|hour|hours)\b|\bweekend\b|\b(?:mon|tues|wednes|thurs|fri|satur|sun)day\b|\b(?:mon|tue|tues|wed|weds|thu|thur|thurs|fri|sat|sun)\b/i.test(
      when.words,
    ) && !/\b(?:last|gone|past|ago|yesterday|since)\b/i.test(when.words)
  );
}
