/** What stands before a name and tells that a plant follows: a number, "cuttings of", "bought a". */
import { KIN } from '../../mood/somebody-else.js';
import { verbSense } from '../../row/lexicon.js';
import { numberAt } from '../../pieces/numbers.js';
import { whole } from '../../phrases.js';
import { textAt, type Token } from '../../row/tokens.js';

/** What is counted of a plant. */
export const COUNTED = whole`
  cuttings?|tips?|slips?|bits?|pieces?|sprigs?|stems?|shoots?|plugs?|liners?|plants?|pots?|trays?|tubers?|crowns?|divisions?|leaves|nodes?|starts?
  stalks?|sticks?|lengths|basals|heels?|offsets|runners|seedlings|layers|couple|some|more|few|lots|dozen
`;

/** Before an article, what tells that a plant was come by: "bought a …", "home with a …". */
const COMING_BY = whole`bought|got|given|brought|scored|bagged|inherited|treated|acquired|with|found|won|ordered|received|adopted|for|of|potted|picked|up|home|myself|me|ourselves`;

/** A number behind these counts nothing: "at 6", "bench 2", "order 2213". */
const NUMBERS_NO_PLANTS = whole`
  at|by|until|till|past|no|number|bench|tray|tunnel|house|shelf|bay|bed|block|row|plot|zone|frame|polytunnel|glasshouse|greenhouse
  order|invoice|docket|batch|page|week|day|in|to|from|since|on
`;

/** What stands before a name from `start` on and tells that a plant follows; "number" where it counts it. */
export function leadBefore(tokens: readonly Token[], start: number): 'number' | 'of' | 'article' | undefined {
  let at = start - 1;
  const last = textAt(tokens, at);
  if (/^an?$/.test(last)) {
    const verb = textAt(tokens, at - 1);
    return COMING_BY.test(verb) && !/^(?:of|for)$/.test(verb) ? 'article' : undefined;
  }
  // "Off my nan's fuchsia".
  if (/'s$/.test(last) && KIN.test(last.replace(/'s$/, ''))) at--;
  if (/^(?:the|my|our|that|this|these|those|her|his|your|their)$/.test(textAt(tokens, at))) at--;
  if (/^(?:of|off|from)$/.test(textAt(tokens, at))) {
    const counted = textAt(tokens, at - 1);
    return COUNTED.test(counted) || numberBefore(tokens, at) ? 'of' : undefined;
  }
  if (at < start - 1) return undefined;
  if (COUNTED.test(last) && !/^(?:some|few|lots|couple|dozen|more)$/.test(last))
    return numberBefore(tokens, at) ? 'number' : undefined;
  if (last === 'x') return numberBefore(tokens, at) ? 'number' : undefined;
  return numberBefore(tokens, start) ? 'number' : undefined;
}

/** Whether a number that may count plants ends at `to`. */
export function numberBefore(tokens: readonly Token[], to: number): boolean {
  if (to <= 0) return false;
  for (let from = to - 1; from >= 0 && to - from <= 4; from--) {
    const number = numberAt(tokens, from);
    if (number?.to !== to) continue;
    const before = textAt(tokens, from - 1);
    // "Potted on 4 wet slate salvias".
    const isVerbs = /^(?:on|in)$/.test(before) && verbSense(textAt(tokens, from - 2))?.form === 'past';
    if (NUMBERS_NO_PLANTS.test(before) && !isVerbs) return false;
    if (tokens[from - 1]?.raw === '/' || (tokens[from - 1]?.raw === ':' && tokens[from]?.glued)) return false;
    // "24 nine bob duchess", "twelve three legged stool": the second is of the name.
    if (tokens[from]?.is === 'word' && numberAt(tokens, from - 1)?.to === from) return false;
    return tokens[from]?.is !== 'ordinal';
  }
  return false;
}
