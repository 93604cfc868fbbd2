/** Names that a note itself marks as names: in quotes, or behind "called". */
import { crops, phraseAt, verbSense } from './lexicon.js';
import type { Piece } from './pieces.js';
import { textAt, type Token } from './tokens.js';

/** Names in quotes are names, whoever knows them. */
export function quotedNames(
  text: string,
  tokens: readonly Token[],
  free: (at: number) => boolean,
  claim: (piece: Piece) => boolean,
): void {
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
    const name = text.slice(inside[0]?.start ?? 0, inside.at(-1)?.end ?? 0);
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
    claim({ is: 'plant', from: at + 1, to: end, known: false, plant: { variety: titleCase(name) } });
    at = end;
  }
}

/** "A dahlia called brown paper duchess": what follows is the name, whatever its words. */
export function namedNames(
  text: string,
  tokens: readonly Token[],
  free: (at: number) => boolean,
  claim: (piece: Piece) => boolean,
): void {
  for (let at = 1; at < tokens.length; at++) {
    const isNamed =
      /^(?:called|named|labelled|labeled|calls|christened|dubbed|nicknamed|titled)$/.test(
        textAt(tokens, at),
      ) ||
      (/^(?:is|was)$/.test(textAt(tokens, at)) &&
        (textAt(tokens, at - 1) === 'name' ||
          // "The sort is Blaue Hexe".
          (/^(?:variety|cultivar|sort)$/.test(textAt(tokens, at - 1)) &&
            tokens[at + 1]?.capital === true))) ||
      /^name's$/.test(textAt(tokens, at)) ||
      // "From Dahlia, Name Rote Nonne", "84 gazania plugs, variety Tin Valise".
      (/^(?:name|sorte|variety|var|cultivar|cv)$/.test(textAt(tokens, at)) &&
        /^[,(-]$/.test(textAt(tokens, at - 1)) &&
        tokens[/^[:.]$/.test(textAt(tokens, at + 1)) ? at + 2 : at + 1]?.capital === true) ||
      // "A salvia we call Harbour Gossip", "known as Harbour Gossip".
      (tokens[at + 1]?.capital === true &&
        (/^(?:we|i|they|people|all) call$/.test(`${textAt(tokens, at - 1)} ${textAt(tokens, at)}`) ||
          /^(?:known|sold|listed|labelled) as$/.test(`${textAt(tokens, at - 1)} ${textAt(tokens, at)}`))) ||
      isBeingCalled(tokens, at) ||
      (textAt(tokens, at) === 'of' &&
        textAt(tokens, at - 1) === 'name' &&
        (textAt(tokens, at - 3) === 'by' ||
          (tokens[at + 1]?.capital === true && textAt(tokens, at - 2) !== 'the'))) ||
      // "With the name Wolkenherd", but "with the name rubbed off".
      (textAt(tokens, at) === 'name' &&
        ((textAt(tokens, at - 1) === 'the' && textAt(tokens, at - 2) === 'with') ||
          textAt(tokens, at - 1) === 'with') &&
        tokens[at + 1]?.capital === true);
    // "Two crowns, Ragged Sunday by name".
    if (textAt(tokens, at) === 'name' && textAt(tokens, at - 1) === 'by' && textAt(tokens, at + 1) !== 'of') {
      let first = at - 1;
      while (first > 0 && at - first < 5 && free(first - 1) && tokens[first - 1]?.capital === true) first--;
      if (first < at - 1) claim(nameAt(text, tokens, first, at - 1));
      continue;
    }
    if (!isNamed) continue;
    let start = at + 1;
    while (/^(?:the|it|them|this|["':])$/.test(textAt(tokens, start))) start++;
    const capital = tokens[start]?.capital === true || opensNumbered(tokens, start);
    // "Called over with six": a visit.
    if (
      !capital &&
      /^(?:over|round|up|in|by|back|out|off|for|at|here|me|us|with)$/.test(textAt(tokens, start))
    )
      continue;
    let end = start;
    while (
      end < tokens.length &&
      end - start < 5 &&
      free(end) &&
      (tokens[end]?.is === 'word' ||
        // "Should be called 3 Sisters".
        (end === start &&
          /^(?:called|named|christened)$/.test(textAt(tokens, at)) &&
          opensNumbered(tokens, end))) &&
      !(
        capital &&
        end > start &&
        !tokens[end]?.capital &&
        !/^(?:of|the|de|la|and|on|in)$/.test(textAt(tokens, end))
      ) &&
      !(
        !tokens[end]?.capital &&
        /^(?:in|into|on|at|from|today|yesterday|this|for|with|to|by|and|which|that|last|please)$/.test(
          textAt(tokens, end),
        )
      ) &&
      !(end - start >= 2 && !tokens[end]?.capital && goesOn(textAt(tokens, end)))
    )
      end++;
    while (end > start && /^(?:of|the|de|la|and|on|in)$/.test(textAt(tokens, end - 1))) end--;
    if (end === start || (end === start + 1 && tokens[start]?.is === 'number')) continue;
    claim(nameAt(text, tokens, start, end));
  }
}

/** What goes on behind a name in small letters: "one called tin whistler pinched from Joan's hedge". */
const goesOn = (word: string): boolean =>
  verbSense(word)?.form === 'past' || /^(?:all|come|a|an|off|out|i|we|they|they're|it's|that's)$/.test(word);

/** "The one the raiser is calling Tin Whistler", "a seedling he's calling it"; no "Ken is calling Doreen". */
function isBeingCalled(tokens: readonly Token[], at: number): boolean {
  if (!/^(?:calling|naming|christening)$/.test(textAt(tokens, at))) return false;
  const behind = textAt(tokens, at + 1) === 'it' ? at + 2 : at + 1;
  if (tokens[behind]?.capital !== true) return false;
  for (let before = at - 1; before > at - 7 && tokens[before]?.is === 'word'; before--)
    if (/^(?:one|which|what|that|seedling|sport|variety|ones)$/.test(textAt(tokens, before))) return true;
    else if (phraseAt(crops, [textAt(tokens, before)], 0)) return true;
  return false;
}

/** A number before a word with a capital, which is no month. */
const opensNumbered = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.is === 'number' && tokens[at + 1]?.is === 'word' && tokens[at + 1]?.capital === true;

/** The words [from, to) as a name that nobody knows. */
export const nameAt = (text: string, tokens: readonly Token[], from: number, to: number): Piece => ({
  is: 'plant',
  from,
  to,
  known: false,
  plant: { variety: titleCase(text.slice(tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0)) },
});

const SMALL = /^(?:of|the|de|du|la|von|and|on|in)$/;

/** "Duchess of Nowhere": the small words within stay small. */
export function titleCase(name: string): string {
  return name.replace(
    /(^|[\s-])(\p{Ll}[\p{L}']*)/gu,
    (_, gap: string, word: string) =>
      gap + (gap !== '' && SMALL.test(word) ? word : word.charAt(0).toUpperCase() + word.slice(1)),
  );
}
