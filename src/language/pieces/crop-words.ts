/** Crops named by words that everyday talk uses too: a crop only in a plant's position. */
import { crops, phraseAt } from '../row/lexicon.js';
import type { Piece } from './pieces.js';
import { textAt, type Token } from '../row/tokens.js';

/** Crop words that everyday talk uses otherwise; a crop only in a plant's position. */
const EVERYDAY_CROPS = new Set([
  'pink',
  'rose',
  'box',
  'bay',
  'sage',
  'mum',
  'mint',
  'vine',
  'elder',
  'pinks',
  'boxes',
  'bays',
  'vines',
  'heather',
  'apple',
  'pear',
  'plum',
  'cherry',
  'rue',
  'zonal',
  'mums',
  'olive',
  'ivy',
  'holly',
  'iris',
  'currant',
  'lilac',
  'lemon balm',
  'basil',
  'rosemary',
  'viola',
  'jasmine',
  'lavender',
  'peach',
  'orange',
  'heathers',
  'roses',
  'succulent',
  'grape',
  'hops',
  'hop',
  'aster',
  'laurel',
  'bamboo',
  'cactus',
  'cherry pie',
  'savory',
  'pans',
]);

const ALWAYS_CROP = new Set([
  'basil',
  'rosemary',
  'lavender',
  'mint',
  'roses',
  'pinks',
  'mums',
  'sage',
  'jasmine',
  'heathers',
  'lemon balm',
  'zonal',
  'ivy',
  'succulent',
  'aster',
  'currant',
  'viola',
  'cherry pie',
  'cactus',
]);

const isNameWord = (token: Token | undefined): boolean =>
  token?.is === 'word' && token.capital && !/^[A-Z]+$/.test(token.raw);

const unowned = (text: string): string => (text.endsWith("'s") ? text.slice(0, -2) : text);

/** Crops that are colours too. */
const COLOURS = /^(?:pinks?|roses?|lavender|lilac|violet|peach|orange|plum|cherry|olive)$/;

const isKnownPlant = (piece: Piece | undefined): boolean => piece?.is === 'plant' && piece.known;

export function cropAt(
  tokens: readonly Token[],
  at: number,
  owner: readonly (Piece | undefined)[],
): { crop: string; to: number } | undefined {
  if (!crops.has(unowned(textAt(tokens, at)))) return undefined;
  const words = tokens.slice(at, at + 4).map(({ text }) => unowned(text));
  const found = phraseAt(crops, words, 0);
  if (!found) return undefined;
  const phrase = found.words.join(' ');
  if (
    /^(?:feed|food|fertiliser|fertilizer|soup|sandwich|sandwiches|sauce|tea|bushes?|jelly|drizzle|cake|pie|season|society|show|club|weevil|weevils)$/.test(
      textAt(tokens, at + found.words.length),
    )
  )
    return undefined;
  // "Fat as a raspberry", "like an apple": what something is likened to.
  if (
    /^an?$/.test(textAt(tokens, at - 1)) &&
    (textAt(tokens, at - 2) === 'like' ||
      (textAt(tokens, at - 2) === 'as' &&
        /^(?:fat|big|red|green|sweet|sour|round|small|wide|cool|tart|brown|yellow|purple)$/.test(
          textAt(tokens, at - 3),
        )))
  )
    return undefined;
  const to = at + found.words.length;
  // "A pink geranium", "lavender salvias": of that colour.
  if (COLOURS.test(phrase) && phraseAt(crops, [textAt(tokens, to), textAt(tokens, to + 1)], 0))
    return undefined;
  // "Off mums fuchsia": hers.
  if (phrase === 'mums' && phraseAt(crops, [textAt(tokens, to), textAt(tokens, to + 1)], 0)) return undefined;
  // "Cuttings from mums": from hers.
  if (
    phrase === 'mums' &&
    /^(?:from|at|round|to)$/.test(textAt(tokens, at - 1)) &&
    !/^(?:cuttings?|plants?)$/.test(textAt(tokens, to))
  )
    return undefined;
  // "A natter with Rosemary at the gate": a person.
  if (
    tokens[at]?.capital &&
    found.words.length === 1 &&
    /^(?:with|and)$/.test(textAt(tokens, at - 1)) &&
    /^(?:at|on|from|about|who|over|in)$/.test(textAt(tokens, to)) &&
    tokens
      .slice(0, at)
      .some(({ text }) => /^(?:natter|chat|chatted|talked|lunch|coffee|tea|cuppa|word|met)$/.test(text))
  )
    return undefined;
  // "Gave Rosemary a …".
  if (
    tokens[at]?.capital &&
    found.words.length === 1 &&
    /^(?:gave|give|given|to|for|from)$/.test(textAt(tokens, at - 1)) &&
    (/^(?:a|an|some|two|three|four|five|six|the)$/.test(textAt(tokens, to)) || tokens[to]?.is === 'number')
  )
    return undefined;
  // "Verbena Lilac Mile": a variety that begins with such a word.
  if (
    EVERYDAY_CROPS.has(phrase) &&
    owner[at - 1]?.is === 'plant' &&
    isNameWord(tokens[at]) &&
    isNameWord(tokens[to]) &&
    !phraseAt(crops, [textAt(tokens, to)], 0)
  )
    return undefined;
  // "Raspberry red salvias".
  if (
    /^(?:red|pink|yellow|orange|purple|white|blue|green|black)$/.test(textAt(tokens, to)) &&
    phraseAt(crops, [textAt(tokens, to + 1)], 0)
  )
    return undefined;
  // "Six apple scented pelargoniums".
  if (/^(?:scented|flavoured|flavored|leaved|flowered|coloured|colored)$/.test(textAt(tokens, to)))
    return undefined;
  // "6 Plum Duff": fruit that begins a name, both in capitals.
  if (
    /^(?:plum|pear|apple|cherry|orange|peach|olive|box|bay|vine|elder)$/.test(phrase) &&
    at > 0 &&
    isNameWord(tokens[at]) &&
    isNameWord(tokens[to]) &&
    !phraseAt(crops, [textAt(tokens, to)], 0)
  )
    return undefined;
  if (EVERYDAY_CROPS.has(phrase)) {
    const before = textAt(tokens, at - 1);
    const next = textAt(tokens, to);
    const behindPlant = owner[at - 1]?.is === 'plant';
    const counted =
      behindPlant ||
      tokens[at - 1]?.is === 'number' ||
      // "Dad's rose".
      (/'s$/.test(before) && /^(?:rose|holly|vine|laurel|olive)$/.test(phrase)) ||
      /^(?:of|cuttings|some|few|one|two|three|four|five|six|seven|eight|nine|ten|twelve|dozen|more|basal|tip|heel|hardwood|softwood|couple|basil)$/.test(
        before,
      );
    // "Off my Rumble Seat mum".
    const named =
      (tokens[at - 1]?.capital === true && tokens[at - 2]?.capital === true && tokens[at]?.raw === phrase) ||
      (owner[at - 1]?.is === 'plant' && !isKnownPlant(owner[at - 1]));
    // "Seven of the rose Tallow Bell", no "the box Derek sent".
    const leads =
      tokens[at]?.raw === phrase &&
      /^(?:the|my|our|of)$/.test(before) &&
      tokens[to]?.capital === true &&
      phrase !== 'box' &&
      (tokens[to + 1]?.capital === true || phrase === 'rose');
    const cuttings = /^(?:cutting|cuttings|plants|plugs|tip|heel|stems|tips)$/.test(next);
    if (
      /^(?:box|bay|plum|pear|apple|elder|vine|mum|rose|pink|holly|olive|rue|iris|orange|peach|boxes|hop|hops|laurel|pans|savory)$/.test(
        phrase,
      ) &&
      !cuttings &&
      !named &&
      !leads &&
      !(counted && before !== 'one')
    )
      return undefined;
    if (phrase === 'mum' && ((!cuttings && !named) || /'s$/.test(tokens[at]?.raw.toLowerCase() ?? '')))
      return undefined;
    if (
      !counted &&
      !leads &&
      !cuttings &&
      !named &&
      !ALWAYS_CROP.has(phrase) &&
      !/^(?:the|my|our)$/.test(before)
    )
      return undefined;
  }
  return { crop: found.value, to };
}
