/** One more lot of cuttings: "that's another eight Salt Harrier", "another 6 today". */
import type { Piece } from '../../pieces/pieces.js';
import { endsAt, type Rule, wordAt } from '../rule.js';

const TODAY = /^(?:earlier )?(?:today|this (?:morning|afternoon|evening|arvo)|just now|tonight)$/i;

/** The rule that speaks only where a note tells nothing else. */
export const ANOTHER_TODAY = 'another <count> <plant> today';

/** Behind "6 more Salt Harrier cuttings" where these open the note; undefined where they don't. */
function behindMoreOf(pieces: readonly Piece[], from: number, to: number): number | undefined {
  const count = pieces[from];
  if (count?.is !== 'count' || count.quantity.more !== true || pieces[to]?.is !== 'plant') return undefined;
  const isOpening = pieces
    .slice(0, from)
    .every((piece) => piece.is === 'word' && /^(?:and|oh|also|plus)$/.test(piece.text));
  if (!isOpening) return undefined;
  let behind = to;
  while (pieces[behind]?.is === 'plant' || pieces[behind]?.is === 'cutting') behind++;
  return behind;
}

export const anotherLot: readonly Rule[] = [
  {
    name: "that's another <count> <plant>",
    kind: 'strike',
    head: "that's|thats|there's <count>",
    shape: 'object',
    faint: true,
    when: (p, _f, t) => {
      const count = p[t - 1];
      const after = p[t]?.is === 'plant' ? t + 1 : t + 2;
      return (
        count?.is === 'count' &&
        count.quantity.more === true &&
        p.slice(t, t + 2).some(({ is }) => is === 'plant') &&
        (endsAt(p, after) || /^(?:in|done|under|struck)$/.test(wordAt(p, after)))
      );
    },
    phrasings: ["that's another eight Salt Harrier in the big tray by the door"],
    mustNot: ["that's another eight Salt Harrier gone"],
  },
  {
    // Nobody counts anew what stands where it stood: "six more, shed bench" are cuttings put there.
    name: '<count> more <plant>, <place>',
    kind: 'strike',
    head: '<count>',
    shape: 'object',
    faint: true,
    when: (p, f, t) => {
      const behind = behindMoreOf(p, f, t);
      if (behind === undefined) return false;
      const rest = p.slice(behind);
      return (
        rest[0] !== undefined &&
        (rest[0].is === 'break' || /^(?:on|by)$/.test(wordAt(p, behind))) &&
        rest.at(-1)?.is === 'place' &&
        rest.every(
          (piece) =>
            /^(?:break|place|pots|size|medium)$/.test(piece.is) ||
            (piece.is === 'word' &&
              /^(?:on|in|under|at|by|their|its|own|themselves|itself|the|my|a|one|tray|pot|this|time|gravel|grit|sand|seed|cell|plug|big|small|second|another|separate|different)$/.test(
                piece.text,
              )),
        )
      );
    },
    phrasings: [
      '6 more Salt Harrier, shed bench',
      'another 6 Salt Harrier on their own, tray on the shed bench',
    ],
    mustNot: [
      '6 more Salt Harrier rooted, shed bench',
      'need 6 more Salt Harrier for the shed bench',
      '6 more Salt Harrier to the shed bench',
    ],
  },
  {
    name: ANOTHER_TODAY,
    kind: 'strike',
    head: '<count>',
    shape: 'object',
    faint: true,
    when: (p, f, t) => {
      const behind = behindMoreOf(p, f, t);
      const day = behind === undefined ? undefined : p[behind];
      return (
        behind !== undefined && day?.is === 'when' && TODAY.test(day.when.words) && endsAt(p, behind + 1)
      );
    },
    phrasings: ['another 6 Salt Harrier today, these went on the heat mat'],
    mustNot: [
      'another 6 Salt Harrier today are dead',
      'another 6 Salt Harrier today would be grand',
      'another 20 Salt Harrier by Friday',
      'another 5 Salt Harrier tomorrow',
      'another 5 Salt Harrier later today',
      'lost 3 Tallow Bell. Another 5 Salt Harrier today',
      'need 30. Another 4 Salt Harrier on Monday',
      'need 30. Another 4 Salt Harrier today',
    ],
  },
];
