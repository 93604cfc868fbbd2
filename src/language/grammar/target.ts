/** How many plants are wanted, and by when. */
import { anyOf, beginning, either, whole, within } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { wordAt } from './rule.js';

export interface TargetRule {
  readonly name: string;
  /** Matched on the sentence's line. */
  readonly pattern: RegExp;
  /** Only with a day to come. */
  readonly needsDay?: true;
}

const NUMBER = anyOf`
  \d+|(half )?a dozen|(two|three|four) dozen|a hundred
  two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|eighteen
  twenty|thirty|forty|fifty|sixty
`;

/** The beginnings of a number: "six" is that of "sixteen" and "sixty" too. */
const NUMBER_BEGINS = anyOf`
  \d|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|thirty|forty|fifty
`;

const AIM = anyOf`
  aim|aims|aiming|target|targets|targeting|goal|plan|planning|hope|hoping|wishing|going|looking
  shooting|gunning|after
`;

export const targetRules: readonly TargetRule[] = [
  {
    name: '<count> <plant> please for <day>',
    pattern: whole`
      (and |another |about |say |just )?${NUMBER}( \w+){0,2} plantname( plants| ones)?${anyOf`
        ,? (please|pls) (for|by) .*
        ( (for|by) .* (please|pls))
      `}
    `,
  },
  {
    name: 'want <count> <plant> by <day>',
    pattern: either(
      within`
        want|wants|wanted|wanting|need|needs|needed|needing|require|requires|required
        put me down for|wish for
      `,
      new RegExp(
        String.raw`\b(?:i'm|we're|am|are|is|was) after (?=${anyOf`
          (a|an|some|about|at least) |${NUMBER_BEGINS}
          \w+ (of|more)\b
        `})`,
      ),
    ),
  },
  {
    name: 'could do with <count> <plant>',
    pattern: new RegExp(
      String.raw`\b${anyOf`
        (could|can|might) do with ((about|around|some|another|at least) )?
      `}(?=(?:a|several) |${NUMBER_BEGINS})(?!a ${anyOf`
        drink|feed|soak|water|mist|trim|good|bit|bigger|pot
      `})`,
    ),
  },
  {
    name: "I'd love <count> <plant>",
    pattern: within`
      (i'd|we'd|she'd|he'd|they'd|would|i do|i) (love|like|want|be glad of|be happy with|need)
      like to (have|get|end up with|see|raise|grow|make|produce)
    `,
  },
  {
    name: 'must have <count> <plant>',
    pattern: new RegExp(
      String.raw`\b(?:must|have to|has to|got to|needs to) have (?=(?:a|some|about|for) |${NUMBER_BEGINS}|fifteen)`,
    ),
  },
  {
    name: "ideally I'd have <count> <plant>",
    pattern: within`
      (ideally|in an ideal world) … (end|finish|wind) up with
      (ideally|in an ideal world) … have(?! \w+ed\b| (struck|taken|cut|stuck|put|had|got|sold|lost)\b)
    `,
  },
  {
    name: 'be good to have <count> <plant>',
    pattern: /\b(?:be|is) (?:good|nice|great|grand|handy|lovely) to (?:have|get|see|raise|end up with)\b/,
  },
  {
    name: 'aiming for <count> <plant>',
    pattern: new RegExp(String.raw`\b${AIM} (?:is|to|for|of|on|at|:) `),
  },
  {
    name: 'chasing <count> <plant>',
    pattern: beginning`
      ((i'm|we're|i am|we are) )?(chasing|hunting|seeking|after) (?=(a|an|some|about) |${NUMBER_BEGINS})
    `,
  },
  {
    name: 'target: <count> <plant>',
    pattern: either(
      /\b(?:target|goal|aim|quota|requirements?)\b|\bto order for \b/,
      /^(?:an |another |big |new )?order (?:in|on|placed|up)? ?for \b(?!.*\bsent\b)/,
      // "Two dozen on order", but not "I ordered two", nor an order that came.
      new RegExp(
        String.raw`(?<!^|^(?:i|we|i've|we've|just) |\bon |\b(?:brought|unpacked|collected|fetched|delivered|up) (?:the|my|our) )\border(?:s|ed)?\b(?!${anyOf`
          .*\b(came|arrived|turned up|delivered|is (in|here))\b
        `})`,
      ),
    ),
  },
  {
    // A customer's, with the day it is for; what is ordered from a supplier is young plants, or comes from somewhere.
    name: 'order: <count> <plant> for <someone>, <day>',
    pattern: new RegExp(
      String.raw`^(?!.*\b${anyOf`sent|gone|cancelled|delivered|came|arrived|yesterday`}\b)${anyOf`
        (new |another |an |big |standing |repeat |provisional )?orders?( (taken|confirmed|booked|in|note|no|number))?
        (provisional )?(booked|reserved|allocated|earmarked|on order)
      `}(?: \d+)?${anyOf` (from|for) (?!plantname|\d)\S+( (?!plantname|\d)\S+){0,3}`}? (?:about )?${NUMBER}(?: x)?(?: \w+){0,2} plantname\b(?!.*\b${anyOf`
        plugs?|liners?|tubers?|ex|from|due|delivery|out|ready|labels?|pots|compost
      `}\b)`,
    ),
    needsDay: true,
  },
  {
    name: '<count> <plant> must become',
    pattern:
      /(?<!\bthere )\b(?:must|should|shall|has to|have to|it must) (?:become|be(?! \w+ing\b)|end up)\b/,
  },
  {
    name: '<count> <plant> would do me',
    pattern: /\bplantname (?:would|will|should|ought to) (?:do|suit|see) (?:me|us)\b/,
  },
  {
    // The grower's own word, and not another's: no "Ken said they'll get fifty".
    name: "said they'll get <count> <plant>",
    pattern: either(
      new RegExp(
        String.raw`(?:^|\b(?:i've|i|we've|we|i have|we have) )(?:said|told \w+|agreed)(?: that)? ${anyOf`
          (they|she|he)('ll|'d| will| would| can| could)|(the|my|our) \w+( \w+)? (can|could|will|would)
        `} (?:get|have|be getting)(?: about| around| another)? (?=${NUMBER_BEGINS})`,
      ),
      new RegExp(String.raw`\b${anyOf`agreed to|i've said yes to|said yes to`} (?=${NUMBER_BEGINS})`),
      new RegExp(
        String.raw`\b(?:they|she|he)(?:'ll| will) (?:get|have)(?: about| around)? (?=${NUMBER_BEGINS}).*\b(?:from|off) (?:me|us)\b`,
      ),
    ),
  },
  {
    name: 'promised <count> <plant>',
    pattern: within`
      promised(?! (me|us)\b)|promise|owe|commission|commissioned|on the hook for|signed up for
      said i'd (grow|do|make|bring|have|raise|give|supply)|said we'd (grow|do|make|bring|have)
      asked (me |us )?for|told .* i'd (have|grow|bring|do)
      (?<!many |few )down for|down to (do|grow|make|raise|supply)
      committed to (grow|give|have|raise|supply|bring|make|do)\w*
    `,
  },
];

/** "Need to take", "want to pot on": an act to do, not plants to have. */
export function wantsAnAct(pieces: readonly Piece[]): boolean {
  for (let at = 0; at < pieces.length; at++) {
    if (
      !/^(?:want|need|needs|like|love|going|plan|planning|hope|hoping|aim|wants|have|has)$/.test(
        wordAt(pieces, at),
      ) ||
      wordAt(pieces, at + 1) !== 'to'
    )
      continue;
    const next = wordAt(pieces, at + 2);
    if (
      /^(?:have|get|want|need|end|see|raise|grow|make|produce|reach|finish|wind|be|own|hit|come|total)$/.test(
        next,
      )
    )
      return false;
    return true;
  }
  return pieces.some(
    (piece, at) =>
      /^(?:need|needs|want|wants)$/.test(wordAt(pieces, at)) &&
      pieces[at + 1]?.is === 'word' &&
      /ing$/.test(wordAt(pieces, at + 1)) &&
      piece.is === 'word',
  );
}
