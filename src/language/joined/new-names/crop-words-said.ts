/** Where a crop stands among the words, and where words say of a name what crop it is. */
import { crops, phraseAt } from '../../row/lexicon.js';
import { textAt, type Token } from '../../row/tokens.js';

/** Where a crop begins, and of how many words. */
export function cropLength(tokens: readonly Token[], at: number): number {
  const words = [0, 1, 2].map((n) => textAt(tokens, at + n).replace(/'s$/, ''));
  return phraseAt(crops, words, 0)?.words.length ?? 0;
}

/** Words that say of a name what crop it is: "its a pothos", "which is apparently a coleus", "it's one of the fuchsias". */
export function cropSaidAt(tokens: readonly Token[], at: number): boolean {
  let next = at;
  if (/^(?:it|that|which|they)$/.test(textAt(tokens, next))) next++;
  const verb = textAt(tokens, next);
  if (next > at ? !/^(?:is|was|are)$/.test(verb) : !/^(?:that's|thats|it's|its|they're|theyre)$/.test(verb))
    return false;
  next++;
  while (
    /^(?:apparently|actually|basically|supposedly|probably|really|just|also|i|think|believe)$/.test(
      textAt(tokens, next),
    )
  )
    next++;
  const article = next;
  while (/^(?:a|an|the|my|our|one|of|another|both|all|new|kind|sort|type|some)$/.test(textAt(tokens, next)))
    next++;
  return next > article && cropLength(tokens, next) > 0;
}
