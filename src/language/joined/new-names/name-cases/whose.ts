/** Whose plants they are, which names none, and names of what is no cutting. */
import { wordAt } from '../../../grammar/rule.js';
import { isBesideCrop } from '../beside-crop.js';
import { isBoughtFrom } from '../bought-from.js';
import { isCapitalOf } from '../capitals.js';
import type { RunSeen } from '../run.js';
import { KIN } from '../../../mood/somebody-else.js';
import { isWritten, type NameCase } from './case.js';

const isOffSomebodys = ({ pieces, at, before }: RunSeen): boolean =>
  /[^su]s$/.test(wordAt(pieces, at)) && /^(?:off|from)$/.test(wordAt(before, before.length - 1));

/** "My sisters salvia". */
const isKinsOf = ({ pieces, at, before }: RunSeen): boolean =>
  KIN.test(wordAt(pieces, at).replace(/s$/, '')) &&
  /^(?:my|our|his|her|their)$/.test(wordAt(before, before.length - 1));

export const whose: readonly NameCase[] = [
  {
    // Whose they were.
    name: "one of Agnes's plugs",
    isName: false,
    when: ({ pieces, before, end, length }) =>
      length === 1 &&
      /'s$/.test(wordAt(pieces, end - 1)) &&
      (/^(?:plugs?|liners?|cuttings?|ones?|lot|plants?|seedlings?)$/.test(wordAt(pieces, end)) ||
        (wordAt(before, before.length - 1) === 'of' &&
          (pieces[end] === undefined || pieces[end]?.is === 'break'))),
  },
  {
    // Whose, and of what.
    name: "from Joan's hedge",
    isName: false,
    when: ({ pieces, tokens, before, at, end, length }) =>
      length > 1 &&
      /^(?:from|off|of|over|in)$/.test(wordAt(before, before.length - 1)) &&
      pieces.slice(at, end - 1).some((piece) => piece.is === 'word' && /['’]s?$/.test(piece.text)) &&
      !pieces.slice(end - 1, end).some((piece) => isCapitalOf(tokens, piece)) &&
      /^(?:hedges?|bush|bushes|shrubs?|trees?|border|wall|fence|gate|lane|verge|front|back)$/.test(
        wordAt(pieces, end - 1),
      ),
  },
  {
    // As thumbs write it, without the apostrophe.
    name: 'six cuttings off pats salvia',
    isName: false,
    when: (seen) => seen.length === 1 && isBesideCrop(seen) && (isOffSomebodys(seen) || isKinsOf(seen)),
  },
  {
    // Where they were come by.
    name: 'bought some geraniums off the wholesale market',
    isName: false,
    when: ({ pieces, before, end, capital }) =>
      capital === 0 && isBoughtFrom(before, wordAt(pieces, end - 1)),
  },
  {
    name: 'Salt Harrier tubers',
    isName: true,
    when: (seen) =>
      isWritten(seen) &&
      /^(?:tubers?|crowns?|stools?|divisions?|rhizomes?|corms?|plugs?|liners?)$/.test(
        wordAt(seen.pieces, seen.end),
      ),
  },
  {
    name: "his old Sexton's Cope mother plant",
    isName: true,
    when: ({ pieces, end, isCapital }) =>
      isCapital &&
      /^(?:mother|stock|parent)$/.test(wordAt(pieces, end)) &&
      !/'s$/.test(wordAt(pieces, end - 1)) &&
      wordAt(pieces, end + 1) === 'plant',
  },
  {
    // Whose, not which.
    name: "Auntie Joan's pelargonium",
    isName: false,
    when: (seen) => isBesideCrop(seen) && /'s$/.test(wordAt(seen.pieces, seen.end - 1)),
  },
];
