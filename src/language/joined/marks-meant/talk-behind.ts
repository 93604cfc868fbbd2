/** Talk behind what was told, and behind a reply: "scrap that last one wrong window", "lost three this morning no idea why". */
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import type { MarkMeant } from './record.js';

const TALK = whole`
  (i've |i have |got )?(no|not the foggiest|haven't the foggiest|haven't a) (idea|clue) (why|how|what (happened|did it|went wrong))
  (no|not sure|don't know|dunno|goodness knows|god knows|who knows|heaven knows) (why|how|what (happened|did it|went wrong))
  wrong (window|thumb|chat|button|plant|one|group|key|finger|person|note|number|tray|pot|name|day|batch|entry|line)
  (would you|can you|could you) (credit|believe) it
  (happy|ok|okay|satisfied|pleased) now
  (i'm |so |well |dead )?(chuffed|pleased|delighted|made up|thrilled|buzzing|gutted|fuming|over the moon)( to bits| to pieces| with (that|it|them|myself))?( today| about that)?
  (the )?(clever|little|clever little|poor|daft|good|lovely) (darlings|things|devils|beauties|loves|souls|blighters)
  you could (fry an egg|have fried an egg)
  (paid cash|cash paid|paid (in full|up front|on collection)|docket signed|invoice (sent|to follow)|balance to follow)
`;
const LONGEST = 9;

/** The words up to the next mark; undefined where another piece stands among them. */
function wordsBehind(behind: readonly Piece[]): string | undefined {
  const words: string[] = [];
  for (const piece of behind) {
    if (piece.is === 'break') break;
    if (piece.is !== 'word' || words.length === LONGEST) return undefined;
    words.push(piece.text);
  }
  return words.join(' ');
}

export const talkBehind: readonly MarkMeant[] = [
  {
    name: '<told> no idea why',
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      !/^(?:and|but|so|i|i'm|we|we're|the|a|was|were|is|are|have|got|to|of|it|that's|very|really|well|dead)$/.test(
        wordAt(before, before.length - 1),
      ) && TALK.test(wordsBehind(behind) ?? ''),
    phrasings: [
      ['scrap that last one wrong thumb', 'scrap that last one, wrong thumb'],
      [
        'lost three Salt Harrier this morning no idea why',
        'lost three Salt Harrier this morning, no idea why',
      ],
    ],
    mustNot: [
      'lost three Salt Harrier and no idea why',
      'put them in the wrong window',
      'I have no idea why',
    ],
  },
  {
    name: 'yes did it',
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      before.length === 1 &&
      /^(?:yes|yep|yeah|yup|aye)$/.test(wordAt(before, 0)) &&
      /^(?:did|done|finished|sorted|got)$/.test(wordAt(behind, 0)) &&
      /^(?:it|them|that|those|both|all)$/.test(wordAt(behind, 1)),
    phrasings: [['yes did it before breakfast', 'yes, did it before breakfast']],
    mustNot: ['yes it did'],
  },
];
