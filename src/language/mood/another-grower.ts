/** Doings of another grower, told in passing: "my sister lost all her dahlias", "Bill next door has rooted nine of his". */
import type { Clause } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import { isKnown } from '../row/lexicon.js';
import { anyOf, whole } from '../phrases.js';
import type { Piece, PlantWords } from '../pieces/pieces.js';
import { plantsIn } from '../sentences/sentences.js';
import { FOLK, isPersons, KIN, pastPerson } from './somebody-else.js';

const THEIRS = /^(?:her|his|their|hers|theirs)$/;
const GIVES = /^(?:give|hand|bring|drop|send|pass|let|offer|donate|swap|leave|post|share|spare)(?:ed|s)?$/;
const OURS = /^(?:me|us|mine|my|our|ours)$/;
const GIVEN = /^(?:stock|receive|dispatch)$/;

/** "On telly they were potting on pelargoniums"; no "on telly they gave frost, so covered mine". */
const SEEN_ON = new RegExp(
  String.raw`(?:^| )on (?:the |my )?${anyOf`
    telly|tv|television|radio|wireless|news|internet|facebook|instagram|insta|tiktok|youtube|reddit|forum|group
  `} .*\b${anyOf`
    they|he|she|someone|somebody|people|folk|everyone|chap|bloke|guy|woman|man|lady
  `}\b`,
);

/** "Watched a video where they struck fifty". */
const SHOWN =
  /(?:^| )(?:video|film|clip|reel|programme|program|show|podcast|episode|article|post|blog|thread|book|magazine) (?:\w+ ){0,4}(?:they|he|she|someone|somebody|people|folk|chap|bloke|guy|woman|man|lady)\b/;

/** Whether what a clause tells was another's doing, or befell another's plants. */
export function ofAnother(pieces: readonly Piece[], clause: Clause, before: readonly string[]): boolean {
  const kind = clause.hit?.rule.kind ?? '';
  if (byOurHands(pieces, clause)) return false;
  if (isOfWhoever(pieces, clause)) return true;
  if (
    /^(?:check|loss)$/.test(kind) &&
    (hadTheirs(pieces, clause) || namesTheirsOnly(pieces, clause) || hasSheHad(pieces, clause))
  )
    return true;
  if (kind === 'strike' && isTakenByAnother(pieces, clause)) return true;
  // "My neighbour let me snip four of hers".
  const own = clause.hit?.own ?? [];
  if (kind === 'strike' && own.some((at) => /^(?:me|us)$/.test(wordAt(pieces, at)))) return false;
  // "The neighbour is watering the greenhouse while we are away": nothing done yet.
  if (kind === 'tend' && /^(?:is|are)$/.test(before.at(-1) ?? '') && KIN.test(before.at(-2) ?? ''))
    return true;
  if (kind === 'stock' && clause.hit && isBoughtByAnother(pieces, clause.from, clause.hit.from)) return true;
  if (!GIVEN.test(kind) && isByAnother(pieces, clause)) return true;
  const talk = before.slice(before.lastIndexOf('so') + 1).join(' ');
  if (partsWithTheirs(pieces, clause) || SEEN_ON.test(talk) || SHOWN.test(talk)) return true;
  // "Auntie left me her Salt Harrier": mine from now on.
  if (/^(?:stock|receive)$/.test(kind) && own.some((at) => /^(?:me|us)$/.test(wordAt(pieces, at))))
    return false;
  const subject = before.at(-1) ?? '';
  const whose = before.at(-2) ?? '';
  if (!(KIN.test(subject) || FOLK.test(subject)) || /^(?:for|to|from|with|by|off)$/.test(whose)) return false;
  // "Saw that someone took 200 from one plant", "she lost the lot".
  const { hit, to } = clause;
  if (
    hit?.rule.shape === 'object' &&
    !/^(?:they|he)$/.test(subject) &&
    /^(?:strike|potOn|plantOut|pinch|hardenOff|loss)$/.test(kind) &&
    toNothingOfOurs(pieces, hit.to, to) &&
    !pieces
      .slice(hit.to, to)
      .some((_, n) => OURS.test(wordAt(pieces, hit.to + n)) && !isPersons(wordAt(pieces, hit.to + n + 1)))
  )
    return true;
  for (let at = clause.hit?.to ?? clause.from; at < clause.to; at++)
    if (THEIRS.test(wordAt(pieces, at))) return true;
  return false;
}

/** "That was three he took", "she has only two taken": what somebody had of ours. */
function isTakenByAnother(pieces: readonly Piece[], { from, hit }: Clause): boolean {
  if (!hit || !/^(?:took|taken)$/.test(wordAt(pieces, hit.from))) return false;
  const isTold = pieces.slice(from, hit.from).some(({ is }) => is === 'count');
  const has = /^(?:he|she)$/.test(wordAt(pieces, from)) && /^(?:has|had)$/.test(wordAt(pieces, from + 1));
  return isTold && (has || /^(?:he|she)$/.test(wordAt(pieces, hit.from - 1)));
}

/** "The children took 24 cuttings", "our club potted them on": under the eyes of whoever keeps the ledger. */
function byOurHands(pieces: readonly Piece[], { from, hit }: Clause): boolean {
  if (!/^(?:strike|potOn|pinch|plantOut|tend|check)$/.test(hit?.rule.kind ?? '')) return false;
  let at = (hit?.from ?? from) - 1;
  while (ADVERB.test(wordAt(pieces, at)) && at > from) at--;
  const opens = (n: number): boolean => n === from || pieces[n - 1]?.is === 'break';
  if (!OWN_PEOPLE.test(wordAt(pieces, at))) return false;
  // "Gardening club took 20", in the short form of a log: what sort of club, and no other's.
  const article = OWN_SORT.test(wordAt(pieces, at - 1)) ? at - 2 : at - 1;
  return (/^(?:the|our|my)$/.test(wordAt(pieces, article)) && opens(article)) || opens(article + 1);
}

/** Who works under the eyes of whoever keeps the ledger. */
const OWN_PEOPLE = whole`
  children|kids|pupils|class|club|students|volunteers|trainees|grandkids|grandchildren|members|scouts|brownies|cubs
`;
/** "Gardening club", "after-school club". */
const OWN_SORT = whole`gardening|garden|allotment|horticultural|growing|propagation|lunchtime|school|youth|club|society`;

/** "Ken bought a Salt Harrier": none of ours, where "for me" does not stand behind. */
function isBoughtByAnother(pieces: readonly Piece[], from: number, head: number): boolean {
  const person = pastPerson(pieces, from);
  return (
    person?.to === head &&
    /^(?:bought|got|adopted|purchased|scored|picked)$/.test(wordAt(pieces, head)) &&
    !pieces.slice(head).some((_, n) => /^(?:me|us)$/.test(wordAt(pieces, head + n)))
  );
}

/** "Ted sold eight of his own", "Brenda gave away all her dahlias": out of no hand of ours. */
function partsWithTheirs(pieces: readonly Piece[], { from, to, hit }: Clause): boolean {
  if (
    hit?.rule.kind !== 'dispatch' ||
    !/^(?:sold|flogged|gave|donated|rehomed|offloaded|swapped)$/.test(wordAt(pieces, hit.from)) ||
    hit.from === from ||
    pieces[hit.from - 1]?.is !== 'word' ||
    /^(?:i|we|i've|we've|and|then|also|just|finally|so|but|have|had|all|now|only|already)$/.test(
      wordAt(pieces, hit.from - 1),
    )
  )
    return false;
  const behind = pieces.slice(hit.to, to);
  return behind.some(
    (_, at) =>
      THEIRS.test(wordAt(behind, at)) &&
      (wordAt(behind, at + 1) === 'own' || /^(?:plant|break)$/.test(behind[at + 1]?.is ?? 'break')) &&
      !/^(?:to|with|for|on)$/.test(wordAt(behind, at - 1)),
  );
}

/** "Sheila at the club had thirty rooted by Easter": begun by somebody, who had them. */
function hadTheirs(pieces: readonly Piece[], { from, hit }: Clause): boolean {
  const start = /^(?:my|our|the|and|but)$/.test(wordAt(pieces, from)) ? from + 1 : from;
  const who = wordAt(pieces, start);
  if (who === '' || who === 'they' || !(KIN.test(who) || !isKnown(who))) return false;
  const had = pieces.findIndex((_, at) => at > start && /^(?:had|has|have)$/.test(wordAt(pieces, at)));
  return (
    had > start &&
    had < (hit?.from ?? 0) &&
    had <= start + 5 &&
    pieces.slice(start, had).every(({ is }) => is === 'word')
  );
}

/** What may stand between somebody and what they did. */
const ADVERB =
  /^(?:has|have|had|just|already|only|also|now|finally|even|all|got|been|then|apparently|managed|to|went|and|always|recently|once)$/;

/** "A parishioner, who has received twelve, came to tea": told of whoever came. */
function isOfWhoever(pieces: readonly Piece[], { from, hit }: Clause): boolean {
  let at = (hit?.from ?? from) - 1;
  while (ADVERB.test(wordAt(pieces, at)) && at > from) at--;
  if (hit?.rule.kind === 'dispatch' || wordAt(pieces, at) !== 'who') return false;
  const who = pieces.slice(from, pieces[at - 1]?.is === 'break' ? at - 1 : at);
  return (
    who.length > 1 &&
    who.length < 6 &&
    who.every(({ is }) => is === 'word') &&
    /^(?:an?|my|our|the)$/.test(wordAt(who, 0)) &&
    !who.some((_, n) => HOUSEHOLD.test(wordAt(who, n)) || OWN_PEOPLE.test(wordAt(who, n))) &&
    !/^(?:ones?|plants|cuttings|babies|lot)$/.test(wordAt(who, who.length - 1))
  );
}

/** Who may well have done it for the grower. */
const HOUSEHOLD =
  /^(?:mum|mam|mom|dad|mother|father|wife|husband|partner|daughter|son|she|he|they|nan|gran|granny|grandma|grandad|lads?|girls?|boys?|kids|grandkids|children|someone|somebody)$/;

/** "Bill next door has rooted nine of his Salt Harrier": done by somebody, with what is theirs; no "… for me". */
function isByAnother(pieces: readonly Piece[], { from, to, hit }: Clause): boolean {
  const head = hit && pieces[hit.from];
  // "My neighbour handed over six cuttings of her Salt Harrier".
  if (!hit || (head?.is === 'word' && GIVES.test(head.verb?.lemma ?? head.text))) return false;
  // "They rang, they've lost all their Salt Harrier".
  const who = ADVERB.test(wordAt(pieces, hit.from - 1)) ? hit.from - 2 : hit.from - 1;
  if (/^they(?:'ve|'d)?$/.test(wordAt(pieces, who)))
    return pieces.slice(hit.to, to).some((_, n) => isTheirPlant(pieces, hit.to + n));
  // "…, could have been worse, Bill lost thirty": somebody behind a break.
  const own = from + pieces.slice(from, hit.from).findLastIndex(({ is }) => is === 'break') + 1;
  const person = pastPerson(pieces, own) ?? pastPerson(pieces, from);
  if (person === undefined || person.to > hit.from) return false;
  // "Dad's friend is moving, so took six of her Salt Harrier": ours.
  if (!pieces.slice(person.to, hit.from).every((_, at) => ADVERB.test(wordAt(pieces, person.to + at))))
    return false;
  const behind = pieces.slice(hit.to, to);
  // "The lady next door took six cuttings off my Salt Harrier": from ours, for her.
  const ours = hit.rule.kind === 'strike' && person.sure ? /^(?:me|us)$/ : OURS;
  if (behind.some((_, at) => ours.test(wordAt(behind, at)))) return false;
  // By a name alone, which may be a plant's misspelt, only with a plant behind.
  const done = behind.findIndex(({ is }) => is === 'break');
  const roots =
    hit.rule.kind === 'check' &&
    behind
      .slice(0, done < 0 ? undefined : done)
      .some(({ is }) => is === 'plant' || (person.sure && is === 'count'));
  // "Poor Sheila up the road lost two dozen dahlias": none that the grower knows by name.
  // … and "a chap on the telly took forty dahlia cuttings".
  const lemma = head?.is === 'word' ? head.verb?.lemma : undefined;
  const lost =
    ((lemma === 'lose' && hit.rule.kind === 'loss') ||
      (/^(?:take|strike)$/.test(lemma ?? '') && hit.rule.kind === 'strike' && person.sure)) &&
    hit.rule.shape === 'object' &&
    (person.sure || plantsIn(behind).length > 0) &&
    (plantsIn(behind).every(({ plant }) => (plant.variety ?? plant.batch) === undefined) ||
      // "Sheila next door has struck eight Salt Harrier already": she does not grow with us.
      (hit.rule.kind === 'strike' &&
        !pieces.slice(from, person.to).some((piece) => piece.is === 'word' && HOUSEHOLD.test(piece.text))));
  return (
    roots ||
    lost ||
    (person.sure && toNothingOfOurs(pieces, hit.to, to)) ||
    behind.some(
      (_, at) =>
        THEIRS.test(wordAt(behind, at)) &&
        (/^(?:hers|theirs)$/.test(wordAt(behind, at)) ||
          at + 1 >= behind.length ||
          /^(?:plant|place|count|cutting|break)$/.test(behind[at + 1]?.is ?? '') ||
          /^(?:own|whole|lot|last|first|entire|cuttings|plants)$/.test(wordAt(behind, at + 1))),
    )
  );
}

/** "Next door have planted out already": by somebody, and nothing named that the grower keeps. */
const toNothingOfOurs = (pieces: readonly Piece[], from: number, to: number): boolean =>
  !pieces
    .slice(from, to)
    .some(
      (piece) =>
        (piece.is === 'plant' && (piece.plant.variety ?? piece.plant.batch) !== undefined) ||
        piece.is === 'place' ||
        (piece.is === 'word' && /^(?:them|those|these|it|everything)$/.test(piece.text)),
    );

/** "Every fuchsia she had", "the lot he'd struck": whose they were. */
const hasSheHad = (pieces: readonly Piece[], { from, to, hit }: Clause): boolean =>
  pieces
    .slice(from, to)
    .some(
      (_, n) =>
        from + n > (hit?.from ?? from) &&
        /^(?:she|he)$/.test(wordAt(pieces, from + n)) &&
        /^(?:plant|count)$/.test(pieces[from + n - 1]?.is ?? '') &&
        /^(?:had|has|owned|owns|grew|grows|took|struck)$/.test(wordAt(pieces, from + n + 1)),
    );

const isTheirPlant = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'their' && pieces[at + 1]?.is === 'plant';

const namesTheirsOnly = (pieces: readonly Piece[], { from, to }: Clause): boolean => {
  const named = plantsIn(pieces.slice(from, to));
  return named.length > 0 && named.every(({ plant }) => isSomeonesPlant(plant, pieces));
};

/** "The frost took every one of Nuala's fuchsias", "half the street lost their dahlias": by a crop, and whose they are. */
export function isSomeonesPlant(plant: PlantWords | undefined, pieces: readonly Piece[]): boolean {
  return (
    plant !== undefined &&
    pieces.some(
      (piece, at) =>
        piece.is === 'plant' &&
        piece.plant === plant &&
        (isPersons(wordAt(pieces, at - 1)) || /^(?:her|his|their)$/.test(wordAt(pieces, at - 1))),
    )
  );
}
