/** Where plants were come by, in words that are no name: "off the wholesale market", "from the old lady". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';

/** Markets, shops and people at the end of a few words that say which. */
const SELLERS =
  /^(?:markets?|stalls?|shops?|stores?|supermarket|nursery|nurseries|centre|center|fair|fayre|f[eê]te|show|sale|auction|bazaar|van|lorry|barrow|trolley|wholesalers?|growers?|florists?|website|internet|man|bloke|chap|fella|fellow|guy|lad|lady|woman|girl|couple|people|farmers?)$/;

/** Whether words that end in `last` say so, behind "off the" or the like. */
export const isBoughtFrom = (before: readonly Piece[], last: string): boolean =>
  /^(?:from|off|at) (?:the|a|an|our|my|this|that)$/.test(
    `${wordAt(before, before.length - 2)} ${wordAt(before, before.length - 1)}`,
  ) && SELLERS.test(last);
