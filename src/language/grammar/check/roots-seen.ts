/** Roots that were seen: "roots at the holes", "six have roots", "showing roots". */
import type { Piece } from '../../pieces/pieces.js';
import { follows, followsWord, type Rule, wordAt } from '../rule.js';
import { notAboutRoots } from './not-about-roots.js';
import { hadByThose } from './told-of-rooted.js';

/** What is done to find roots. */
const isSeeking = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:look|looked|check|checked|feel|search|see|dig)$/.test(wordAt(pieces, at));

/** "Looking for the first roots", "expected Friday": still to be seen. */
const SCARCELY = /^(?:hardly|barely|scarcely)$/;

function notYetSeen(pieces: readonly Piece[], from: number, to: number): boolean {
  // "Two had hardly any root".
  if (pieces.slice(from, to).some((piece) => piece.is === 'word' && SCARCELY.test(piece.text))) return true;
  for (let at = from - 1; at >= 0 && pieces[at]?.is !== 'break'; at--)
    if (
      /^(?:want|wants|until|till|hope|hoping|waiting|expect|expecting)$/.test(wordAt(pieces, at)) ||
      (wordAt(pieces, at) === 'looking' && wordAt(pieces, at + 1) === 'for')
    )
      return true;
  return followsWord(pieces, to, /^(?:expected|hopefully)$/);
}

export const rootsSeen: readonly Rule[] = [
  {
    name: 'roots at the holes of <plant>',
    kind: 'check',
    head: 'roots at|through|out|in|from of? the? drainage|pot|tray|bottom? holes|bottom',
    shape: 'object',
    rooted: 'some',
    phrasings: ['roots at the holes on the Salt Harrier'],
  },
  {
    name: 'roots all round the edge of <plant>',
    kind: 'check',
    head: 'roots are? all|<count>? right? round|around|to the? edge|edges|outside|pot|rootball|sides',
    shape: 'object',
    rooted: 'some',
    unless: (p, f) => /^(?:with|have|has|showing)$/.test(wordAt(p, f - 1)),
    phrasings: ['knocked one Salt Harrier out of its pot, roots all round the edge'],
  },
  {
    name: '<count> of <plant> have roots',
    kind: 'check',
    head: 'have~|get~|grow~|make~|show~|form~|with|develop~|push~|put~|throw~|shot|kick~|strike~ .. roots|root',
    shape: 'subject',
    // "Put them in the propagator to root" tells what for.
    unless: (p, f, t) =>
      notAboutRoots(p, f, t) ||
      notYetSeen(p, f, t) ||
      p.slice(f, t).some((piece) => piece.is === 'word' && piece.text === 'no') ||
      wordAt(p, t - 2) === 'to' ||
      // "Four pieces for making roots".
      /^(?:for|to)$/.test(wordAt(p, f - 1)) ||
      // "Tipped out four to have a look and three had roots": the having behind it tells.
      p
        .slice(f + 1, t)
        .some((piece) => piece.is === 'word' && /^(?:look|peek|gander|nosy)$/.test(piece.text)) ||
      // "Have wanted to look for roots": sought.
      p.slice(f, t).some((_, n) => /^(?:to|not)$/.test(wordAt(p, f + n)) && isSeeking(p, f + n + 1)) ||
      hadByThose(p, f),
    mustNot: [
      'cut four pieces of the Salt Harrier for making roots',
      'I have wanted to look for roots on the Salt Harrier',
      'potted on all of them that had roots',
      'potted on everything that has roots',
    ],
    phrasings: ['five of Salt Harrier have roots', 'five showing roots'],
  },
  {
    name: 'not a single root on <plant>',
    kind: 'check',
    rooted: 'none',
    head: '<count> root|roots on|in|at|to|showing|visible',
    shape: 'object',
    when: (p, f) => {
      const count = p[f];
      return count?.is === 'count' && count.quantity.value === 0;
    },
    phrasings: ['Salt Harrier, not a single root on any of them'],
  },
  {
    name: '<count> <plant> away, good roots',
    kind: 'check',
    head: 'good|nice|great|strong|lovely|decent|healthy|fine white? roots',
    shape: 'subject',
    when: (p, f) =>
      p.slice(0, f).some(({ is }) => is === 'count') && p.slice(0, f).some(({ is }) => is === 'plant'),
    unless: (p, f, t) =>
      notAboutRoots(p, f, t) ||
      notYetSeen(p, f, t) ||
      /^(?:no|without|any|few|hardly|with)$/.test(wordAt(p, f - 1)),
    phrasings: ['ten Salt Harrier well away now, good roots'],
    mustNot: [
      'bought ten Salt Harrier, good roots',
      'want four Salt Harrier with good roots',
      'four Salt Harrier, hardly any good roots',
    ],
  },
  {
    name: 'first roots on <plant>',
    kind: 'check',
    head: 'first|early|tiny|few roots|root on|in|at|showing|under',
    shape: 'object',
    rooted: 'some',
    when: (p, _f, t) => follows(p, t, 'plant'),
    unless: (p, f, t) => notAboutRoots(p, f, t) || notYetSeen(p, f, t),
    phrasings: ['first roots on the Salt Harrier'],
    mustNot: [
      'looking for the first roots on the Salt Harrier',
      'first roots on the Salt Harrier expected Friday',
      'first roots on the Salt Harrier by Friday hopefully',
    ],
  },
  {
    name: 'roots on <count> of <plant>',
    kind: 'check',
    head: 'roots|root now? spotted|seen|found? on|in|from|at|coming|showing|poking|out|through|visible|under',
    shape: 'object',
    unless: (p, f, t) => notAboutRoots(p, f, t) || notYetSeen(p, f, t),
    phrasings: ['roots on four of the Salt Harrier', 'roots now on four of the Salt Harrier'],
  },
];
