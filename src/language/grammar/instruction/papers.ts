/** Labels, pictures and files to take away. */
import { starts } from './opening.js';
import { type InstructionRule, plantNamed } from './rule.js';
import { anyOf } from '../../phrases.js';

const ASKS_FOR_SHEET = anyOf`print|make|give|send|do|get|(i )?need|(i )?want|can i have|could i have|show|draw`;
const LABELS = anyOf`labels|label sheet|sheet of labels|blank labels`;
const FORMAT = anyOf`csv|spreadsheet|excel|json|ics|calendar`;

export const papers: readonly InstructionRule[] = [
  {
    name: 'print labels',
    pattern: starts`
      (${ASKS_FOR_SHEET}\b.*)?\b${LABELS}\b.*
      (a|another|some|more|\d+) ${LABELS}\b.*
    `,
    read: (words) =>
      /\b(?:lost|fell|faded|wrote|written|washed|need to|must|buy|bought|out of|stuck)\b/.test(words.line) ||
      // "Some labels blew off": told.
      (/^(?:a|another|some|more|\d+) /.test(words.line) &&
        !/ (?:please|pls)$| for plantname$/.test(words.line))
        ? undefined
        : {
            kind: 'labels',
            ...plantNamed(words),
            ...(/\bblank\b/.test(words.line) && words.numbers[0] !== undefined
              ? { blank: words.numbers[0] }
              : {}),
          },
  },
  {
    name: 'show me the season',
    pattern: starts`
      (show|draw|send|give|let me see|make|plot|picture|chart|see|(can|could) i see)\b.*\b${anyOf`
        picture|chart|graph|timeline|season|plot|drawing|review|curve|image|diagram
      `}\b.*
    `,
    read: (words) => {
      const year = /\b(20\d\d)\b/.exec(words.line)?.[1];
      const of = /\breview\b/.test(words.line)
        ? 'review'
        : /\b(?:rooting|curve|roots)\b/.test(words.line)
          ? 'rooting'
          : 'season';
      return {
        kind: 'picture',
        of,
        ...plantNamed(words),
        ...(year === undefined ? {} : { year: Number(year) }),
      };
    },
  },
  {
    name: 'export as <format>',
    pattern: starts`
      ${anyOf`
        export|download|back up|backup|send me (a|the) (csv|spreadsheet|calendar)|give me (a|the) (csv|spreadsheet)
        (send|give|make|get|let)( me)?( have)? (.* (as|in) )?(a |an |the )?${FORMAT}( file)?( please)?$
      `}\b.*
    `,
    read: ({ line }) => ({
      kind: 'export',
      format: /\b(?:ics|calendar|ical)\b/.test(line) ? 'ics' : /\bjson\b/.test(line) ? 'json' : 'csv',
    }),
  },
];
