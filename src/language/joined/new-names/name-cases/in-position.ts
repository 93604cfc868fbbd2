/** Names by where they stand alone: at the head of a sentence, behind a number or a verb of taking. */
import { wordAt } from '../../../grammar/rule.js';
import { isBesideCrop } from '../beside-crop.js';
import { isCropOfTwo, looksLikeCrop } from '../crop-like.js';
import { headsCuttings } from '../heads-cuttings.js';
import { lastWord } from '../run.js';
import { isWritten, opensSentence, standsForPlant, type NameCase } from './case.js';

export const inPosition: readonly NameCase[] = [
  {
    // Two capitals that open a sentence, and a number.
    name: 'Ember Fox 10 of 12 have rooted',
    isName: true,
    when: (seen) => opensSentence(seen) && seen.pieces[seen.end]?.is === 'count',
  },
  {
    name: 'Ember Fox: 12 trays of 70 struck',
    isName: true,
    when: (seen) => opensSentence(seen) && headsCuttings(seen),
  },
  {
    name: 'From Salt Harrier 8 have roots',
    isName: true,
    when: (seen) =>
      isWritten(seen) &&
      seen.before.length === 1 &&
      /^(?:from|of|by)$/.test(lastWord(seen)) &&
      seen.pieces[seen.end]?.is === 'count' &&
      /^(?:have|has|are|is|were|had|rooted|died|lost)$/.test(wordAt(seen.pieces, seen.end + 1)),
  },
  {
    name: 'where no plant stands',
    isName: false,
    when: (seen) => !standsForPlant(seen),
  },
  {
    name: 'before a plant that is named',
    isName: false,
    when: (seen) => seen.pieces[seen.end]?.is === 'plant' && !isBesideCrop(seen),
  },
  {
    name: 'took five Quarry Annie',
    isName: true,
    when: ({ capital }) => capital > 0,
  },
  {
    name: 'six sweet pea plugs',
    isName: true,
    when: ({ pieces, at, length, capital, before, end }) =>
      capital === 0 &&
      length === 2 &&
      before.at(-1)?.is === 'count' &&
      isCropOfTwo(`${wordAt(pieces, at)} ${wordAt(pieces, at + 1)}`) &&
      /^(?:plugs?|seedlings?|plants?|cuttings?|liners?)$/.test(wordAt(pieces, end)),
  },
  {
    name: 'took five quarrywort',
    isName: true,
    when: ({ pieces, at, length, unknown }) =>
      unknown === length && (length > 1 || looksLikeCrop(wordAt(pieces, at))),
  },
  {
    name: 'took five quarry annie',
    isName: true,
    when: ({ length, unknown, isLower }) => isLower && unknown !== length && (unknown > 0 || length >= 2),
  },
];
