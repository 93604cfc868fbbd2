/** When the grower is prompted: snoozes, the digest, quiet hours. */
import { anyOf, within } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { starts } from './opening.js';
import { type InstructionRule, plantNamed } from './rule.js';

/** What prompts a grower, and may be put off: "snooze the checks". */
const OF_PROMPTS = within`
  remind|reminders?|reminding|prompts?|prompting|nag|nagging|messages?|messaging|asking|pings|pinging
  rounds?|checks?|notifications|alerts|digest|mithering|badgering|pestering|hassling
`;

/** What tells of hours, as no "one dog, two singers" does. */
const BETWEEN = /\b(?:from|between|after|before|until|till|to|and)\b|[\d:]\d? ?(?:-|–|am\b|pm\b)/;

const BOTHER = anyOf`
  nag(ging)?|(bother|remind|ask|pester|ping|prompt|tell)(ing)?|bug(ging)?|prod(ding)?|(chas|hassl|pok)(e|ing)
  (mither|myther|moither|badger|annoy|harass|plague)(ing)?|(go|going|keep|keeping|bang|banging|rabbiting|wittering) on( at)?
  be (asked|reminded)
`;

/** "Round", "morning message". */
const DIGEST = anyOf`digest|round|daily round|round up|roundup|summary|briefing|daily|morning message`;

/** What no hours are told with. */
const tellsOfPlants = (piece: Piece): boolean =>
  /^(?:plant|pots|cutting|medium|size|celsius|place)$/.test(piece.is) ||
  (piece.is === 'word' && piece.verb?.form === 'past' && !/^(?:set|put|have|be)$/.test(piece.verb.lemma));

export const prompting: readonly InstructionRule[] = [
  {
    name: 'snooze <plant> until <day>',
    pattern: starts`
      ${anyOf`
        snooze|postpone|put off|delay|defer|skip|pause|stop|no more|leave off|hold off|hold fire on
        shush|mute|quiet|silence|give me a break from
      `}\b.*
    `,
    read: (words) => {
      const { line, until } = words;
      if (
        !/^(?:.*\b)?(?:snooze|mute|silence|shush|pause|postpone|defer)\b/.test(line) &&
        !OF_PROMPTS.test(line)
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
    pattern: starts`
      ${anyOf`
        leave me (alone|be|in peace)|no more|nothing more
        (don't|do not|dunna|never|stop|quit|no need to|not to|leave off|give over|pack in|lay off) ${BOTHER}( me| us)?( again| any more)?
      `} (about|re|on|with|of) .*\b(till|until|til|before)\b.*
    `,
    read: (words) =>
      words.until === undefined ? undefined : { kind: 'snooze', until: words.until, ...plantNamed(words) },
  },
  {
    name: 'leave me in peace till <day>',
    pattern: starts`
      ${anyOf`
        leave (me|us) (alone|be|in peace)|(give|grant) (me|us) (some |a bit of |a little )?(peace|a rest|a break)
        give it a rest|pipe down|(stay|keep|be|go) quiet
      `}\b.* (till|until|til)\b.*
    `,
    read: (words) =>
      words.until === undefined || words.plants.length > 0
        ? undefined
        : { kind: 'snooze', until: words.until },
  },
  {
    name: 'ask me again <day>',
    pattern: starts`
      (ask|check with|bother|nag|ping|prompt) me (again|later|back|about (it|that|this|them) (again|later))?\b.*
    `,
    read: (words) =>
      words.until === undefined || !/\b(?:again|later)\b/.test(words.line)
        ? undefined
        : { kind: 'snooze', until: words.until, ...plantNamed(words) },
  },
  {
    name: 'digest at <time>',
    pattern: starts`
      (${anyOf`
        set|move|change|put|make|send|give|turn|switch|have|get|i want|i'd like
      `} )?(me )?(the |my |our )?(daily |morning )?${DIGEST}\b.*
    `,
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
    pattern: starts`
      (turn|switch|stop|no|kill|cancel|disable|drop) (off )?(the |my |sending )?(me )?(the )?(daily |morning )?${anyOf`
        digests?|rounds?|summary|briefing|daily
      `}\b.*
    `,
    read: () => ({ kind: 'setDigest', at: 'off' }),
  },
  {
    name: 'quiet from <time> to <time>',
    pattern: within`
      quiet|silent|silence|(do not|don't) disturb|leave me (alone|in peace)
      (don't|do not) (message|text|ping|bother|write|send)|don't (buzz|contact|nag|wake)|never (message|ping|text)
      no (messages|pings|texts|prompts|reminders|notifications)
    `,
    // "Quiet sailing. One dog, two hymn-singers" tells no hours; "quiet here. Took four, three to a pot" a deed.
    read: ({ line, times, pieces }) =>
      times[0] && times[1] && BETWEEN.test(line) && !pieces.some(tellsOfPlants)
        ? { kind: 'setQuiet', from: times[0], to: times[1] }
        : undefined,
  },
];
