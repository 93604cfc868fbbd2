/** Sizes and media that are not what plants went into: how long cuttings are, what they stood in before. */
import { wordAt } from '../../grammar/rule.js';
import { type Case, passOver, type Seen } from './case.js';

export const mediumCases: readonly Case<Seen<'medium'>>[] = [
  {
    // In which they stood before.
    name: '<plant> out of <medium> into <medium>',
    phrasings: ['Potted six of the Salt Harrier out of their jar of water into compost'],
    when: ({ pieces, at }) => {
      let lead = at - 1;
      while (
        lead > at - 6 &&
        pieces[lead]?.is !== 'break' &&
        !/^(?:out|in|into|from|with|on|onto|under)$/.test(wordAt(pieces, lead))
      )
        lead--;
      return wordAt(pieces, lead) === 'out' || wordAt(pieces, lead) === 'from';
    },
    does: passOver,
  },
];

export const sizeCases: readonly Case<Seen<'size'>>[] = [
  {
    // How long they are.
    name: '<count> <size> tips',
    phrasings: ['Took eight 4 inch tips of Salt Harrier', 'Took eight Salt Harrier, 10cm long'],
    when: ({ piece, pieces, at }) =>
      !piece.container &&
      (/^(?:tips?|shoots?|stems?|lengths?|pieces|bits|sections|cuttings?|long|growth)$/.test(
        wordAt(pieces, at + 1),
      ) ||
        pieces[at + 1]?.is === 'cutting'),
    does: passOver,
  },
];
