/** When the grower is prompted: snoozes, the digest, quiet hours. */
import { starts } from './opening.js';
import { type InstructionRule, plantNamed } from './rule.js';

export const prompting: readonly InstructionRule[] = [
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
        : { kind: 'snooze', until, ...(words.times[0] ? { at: words.times[0] } : {}), ...plantNamed(words) };
    },
  },
  {
    name: "don't nag me about <plant> till <day>",
    pattern: starts(
      "(?:leave me (?:alone|be|in peace)|no more|nothing more|(?:don't|do not|never|stop|quit|no need to|not to|leave off) (?:nag(?:ging)?|(?:bother|remind|ask|pester|ping|prompt|tell)(?:ing)?|bug(?:ging)?|prod(?:ding)?|(?:chas|hassl|pok)(?:e|ing)|be asked|be reminded)(?: me| us)?(?: again| any more)?) (?:about|re|on|with|of) .*\\b(?:till|until|til|before)\\b.*",
    ),
    read: (words) =>
      words.until === undefined ? undefined : { kind: 'snooze', until: words.until, ...plantNamed(words) },
  },
  {
    name: 'leave me in peace till <day>',
    pattern: starts(
      '(?:leave (?:me|us) (?:alone|be|in peace)|(?:give|grant) (?:me|us) (?:some |a bit of |a little )?(?:peace|a rest|a break)|give it a rest|pipe down|(?:stay|keep|be|go) quiet)\\b.* (?:till|until|til)\\b.*',
    ),
    read: (words) =>
      words.until === undefined || words.plants.length > 0
        ? undefined
        : { kind: 'snooze', until: words.until },
  },
  {
    name: 'ask me again <day>',
    pattern: starts(
      '(?:ask|check with|bother|nag|ping|prompt) me (?:again|later|back|about (?:it|that|this|them) (?:again|later))?\\b.*',
    ),
    read: (words) =>
      words.until === undefined || !/\b(?:again|later)\b/.test(words.line)
        ? undefined
        : { kind: 'snooze', until: words.until, ...plantNamed(words) },
  },
  {
    name: 'digest at <time>',
    pattern: starts(
      "(?:(?:set|move|change|put|make|send|give|turn|switch|have|get|i want|i'd like) )?(?:me )?(?:the |my |our )?(?:daily |morning )?(?:digest|round|daily round|summary|briefing|daily|round up|roundup|morning message)\\b.*",
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
];
