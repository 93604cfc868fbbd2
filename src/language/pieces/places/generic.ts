/** Places that only the words tell of: a noun of place, with its modifiers and number. */
import { causes, crops, isKnown, phraseAt, placeNouns, placePhrases, verbSense } from '../../row/lexicon.js';
import { DETERMINER, PREPOSITION, prepositionBefore } from './prepositions.js';
import { whole, wordsOf } from '../../phrases.js';
import { textAt, type Token } from '../../row/tokens.js';

/** Nouns that take a number ("bench 2"). */
export const NUMBERED = whole`
  bench|shelf|table|bay|bed|block|row|field|plot|zone|frame|room|house
  tunnel|polytunnel|polyhouse|shadehouse|glasshouse|greenhouse|igloo|propagator
`;

/** Words before a noun of place that tell which: "left bench", "spare room", "dahlia bed". */
const MODIFIERS: ReadonlySet<string> = new Set(wordsOf`
  top bottom back front left right middle side lower upper end far near north south east west northern southern
  first second third other main mini big little small long new old spare stone brick glass plastic walled raised
  hot cold warm cool heat heated unheated electric sunny shady shaded mist misting fog
  potting grow growing propagation prop hardening weaning standing seed herb flower veg vegetable rose
  kitchen bathroom bedroom utility laundry lounge living dining office hallway landing attic basement conservatory
  upstairs downstairs windowsill porch patio garden allotment outside outdoor indoor
  village church school staff
`);

/** Nouns that everyday talk uses too: a place only behind a preposition or a modifier, or between commas. */
const EVERYDAY: ReadonlySet<string> = new Set(wordsOf`
  bed frame house rack table room yard field ground mat lights stand press window step path office study sink tent
  nursery bay plot fridge shelf garden kitchen lounge basement attic tunnel border deck terrace
`);

/** A place that nobody need know: the noun at token `at` with what stands around it. */
export function genericAt(
  tokens: readonly Token[],
  at: number,
  free: (at: number) => boolean,
): { readonly from: number; readonly to: number; readonly place: string } | undefined {
  const first = textAt(tokens, at);
  if (!placePhrases.has(first) && !placeNouns.has(first)) return undefined;
  // No phrase for a place is longer than three words.
  const phrase = phraseAt(
    placePhrases,
    tokens.slice(at, at + 4).map(({ text }) => text),
    0,
  );
  let to: number;
  let noun: string;
  if (phrase) {
    to = at + phrase.words.length;
    noun = phrase.words.at(-1) ?? '';
  } else if (placeNouns.has(first)) {
    to = at + 1;
    noun = first;
    // "kitchen windowsill", "greenhouse bench": the last noun of the run is the head.
    while (placeNouns.has(textAt(tokens, to)) && free(to)) {
      noun = textAt(tokens, to);
      to++;
    }
  } else return undefined;
  // "The porch planter": the place is the planter there.
  if (
    (/^(?:planter|planters|urn|urns|trough|troughs|barrel|barrels|tub|tubs)$/.test(textAt(tokens, to)) ||
      // "In the terrace pots", "in the porch boxes".
      (/^(?:pots|box|boxes|baskets)$/.test(textAt(tokens, to)) &&
        /^(?:terrace|patio|balcony|deck|courtyard|porch|veranda|verandah)$/.test(noun) &&
        textAt(tokens, to + 1) !== 'of') ||
      // "By the house door".
      (/^(?:door|gate|steps)$/.test(textAt(tokens, to)) &&
        /^(?:house|kitchen|garden|garage|shed|porch|cellar|greenhouse)$/.test(noun))) &&
    free(to)
  )
    to++;
  // "The allotment ladies", "the window cleaner": people, wherever they are.
  if (
    /^(?:centre|center|club|show|society|party|ladies|lady|lads?|man|men|woman|women|girls?|boys?|people|folks?|cleaners?|fitters?|keepers?|committee|crowd|members|association|raffle|tombola|sale|fair|fayre|f[eê]te|neighbou?rs?|open)$/.test(
      textAt(tokens, to),
    )
  )
    return undefined;
  // "Where do the fuchsias stand?"
  if (/^stands?$/.test(noun) && crops.has(textAt(tokens, at - 1)) && !PREPOSITION.has(textAt(tokens, at - 3)))
    return undefined;
  let from = at;
  while (from > 0 && free(from - 1) && isModifier(tokens, from - 1)) from--;
  if (
    NUMBERED.test(noun) &&
    free(to) &&
    !isWarmth(noun, textAt(tokens, to)) &&
    (tokens[to]?.is === 'number' || /^(?:one|two|three|four|five|six)$/.test(textAt(tokens, to))) &&
    !/^(?:of|rooted|dead|have|cm|in|x|%|per)$/.test(textAt(tokens, to + 1)) &&
    // "In the greenhouse two to a pot".
    !(textAt(tokens, to + 1) === 'to' && /^(?:a|each|every)$/.test(textAt(tokens, to + 2)))
  )
    to++;
  // "In pond bed", ", display border": words between a preposition, article or comma and the noun belong to the place.
  // "Put the tubers to bed in the garage".
  if (from === at && to - from === 1 && noun === 'bed' && textAt(tokens, at - 1) === 'to') return undefined;
  if (from === at) {
    let start = at;
    while (start > 0 && at - start < 2 && free(start - 1) && isName(tokens, start - 1)) start--;
    const lead = tokens[start - 1];
    // "From Dunmore Liners bench 7", "to botrytis bench 6": what has a number needs no name.
    const isOther =
      tokens[to - 1]?.is === 'number' &&
      (lead?.text === 'from' || (lead?.text === 'to' && causes.has(textAt(tokens, start))));
    if (
      start < at &&
      lead &&
      !isOther &&
      (PREPOSITION.has(lead.text) || DETERMINER.has(lead.text) || lead.raw === ',')
    )
      from = start;
    // "240 out to bellwether nursery": whose it is, not where the grower's own plants stand.
    if (from < at && isBusiness(tokens, from, at)) return undefined;
  }
  // "Took 10 Porch Swing": a name that a place opens.
  if (tokens[at]?.capital && tokens[to]?.capital && at > 0 && tokens[at - 1]?.is !== 'mark') return undefined;
  if (tokens[at]?.capital && at > 0 && tokens[at - 1]?.capital && !/^[.!?]$/.test(tokens[at - 2]?.raw ?? '.'))
    return undefined;
  const bare =
    phrase === undefined && (EVERYDAY.has(noun) || EVERYDAY.has(noun.replace(/s$/, ''))) && to - from === 1;
  // "Watered the tunnel": what is tended is a place.
  const care = verbSense(textAt(tokens, from - 2))?.lemma ?? '';
  const tended =
    DETERMINER.has(textAt(tokens, from - 1)) &&
    (/^(?:water|mist|vent|shade|feed|spray|air|damp)$/.test(care) ||
      // "Uncovered the frame"; no "opened the box".
      (/^(?:open|cover|uncover|close)$/.test(care) && /^(?:frame|tunnel)$/.test(noun)));
  if (
    bare &&
    !tended &&
    prepositionBefore(tokens, from) === undefined &&
    !isSlotAlone(tokens, from, to) &&
    !opensReading(tokens, from, to)
  )
    return undefined;
  const place = tokens
    .slice(from, to)
    .map(({ text }) => text)
    .join(' ')
    .replace(/ - /g, '-')
    .replace(/\blean to$/, 'lean-to');
  return { from, to, place };
}

/** A nursery by a name that nobody knows: "Pennywell Nurseries", in whatever letters. */
const isBusiness = (tokens: readonly Token[], from: number, noun: number): boolean =>
  /^(?:nursery|nurseries|gardens)$/.test(textAt(tokens, noun)) &&
  PREPOSITION.has(textAt(tokens, from - 1)) &&
  tokens.slice(from, noun).some(({ text }) => !isKnown(text));

/** "Propagator 21", "greenhouse 14": nobody has so many; a number that tells how warm it is. */
function isWarmth(noun: string, number: string): boolean {
  return (
    /^(?:propagator|greenhouse|glasshouse|polytunnel|tunnel|frame|house|room)$/.test(noun) &&
    Number(number) >= 10
  );
}

function isModifier(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (token?.is !== 'word') return false;
  if (MODIFIERS.has(token.text) || /'s$/.test(token.text)) return true;
  if (DETERMINER.has(token.text) || PREPOSITION.has(token.text)) return false;
  return (
    !isKnown(token.text) &&
    PREPOSITION.has(textAt(tokens, at - 1)) === false &&
    DETERMINER.has(textAt(tokens, at - 1))
  );
}

/** Small words, which are no part of a place's name. */
const NO_NAME = whole`
  and|of|then|but|for|with|no|not|very|really|now|today|i|we|they|it|them|that|which|there|here|before|after|until|till|since|during
  one|two|three|four|five|six|ten|half|all|some|more|both|each|every|another|rest
  cuttings?|plants|pots|rooted|also|plus
`;

/** A word that may stand before a place's noun: none of the trade's verbs or the small words. */
function isName(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  return (
    token?.is === 'word' &&
    verbSense(token.text) === undefined &&
    !DETERMINER.has(token.text) &&
    !PREPOSITION.has(token.text) &&
    !NO_NAME.test(token.text)
  );
}

/** "Frame was 31 degrees", at the head of a note: what was so warm. */
const opensReading = (tokens: readonly Token[], from: number, to: number): boolean =>
  (from === 0 ||
    (DETERMINER.has(textAt(tokens, from - 1)) &&
      (from === 1 || /^(?:and|,|so|but)$/.test(textAt(tokens, from - 2))))) &&
  /^(?:was|is|at|hit|reached|touched|got)$/.test(textAt(tokens, to)) &&
  tokens.slice(to, to + 5).some(({ is }) => is === 'number');

/** "…, tunnel", "…, tunnel as well": between commas or at the end, with nothing else told there. */
function isSlotAlone(tokens: readonly Token[], from: number, to: number): boolean {
  if (!/^[,;-]$/.test(textAt(tokens, from - 1))) return false;
  // "…, tunnel B".
  let end = /^[A-HJ-Z]$/.test(tokens[to]?.raw ?? '') ? to + 1 : to;
  if (textAt(tokens, end) === 'too') end++;
  else if (textAt(tokens, end) === 'as' && textAt(tokens, end + 1) === 'well') end += 2;
  return tokens[end] === undefined || /^[,;.]$/.test(textAt(tokens, end));
}
