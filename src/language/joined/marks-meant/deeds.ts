/** Where a second deed begins in one breath: "swapped five Salt Harrier for a bag of lemons binned the last three". */
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { isTended, lastOf, type MarkMeant, TENDS, wordBack } from './record.js';

/** A verb of something done, which is no participle ("the Tallow Bell taken in May"). */
export const tellsDeed = (piece: Piece | undefined): boolean =>
  piece?.is === 'word' &&
  piece.verb?.form === 'past' &&
  !/^(?:be|have|do|go|come|need|get|root|look|think|say|mean|want|touch|hit|reach|read)$/.test(
    piece.verb.lemma,
  ) &&
  !/(?:en|wn|ne)$/.test(piece.text);

const GIVES = whole`give|sell|hand|send|pass|post`;

const PARTICLE = whole`on|up|out|off|down|over|away|in|back`;
const DETERMINER = whole`the|my|our|all|both|them|some|those|these|everything|another`;
/** "Potted two to a pot", "struck three in each": how it was done. */
const OF_EACH = whole`to|per|a|each|times|deep|apart|by|x|inch|out`;

/** What it was done to stands straight behind the verb. */
export function hasObject(behind: readonly Piece[]): boolean {
  const [verb] = behind;
  const lemma = verb?.is === 'word' ? (verb.verb?.lemma ?? '') : '';
  let at = 1;
  if (PARTICLE.test(wordAt(behind, at))) at++;
  const piece = behind[at];
  const next = behind[at + 1];
  if (piece?.is === 'plant') return true;
  if (piece?.is === 'count')
    return (
      !OF_EACH.test(wordAt(behind, at + 1)) ||
      // "Gave two to Wilf".
      (GIVES.test(lemma) &&
        wordAt(behind, at + 1) === 'to' &&
        !/^(?:a|each|every|the)$/.test(wordAt(behind, at + 2)))
    );
  if (DETERMINER.test(wordAt(behind, at))) {
    if (next?.is === 'plant' || next?.is === 'count') return true;
    return next?.is === 'place' && TENDS.test(lemma);
  }
  if (piece?.is === 'place') return piece.prep === undefined && TENDS.test(lemma);
  // "Gave Win two Tallow Bell".
  return GIVES.test(lemma) && piece?.is === 'word' && piece.verb?.form !== 'past' && next?.is === 'count';
}

/** Words that lead to a verb, or to its doer. */
const LEADS = whole`
  and|then|but|so|also|i|we|he|she|they|you|it|who|which|that|i've|we've|just|finally|now|only|was|were|is|are|been|got
  have|has|had|be|being|to|not|never|still|already|all|both|half|most|as|than|like|or|when|where|while|after|before|if
  everything|everybody|everyone|somebody|someone|nobody|freshly|newly|recently|well|what|ones|plants|cuttings|the|a|my|our
`;

/** "To Doreen", "with Trev", "from the Grange": who had or gave them ends what was done. */
export const endsWithPerson = (before: readonly Piece[]): boolean => {
  const last = lastOf(before);
  return (
    last?.is === 'word' &&
    last.verb === undefined &&
    !LEADS.test(last.text) &&
    ([2, 3, 4].some((back) => /^(?:to|with|from)$/.test(wordBack(before, back))) ||
      // "For a jar of honey".
      [2, 3, 4, 5].some((back) => wordBack(before, back) === 'for'))
  );
};

/** "… into 9cm pots Tallow Bell pinched the lot": the plant that what follows was done to. */
const isStray = (before: readonly Piece[]): boolean =>
  lastOf(before)?.is === 'plant' && /^(?:plant|place|size|when|money|medium)$/.test(before.at(-2)?.is ?? '');

const ENDS_DEED: ReadonlySet<Piece['is']> = new Set([
  'plant',
  'when',
  'place',
  'size',
  'medium',
  'money',
  'pots',
]);

export const deedsBegun: readonly MarkMeant[] = [
  {
    name: '<deed> … <deed> <object>',
    mark: ',',
    begins: ['word'],
    when: (before, behind) => {
      const last = lastOf(before);
      if (!last || !tellsDeed(behind[0]) || !hasObject(behind)) return false;
      if (isTalk(before) || (last.is === 'celsius' && before.some(({ is }) => is === 'place'))) return true;
      if (!before.some((piece) => isPast(piece) || wentSomewhere(piece))) return false;
      if (isStray(before) && !behind.slice(1, 5).some(({ is }) => is === 'plant')) return false;
      return (
        ENDS_DEED.has(last.is) ||
        endsWithPerson(before) ||
        isWay(before) ||
        (isNumberOf(before) && behind.slice(1, 3).some(({ is }) => is === 'count'))
      );
    },
    phrasings: [
      [
        'swapped five Salt Harrier with Trev for a bag of lemons binned the last three',
        'swapped five Salt Harrier with Trev for a bag of lemons, binned the last three',
      ],
      [
        'sold three Salt Harrier gave Win two Tallow Bell watered the porch',
        'sold three Salt Harrier, gave Win two Tallow Bell, watered the porch',
      ],
      [
        'gave four Salt Harrier to Doreen lost two Tallow Bell to slugs',
        'gave four Salt Harrier to Doreen, lost two Tallow Bell to slugs',
      ],
      [
        'went down the porch put six Salt Harrier in the greenhouse',
        'went down the porch, put six Salt Harrier in the greenhouse',
      ],
      ["can't sleep fed the Salt Harrier", "can't sleep, fed the Salt Harrier"],
      ['did four Salt Harrier lost one', 'did four Salt Harrier, lost one'],
      [
        'all the Salt Harrier got thrown out riddled with whitefly carried the Tallow Bell to the porch',
        'all the Salt Harrier got thrown out riddled with whitefly, carried the Tallow Bell to the porch',
      ],
      [
        'went down the plot put six Salt Harrier in the greenhouse',
        'went down the plot, put six Salt Harrier in the greenhouse',
      ],
      [
        'moved the Salt Harrier to the porch left the rest where they were',
        'moved the Salt Harrier to the porch, left the rest where they were',
      ],
    ],
    mustNot: [
      'a possum got into the greenhouse and knocked ten of the Salt Harrier to bits',
      'sold three potted Salt Harrier',
      'moved the Salt Harrier struck in May to the porch',
      'moved the Salt Harrier taken the other week',
      'sold the Tallow Bell potted two to a pot',
      'yesterday took six Salt Harrier',
      'potted on four Salt Harrier into 9cm pots Tallow Bell pinched the lot',
      'lost the Salt Harrier I gave four of to Doreen',
    ],
  },
  {
    name: '<place> <tended> <place> <tended>',
    mark: ',',
    begins: ['place'],
    when: (before, behind) => {
      const tended = before.findIndex((piece, at) => isTended(piece) && before[at - 1]?.is === 'place');
      const last = lastOf(before);
      const next = behind[2];
      return (
        tended > 0 &&
        isTended(behind[1]) &&
        (isTended(last) || last?.is === 'when' || last?.is === 'count') &&
        (next === undefined || /^(?:break|when|place)$/.test(next.is) || wordAt(behind, 2) === 'and')
      );
    },
    phrasings: [
      ['propagator misted greenhouse vented', 'propagator misted, greenhouse vented'],
      ['porch watered this morning greenhouse fed', 'porch watered this morning, greenhouse fed'],
    ],
    mustNot: ['propagator misted in the greenhouse'],
  },
];

/** "Went down the plot": nothing told but where the grower went. */
const isWay = (before: readonly Piece[]): boolean => {
  const from = before.findIndex(wentSomewhere);
  return (
    from >= 0 &&
    before.length > from + 1 &&
    !LEADS.test(wordBack(before)) &&
    before
      .slice(from + 1)
      .every(
        ({ is }, at) =>
          is === 'place' || ON_THE_WAY.test(wordAt(before, from + 1 + at)) || from + 2 + at === before.length,
      )
  );
};

const ON_THE_WAY = whole`out|down|up|over|round|across|along|back|to|into|the|my|our`;

const isPast = (piece: Piece | undefined): boolean =>
  piece?.is === 'word' && piece.verb?.form === 'past' && !/^(?:be|have)$/.test(piece.verb.lemma);

/** "Did four": a deed and its number. */
const isNumberOf = (before: readonly Piece[]): boolean =>
  (lastOf(before)?.is === 'count' && isPast(before.at(-2))) ||
  // "Three more rooted, one snapped".
  (isPast(lastOf(before)) && before.at(-2)?.is === 'count') ||
  // "Three gone mouldy, potted the eight on".
  (lastOf(before)?.is === 'word' &&
    /^(?:gone|went|turned)$/.test(wordBack(before, 2)) &&
    before.at(-3)?.is === 'count');

/** "Can't sleep": what kept the grower up, of no plant. */
const isTalk = (before: readonly Piece[]): boolean =>
  before.length <= 3 &&
  /^(?:can't|couldn't|cannot)$/.test(wordBack(before, 2)) &&
  /^(?:sleep|settle|rest|stop|wait)$/.test(wordBack(before));

const wentSomewhere = (piece: Piece): boolean =>
  piece.is === 'word' && /^(?:went|popped|got)$/.test(piece.text);
