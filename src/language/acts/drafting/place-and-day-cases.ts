/** Places and days that are not where and when the act was done. */
import { dayOfEvent, dayToldAt } from '../day-told.js';
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { pastPerson } from '../../mood/somebody-else.js';
import {
  dealtWithBefore,
  isHowLongMeant,
  isPlannedFor,
  PLANNED,
  isSomeonesComing,
  wasAway,
} from './other-days.js';
import { nearestWord } from './words-before.js';
import { type Case, isBeforeAct, passOver, type Seen } from './case.js';

export const placeCases: readonly Case<Seen<'place'>>[] = [
  {
    // Where those are that were left out.
    name: 'all except <count> in <place>',
    phrasings: ['All the Salt Harrier went in the ground, except one that I am keeping on the porch'],
    when: ({ pieces, at, draft, clause }) =>
      draft.quantity?.allBut !== undefined &&
      at >= (clause.hit?.to ?? at + 1) &&
      keepsThem(pieces.slice(clause.hit?.to ?? at, at)),
    does: passOver,
  },
  {
    // Whence they came, and not where they stand.
    name: "<count> <plant> from <giver>'s <place>",
    phrasings: [
      "20 rooted Salt Harrier liners turned up from Aunt Dot's greenhouse",
      "Bought two Salt Harrier tubers from Mrs Penny's nursery",
      'Doreen at the allotment gave me two Salt Harrier tubers',
      'Begged four Salt Harrier cuttings off the lady at plot 12, now in the cold frame',
      'Took four Salt Harrier from the garden by plot 12, now in the cold frame',
    ],
    when: ({ clause, piece, pieces, at }) => {
      const kind = clause.hit?.rule.kind ?? '';
      return (
        (/^(?:receive|stock)$/.test(kind) && comesFrom(pieces, at, piece.prep)) ||
        (/^(?:receive|stock|strike)$/.test(kind) &&
          (isGivers(pieces, at, clause.from) || isNowElsewhere(pieces, at, clause.to)))
      );
    },
    does: passOver,
  },
  {
    // Where what they came off stands.
    name: 'took <count> from the bush in <place>',
    phrasings: [
      'Took six hydrangea cuttings from the big bush in the front garden',
      "Jean let me loose in her garden so I've taken 8 of her Salt Harrier",
      'Went round the botanic garden and took 6 cuttings of Salt Harrier',
    ],
    when: ({ pieces, at, clause }) =>
      clause.hit?.rule.kind === 'strike' &&
      (isWhatTheyCameOff(pieces, at) || isWhereSomebodyWent(pieces, clause.from, at, clause.hit.from)),
    does: passOver,
  },
  {
    name: 'everything in <place> is now in <place>',
    phrasings: ['Everything in the propagator is now in the greenhouse'],
    when: (seen) =>
      seen.clause.hit?.rule.kind === 'move' &&
      seen.clause.subjectFirst &&
      isBeforeAct(seen) &&
      seen.piece.prep !== undefined,
    does: ({ draft, piece }) => {
      draft.fromPlace ??= piece.place;
    },
  },
  {
    // Told of behind an act: no place that the act brought anything to.
    name: 'took <count>, <place> is full',
    phrasings: [
      'Took five Salt Harrier, the windowsills are groaning',
      'Moved the Salt Harrier today, the propagator was wanted',
      'Moved the Salt Harrier this morning, the greenhouse got too hot',
      'Moved the Salt Harrier, I needed the greenhouse for something else',
    ],
    when: ({ clause, piece, pieces, at }) =>
      clause.hit !== undefined &&
      clause.hit.rule.kind !== 'tend' &&
      piece.prep === undefined &&
      at >= clause.hit.to &&
      (/^(?:need|needed|wanted|want)$/.test(nearestWord(pieces, at)) ||
        /^(?:is|are|was|were|isn't|wasn't|has|had|hasn't|got|gets|gone|went|needs|needed|wants|wanted|looks|looked|feels|felt)$/.test(
          wordAt(pieces, at + 1),
        )) &&
      !/^(?:where|the|best|better)$/.test(wordAt(pieces, at + 2)),
    does: passOver,
  },
];

export const dayCases: readonly Case<Seen<'when'>>[] = [
  {
    // With which it is compared.
    name: 'more than <day>',
    phrasings: ['Four more of the Salt Harrier rooted than last week'],
    when: ({ pieces, at }) => wordAt(pieces, at - 1) === 'than',
    does: passOver,
  },
  {
    // On which the plants were dealt with before: it tells which plants.
    name: '<plant> I potted on <day> died',
    phrasings: ['Of the ten Salt Harrier I potted on last week three died'],
    when: (seen) => seen.clause.subjectFirst && isBeforeAct(seen) && dealtWithBefore(seen.pieces, seen.at),
    does: passOver,
  },
  {
    // The act has its own day.
    name: 'busy day <day>, <act> <day>',
    phrasings: ['Busy day on Saturday, watered the greenhouse yesterday'],
    when: ({ pieces, at, clause }) =>
      at < (clause.hit?.from ?? 0) &&
      (dayToldAt(pieces) ?? dayOfEvent(pieces)) === at &&
      pieces.slice(clause.hit?.to ?? at, clause.to).some(({ is }) => is === 'when'),
    does: passOver,
  },
  {
    // For which it had been planned.
    name: '<plant> were due on <day>, but <act>',
    phrasings: ['The Salt Harrier were due on Monday, but they went into the greenhouse today'],
    when: (seen) =>
      isBeforeAct(seen) &&
      (PLANNED.test(nearestWord(seen.pieces, seen.at)) ||
        /^(?:on|for)$/.test(nearestWord(seen.pieces, seen.at))) &&
      isPlannedFor(seen.pieces, seen.at, seen.clause.hit?.from ?? 0),
    does: passOver,
  },
  {
    // For how long it had been meant.
    name: 'been meaning to all week',
    phrasings: [
      'Finally potted on the Salt Harrier, been meaning to all week',
      'Watered the Salt Harrier, had been putting it off since Sunday',
    ],
    when: ({ clause, pieces, at }) => at >= (clause.hit?.to ?? at + 1) && isHowLongMeant(pieces, at),
    does: passOver,
  },
  {
    // When it would have been better done.
    name: '<act>, should have done it <day>',
    phrasings: ['Watered the Salt Harrier, should of done it yesterday'],
    when: ({ clause, pieces, at }) =>
      clause.hit !== undefined &&
      pieces
        .slice(clause.hit.to, at)
        .some(
          (_, n, behind) =>
            /^(?:should|ought)$/.test(wordAt(behind, n)) && /^(?:have|of|to)$/.test(wordAt(behind, n + 1)),
        ),
    does: passOver,
  },
  {
    // When somebody was elsewhere: why, and not when.
    name: 'binned <count>, we were away <day>',
    phrasings: ['Chucked three Salt Harrier, bone dry, we were down the beach all weekend'],
    when: ({ clause, pieces, at }) => clause.hit !== undefined && at > clause.hit.to && wasAway(pieces, at),
    does: passOver,
  },
  {
    // On which somebody comes for them.
    name: '<count> <plant>, <someone> coming <day>',
    phrasings: ['Struck ten Salt Harrier, Doreen coming for them on Saturday'],
    when: ({ clause, pieces, at }) =>
      clause.hit !== undefined && at >= clause.hit.to && isSomeonesComing(pieces, at),
    does: passOver,
  },
  {
    // For when it was done.
    name: 'for <time>',
    phrasings: ['Sold five Salt Harrier for 5pm'],
    when: ({ clause, pieces, at }) =>
      wordAt(pieces, at - 1) === 'for' && !/^(?:target|remind)$/.test(clause.hit?.rule.kind ?? 'target'),
    does: passOver,
  },
  {
    // What it smelt of, and no day.
    name: 'of <day> dinner',
    phrasings: ['Took five Salt Harrier, house stinks of Sunday dinner'],
    when: ({ pieces, at }) =>
      wordAt(pieces, at - 1) === 'of' && /^(?:dinner|lunch|roast)$/.test(wordAt(pieces, at + 1)),
    does: passOver,
  },
];

/** Behind "from", whosever place it is: "from Aunt Dot's greenhouse". */
function comesFrom(pieces: readonly Piece[], at: number, prep: string | undefined): boolean {
  if (prep !== undefined) return /^(?:from|off)$/.test(prep);
  let before = at - 1;
  while (
    before > at - 4 &&
    pieces[before]?.is === 'word' &&
    !/^(?:from|off|in|to)$/.test(wordAt(pieces, before))
  )
    before--;
  return /^(?:from|off)$/.test(wordAt(pieces, before));
}

/** "Doreen at the allotment gave me …", "… off the lady at plot 12": where somebody lives or was met. */
function isGivers(pieces: readonly Piece[], at: number, from: number): boolean {
  const lead = pieces.slice(0, at).findLastIndex((_, n) => /^(?:from|off)$/.test(wordAt(pieces, n)));
  const who = lead > at - 7 && lead >= from ? lead + 1 : from;
  return at - who < 6 && (pastPerson(pieces, who)?.to ?? 0) > at;
}

/** "…, now in the cold frame": where they stand is told behind. */
function isNowElsewhere(pieces: readonly Piece[], at: number, to: number): boolean {
  const now = pieces.findIndex(
    (piece, n) => n > at && n < to && piece.is === 'break' && wordAt(pieces, n + 1) === 'now',
  );
  return now > at && pieces.slice(now, to).some(({ is }) => is === 'place');
}

/** "Except one I'm keeping in a pot", "bar two that are staying": what became of those left out. */
const keepsThem = (pieces: readonly Piece[]): boolean =>
  pieces.some(
    (piece) =>
      piece.is === 'word' &&
      /^(?:keeping|kept|keep|staying|stayed|stays|leaving|left|that's|that|which|who)$/.test(piece.text),
  );

/** "Jean let me loose in her garden so …", "went round the garden and …": gone to before the act, which tells its own place. */
function isWhereSomebodyWent(pieces: readonly Piece[], from: number, place: number, act: number): boolean {
  return (
    pieces
      .slice(from, place)
      .some((_, n) =>
        /^(?:went|let|visited|popped|nipped|wandered|called|invited)$/.test(wordAt(pieces, from + n)),
      ) &&
    pieces.slice(place, Math.max(place, act)).some((_, n) => /^(?:and|so)$/.test(wordAt(pieces, place + n)))
  );
}

/** "Off the one by", "from the big bush at the bottom of". */
function isWhatTheyCameOff(pieces: readonly Piece[], place: number): boolean {
  let at = place - 1;
  while (
    /^(?:by|at|near|in|on|outside|behind|beside|next|to|over|growing|standing|the|my|our)$/.test(
      wordAt(pieces, at),
    )
  )
    at--;
  const one = pieces[at];
  const isOne =
    /^(?:ones?|bush|shrub|hedge|tree|clump|mother|specimen)$/.test(wordAt(pieces, at)) ||
    (one?.is === 'count' && one.quantity.value === 1);
  if (!isOne || at === place) return false;
  do at--;
  while (/^(?:big|old|large|huge|little|other|lovely|parent)$/.test(wordAt(pieces, at)));
  return (
    /^(?:the|my|our|that|next)$/.test(wordAt(pieces, at)) && /^(?:off|from|of)$/.test(wordAt(pieces, at - 1))
  );
}
