/** How a care is told: by its verb in the past or plain, and what only looks so. */
import type { Care } from '../../../ledger/entry.js';
import type { Piece } from '../../pieces/pieces.js';
import { endsAt, follows, followsWord, type Rule, wordAt } from '../rule.js';

/** Told in the past: "misted the Salt Harrier". */
export const verb = (lemmas: string, care: Care, name: string, unless?: Rule['unless']): Rule => ({
  name,
  kind: 'tend',
  head: lemmas
    .split(' ')
    .map((lemma) => `${lemma}~past`)
    .join('|'),
  shape: 'object',
  care,
  ...(unless ? { unless } : {}),
});

/** "A mist", "more water". */
const isNoun = (pieces: readonly Piece[], from: number): boolean =>
  /^(?:to|the|some|more|tap|rain|in|with|fresh|of|no|my|a|got|get|gets|had|have|has|gave|give|enough|little|full|partial|deep|needs|need|lovely|hot|cold|any|without|under|for)$/.test(
    wordAt(pieces, from - 1),
  );

/** Told plainly: "mist the Salt Harrier", "misting the Salt Harrier". */
export const bare = (lemma: string, care: Care): Rule => ({
  name: `${lemma} <plant>`,
  kind: 'tend',
  head: `${lemma}~base|${lemma}~ing`,
  shape: 'object',
  care,
  // "The water butt", "the feed bins", "spray for greenfly".
  unless: (p, f, t) =>
    isNoun(p, f) ||
    (lemma === 'spray' && wordAt(p, t) === 'for') ||
    /^(?:butts?|cans?|bottles?|tanks?|bins?|bill|meter|barrels?|company|feature|pipes?|bags?|crops?|nets?|netting|cloths?|sails?)$/.test(
      wordAt(p, t),
    ),
  when: (p, _f, t) => follows(p, t, 'plant', 'place', 'count') || followsWord(p, t, ALL_OF_THEM),
});

interface Examples {
  readonly phrasings: readonly string[];
  readonly mustNot?: readonly string[];
}

/** "Watering done", "misting round finished": by nothing but its noun. */
export const roundDone = (nouns: string, care: Care, examples: Examples): Rule => ({
  name: `${nouns.split('|')[0] ?? ''} done`,
  kind: 'tend',
  head: `${nouns} round|rounds? all? done|finished|sorted`,
  shape: 'object',
  care,
  when: (_p, f) => f < 3,
  ...examples,
});

/** "Did the watering in the greenhouse", "did my feeding": a round told by its noun. */
export const didThe = (nouns: string, care: Care, examples: Examples): Rule => ({
  name: `did the ${nouns.split('|')[0] ?? ''} in <place>`,
  kind: 'tend',
  head: `do~past the|some|all|my? ${nouns}`,
  shape: 'object',
  care,
  when: (p, _f, t) => follows(p, t, 'plant', 'place') || endsAt(p, t),
  ...examples,
});

/** Words for whatever is cared for. */
export const ALL_OF_THEM = /^(?:everything|all|them|lot)$/;

/** Where a thing is only wanted or on offer: "fleece on my shopping list". */
export const ON_PAPER = /^(?:list|shopping|order|ebay|offer|budget)$/;

export const turnedOff = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  /^(?:off|down)$/.test(wordAt(pieces, to));

/** What plants are covered with; cloth by what stands before it ("frost cloth"). */
export const COVERINGS =
  'fleece|cover|covers|bubblewrap|bag|bags|cloche|cloches|sheet|sheets|bedsheet|bedsheets|blanket|blankets|newspaper|lid|lids|dome|domes|net|netting|plastic|polythene|hessian|burlap|tarp|cardboard|cloth|duvet|glass|clingfilm|wrap|sack|sacks|tarp';

/** "A cloth over the bench", "the shade cloth": none against frost. */
export const isOtherCloth = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'cloth' &&
  !/^(?:frost|row|garden|fleece|cover|winter)$/.test(wordAt(pieces, at - 1));

/** "Popped a cloche over them", "cracked the roof lights": heard as a place, and none where anything stands. */
export const isOpenedOrLaid = (piece: Piece | undefined): boolean =>
  piece?.is === 'place' &&
  /^(?:(?:roof|top|side|back|front|big|glass|bell|jam|old) )?(?:cloches?|jars?|domes?|lights?|windows?|vents?|doors?|flaps?)$/.test(
    piece.place,
  );

/** No grower, or another. */
export const SOMEBODY =
  /^(?:somebody|someone|who|he|she|they|himself|herself|idiot|eejit|kids|lads?|cat|dog|wind)$/;

/** Weather and beasts, that open and uncover what they will. */
const FORCE =
  /^(?:wind|winds|gust|gale|gales|storm|draught|cat|cats|dog|dogs|fox|foxes|hens?|chickens?|pigeons?|birds?|squirrels?|badgers?|rats?|kids|toddler)$/;

/** What they did to it, by verbs that tell of no plants. */
const SHIFTED = /^(?:blew|blown|ripped|tore|lifted|dragged|knocked|flung|whipped|whisked|took|had|got)$/;

/** "Somebody left the dome off", "the wind had the fleece off": no care of the grower's. */
export const leftByOthers = (pieces: readonly Piece[], from: number): boolean => {
  const left = pieces.findIndex((_, at) => at < from && at >= from - 3 && wordAt(pieces, at) === 'left');
  if (SOMEBODY.test(wordAt(pieces, left - 1))) return true;
  const force = pieces.findLastIndex(
    (_, at) => at < from && at >= from - 5 && FORCE.test(wordAt(pieces, at)),
  );
  const deed = pieces[force + 1];
  return (
    force >= 0 &&
    deed?.is === 'word' &&
    (deed.verb !== undefined || SHIFTED.test(deed.text) || force + 1 === from)
  );
};

/** "Lifted the fleece to have a look", "… and put it straight back". */
export const onlyToLook = (pieces: readonly Piece[], to: number): boolean =>
  followsWord(pieces, to, /^(?:look|peek|peep|check|gander|nosy|nosey|back|see)$/);

/** "No water for them", "needs a drop of water": wanted, and not given. */
export const WANTING = /^(?:no|not|need|needs|want|wants|without|any|more|could|due)$/;

export const among = (
  pieces: readonly Piece[],
  from: number,
  to: number,
  ...kinds: readonly Piece['is'][]
): boolean => pieces.slice(from, to).some(({ is }) => kinds.includes(is));

/** "Newspaper over them against the glare": laid for shade. */
export const againstSun = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(from)
    .some(
      (_, n) =>
        /^(?:sun|sunshine|glare|heat|scorch|scorching|sunburn)$/.test(wordAt(pieces, from + n)) &&
        pieces.slice(from, from + n).some((_, m) => /^(?:against|from|for)$/.test(wordAt(pieces, from + m))),
    );

/** Whether what is told there opens the note, or its own part of it: "took six, shade cloth over the Salt Harrier". */
export const opensPart = (pieces: readonly Piece[], from: number): boolean =>
  from < 3 ||
  [1, 2, 3].some(
    (n) => pieces[from - n]?.is === 'break' || /^(?:and|then|with)$/.test(wordAt(pieces, from - n)),
  );
