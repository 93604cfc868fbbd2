/** Places and days that are not where and when the act was done. */
import { wordAt } from '../grammar/rule.js';
import { type Case, isBeforeAct, passOver, type Seen } from './case.js';

export const placeCases: readonly Case<Seen<'place'>>[] = [
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
    // No place of the cuttings.
    name: 'took <count>, <place> is full',
    phrasings: ['Took five Salt Harrier, the windowsills are groaning'],
    when: ({ clause, piece, pieces, at }) =>
      clause.hit?.rule.kind === 'strike' &&
      piece.prep === undefined &&
      at > clause.hit.to &&
      /^(?:is|are|was|were)$/.test(wordAt(pieces, at + 1)),
    does: passOver,
  },
];

export const dayCases: readonly Case<Seen<'when'>>[] = [
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
