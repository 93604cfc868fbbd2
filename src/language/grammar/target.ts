/** How many plants are wanted, and by when. */
import type { Piece } from '../pieces.js';
import { wordAt } from './rule.js';

export interface TargetRule {
  readonly name: string;
  /** Matched on the sentence's line. */
  readonly pattern: RegExp;
}

const NUMBER =
  '(?:\\d+|(?:half )?a dozen|(?:two|three|four) dozen|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|eighteen|twenty|thirty|forty|fifty|sixty|a hundred)';

export const targetRules: readonly TargetRule[] = [
  {
    name: '<count> <plant> please for <day>',
    pattern: new RegExp(
      `^(?:and |another |about |say |just )?${NUMBER}(?: \\w+){0,2} plantname(?: plants| ones)?(?:,? (?:please|pls) (?:for|by) .*| (?:for|by) .* (?:please|pls))$`,
    ),
  },
  {
    name: 'want <count> <plant> by <day>',
    pattern:
      /\b(?:want|wants|wanted|wanting|need|needs|needed|needing|require|requires|required|put me down for|wanting|be wanting|be needing|wish for)\b|\b(?:i'm|we're|i am|we are|am|are|is|was) after (?=\d|a |an |some |about |at least |\w+ (?:of|more)\b|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|thirty|forty|fifty|sixty|a hundred)/,
  },
  {
    name: 'could do with <count> <plant>',
    pattern:
      /\b(?:could|can|might) do with (?:about |around |some |another |at least )?(?=\d|a |several |a few |a couple |two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|thirty|forty|fifty)(?!a (?:drink|feed|soak|water|mist|trim|good|bit|bigger|pot))/,
  },
  {
    name: "I'd love <count> <plant>",
    pattern:
      /\b(?:i'd|we'd|would|i would|we would|she'd|he'd|they'd|i do|i) (?:love|like|want|be glad of|be happy with|need)\b|\blike to (?:have|get|end up with|see|raise|grow|make|produce)\b/,
  },
  {
    name: 'must have <count> <plant>',
    pattern:
      /\b(?:must|have to|has to|got to|needs to) have (?=\d|a |some |about |two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|fifty|sixty|for )/,
  },
  {
    name: "ideally I'd have <count> <plant>",
    pattern:
      /\b(?:ideally|in an ideal world)\b.*\b(?:have(?! \w+ed\b| (?:struck|taken|cut|stuck|put|had|got|sold|lost)\b)|(?:end|finish|wind) up with)\b/,
  },
  {
    name: 'be good to have <count> <plant>',
    pattern: /\b(?:be|is) (?:good|nice|great|grand|handy|lovely) to (?:have|get|see|raise|end up with)\b/,
  },
  {
    name: 'aiming for <count> <plant>',
    pattern:
      /\b(?:aim|aiming|aims|target|targets|targeting|goal|shooting|hoping|hope|going|looking|wishing|gunning|after|planning|plan) (?:is |to |for |of |on |at |: )/,
  },
  {
    name: 'chasing <count> <plant>',
    pattern:
      /^(?:i'm |we're |i am |we are )?(?:chasing|hunting|seeking|after) (?=\d|a |an |some |about |two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|thirty|forty|fifty|sixty|a hundred)/,
  },
  {
    name: 'target: <count> <plant>',
    pattern:
      /\b(?:target|goal|aim|quota|requirements?)\b|\bto order for \b|^(?:an |another |big |new )?order (?:in|on|placed|up)? ?for \b|(?<!^|^i |^we |^i've |^we've |^just |\bon )\border(?:s|ed)?\b(?!.*\b(?:came|arrived|turned up|delivered|is in|is here)\b)/,
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
    name: 'promised <count> <plant>',
    pattern:
      /\b(?:promised(?! (?:me|us)\b)|promise|said i'd (?:grow|do|make|bring|have|raise|give|supply)|said we'd (?:grow|do|make|bring|have)|owe|commissioned|commission|asked (?:me |us )?for|(?<!many |few )down for|down to (?:do|grow|make|raise|supply)|signed up for|committed to (?:grow|give|have|raise|supply|bring|make|do)\w*|told .* i'd (?:have|grow|bring|do)|on the hook for)\b/,
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
