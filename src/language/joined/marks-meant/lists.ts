/** Plants told one after the other, with their numbers or where they went: "took Salt Harrier 3 Tallow Bell 4", "three to Brenda two to Colin". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { endsWithPerson } from './deeds.js';
import { lastOf, type MarkMeant, wordBack } from './record.js';

const isPlainCount = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' && piece.quantity.value !== undefined && piece.quantity.outOf === undefined;

/** Whether nothing but plants with a number behind each follows, up to where the deed ends. */
function isListFrom(pieces: readonly Piece[]): boolean {
  let at = 0;
  while (pieces[at]?.is === 'plant' && isPlainCount(pieces[at + 1])) at += 2;
  const end = pieces[at];
  return (
    at > 0 &&
    (end === undefined ||
      /^(?:break|when|cutting|place)$/.test(end.is) ||
      (end.is === 'count' && end.quantity.whole === 'all') ||
      /^(?:and|then|today|lost|potted|sold|binned|gave|moved)$/.test(wordAt(pieces, at)))
  );
}

const isRest = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' && piece.quantity.whole === 'rest';

export const listsToldOn: readonly MarkMeant[] = [
  {
    name: '<deed> <plant> <count> <plant> <count>',
    mark: ',',
    begins: ['plant'],
    when: (before, behind) => {
      if (!isPlainCount(lastOf(before)) || before.at(-2)?.is !== 'plant' || !isListFrom(behind)) return false;
      let from = before.length - 2;
      while (from >= 2 && isPlainCount(before[from - 1]) && before[from - 2]?.is === 'plant') from -= 2;
      const head = before[from - 1];
      return from === 0 || (head?.is === 'word' && head.verb?.form === 'past');
    },
    phrasings: [
      ['took Salt Harrier 3 Tallow Bell 4', 'took Salt Harrier 3, Tallow Bell 4'],
      ['lost Salt Harrier two Tallow Bell four today', 'lost Salt Harrier two, Tallow Bell four today'],
    ],
    mustNot: [
      'took 3 Salt Harrier 4 Tallow Bell',
      'potted on Salt Harrier 6 Tallow Bell',
      'Salt Harrier 3 Tallow Bell 4 rooted',
    ],
  },
  {
    name: '<count> <plant> to <there> <count> to <there>',
    mark: ',',
    begins: ['count'],
    when: (before, behind) => {
      const to = behind[1]?.is === 'plant' ? 2 : 1;
      const opens = before[0]?.is === 'count' ? 1 : 0;
      const there = behind[to + 1];
      return (
        before[opens]?.is === 'plant' &&
        (/^(?:size|place)$/.test(lastOf(before)?.is ?? '') || endsWithPerson(before)) &&
        before.some((_, at) => wordAt(before, at) === 'to') &&
        wordAt(behind, to) === 'to' &&
        !(
          there?.is === 'word' &&
          (/^(?:a|each|every|go|do|come)$/.test(there.text) ||
            /^(?:pot|tray|go|end)$/.test(wordAt(behind, to + 2)) ||
            there.verb !== undefined)
        ) &&
        there !== undefined
      );
    },
    phrasings: [
      ['three Salt Harrier to Brenda two to Colin', 'three Salt Harrier to Brenda, two to Colin'],
      [
        '60 Salt Harrier potted on to 1L 25 Tallow Bell to Doreen',
        '60 Salt Harrier potted on to 1L, 25 Tallow Bell to Doreen',
      ],
    ],
    mustNot: ['three Salt Harrier to the porch two to a pot', 'six Salt Harrier to Brenda two to go'],
  },
  {
    name: '<deed> another <count> to do',
    mark: ',',
    begins: ['count', 'word'],
    when: (before, behind) => {
      const [count, next, after] = behind;
      const last = lastOf(before);
      const isDone =
        last?.is === 'word' &&
        last.verb?.form === 'past' &&
        /^(?:count|plant)$/.test(before.at(-2)?.is ?? '');
      if (!isDone && wordBack(before) !== 'doing' && !/^(?:size|plant|place|when)$/.test(last?.is ?? ''))
        return false;
      // "… one in the doing other five on the windowsill".
      if (count?.is === 'count' && (count.quantity.whole === 'rest' || count.quantity.besides))
        return next?.is === 'when'
          ? after === undefined || after.is === 'break'
          : !isDone &&
              /^(?:in|into|on|onto|to|under)$/.test(wordAt(behind, 1)) &&
              behind.slice(2, 5).some(({ is }) => is === 'place');
      if (count?.is === 'word')
        return count.text === 'rest' && next?.is === 'when' && (after === undefined || after.is === 'break');
      return (
        wordAt(behind, 1) === 'to' &&
        /^(?:do|go|pot|finish)$/.test(wordAt(behind, 2)) &&
        before.some(({ is }) => is === 'plant')
      );
    },
    phrasings: [
      [
        'potted on 20 Salt Harrier to 2L another 20 to do Thursday',
        'potted on 20 Salt Harrier to 2L, another 20 to do Thursday',
      ],
      [
        'half of the Salt Harrier up into 10cm today rest tomorrow',
        'half of the Salt Harrier up into 10cm today, rest tomorrow',
      ],
    ],
    mustNot: ['potted on 20 Salt Harrier and the rest of them yesterday'],
  },
  {
    name: '<count> … <count> I have <done>',
    mark: ',',
    begins: ['count'],
    when: (before, behind) =>
      /^(?:i|we|i've|we've)$/.test(wordAt(behind, 1)) &&
      /^(?:have|put|potted|gave|moved|lost|binned|threw|sold|planted|kept)$/.test(wordAt(behind, 2)) &&
      before.some(({ is }) => is === 'count') &&
      before.some(
        (piece, at) =>
          (isRest(behind[0]) && piece.is === 'plant') ||
          /^(?:are|is|were|have|has|died|rooted|gone)$/.test(wordAt(before, at)),
      ) &&
      !/^(?:of|the|those|these|and|all|but|last|other|to|in|with)$/.test(wordBack(before)),
    phrasings: [
      [
        '3 Salt Harrier are dead from mould 10 I have put in the porch',
        '3 Salt Harrier are dead from mould, 10 I have put in the porch',
      ],
    ],
    mustNot: ['3 Salt Harrier are dead of the 10 I have'],
  },
];
