/** What changes how the ledger is kept: settings, snoozes, ledgers, splits, merges, papers. */
import type { TimeOfDay } from '../../calendar/zone.js';
import type { Day } from '../../calendar/day.js';
import type { Plant } from '../../ledger/entry.js';
import type { Instruction } from '../instruction.js';
import type { Piece } from '../pieces.js';
import { leading } from './runs.js';

/** What a rule of instructions may look at. */
export interface InstructionWords {
  /** The whole note's words in one lower-case line. */
  readonly line: string;
  readonly pieces: readonly Piece[];
  readonly plants: readonly Plant[];
  readonly numbers: readonly number[];
  /** Hours named, in order. */
  readonly times: readonly TimeOfDay[];
  readonly until: Day | undefined;
  readonly written: string;
  /** The date of a frost as `MM-DD`. */
  readonly monthDay: string | undefined;
}

export interface InstructionRule {
  readonly name: string;
  readonly pattern: RegExp;
  readonly read: (words: InstructionWords, match: RegExpExecArray) => Instruction | undefined;
}

const OPEN = `^${leading(
  "please|can you|could you|would you|ok|hey|pls|kindly|just|now|and|i want to|i'd like to|i would like to|let's|want to|you can|will you|bot|be so good as to|be so kind as to|would you be so kind as to|would you be so good as to|if you would|be a dear and|be an angel and|i should like you to|i'd like you to|i want you to|we should|i need to",
)}`;
const starts = (body: string): RegExp => new RegExp(`${OPEN}(?:${body})`);
const plantOf = ({ plants }: InstructionWords): { plant?: Plant } => (plants[0] ? { plant: plants[0] } : {});

/** "Split three of these into a batch of their own": the number is what is parted, not how many parts. */
const OWN_BATCH = /\binto (?:(?:a|an|its|their|another) )?(?:own|new|separate|batch of)\b/;
const NUMBERS = 'a one two three four five six seven eight nine ten eleven twelve'.split(' ');

function numberOf(word: string | undefined): number | undefined {
  if (word === undefined) return undefined;
  const at = NUMBERS.indexOf(word);
  return at < 0 ? Number(word) : Math.max(1, at);
}

const singularOf = (crop: string): string => (/[^su]s$/.test(crop) ? crop.slice(0, -1) : crop);

export const instructionRules: readonly InstructionRule[] = [
  {
    name: 'snooze <plant> until <day>',
    pattern: starts(
      '(?:snooze|postpone|put off|hold off|hold fire on|shush|mute|quiet|leave off|pause|silence|stop|no more|give me a break from|skip|delay|defer)\\b.*',
    ),
    read: (words) => {
      const { line, until } = words;
      if (
        !/^(?:.*\b)?(?:snooze|mute|silence|shush|pause|postpone|defer)\b/.test(line) &&
        !/\b(?:remind|reminder|reminders|reminding|prompt|prompts|prompting|nag|nagging|message|messages|messaging|asking|round|rounds|checks|check|pinging|pings|notifications|alerts|digest)\b/.test(
          line,
        )
      )
        return undefined;
      if (/\b(?:digest|round|daily|morning message|summary)\b/.test(line) && until === undefined)
        return { kind: 'setDigest', at: 'off' };
      return until === undefined
        ? undefined
        : { kind: 'snooze', until, ...(words.times[0] ? { at: words.times[0] } : {}), ...plantOf(words) };
    },
  },
  {
    name: 'ask me again <day>',
    pattern: starts(
      '(?:ask|check with|bother|nag|ping|prompt) me (?:again|later|back|about (?:it|that|this|them) (?:again|later))?\\b.*',
    ),
    read: (words) =>
      words.until === undefined || !/\bagain|later\b/.test(words.line)
        ? undefined
        : { kind: 'snooze', until: words.until, ...plantOf(words) },
  },
  {
    name: 'digest at <time>',
    pattern: starts(
      '(?:(?:set|move|change|put|make|send|give|turn|switch|have) )?(?:me )?(?:the |my |our )?(?:daily |morning )?(?:digest|round|daily round|summary|briefing|daily|round up|roundup|morning message)\\b.*',
    ),
    read: ({ line, times }) =>
      /\b(?:off|stop|never|none)\b/.test(line)
        ? { kind: 'setDigest', at: 'off' }
        : times[0]
          ? { kind: 'setDigest', at: times[0] }
          : undefined,
  },
  {
    name: 'reminders off',
    pattern: /^(?:all )?(?:reminders?|prompts?|messages|notifications|digests?) (off|stop)(?: please)?$/,
    read: () => ({ kind: 'setDigest', at: 'off' }),
  },
  {
    name: 'digest off',
    pattern: starts(
      '(?:turn|switch|stop|no|kill|cancel|disable|drop) (?:off )?(?:the |my |sending )?(?:me )?(?:the )?(?:daily |morning )?(?:digest|round|summary|rounds|digests|briefing|daily)\\b.*',
    ),
    read: () => ({ kind: 'setDigest', at: 'off' }),
  },
  {
    name: 'quiet from <time> to <time>',
    pattern:
      /\b(?:quiet|silent|silence|do not disturb|don't disturb|quiet hours|don't (?:message|text|ping|bother|disturb|write|buzz|contact|nag|wake|send)|do not (?:message|text|ping|bother|disturb|write|send)|no (?:messages|pings|texts|prompts|reminders|notifications)|leave me (?:alone|in peace)|never (?:message|ping|text))\b/,
    read: ({ times }) =>
      times[0] && times[1] ? { kind: 'setQuiet', from: times[0], to: times[1] } : undefined,
  },
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
      '(?:(?:switch|change|go|set|use|show|give|turn|i prefer|prefer|put|make)\\b.*)?\\b(?:metric|imperial|us units|american units|fahrenheit|celsius|centigrade|inches|centimetres)\\b.*',
    ),
    read: ({ line }) =>
      !/\b(?:switch|change|set|use|show|units?|prefer|go|turn|give|metric|imperial)\b/.test(line)
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
      '(?:use|switch|change|set|speak|write|talk|i speak)\\b.*\\b(?:american|us|british|uk|english|gb)\\b.*(?:spelling|spellings|wording|english|words|language)?$',
    ),
    read: ({ line }) =>
      /\b(?:spelling|spellings|wording|english|words|language)\b/.test(line)
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
      "(?:i am|i'm|we are|we're|we live|i live|i've moved|we've moved|i moved|i have moved|we have moved|my|set|change|our|the)?\\b.*\\b(?:time zone|timezone|zone|clock|live in|moved to|based in|local time)\\b.*|i'm in [a-z]+$|i am in [a-z]+$",
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
  {
    name: 'switch to <ledger>',
    pattern: starts(
      '(?:(?:switch|change|go|move|swap|open|use|start|create|make|new|begin|back)\\b.*)?\\b(?:ledger|book|notebook|log book|logbook)\\b.*',
    ),
    read: ({ line, written }) => {
      if (
        !/\b(?:switch|change|go|open|use|start|create|make|new|begin|back|swap)\b/.test(line) ||
        /\b(?:never put|in the book|the book says|forgot)\b/.test(line)
      )
        return undefined;
      const named =
        /(?:called|named) (.+)$/i.exec(written)?.[1] ??
        /(?:to|open|use|start|create|make|begin) (?:a |the |my |our |new )*(.+?) (?:ledger|book|notebook|logbook)\b/i.exec(
          written,
        )?.[1] ??
        /\b(?:ledger|book) (?:to |for |of )?(.+)$/i.exec(written)?.[1];
      return {
        kind: 'switchLedger',
        name: (named ?? '').trim().replace(/["'.]/g, ''),
        create: /\b(?:new|start|create|make|begin)\b/.test(line),
      };
    },
  },
  {
    name: 'switch to the society bench',
    pattern: starts('(?:switch|change|go|swap)(?: back| over)? to (?:the |my |our )?([^,]{2,40})$'),
    read: ({ written, pieces }) => {
      if (pieces.some(({ is }) => is !== 'word' && is !== 'place')) return undefined;
      const name = /\bto (?:the |my |our )?([^,.]{2,40})[.!]?$/i.exec(written.trim())?.[1];
      return name === undefined
        ? undefined
        : { kind: 'switchLedger', name: name.replace(/["']/g, ''), create: false };
    },
  },
  {
    name: 'split <plant> into <counts>',
    pattern: starts('(?:split|divide|separate|break up|break)\\b.*'),
    read: (words) => {
      const { plants, numbers, line } = words;
      const plant = plants[0];
      if (!plant || /^(?:.* )?(?:broke|divided|separated)\b/.test(line)) return undefined;
      // "Into two lots of six".
      const [, parts, each] = /\b(\w+) (?:lots|batches|pots|groups|parts) of (\w+)\b/.exec(line) ?? [];
      const lots = numberOf(parts);
      const size = numberOf(each);
      if (lots !== undefined && size !== undefined && lots * size > 0 && lots <= 12)
        return { kind: 'split', plant, into: Array<number>(lots).fill(size) };
      // "In two, 45 and 45": so many parts, then their sizes.
      const sizes =
        numbers.length > 2 && numbers[0] === numbers.length - 1 && /\bin(?:to)? \w+ /.test(line)
          ? numbers.slice(1)
          : numbers;
      return {
        kind: 'split',
        plant,
        ...(numbers.length === 1 && (!/\binto\b/.test(line) || OWN_BATCH.test(line))
          ? { count: numbers[0] ?? 0 }
          : {}),
        ...(sizes.length > 1 ? { into: sizes } : {}),
      };
    },
  },
  {
    name: 'make <count> of <plant> a batch of their own',
    pattern: /\b(?:batch of (?:their|its) own|(?:a |into a )?(?:new|separate|own) batch)\b/,
    read: ({ plants, numbers, line }) =>
      // "New batch: 9 tip cuttings of …" tells of cuttings.
      plants[0] && !/^(?:took|struck|i took|a? ?new batch)\b|\bcuttings\b/.test(line)
        ? { kind: 'split', plant: plants[0], ...(numbers[0] === undefined ? {} : { count: numbers[0] }) }
        : undefined,
  },
  {
    name: 'merge <plant> and <plant>',
    pattern: starts('(?:merge|join|combine|lump|put|treat|unite|pool|amalgamate|roll)\\b.*'),
    read: ({ plants, line }) =>
      /^(?:.*\b)?(?:merge|join|combine|pool|amalgamate|unite)\b/.test(line) ||
      /\b(?:(?:into|as|in) (?:one|a single|the same) (?:batch|lot|record)|one batch|together (?:as|in|into) one)\b/.test(
        line,
      )
        ? { kind: 'merge', plants }
        : undefined,
  },
  {
    name: '<crop> root in <days>',
    pattern:
      /^(?:my |the |our )?(.{3,40}?)(?: cuttings)?(?: (?:usually|normally|always|generally|typically|tend to|should|will))* (?:roots?|takes?(?= .*\broot\b)) (?:here |for me )?(?:in |within |about |around |after |roughly )*(\d+|a|one|two|three|four|five|six|seven|eight|nine|ten|twelve)(?: (?:to|or|and|-) (\d+|two|three|four|five|six|seven|eight|nine|ten|twelve))? (days?|weeks?|fortnight)(?: to root)?$/,
    read: ({ line, plants }, match) => {
      if (/\b(?:rooted|took|taken|remind|when|if)\b/.test(line)) return undefined;
      const crop = plants[0] ? plants[0].crop : singularOf(match[1] ?? '');
      const from = numberOf(match[2]);
      if (crop === undefined || from === undefined) return undefined;
      const days = match[4] === 'fortnight' ? 14 : match[4]?.startsWith('week') ? 7 : 1;
      const to = numberOf(match[3]);
      // One number is a middle, not a promise to the day.
      const daysToRoot: readonly [number, number] =
        to === undefined
          ? [Math.round(from * days * 0.8), Math.round(from * days * 1.2)]
          : [from * days, to * days];
      return daysToRoot[0] > 0 && daysToRoot[0] < daysToRoot[1]
        ? { kind: 'teach', crop, daysToRoot }
        : undefined;
    },
  },
  {
    name: 'print labels',
    pattern: starts(
      '(?:(?:print|make|give|send|do|get|need|want|i need|i want|can i have|could i have|show|draw)\\b.*)?\\b(?:labels|label sheet|sheet of labels|blank labels)\\b.*',
    ),
    read: (words) =>
      /\b(?:lost|fell|faded|wrote|written|washed|need to|must|buy|bought|out of|stuck)\b/.test(words.line)
        ? undefined
        : {
            kind: 'labels',
            ...plantOf(words),
            ...(/\bblank\b/.test(words.line) && words.numbers[0] !== undefined
              ? { blank: words.numbers[0] }
              : {}),
          },
  },
  {
    name: 'show me the season',
    pattern: starts(
      '(?:show|draw|send|give|let me see|make|plot|picture|chart|see|can i see|could i see)\\b.*\\b(?:picture|chart|graph|timeline|season|plot|drawing|review|curve|image|diagram)\\b.*',
    ),
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
        ...plantOf(words),
        ...(year === undefined ? {} : { year: Number(year) }),
      };
    },
  },
  {
    name: 'export as <format>',
    pattern: starts(
      '(?:export|download|send me (?:a|the) (?:csv|spreadsheet|calendar)|give me (?:a|the) (?:csv|spreadsheet)|back up|backup)\\b.*',
    ),
    read: ({ line }) => ({
      kind: 'export',
      format: /\b(?:ics|calendar|ical)\b/.test(line) ? 'ics' : /\bjson\b/.test(line) ? 'json' : 'csv',
    }),
  },
  {
    name: 'invite someone',
    pattern: starts(
      '(?:invite|add (?:a |another )?(?:grower|person|user|member)|let .+ (?:join|log|in)|share (?:this|the|my) (?:ledger|book|log))\\b.*',
    ),
    read: () => ({ kind: 'invite' }),
  },
  {
    name: 'erase everything',
    pattern: starts(
      '(?:erase|delete|wipe|clear|remove|forget) (?:everything|all (?:my |the )?(?:data|entries|notes|records)|the (?:whole )?(?:ledger|lot)|my (?:ledger|data|account)|me|all of it|it all)\\b.*',
    ),
    read: () => ({ kind: 'erase' }),
  },
  {
    name: 'search for <words>',
    pattern: starts(
      '(?:search|find|look up|look for|grep)\\b(?: for| the notes for| my notes for| notes for)? .*',
    ),
    read: ({ line, written }) =>
      /^(?:.*\b)?search\b/.test(line) ||
      /\b(?:notes?|entries|mentions?) (?:about|on|of|with|for|that)\b/.test(line)
        ? {
            kind: 'search',
            words: (
              /(?:search|find|look up|look for)(?: (?:for|in|my|the|notes?|all|entries|mentions?|about|on|of|with|that|say|mention))* (.+)$/i.exec(
                written,
              )?.[1] ?? ''
            ).trim(),
          }
        : undefined,
  },
  {
    name: 'what did I miss',
    pattern: starts(
      '(?:what (?:did|have) i miss(?:ed)?|anything i missed|what was missed|missed|catch me up|what prompts did i miss)\\b.*',
    ),
    read: () => ({ kind: 'missed' }),
  },
];
