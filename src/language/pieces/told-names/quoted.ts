/** Names that a note sets in quotes. */
import { crops, phraseAt } from '../../row/lexicon.js';
import { nameAt } from './name-piece.js';
import type { Search } from '../../joined/new-names/search.js';

/** Names in quotes are names, whoever knows them. */
export function quotedNames({ text, tokens, free, claim }: Search): void {
  for (let at = 0; at < tokens.length; at++) {
    const quote = tokens[at]?.raw;
    if ((quote !== '"' && quote !== "'") || !free(at)) continue;
    let end = at + 1;
    while (end < tokens.length && end - at < 7 && tokens[end]?.raw !== quote) end++;
    if (tokens[end]?.raw !== quote || end === at + 1) continue;
    const inside = tokens.slice(at + 1, end);
    let allFree = true;
    for (let n = at + 1; n < end; n++) if (!free(n)) allFree = false;
    if (!allFree || inside.some(({ is }) => is === 'mark' || is === 'line') || inside.length > 5) {
      at = end;
      continue;
    }
    const crop = phraseAt(
      crops,
      inside.map((token) => token.text),
      0,
    );
    if (crop && crop.words.length === inside.length && !inside.some(({ capital }) => capital)) {
      claim({ is: 'plant', from: at + 1, to: end, known: true, plant: { crop: crop.value } });
      at = end;
      continue;
    }
    claim(nameAt(text, tokens, at + 1, end));
    at = end;
  }
}
