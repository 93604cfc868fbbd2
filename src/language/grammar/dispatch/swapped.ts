/** Plants swapped: "swapped two with Ken", "did a swap with Doreen". */
import type { Piece } from '../../pieces/pieces.js';
import { follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';

/** "Swapped a jar of honey for …": what went away was no plant. */
function isSomethingElse(pieces: readonly Piece[], from: number): boolean {
  const back = pieces.findIndex((_, at) => at >= from && wordAt(pieces, at) === 'for');
  return /^(?:a|an|some|my|the)$/.test(wordAt(pieces, from)) || pieces[from]?.is === 'pots'
    ? back > from && pieces.slice(from, back).every(({ is }) => is === 'word' || is === 'pots')
    : false;
}

/** "…, swapped with one of his Salt Harrier": what came back, or stands in their place. */
function isWithPlant(pieces: readonly Piece[], from: number): boolean {
  if (wordAt(pieces, from) !== 'with') return false;
  let at = from + 1;
  while (pieces[at]?.is === 'count' || /^(?:of|the|his|her|their|some|my)$/.test(wordAt(pieces, at))) at++;
  return pieces[at]?.is === 'plant' && pieces.slice(0, from).some(({ is }) => is === 'plant');
}

export const swapped: readonly Rule[] = [
  {
    name: 'swapped <count> <plant> with <recipient>',
    kind: 'dispatch',
    head: 'swap~past|trade~past|exchange~past',
    shape: 'object',
    how: 'swapped',
    mustNot: [
      'Salt Harrier, I had got my labels swapped',
      'swapped a jar of honey for a Salt Harrier',
      'moved two Salt Harrier to the far bench, swapped with the Tallow Bell',
    ],
    unless: (p, f, t) =>
      // "I'd got my labels swapped", "the trays were swapped".
      /^(?:labels?|tags?|trays?|rows?|numbers?|notes?|names?|were|was|got|been)$/.test(wordAt(p, f - 1)) ||
      // "Len swapped me four".
      (/^(?:me|us)$/.test(wordAt(p, t)) && f > 0) ||
      (/^(?:to|places|the)$/.test(wordAt(p, t)) && !follows(p, t, 'plant', 'count')) ||
      // "Swapped these and those round".
      (followsWord(p, t, /^(?:round|around|over|places|about)$/) && !followsWord(p, t, /^(?:with|for)$/)) ||
      wordAt(p, t) === 'for' ||
      (p[f - 1]?.is === 'break' && isWithPlant(p, t)) ||
      isSomethingElse(p, t),
  },
  {
    name: '<count> <plant> swapped for <something>',
    kind: 'dispatch',
    head: 'swap~past|trade~past|exchange~past for|with',
    shape: 'subject',
    how: 'swapped',
    when: (p, f) => p[f - 1]?.is === 'plant' && precedes(p, f, 4, 'count'),
    unless: (p, f) => p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb?.form === 'past'),
    phrasings: ['four Salt Harrier swapped for a tray of leeks'],
    mustNot: ['Salt Harrier labels swapped for Tallow Bell ones'],
  },
  {
    name: 'did a swap with <recipient>',
    phrasings: ['did a swap with Doreen, two Salt Harrier for a fern'],
    kind: 'dispatch',
    head: 'do~past|have~past a? swap|trade',
    shape: 'object',
    how: 'swapped',
    when: (p, _f, t) => p.slice(t).some(({ is }) => is === 'plant'),
  },
  {
    name: 'swap with <recipient>: <count> <plant>',
    kind: 'dispatch',
    head: 'swap|trade done? with',
    shape: 'object',
    how: 'swapped',
    when: (p, f, t) =>
      f === 0 && p.slice(t).some(({ is }) => is === 'count') && p.slice(t).some(({ is }) => is === 'plant'),
    phrasings: ['swap with Ken: 3 Salt Harrier for 2 of his asters'],
  },
];
