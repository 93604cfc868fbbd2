/** Looks that found no roots: "no sign of roots", "nothing yet", "not one root". */
import type { Piece } from '../../pieces/pieces.js';
import { endsAt, follows, precedes, type Rule, wordAt } from '../rule.js';
import { notAboutRoots, onSomethingElse } from './not-about-roots.js';

const SHOWN_BY = /^(?:the|my|our|any|either|both|all|those|these|that|them|it|below|under|one|half)$/;

/** "Nothing from Harrops in the post": what was waited for, and from whom. */
const isSent = (pieces: readonly Piece[], to: number): boolean =>
  wordAt(pieces, to - 1) === 'from' && wordAt(pieces, to) !== '' && !SHOWN_BY.test(wordAt(pieces, to));

/** "Not loads of roots": some, and no more is said. */
const isNotMany = (pieces: readonly Piece[], from: number): boolean => {
  const many = pieces[from + 1];
  return many?.is === 'count' && many.quantity.vague === true;
};

/** "Culled four, no roots": why those went. */
const saysWhyGone = (pieces: readonly Piece[], from: number): boolean =>
  pieces[from - 1]?.is === 'break' &&
  pieces
    .slice(0, from)
    .some(
      (piece, at) =>
        piece.is === 'word' &&
        /^(?:cull|bin|chuck|throw|compost|dump|toss|ditch|scrap)$/.test(piece.verb?.lemma ?? '') &&
        pieces.slice(at, from).some(({ is }) => is === 'count'),
    );

const isPast = (piece: Piece | undefined): boolean => piece?.is === 'word' && piece.verb?.form === 'past';

/** "The four with no roots went in the bin", "threw out the two that had no roots": which ones. */
const saysWhich = (pieces: readonly Piece[], from: number, to: number): boolean => {
  const before = pieces.slice(0, from);
  if (!before.some(({ is }) => is === 'count')) return false;
  if (wordAt(pieces, from - 1) === 'with') return isPast(pieces[to]) || before.some(isThrownOut);
  return (
    /^(?:had|have|has|made|grew|got)$/.test(wordAt(pieces, from - 1)) &&
    /^(?:that|which|who)$/.test(wordAt(pieces, from - 2)) &&
    (isPast(pieces[to]) || before.some(isThrownOut))
  );
};

/** "Potted on twenty, two had no roots": of those two, and no look at all of them. */
const areSome = (pieces: readonly Piece[], from: number): boolean => {
  const count = pieces[from - 2];
  return (
    /^(?:had|have|has|got|with|made|show|showed)$/.test(wordAt(pieces, from - 1)) &&
    count?.is === 'count' &&
    // "All four had no roots".
    (count.to - count.from === 1 || count.quantity.besides === true) &&
    pieces.slice(0, from - 2).some(({ is }) => is === 'count')
  );
};

const isThrownOut = (piece: Piece): boolean =>
  piece.is === 'word' &&
  /^(?:cull|bin|chuck|throw|compost|dump|toss|ditch|scrap|biff|trash|clear|lose|lift|pull)$/.test(
    piece.verb?.lemma ?? '',
  );

/** "Two have rooted, the other three nothing doing": of the ones that were not told of before. */
const isOfOthers = (pieces: readonly Piece[], from: number): boolean => {
  const count = pieces[from - 1];
  const isOthers =
    count?.is === 'count' && (count.quantity.besides === true || count.quantity.whole === 'rest');
  return isOthers && pieces.slice(0, from - 1).some((piece) => piece.is === 'count');
};

export const noRoots: readonly Rule[] = [
  {
    name: 'no roots',
    phrasings: ['Salt Harrier no roots', 'no sign of roots'],
    mustNot: [
      'threw out the 2 Salt Harrier that had no roots',
      'binned 3 Salt Harrier with no roots',
      'potted on 20 Salt Harrier, two had no roots',
      'potted on 20 Salt Harrier, the other two had no root to speak of',
    ],
    kind: 'check',
    head: 'no|zero|zilch|not|nary|any|nothing .. roots|root',
    shape: 'object',
    rooted: 'none',
    unless: (p, f, t) =>
      notAboutRoots(p, f, t) ||
      saysWhyGone(p, f) ||
      saysWhich(p, f, t) ||
      areSome(p, f) ||
      (wordAt(p, f) === 'any' &&
        !p
          .slice(0, f)
          .some(
            (piece) =>
              piece.is === 'word' &&
              /^(?:not|no|never|without|haven't|hasn't|don't|isn't|aren't|can't|didn't)$/.test(piece.text),
          )),
  },
  {
    name: 'not one root',
    phrasings: ['not one root on the Salt Harrier'],
    kind: 'check',
    head: 'not|never <count> root|roots',
    shape: 'subject',
    rooted: 'none',
    // "Not one root on 3 of them": on those, and not on all.
    unless: (p, f, t) => isNotMany(p, f) || (wordAt(p, t) === 'on' && p[t + 1]?.is === 'count'),
    mustNot: ['not one root on 3 of the Salt Harrier'],
  },
  {
    name: 'not loads of roots, just <count>',
    phrasings: ['not loads of roots on the Salt Harrier, just 4'],
    kind: 'check',
    head: 'not <count> roots',
    shape: 'subject',
    rooted: 'some',
    when: isNotMany,
  },
  {
    name: '<plant> still rootless',
    kind: 'check',
    head: 'rootless|unrooted',
    shape: 'subject',
    rooted: 'none',
    when: (p, f, t) => endsAt(p, t) && precedes(p, f, 4, 'plant'),
    phrasings: ['the Salt Harrier still rootless', 'Tallow Bell unrooted as yet'],
    mustNot: ['binned the unrooted Salt Harrier', 'gave 3 Salt Harrier to Doreen, unrooted'],
  },
  {
    name: 'not a sausage on <plant>',
    kind: 'check',
    head: 'not|never a sausage|peep|whisker|dicky|hair|thread on|from|under|yet|below',
    shape: 'object',
    rooted: 'none',
    when: (p, f, t) =>
      p[/^(?:the|my|our|those)$/.test(wordAt(p, t)) ? t + 1 : t]?.is === 'plant' ||
      precedes(p, f, 3, 'plant'),
    phrasings: ['not a sausage on the Salt Harrier', 'Salt Harrier: not a whisker yet'],
    mustNot: [
      'not a hair out of place on Doreen, sold two Salt Harrier',
      'not a peep from Doreen about the Salt Harrier',
    ],
  },
  {
    name: 'nothing on <plant>',
    kind: 'check',
    head: 'nothing|nowt|zilch|nada yet|so? on|from|under|far|doing',
    shape: 'object',
    rooted: 'none',
    // "Nothing doing here today" is talk.
    when: (p, _f, t) => wordAt(p, t - 1) !== 'doing' || p.some(({ is }) => is === 'plant'),
    unless: (p, f, t) => saysWhyGone(p, f) || isSent(p, t) || onSomethingElse(p, t) || isOfOthers(p, f),
    mustNot: [
      'nothing on the telly tonight',
      'nothing on wriggly',
      'binned the other 5 Salt Harrier, nothing doing on them',
      'Salt Harrier came up in the raffle and nothing from Harrops yet',
    ],
    phrasings: ['nothing on Salt Harrier', 'had a peek, Salt Harrier nothing doing, Tallow Bell 3 rooted'],
  },
  {
    name: 'nothing on <plant> yet',
    kind: 'check',
    head: 'nothing|nowt|zilch|nada on|from|under|with|happening|yet',
    shape: 'object',
    rooted: 'none',
    when: (p, _f, t) => follows(p, t, 'plant') || precedes(p, t, 8, 'plant'),
    unless: (p, _f, t) => isSent(p, t),
  },
  {
    name: '<plant> still nothing',
    kind: 'check',
    head: 'still|as nothing|nowt|<count>|none yet?',
    shape: 'subject',
    rooted: 'none',
    when: (p, f, t) =>
      endsAt(p, t) &&
      p[f - 1]?.is === 'plant' &&
      p.slice(f, t).every((piece) => piece.is !== 'count' || piece.quantity.value === 0),
    phrasings: ['Salt Harrier still nothing'],
  },
  {
    name: 'none of <plant> have done a thing',
    kind: 'check',
    head: '<count> .. done|doing|happening a? thing|anything|below|under|yet',
    shape: 'object',
    rooted: 'none',
    when: (p, f) => {
      const piece = p[f];
      return piece?.is === 'count' && piece.quantity.value === 0 && p.some(({ is }) => is === 'plant');
    },
    phrasings: ['none of the Salt Harrier have done a thing below'],
  },
];
