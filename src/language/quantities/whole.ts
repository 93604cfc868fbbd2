/** Quantities by what there is: all, none, the rest, all but two, half. */
import { verbSense } from '../lexicon.js';
import { numberAt } from '../numbers.js';
import { CONTAINERS } from '../sizes.js';
import { type FoundQuantity, pastOf, type Quantity } from './quantity.js';
import { percentAt, shareAt } from './shares.js';
import { isPhraseAt, textAt, type Token } from '../tokens.js';

/** What excepts some of all. */
const BUT = /^(?:but|bar|except|save)$/;

/** "100% rooted", but "100% sure". */
export const isHundredPercent = (tokens: readonly Token[], at: number): boolean =>
  textAt(tokens, at) === '100' &&
  /^(?:%|percent)$/.test(textAt(tokens, at + 1)) &&
  !/^(?:sure|certain|positive|happy)$/.test(textAt(tokens, at + 2));

/** "All", "every last one", "the rest", "a third of them". */
export function wholly(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const first = textAt(tokens, at);
  const result = (quantity: Quantity, to: number): FoundQuantity => ({ quantity, to: pastOf(tokens, to) });
  // "What all did I do": no more than "what".
  if (first === 'all' && /^(?:what|who|where|how)$/.test(textAt(tokens, at - 1))) return undefined;
  if (first === 'all') {
    let next = at + 1;
    if (BUT.test(textAt(tokens, next))) {
      if (textAt(tokens, next + 1) === 'for') next++;
      const found = numberAt(tokens, next + 1);
      if (found) return result({ allBut: found.value }, found.to);
    }
    if (textAt(tokens, next) === 'the') next++;
    const found = numberAt(tokens, next);
    if (found && found.value > 0) return result({ value: found.value }, found.to);
    if (isPhraseAt(tokens, at + 1, ['of', 'them']) && BUT.test(textAt(tokens, at + 3))) {
      const but = numberAt(tokens, at + 4);
      if (but) return result({ allBut: but.value }, but.to);
    }
    // "Gone all mouldy".
    if (
      (/^(?:gone|went|going|looking|is|are|it's|they're)$/.test(textAt(tokens, at - 1)) &&
        /^(?:mouldy|moldy|black|brown|soft|slimy|limp|floppy|yellow|leggy|mushy|soggy|crispy|droopy|wilted|furry)$/.test(
          textAt(tokens, at + 1),
        )) ||
      // "Gone all rotten" tells how, "are all rotten" how many.
      (/^(?:gone|went|going|turned|looking)$/.test(textAt(tokens, at - 1)) &&
        /^(?:rotten|rotted|rotty|squishy|squidgy|smelly|manky|dry|grey|gray|green|red|purple|pale|sad|shrivelled|shriveled|weird|funny|to|over)$/.test(
          textAt(tokens, at + 1),
        ))
    )
      return undefined;
    // "all" as an adverb ("all in one pot", "all done") still names the whole.
    return result({ whole: 'all' }, at + 1);
  }
  // "100% rooted".
  if (isHundredPercent(tokens, at)) return result({ whole: 'all' }, at + 2);
  // "Both lots of dahlias": all of them, however many.
  if (first === 'both' && /^(?:lots|batches)$/.test(textAt(tokens, at + 1)))
    return result({ whole: 'all' }, pastOf(tokens, at + 2));
  if (/^(?:everything|both)$/.test(first))
    return result(first === 'both' ? { value: 2, both: true } : { whole: 'all' }, at + 1);
  if (first === 'whatever') return whateverAt(tokens, at);
  if (/^(?:none|neither|zilch)$/.test(first)) return result({ value: 0 }, at + 1);
  // "Nothing rooted yet", "nothing has rooted".
  const did = /^(?:has|have|had|is|are)$/.test(textAt(tokens, at + 1)) ? at + 2 : at + 1;
  if (/^(?:nothing|nowt|nuthin|zip)$/.test(first) && /^(?:rooted|rooting)$/.test(textAt(tokens, did)))
    return result({ value: 0 }, at + 1);
  if (
    isPhraseAt(tokens, at, ['not', 'one', 'of']) ||
    isPhraseAt(tokens, at, ['not', 'a', 'single']) ||
    isPhraseAt(tokens, at, ['not', 'any', 'of'])
  )
    return result({ value: 0 }, at + 3);
  if (
    isPhraseAt(tokens, at, ['not', 'one']) &&
    // "Two pots not one": one denied.
    !CONTAINERS.has(textAt(tokens, at - 1)) &&
    (tokens[at + 2] === undefined ||
      tokens[at + 2]?.is === 'mark' ||
      /^(?:yet|and|so|has|have)$/.test(textAt(tokens, at + 2)))
  )
    return result({ value: 0 }, at + 2);
  // "Divil a one", "sorra the root".
  if (/^(?:divil|sorra)$/.test(first) && /^(?:a|the)$/.test(textAt(tokens, at + 1)))
    return result({ value: 0 }, textAt(tokens, at + 2) === 'one' ? at + 3 : at + 2);
  if (first === 'every' || isPhraseAt(tokens, at, ['each', 'and', 'every'])) {
    const end = everyOneAt(tokens, first === 'every' ? at + 1 : at + 3);
    if (end === undefined) return undefined;
    if (/^(?:but|bar|except)$/.test(textAt(tokens, end))) {
      const found = numberAt(tokens, end + 1);
      if (found) return result({ allBut: found.value }, found.to);
    }
    return result({ whole: 'all' }, end);
  }
  if (isPhraseAt(tokens, at, ['the', 'whole', 'lot']) || isPhraseAt(tokens, at, ['the', 'entire', 'lot']))
    return result({ whole: 'all' }, at + 3);
  if (isPhraseAt(tokens, at, ['the', 'lot'])) return result({ whole: 'all' }, at + 2);
  if (
    isPhraseAt(tokens, at, ['rest', 'of', 'the']) &&
    (opensTelling(tokens, at) || verbSense(textAt(tokens, at - 1))?.form === 'past')
  )
    return result({ whole: 'rest' }, at + 2);
  if (isPhraseAt(tokens, at, ['the', 'whole', 'of'])) return result({ whole: 'all' }, at + 3);
  if (isPhraseAt(tokens, at, ['whole', 'of', 'the'])) return result({ whole: 'all' }, at + 2);
  if (isPhraseAt(tokens, at, ['whole', 'lot'])) return result({ whole: 'all' }, at + 2);
  const the = first === 'the' ? at + 1 : at;
  const word = textAt(tokens, the);
  if (/^(?:rest|remainder)$/.test(word) && first === 'the') return result({ whole: 'rest' }, the + 1);
  // "200 rooted, rest binned", "others composted", "balance to Ken".
  if (
    /^(?:rest|remainder|balance|others)$/.test(word) &&
    (opensTelling(tokens, at) || textAt(tokens, at - 1) === 'and') &&
    (verbSense(textAt(tokens, the + 1))?.form === 'past' || isOnward(tokens, the + 1))
  )
    return result({ whole: 'rest' }, the + 1);
  // "Moved rest to the frame", "binned rest".
  if (
    first === 'rest' &&
    verbSense(textAt(tokens, at - 1))?.form === 'past' &&
    !/^(?:had|got|let|needed|wanted|did|was|were|been|lay|laid)$/.test(textAt(tokens, at - 1))
  )
    return result({ whole: 'rest' }, at + 1);
  if (word === 'others' && first === 'the') return result({ whole: 'rest' }, the + 1);
  if (/^(?:remaining|other)$/.test(word)) {
    const found = numberAt(tokens, the + 1);
    if (found)
      return result(
        {
          value: found.value,
          besides: true,
          ...(textAt(tokens, the + 1) === 'one' ? { weak: true as const } : {}),
        },
        found.to,
      );
    if (word === 'remaining') return result({ whole: 'rest' }, the + 1);
    return undefined;
  }
  const share = percentAt(tokens, at) ?? shareAt(tokens, at);
  if (share) return result({ share: share.share }, share.to);
  if (word === 'half' || isPhraseAt(tokens, at, ['a', 'half'])) {
    const half = word === 'half' ? the : at + 1;
    if (numberAt(tokens, half)) return undefined;
    if (
      /^(?:way|ripe|hour|an|past|hardened|hardy|litre|liter|term|inch|dead|tray|trays|day|a|price|asleep|full|empty|wood|baked|hearted|decent|open|time|pint|barrel|barrels|wine|whisky|whiskey|oak|cider|beer|pot|pots)$/.test(
        textAt(tokens, half + 1),
      )
    )
      return undefined;
    // "Half and half compost and perlite".
    if (textAt(tokens, half + 1) === 'and' && textAt(tokens, half + 2) === 'half') return undefined;
    if (textAt(tokens, half - 1) === 'and' && textAt(tokens, half - 2) === 'half') return undefined;
    if (textAt(tokens, half + 1) === '' || /^[.,!?-]$/.test(textAt(tokens, half + 1))) return undefined;
    return result({ share: [1, 2] }, half + 1);
  }
  return undefined;
}

/** Nothing stands before it, or a mark or a new line. */
const opensTelling = (tokens: readonly Token[], at: number): boolean =>
  /^(?:mark|line)$/.test(tokens[at - 1]?.is ?? 'mark');

/** "To Ken", "into the bin": where the rest went. */
const isOnward = (tokens: readonly Token[], at: number): boolean =>
  /^(?:to|into)$/.test(textAt(tokens, at)) &&
  // What is found stands masked.
  (tokens[at + 1]?.is === 'word' || textAt(tokens, at + 1) === '\u0000' || textAt(tokens, at + 1) === 'the');

/** Words of strength between "every" and "one". */
const EVERY =
  /^(?:last|single|blessed|blasted|bloody|damn|damned|goddamn|flaming|flipping|blooming|sodding|wretched|stinking|poor|jack)$/;

/** Past the words that make "every" all there are: "every one", "every last", "every single one", "every man jack". */
function everyOneAt(tokens: readonly Token[], from: number): number | undefined {
  // A name, which stands masked.
  if (textAt(tokens, from) === '\u0000') return from;
  let at = from;
  while (at < from + 3 && EVERY.test(textAt(tokens, at))) at++;
  if (isPhraseAt(tokens, at, ['man', 'jack'])) return at + 2;
  if (textAt(tokens, at) === 'one') return at + 1;
  return /^(?:last|single)$/.test(textAt(tokens, at - 1)) ? at : undefined;
}

/** "Moved whatever was in the porch": all there; "whatever had rooted" is some of them, nobody knows how many. */
function whateverAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  // "Everything bar whatever was in the porch".
  if (/^(?:bar|but|except|for|from|save|not)$/.test(textAt(tokens, at - 1))) return undefined;
  const verb = textAt(tokens, at + 1);
  const behind = textAt(tokens, at + 2);
  if (/^(?:was|were|stood|sat|lived)$/.test(verb) && /^(?:in|on|inside|under)$/.test(behind))
    return { quantity: { whole: 'all' }, to: at + 1 };
  const adverb = /^(?:already|now|still|all|well|properly)$/.test(behind) ? at + 3 : at + 2;
  if (/^(?:was|were|is|are|had|has|have|looked)$/.test(verb) && isState(textAt(tokens, adverb)))
    return { quantity: { vague: true }, to: adverb + 1 };
  return /^(?:rooted|rotted|died|survived)$/.test(verb)
    ? { quantity: { vague: true }, to: at + 2 }
    : undefined;
}

const isState = (word: string): boolean =>
  /^(?:rooted|rotted|rotten|rooting|dead|died|ready|mouldy|left|alive|potted|pinched|struck|wilted|survived|gone|spare|broken|big|leggy)$/.test(
    word,
  );
