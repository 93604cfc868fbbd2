/** What is done with a ledger as a whole: others invited to it, all of it erased, searched or caught up with. */
import { starts } from './opening.js';
import type { InstructionRule } from './rule.js';

export const wholeLedger: readonly InstructionRule[] = [
  {
    name: 'invite someone',
    pattern: starts(
      '(?:invite|add (?:a |another )?(?:grower|person|user|member)|let (?!me )\\S+(?: \\S+){0,3} (?:join|log in|in on (?:this|the|my))|share (?:this|the|my) (?:ledger|book|log))\\b.*',
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
      /^(?:.*\b)?(?:search|look up(?! (?:at|from|to|in)\b))\b/.test(line) ||
      /\b(?:notes?|entries|mentions?|anything|everything) (?:about|on|of|with|for|that)\b/.test(line)
        ? {
            kind: 'search',
            words: (
              /(?:search|find|look up|look for)(?: (?:me|anything|everything|for|in|my|the|notes?|all|entries|mentions?|about|on|of|with|that|say|mention))* (.+)$/i.exec(
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
