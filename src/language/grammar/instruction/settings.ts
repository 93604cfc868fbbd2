/** How the ledger is kept and spoken of: frosts, units, wording, dates, the time zone. */
import { starts } from './opening.js';
import type { InstructionRule } from './rule.js';

export const settings: readonly InstructionRule[] = [
  {
    name: 'last frost is <day>',
    pattern:
      /^(?:(?:please|set|change|note|put|the|my|our|usual|average|normal|local|here|typical|make|usually|record|for|that|remember) )*(?:last|first|final|autumn|spring) frosts?(?: date| day)?(?= (?:\d|jan|feb|mar|apr|may|june|july|aug|sep|oct|nov|dec|early|mid|late|the \d|end)).*$|^(?:(?:please|set|change|note|put|the|my|our|usual|average|normal|local|here|typical|make|usually|record|for|that|remember) )*(?:last|first|final|autumn|spring) frosts?(?: date| day)?(?: here| for us| for me| round here| around here| in this valley)?(?: (?:is|are|comes|usually|normally|on|to|at|around|about|will|was|falls|as|should|date|tends|be|=))+\b.*|^(?:set|change) (?:my |the |our )?(?:last|first) frost\b.*/,
    read: ({ line, monthDay }) =>
      monthDay === undefined || /\b(?:last night|this morning|was)\b/.test(line)
        ? undefined
        : /\b(?:first|autumn|fall)\b/.test(line)
          ? { kind: 'setFrost', first: monthDay }
          : { kind: 'setFrost', last: monthDay },
  },
  {
    name: 'use metric',
    pattern: starts(
      '(?:(?:switch|change|go|set|use|show|give|turn|i prefer|prefer|put|make|work|talk)\\b.*)?\\b(?:metric|imperial|us units|american units|fahrenheit|celsius|centigrade|inches|centimetres)\\b.*',
    ),
    read: ({ line }) =>
      !/^(?:please )?work in\b|\b(?:switch|change|set|use|show|units?|prefer|go|turn|give|metric|imperial)\b|^(?:fahrenheit|celsius|centigrade|inches|centimetres) (?:please|from now on)\b/.test(
        line,
      )
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
    pattern: starts(
      '(?:(?:use|switch|change|set|speak|write|talk|i speak)\\b.*)?\\b(?:american|us|british|uk|english|gb)\\b.*(?:spelling|spellings|wording|english|words|language)?$',
    ),
    read: ({ line }) =>
      /\b(?:spelling|spellings|wording|english|words|language)\b/.test(line) &&
      /^(?:.* )?(?:use|switch|change|set|speak|write|talk)\b|^(?:american|us|british|uk) (?:english|spellings?|wording|words)(?: please| from now on)*$/.test(
        line,
      )
        ? { kind: 'setWording', wording: /\b(?:american|us)\b/.test(line) ? 'US' : 'GB' }
        : undefined,
  },
  {
    name: 'dates day first',
    pattern:
      /\b(?:day|days|month|months) (?:first|before)\b|\b(?:date order|order of (?:the )?dates?|date format|dates? (?:as|in|like))\b|\b(?:dmy|mdy)\b/,
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
    pattern: starts(
      "(?:i am|i'm|we are|we're|we live|i live|i've moved|we've moved|i moved|i have moved|we have moved|my|set|change|our|the)?\\b.*\\b(?:time zone|timezone|zone|clock|live in|moved to|based in|local time)\\b.*|(?:i'm|i am|we're|we are) in [a-z]+(?: now| these days| at the moment)?$",
    ),
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
