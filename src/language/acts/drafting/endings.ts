/** Where a clause ends before its end: behind its act something else begins that is no part of what was done. */
import { isBeastBehind } from '../../clauses/beast-next.js';
import type { Clause } from '../../clauses/clauses.js';
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { pastPerson } from '../../mood/somebody-else.js';
import { growerWentAt } from './grower-went.js';
import { liesByPlant } from './lies-over.js';
import { saysSomethingAt } from './said-by-others.js';

interface Ending {
  readonly name: string;
  readonly when: (pieces: readonly Piece[], at: number, clause: Clause) => boolean;
  /** Straight behind the act's own words too. */
  readonly straight?: true;
}

const isBehindBreak = (pieces: readonly Piece[], at: number): boolean => pieces[at - 1]?.is === 'break';

/** "Going to be 41", "it'll be cold", "they're giving frost", "frost due": behind what was done, and no part of it. */
function isForecast(pieces: readonly Piece[], from: number): boolean {
  const start =
    /^(?:as|because|it|it's|its|she|she's|they|they're|met|the|hard|heavy|big|bad|supposed|meant)$/.test(
      wordAt(pieces, from),
    )
      ? from + 1
      : from;
  const words = pieces
    .slice(start, start + 4)
    .map((_, n) => wordAt(pieces, start + n))
    .join(' ');
  const next = pieces[start + 1];
  if (WEATHER.test(wordAt(pieces, start)) || pieces[start]?.is === 'celsius')
    return (
      /^(?:forecast|due|expected|predicted|coming|promised)$/.test(
        wordAt(pieces, /^(?:is|are)$/.test(wordAt(pieces, start + 1)) ? start + 2 : start + 1),
      ) ||
      // "Frost tomorrow", but "frost last night", which is when the plants were lost.
      (next?.is === 'when' && /\b(?:tomorrow|tonight|next|coming)\b/i.test(next.when.words))
    );
  return /^(?:(?:is )?(?:going|due|set|supposed|meant) to (?:be|hit|reach|get|freeze|go|drop|rain|blow)\b|to (?:be|hit|reach)\b|will (?:be|hit|reach|get|freeze)\b|forecast\b|(?:are )?giving\b|saying\b)/.test(
    words,
  );
}

const WEATHER = /^(?:frosts?|rain|snow|wind|winds|gales?|storms?|heatwave|hail|sleet|scorcher)$/;

/** "Six off the Tallow Bell", "six tips from it": taken from a plant. */
function isOffPlant(pieces: readonly Piece[], from: number): boolean {
  if (pieces[from]?.is !== 'count') return false;
  let at = from + 1;
  while (
    /^(?:more|cuttings?|tips?|slips?|pieces|shoots)$/.test(wordAt(pieces, at)) ||
    pieces[at]?.is === 'cutting'
  )
    at++;
  if (!/^(?:off|from)$/.test(wordAt(pieces, at))) return false;
  return pieces[/^(?:the|my|our)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1]?.is === 'plant';
}

const isRest = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' && piece.quantity.whole === 'rest';

/** "Six of the Tallow Bell left over", "8 Tallow Bell fine": so many of a plant, and no deed. */
function isLeft(pieces: readonly Piece[], from: number): boolean {
  if (pieces[from]?.is !== 'count') return false;
  let at = from + 1;
  while (/^(?:of|the|my)$/.test(wordAt(pieces, at))) at++;
  if (pieces[at]?.is !== 'plant') return false;
  const state = wordAt(pieces, at + 1) === 'still' ? at + 2 : at + 1;
  const next = pieces[state + 1];
  return (
    (/^(?:left|remain|over|spare|fine|ok|okay|alive|unharmed|untouched|unscathed|unaffected|safe|healthy)$/.test(
      wordAt(pieces, state),
    ) ||
      isRest(pieces[state])) &&
    (next === undefined ||
      next.is === 'break' ||
      /^(?:over|now|still|yet|to|where|so|though|and|but)$/.test(wordAt(pieces, state + 1)))
  );
}

/** "In they went", "so into the bed they all went", "then out went six". */
function isInTheyWent(pieces: readonly Piece[], from: number): boolean {
  const isLed = isBehindBreak(pieces, from) || /^(?:and|then|so)$/.test(wordAt(pieces, from - 1));
  const way = pieces[from];
  let at = from + 1;
  if (way?.is !== 'place' || way.prep === undefined) {
    if (!/^(?:in|out|into|onto|on|off|down|up)$/.test(wordAt(pieces, from))) return false;
    while (/^(?:the|to|my|a)$/.test(wordAt(pieces, at)) || pieces[at]?.is === 'place') at++;
  }
  while (/^(?:they|those|these|all)$/.test(wordAt(pieces, at))) at++;
  return isLed && /^(?:went|go|goes|came)$/.test(wordAt(pieces, at));
}

/** "Countd", "vntted": by its ending what was done, in a word that no rule knows. */
export const isOtherDeed = (piece: Piece | undefined): boolean =>
  piece?.is === 'word' &&
  piece.verb === undefined &&
  /\p{L}{3}e?d$/u.test(piece.text) &&
  !NO_DEED.test(piece.text);
const NO_DEED = whole`behind|around|round|beyond|second|third|hundred|thousand|indeed|instead|seed|mixed|assorted|and|old|kind|good|hand|end`;

const isObject = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' || piece?.is === 'plant' || piece?.is === 'place';

const endings: readonly Ending[] = [
  {
    name: ', new lamp hung over <plant>',
    when: liesByPlant,
  },
  {
    name: ', cat walked across <plant>',
    when: (pieces, at) => isBeastBehind(pieces, at - 1),
  },
  {
    // "…, found the label under the bench": what was come upon meanwhile.
    name: ', found …',
    when: (pieces, at) =>
      isBehindBreak(pieces, at) &&
      /^(?:found|saw|noticed|spotted|discovered|heard)$/.test(wordAt(pieces, at)),
  },
  {
    // What was done for the pleasure of it.
    name: 'and admired <plant>',
    when: (pieces, at) =>
      (isBehindBreak(pieces, at) || /^(?:and|then)$/.test(wordAt(pieces, at - 1))) &&
      /^(?:admired|photographed|eyed|coveted|sketched|drew|measured|weighed|relabelled|labelled|gloated)$/.test(
        wordAt(pieces, at),
      ) &&
      // "Stuck and labelled, they're on the heat mat": the same plants.
      pieces[at + 1]?.is !== 'break',
  },
  {
    // "Lost 3 Salt Harrier and countd 4 Tallow Bell": a deed that no rule reads, or the slip of one, with a plant or place of its own.
    name: 'and counted <count> <plant>',
    when: (pieces, at, clause) =>
      (isBehindBreak(pieces, at) || /^(?:and|then)$/.test(wordAt(pieces, at - 1))) &&
      isOtherDeed(pieces[at]) &&
      isObject(pieces[/^(?:the|my|our|all|both)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1]) &&
      (pieces[at + 1]?.is === 'count' || pieces[at + 1]?.is === 'word') &&
      pieces.slice(clause.hit?.to ?? at, at - 1).some(isObject),
  },
  {
    // "…, half to do tomorrow": what was not done.
    name: ', <count> to do',
    when: (pieces, at) =>
      isBehindBreak(pieces, at) &&
      pieces[at]?.is === 'count' &&
      wordAt(pieces, at + 1) === 'to' &&
      /^(?:do|go)$/.test(wordAt(pieces, at + 2)),
  },
  {
    // What was done to something else, which no rule knows.
    name: 'and turned the propagator up',
    when: (pieces, at) =>
      (isBehindBreak(pieces, at) || /^(?:and|then)$/.test(wordAt(pieces, at - 1))) &&
      /^(?:turned|switched|cranked|reset|adjusted|swept|tidied|cleaned|scrubbed|locked|hoovered|mopped)$/.test(
        wordAt(pieces, at),
      ) &&
      // "Watered and turned the Salt Harrier".
      !pieces.slice(at + 1, at + 3).some(({ is }) => is === 'plant'),
  },
  {
    // "Gave two to Jean, one for each side of her door": what they are for.
    name: 'one for each side',
    when: (pieces, at) =>
      pieces[at]?.is === 'count' &&
      isBehindBreak(pieces, at) &&
      wordAt(pieces, at + 1) === 'for' &&
      /^(?:each|every|either)$/.test(wordAt(pieces, at + 2)) &&
      pieces[at + 3]?.is === 'word',
  },
  {
    // "Potted them on, the other ten can stay put": what is to become of others.
    name: 'the other <count> can stay put',
    straight: true,
    when: (pieces, at) => {
      const count = pieces[at];
      return (
        count?.is === 'count' &&
        (count.quantity.besides === true || count.quantity.whole === 'rest') &&
        /^(?:can|will|could|should|need|needs|look|looks|stay|stayed|still)$/.test(wordAt(pieces, at + 1))
      );
    },
  },
  {
    // "…, and Jean had two Salt Harrier": what somebody else had.
    name: 'and <someone> had <count>',
    when: (pieces, at) =>
      wordAt(pieces, at) === 'and' &&
      /^(?:had|has|took|got)$/.test(wordAt(pieces, at + 2)) &&
      pieces[at + 3]?.is === 'count' &&
      pastPerson(pieces, at + 1)?.to === at + 2,
  },
  {
    // What somebody said of it, or would like to have: "…, and a lady asked for more next year".
    name: 'and <someone> asked for more <day>',
    when: (pieces, at, { hit }) =>
      hit !== undefined && !/^(?:stock|receive)$/.test(hit.rule.kind) && saysSomethingAt(pieces, at),
  },
  {
    // What whoever had them did then.
    name: 'and he handed over <count> <plant>',
    when: (pieces, at, { hit }) => {
      const deed = pieces[at + 1];
      return (
        hit?.rule.kind === 'dispatch' &&
        /^(?:he|she)$/.test(wordAt(pieces, at)) &&
        (isBehindBreak(pieces, at) || /^(?:and|then|but|so)$/.test(wordAt(pieces, at - 1))) &&
        deed?.is === 'word' &&
        deed.verb?.form === 'past' &&
        !/^(?:be|have)$/.test(deed.verb.lemma)
      );
    },
  },
  {
    // "Sold four Salt Harrier, six Tallow Bell left": what there still is of others.
    name: ', <count> <plant> left',
    when: (pieces, at) => isBehindBreak(pieces, at) && isLeft(pieces, at),
  },
  {
    // What came back for it.
    name: 'and got <count> …',
    when: (pieces, at, { hit }) =>
      wordAt(pieces, at) === 'and' &&
      wordAt(pieces, at + 1) === 'got' &&
      // "Took five and got six off Tallow Bell": another plant's.
      !(hit?.rule.kind === 'strike' && isOffPlant(pieces, at + 2)) &&
      (/^(?:count|plant|money)$/.test(pieces[at + 2]?.is ?? '') ||
        /^(?:a|an|some)$/.test(wordAt(pieces, at + 2))),
  },
  {
    // "…, going to be 41 tomorrow": the weather for which it was done.
    name: ', going to be …',
    when: (pieces, at) =>
      (isBehindBreak(pieces, at) && isForecast(pieces, at)) ||
      (wordAt(pieces, at) === 'as' && isForecast(pieces, at + 1)),
  },
  {
    // Where the grower went then.
    name: 'that was me back in the shed',
    when: growerWentAt,
  },
  {
    // What became of others.
    name: 'and in they went, <count> <plant>',
    when: (pieces, at, { hit }) =>
      !/^(?:strike|plantOut|potOn|move)$/.test(hit?.rule.kind ?? '') && isInTheyWent(pieces, at),
  },
  {
    // A reason given.
    name: 'because …',
    when: (pieces, at) => /^(?:because|since)$/.test(wordAt(pieces, at)) && pieces[at + 1]?.is === 'word',
  },
];

/** Whether what was done ends before the piece. */
export const endsBefore = (pieces: readonly Piece[], at: number, clause: Clause): boolean =>
  at >= (clause.hit?.to ?? 1) &&
  endings.some(
    ({ when, straight }) => (straight === true || at > (clause.hit?.to ?? 0)) && when(pieces, at, clause),
  );
