/** How the ledger is kept and spoken of: frosts, units, wording, dates, the time zone. */
import { anyOf, beginning, either, opening, whole, within } from '../../phrases.js';
import { starts } from './opening.js';
import type { InstructionRule } from './rule.js';

/** "Please note our usual …". */
const BEFORE_FROST = anyOf`
  please|set|change|note|put|make|record|remember|for|that|the|my|our
  usual|usually|average|normal|typical|local|here
`;

/** "… is usually around". */
const OF_FROST = anyOf`
  is|are|was|will|should|be|comes|falls|tends|usually|normally|on|to|at|around|about|as|date|=
`;

/** "Our last frost is usually around 20 May", "last frost mid May", "set the first frost …". */
const FROST_DAY = beginning`
  (${BEFORE_FROST} )*(last|first|final|autumn|spring) frosts?( date| day)?(?= ${anyOf`
    \d|the \d|early|mid|late|end|jan|feb|mar|apr|may|june|july|aug|sep|oct|nov|dec
  `}).*$
  (${BEFORE_FROST} )*(last|first|final|autumn|spring) frosts?( date| day)?${anyOf`
    ( here)
    ( for (us|me))
    ( (round|around) here)
    ( in this valley)
  `}?( ${OF_FROST})+\b.*
  (set|change) (my |the |our )?(last|first) frost\b.*
`;

const UNITS = anyOf`
  metric|imperial|us units|american units|fahrenheit|celsius|centigrade|inches|centimetres
`;

/** "Work in inches", "show metric", "celsius please"; no "six inches". */
const ASKS_FOR_UNITS = either(
  opening`(please )?work in`,
  within`switch|change|set|use|show|units?|prefer|go|turn|give|metric|imperial`,
  opening`(fahrenheit|celsius|centigrade|inches|centimetres) (please|from now on)`,
);

/** "Switch to British spelling", "American words please". */
const ASKS_FOR_WORDING = either(
  opening`(.* )?(use|switch|change|set|speak|write|talk)`,
  whole`(american|us|british|uk) (english|spellings?|wording|words)( please| from now on)*`,
);

export const settings: readonly InstructionRule[] = [
  {
    name: 'last frost is <day>',
    pattern: FROST_DAY,
    read: ({ line, monthDay }) =>
      monthDay === undefined || /\b(?:last night|this morning|was)\b/.test(line)
        ? undefined
        : /\b(?:first|autumn|fall)\b/.test(line)
          ? { kind: 'setFrost', first: monthDay }
          : { kind: 'setFrost', last: monthDay },
  },
  {
    name: 'use metric',
    pattern: starts`
      ((switch|change|go|set|use|show|give|turn|i prefer|prefer|put|make|work|talk)\b.*)?\b${UNITS}\b.*
    `,
    read: ({ line }) =>
      !ASKS_FOR_UNITS.test(line)
        ? undefined
        : {
            kind: 'setUnits',
            units:
              /\b(?:metric|celsius|centigrade|centimetres)\b/.test(line) &&
              !/\bfrom (?:metric|celsius)\b/.test(line)
                ? 'metric'
                : 'us',
          },
  },
  {
    name: 'American wording',
    pattern: starts`
      ((use|switch|change|set|speak|write|talk|i speak)\b.*)?\b(american|us|british|uk|english|gb)\b.*${anyOf`
        spelling|spellings|wording|english|words|language
      `}?$
    `,
    read: ({ line }) =>
      /\b(?:spelling|spellings|wording|english|words|language)\b/.test(line) && ASKS_FOR_WORDING.test(line)
        ? { kind: 'setWording', wording: /\b(?:american|us)\b/.test(line) ? 'US' : 'GB' }
        : undefined,
  },
  {
    name: 'dates day first',
    pattern: within`
      (days?|months?) (first|before)
      date order|order of (the )?dates?|date format|dates? (as|in|like)
      dmy|mdy
    `,
    read: ({ line }) =>
      /\b(?:date|dates|order|format|dmy|mdy|write)\b|^(?:day|month) first$/.test(line)
        ? {
            kind: 'setDateOrder',
            order: /\bmdy\b|\bmonth (?:first|before)\b|american/.test(line) ? 'MDY' : 'DMY',
          }
        : undefined,
  },
  {
    name: 'I am in <zone>',
    pattern: starts`
      ${anyOf`
        i am|i'm|we are|we're|we live|i live|(i've|we've|i|i have|we have) moved|my|set|change|our|the
      `}?\b.*\b(time zone|timezone|zone|clock|live in|moved to|based in|local time)\b.*
      (i'm|i am|we're|we are) in [a-z]+( now| these days| at the moment)?$
    `,
    read: ({ written, plants }) => {
      if (plants.length > 0) return undefined;
      const zone = /\b([A-Z]+\/[A-Z_]+(?:\/[A-Z_]+)?)\b/i.exec(written)?.[1];
      if (zone) return { kind: 'setZone', zone };
      const place = /\b(?:in|to|is|for|on) (?:the )?(\p{Lu}[\p{L}']*(?: \p{Lu}[\p{L}']*)*)/u.exec(
        written,
      )?.[1];
      return place ? { kind: 'setZone', place } : undefined;
    },
  },
];
