/** What cuttings stand in, where a word can be nothing else. */
import { media, phraseAt } from '../row/lexicon.js';
import type { Piece } from './pieces.js';
import { textAt, type Token } from '../row/tokens.js';

export function mediumPiece(
  text: string,
  tokens: readonly Token[],
  at: number,
  length: number,
  claim: (piece: Piece) => boolean,
): void {
  const bare = textAt(tokens, at);
  const ambiguous =
    /^(?:water|compost|soil|oasis|bark|moss)$/.test(bare) &&
    length === 1 &&
    !(/^(?:and|plus|\/)$/.test(textAt(tokens, at + 1)) && media.has(textAt(tokens, at + 2)));
  const before = textAt(tokens, at - 1);
  // "In the earth" is the ground; "earth with perlite", "potting earth".
  const isMixed = /^(?:and|plus|with)$/.test(textAt(tokens, at + 1)) && media.has(textAt(tokens, at + 2));
  if (bare === 'earth' && length === 1 && !isMixed && !/^(?:potting|universal|fresh|new)$/.test(before))
    return;
  if (
    ambiguous &&
    !/^(?:in|into|of|with|and|multipurpose|fresh|plain|tap|rain|new|gritty|the|a|some|more|potting|free|purpose|plus|garden|general|sandy|sieved|seed|bagged|straight|cheap)$/.test(
      before,
    )
  )
    return;
  // "In the compost bucket": what is thrown away goes there.
  if (bare === 'compost' && /^(?:bucket|bin|heap|caddy|pile|bay|bins|tumbler)$/.test(textAt(tokens, at + 1)))
    return;
  // "Out by the peat stack", "behind the bark pile": where it is kept.
  if (/^(?:stack|stacks|pile|bunker|shed|bog|store|bay|bales)$/.test(textAt(tokens, at + length))) return;
  // "Short of compost": what there was none of.
  if (before === 'of' && /^(?:short|out)$/.test(textAt(tokens, at - 2))) return;
  // "Took 5 Peat Lark chrysanthemum": part of a name.
  if (tokens[at - 1]?.capital === false && tokens[at]?.capital && opensName(tokens, at + length)) return;
  // "Six to the compost": thrown out.
  if (bare === 'compost' && before === 'the' && /^(?:to|on|onto)$/.test(textAt(tokens, at - 2))) return;
  if (
    bare === 'water' &&
    !/^(?:in|into|plain|tap|rain|of)$/.test(before) &&
    // "A glass with water".
    !(before === 'with' && /^(?:glass|jar|vase|cup|mug|bottle|tumbler|bowl)$/.test(textAt(tokens, at - 2)))
  )
    return;
  let from = at;
  let to = at + length;
  // "a gritty mix of coir and perlite", "50/50 perlite and compost": joined media are one phrase.
  while (to < tokens.length) {
    const joint = /^(?:and|plus|[/,:-]|with)$/.test(textAt(tokens, to)) ? 1 : 0;
    const next = phraseAt(
      media,
      tokens.slice(to + joint, to + joint + 6).map(({ text }) => text),
      0,
    );
    if (!next) break;
    to = to + joint + next.words.length;
  }
  while (
    /^(?:fresh|new|gritty|sandy|plain|peat|free|tap|rain|bagged|homemade|cheap|proper|sieved|seed|fine|straight|pure|neat|wet|damp|moist|moistened|soggy|warm|clean|coarse)$/.test(
      textAt(tokens, from - 1),
    ) ||
    (tokens[from - 1]?.raw === '-' && textAt(tokens, from - 2) === 'peat')
  )
    from--;
  if (/^(?:mix|mixture|blend)$/.test(textAt(tokens, to))) to++;
  claim({
    is: 'medium',
    from,
    to,
    medium: mediumAsMeant(text, tokens.slice(from, to)),
  });
}

/** As written, lower case; a slip of the pen ("watr") or of the ear ("pearl light") as it was meant. */
function mediumAsMeant(text: string, tokens: readonly Token[]): string {
  const written = text.slice(tokens[0]?.start ?? 0, tokens.at(-1)?.end ?? 0).toLowerCase();
  const slipped = tokens.some((token) => token.is === 'word' && token.text !== token.raw.toLowerCase());
  return (slipped ? tokens.map((token) => token.text).join(' ') : written).replace('pearl light', 'perlite');
}

/** A capitalised word that is no medium, in a note that is not all capitals. */
function opensName(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  return token?.is === 'word' && token.capital && !media.has(token.text);
}
