/** Moods told by the head itself and what stands around it: who did it, what came of it, what it was for. */
import { ofAnother } from './another-grower.js';
import { isGivenUp, isOwed, isWished } from './given-up.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import { isRecalled } from './other-times.js';
import { isArranged, isBeingDone, isOnOrder, isPutSomewhere, isTimeFor, isToBe } from './yet-to-be.js';
import { cameRound, livesAfterAll } from './came-round.js';
import { isZero } from './before.js';
import { back, hasPair, type MoodCase, type MoodSeen } from './case.js';
import { MANAGED, WISHES } from './words.js';

export const aroundHead: readonly MoodCase[] = [
  {
    name: 'fed nothing',
    mood: 'denied',
    phrasings: ['fed nothing today', 'watered none of them'],
    when: ({ pieces, hit }) =>
      hit.rule.kind === 'tend' &&
      (isZero(pieces[hit.to]) || /^(?:nothing|nowt|nobody)$/.test(wordAt(pieces, hit.to))),
  },
  {
    name: '<someone> is taking <count> <day to come>',
    mood: 'intended',
    phrasings: ['Doreen is taking six Salt Harrier on Saturday'],
    when: ({ form, pieces, clause }) => form === 'ing' && isArranged(pieces, clause),
  },
  {
    name: 'gave the watering a miss',
    mood: 'denied',
    phrasings: [
      'gave the watering a miss',
      'postponed potting on the Salt Harrier',
      'the pinching got rained off',
    ],
    when: ({ pieces, clause, before, form }) => isGivenUp(pieces, clause, before, form),
  },
  {
    // Out of no hand of ours.
    name: '<someone> handed <count> back',
    mood: 'reported',
    phrasings: ['Pat handed the rest of the Salt Harrier back'],
    when: ({ pieces, hit, clause, before }) =>
      hit.rule.kind === 'dispatch' &&
      /^(?:gave|handed|sent|brought|passed|given)$/.test(wordAt(pieces, hit.from)) &&
      pieces.slice(hit.to, clause.to).some((_, at) => wordAt(pieces, hit.to + at) === 'back') &&
      (before.at(-1) ?? '') !== '' &&
      !/^(?:i|we|and|i've|we've|then|also|just)$/.test(before.at(-1) ?? ''),
  },
  {
    // Which of them were found, and nothing done to them now.
    name: 'found <count> of the <plant> I binned',
    mood: 'supposed',
    phrasings: [
      'found two of the Salt Harrier I binned still green',
      'spotted one of the Salt Harrier I lost shooting',
    ],
    when: ({ pieces, hit, before }) =>
      /^(?:i|we)$/.test(wordAt(pieces, hit.from - 1)) &&
      pieces[hit.from - 2]?.is === 'plant' &&
      before.some((word) => /^(?:found|spotted|noticed|saw|see|turns)$/.test(word)),
  },
  {
    // A name that nobody knows, and how many they were: what was told before, and no new deed.
    name: 'the <plants> I took were <count>',
    mood: 'supposed',
    phrasings: ['the Foozles I took on 11 April were five', 'those Barges we lost were only two'],
    when: ({ pieces, hit }) =>
      /^(?:i|we)$/.test(wordAt(pieces, hit.from - 1)) &&
      wordAt(pieces, hit.from - 2) !== '' &&
      /^(?:the|those|my)$/.test(wordAt(pieces, hit.from - 3)) &&
      pieces.some(
        ({ is }, at) => is === 'count' && at >= hit.to && /^(?:was|were)$/.test(wordAt(pieces, at - 1)),
      ),
  },
  {
    // No "barely rooted".
    name: 'hardly watered a thing',
    mood: 'denied',
    phrasings: ['hardly watered a thing today'],
    when: (seen) =>
      /^(?:hardly|barely|scarcely)$/.test(back(seen, 1)) && !/^(?:check|loss)$/.test(seen.hit.rule.kind),
  },
  {
    name: 'keen to pot on',
    mood: 'intended',
    phrasings: ['keen to pot on the Salt Harrier'],
    when: (seen) => seen.form !== 'past' && hasPair(seen, WISHES, /^to$/),
  },
  {
    name: 'high time I pinched <plant>',
    mood: 'supposed',
    phrasings: ['high time I pinched the Salt Harrier'],
    when: ({ before }) => isTimeFor(before),
  },
  {
    name: '<plant> get planted out in June',
    mood: 'supposed',
    phrasings: ['Salt Harrier get planted out in June', 'Salt Harrier getting moved next Monday'],
    when: (seen) =>
      seen.form === 'past' &&
      ((back(seen, 1) === 'get' && seen.hit.rule.kind !== 'hardenOff' && !isGot(seen)) ||
        isBeingDone(seen.pieces, seen.clause)),
  },
  {
    name: 'before you take cuttings',
    mood: 'supposed',
    phrasings: ["it's wise to water before you take cuttings of Salt Harrier"],
    when: (seen) => seen.form === 'base' && back(seen, 1) === 'you',
  },
  {
    name: 'need <count> potted by <day>',
    mood: 'intended',
    phrasings: ['Need 15 Salt Harrier potted by Friday'],
    when: ({ before, form, pieces, clause }) =>
      isOwed(before) || (form === 'past' && isWished(pieces, clause)),
  },
  {
    name: "couldn't resist taking <count>",
    mood: 'done',
    phrasings: ["couldn't resist taking six Salt Harrier"],
    when: (seen) => back(seen, 1) === 'resist',
  },
  {
    // No "made a start on potting them", no "into the cold frame for hardening off".
    name: 'a video on pinching',
    mood: 'supposed',
    phrasings: ['watched a video on pinching out fuchsias', 'new knife for taking Salt Harrier cuttings'],
    when: (seen) =>
      seen.form === 'ing' &&
      ((back(seen, 1) === 'for' && !isPutToHarden(seen)) ||
        (/^(?:on|about)$/.test(back(seen, 1)) &&
          !/^(?:carried|carry|kept|went|cracked|got|start|started|moved|on)$/.test(back(seen, 2)))),
  },
  {
    name: "another's doing",
    mood: 'reported',
    phrasings: ['Doreen lost all her fuchsias', 'my neighbour potted on her Salt Harrier'],
    when: ({ pieces, clause, before }) => ofAnother(pieces, clause, before),
  },
  {
    name: 'this time last year they had all rooted',
    mood: 'reported',
    phrasings: ['this time last year they had all rooted', 'took six from the plant in my old garden'],
    when: ({ pieces, clause }) => isRecalled(pieces, clause),
  },
  {
    // When something else befell, and no place that they were brought to.
    name: 'two snapped when I moved the tray',
    mood: 'supposed',
    phrasings: ['two Salt Harrier snapped when I moved the tray'],
    when: (seen) =>
      seen.hit.rule.kind === 'move' &&
      /^(?:when|while|as) (?:i|we)$/.test(
        `${wordAt(seen.pieces, seen.hit.from - 2)} ${wordAt(seen.pieces, seen.hit.from - 1)}`,
      ) &&
      seen.hit.from > 2 &&
      !seen.pieces.slice(seen.hit.to).some(({ is }) => is === 'place'),
  },
  {
    // "Edna helped me strike a dozen" is ours.
    name: 'helped <someone> strike <count>',
    mood: 'reported',
    phrasings: ['helped Edna strike a dozen Salt Harrier'],
    when: ({ form, before }) => form === 'base' && helpsAnother(before),
  },
  {
    // No "had somebody water it".
    name: 'oh to have somebody water <place>',
    mood: 'supposed',
    phrasings: ['oh to have somebody water the greenhouse'],
    when: (seen) =>
      seen.form === 'base' &&
      /^(?:somebody|someone|anybody|anyone)$/.test(back(seen, 1)) &&
      back(seen, 2) !== 'had',
  },
  {
    name: '<plant> still to be potted on',
    mood: 'intended',
    phrasings: ['the Salt Harrier are still to be potted on'],
    when: ({ before }) => isToBe(before),
  },
  {
    name: 'ordered <count> plugs',
    mood: 'intended',
    phrasings: ['ordered 84 Salt Harrier plugs', '36 plugs of fuchsia coming next week'],
    when: ({ hit, pieces, clause }) => /^(?:receive|stock)$/.test(hit.rule.kind) && isOnOrder(pieces, clause),
  },
  {
    name: '<count> wilted but came round',
    mood: 'supposed',
    phrasings: [
      'two Salt Harrier wilted but perked up again',
      'two Salt Harrier keeled over, then recovered after a drink',
      'three of the Salt Harrier collapsed in the sun but have since come round',
      'the cat sat on the Salt Harrier but they look all right',
    ],
    // No "two wilted, all fine otherwise", "three collapsed, came back from holiday to find them".
    when: ({ hit, pieces }) =>
      hit.rule.kind === 'loss' &&
      cameRound(pieces, hit.rule.shape === 'subject' ? hit.to : pastUncounted(pieces, hit.to)),
  },
  {
    name: 'one of the dead <plant> came back to life',
    mood: 'supposed',
    phrasings: [
      'one of the dead Salt Harrier came back to life',
      'two of the lost Salt Harrier have sprouted again',
      'one Salt Harrier back from the dead',
      'the dead Salt Harrier has revived',
    ],
    when: ({ hit, pieces }) => hit.rule.kind === 'loss' && livesAfterAll(pieces, hit.to),
  },
  {
    // Gone for, and not done.
    name: 'went to take cuttings, ran out of steam',
    mood: 'supposed',
    phrasings: [
      'went out to take cuttings of the Salt Harrier, ran out of steam',
      'went to plant out the Salt Harrier, bed was waterlogged',
    ],
    when: (seen) =>
      (seen.form === 'base' || back(seen, 1) === 'to') && seen.before.includes('went') && isCutShort(seen),
  },
];

/** What befell instead, or a state told behind it and no number of what was done. */
function isCutShort({ pieces, hit }: MoodSeen): boolean {
  const behind = pieces.slice(hit.to);
  return behind.some(
    (piece, at) =>
      piece.is === 'word' &&
      (/^(?:only|instead|never|ran|gave)$/.test(piece.text) ||
        (/^(?:was|were|too|no|had|couldn't|wouldn't|didn't)$/.test(piece.text) &&
          !behind.slice(at).some(({ is }) => is === 'count'))),
  );
}

/** "Managed to get six potted on", "had to get six potted on", "did get potted on". */
const isGot = (seen: MoodSeen): boolean =>
  back(seen, 2) === 'did' ||
  (back(seen, 2) === 'to' && (back(seen, 3) === 'had' || MANAGED.test(back(seen, 3))));

/** Put somewhere for it. */
const isPutToHarden = ({ hit, pieces, clause }: MoodSeen): boolean =>
  hit.rule.kind === 'hardenOff' && isPutSomewhere(pieces, clause, hit.from);

/** "Helped Edna strike a dozen": hers. */
function helpsAnother(before: readonly string[]): boolean {
  const helped = before.findLastIndex((word) => /^(?:helped|helping|watched|showed)$/.test(word));
  return helped >= 0 && before.length > helped + 1 && !/^(?:me|us|to)$/.test(before[helped + 1] ?? '');
}

/** Past the plant that an act was done to, where no number of it is told; the end where one is. */
function pastUncounted(pieces: readonly Piece[], to: number): number {
  const plant = pieces.findIndex((piece, at) => at >= to && (piece.is === 'plant' || piece.is === 'count'));
  return pieces[plant]?.is === 'plant' ? plant + 1 : pieces.length;
}
