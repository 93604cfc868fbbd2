/** All there is: "all", "all but two", "every last one", "the whole lot", "whatever was in the porch". */
import { DUD } from '../duds.js';
import { numberAt } from '../numbers.js';
import { type FoundQuantity, pastOf, type Quantity } from './quantity.js';
import { isPhraseAt, textAt, type Token } from '../../row/tokens.js';

/** What excepts some of all. */
const BUT = /^(?:but|bar|except|save)$/;

const result = (tokens: readonly Token[], quantity: Quantity, to: number): FoundQuantity => ({
  quantity,
  to: pastOf(tokens, to),
});

/** "Bar two", "but for one", "apart from 3", "except the two at the back", "bar the runt": of no plant that is named. */
function exceptedAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const isApart = isPhraseAt(tokens, at, ['apart', 'from']) || isPhraseAt(tokens, at, ['but', 'for']);
  if (!isApart && !BUT.test(textAt(tokens, at))) return undefined;
  const from = at + (isApart || textAt(tokens, at + 1) === 'for' ? 2 : 1);
  const isThose = textAt(tokens, from) === 'the';
  const found = numberAt(tokens, isThose ? from + 1 : from);
  if (found && (!isThose || endsAt(tokens, found.to)))
    return result(tokens, { allBut: found.value }, found.to);
  return runtAt(tokens, from);
}

/** "Potted everything on except the sulker": one of all that was told before. */
export function butRuntAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  // "Behind the bar", "four in each bar the last one".
  if (/^(?:the|a|my|each|every|pot|tray)$/.test(textAt(tokens, at - 1))) return undefined;
  return runtAt(tokens, isPhraseAt(tokens, at, ['apart', 'from']) ? at + 2 : at + 1);
}

/** "The runt", "that one poor straggler". */
function runtAt(tokens: readonly Token[], from: number): FoundQuantity | undefined {
  if (!/^(?:the|a|that|one)$/.test(textAt(tokens, from))) return undefined;
  const word = textAt(tokens, from + 1);
  const described =
    !isRunt(word) && /^(?:wee|little|small|tiny|poor|weak|sad|scrawny|titchy|odd|last|end)$/.test(word);
  const noun = described ? from + 2 : from + 1;
  return isRunt(textAt(tokens, noun)) && endsAt(tokens, noun + 1)
    ? result(tokens, { allBut: 1 }, noun + 1)
    : undefined;
}

/** One of them, by what it is. */
const isRunt = (word: string): boolean =>
  DUD.test(word) || /^(?:weakest|smallest|scrawniest|worst|one)$/.test(word);
const endsAt = (tokens: readonly Token[], at: number): boolean =>
  tokens[at] === undefined ||
  tokens[at]?.is === 'mark' ||
  /^(?:at|in|by|on|near|under|that|which|i|who|rooted|have|has|had|are|is|were|look|took|made|came)$/.test(
    textAt(tokens, at),
  );

/** "All", also as an adverb ("all in one pot", "all done"). */
export function allAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  // "What all did I do": no more than "what".
  if (/^(?:what|who|where|how)$/.test(textAt(tokens, at - 1))) return undefined;
  // "They look all right".
  if (
    textAt(tokens, at + 1) === 'right' &&
    /^(?:look|looks|looked|looking|seem|seems|are|is|be|they're|it's|he's|she's|feel)$/.test(
      textAt(tokens, at - 1),
    )
  )
    return undefined;
  let next = at + 1;
  const but = exceptedAt(tokens, isPhraseAt(tokens, next, ['of', 'them']) ? at + 3 : next);
  if (but) return but;
  if (textAt(tokens, next) === 'the') next++;
  // "From all the wet": weather.
  if (next > at + 1 && WEATHER.test(textAt(tokens, next))) return undefined;
  const found = numberAt(tokens, next);
  if (found && found.value > 0) return result(tokens, { value: found.value }, found.to);
  return tellsHow(tokens, at) ? undefined : result(tokens, { whole: 'all' }, at + 1);
}

const WEATHER =
  /^(?:wet|rain|damp|cold|heat|sun|wind|frost|snow|fog|gloom|fuss|bother|excitement|rush|time)$/;

/** "Gone all mouldy"; "gone all rotten" tells how, "are all rotten" how many. */
function tellsHow(tokens: readonly Token[], at: number): boolean {
  const [before, behind] = [textAt(tokens, at - 1), textAt(tokens, at + 1)];
  return (
    (/^(?:gone|went|going|looking|is|are|it's|they're)$/.test(before) &&
      /^(?:mouldy|moldy|black|brown|soft|slimy|limp|floppy|yellow|leggy|mushy|soggy|crispy|droopy|wilted|furry)$/.test(
        behind,
      )) ||
    (/^(?:gone|went|going|turned|looking)$/.test(before) &&
      /^(?:rotten|rotted|rotty|squishy|squidgy|smelly|manky|dry|grey|gray|green|red|purple|pale|sad|shrivelled|shriveled|weird|funny|to|over)$/.test(
        behind,
      ))
  );
}

/** "Both"; "both lots of dahlias" are all of them, however many. */
export const bothAt = (tokens: readonly Token[], at: number): FoundQuantity =>
  /^(?:lots|batches)$/.test(textAt(tokens, at + 1))
    ? result(tokens, { whole: 'all' }, at + 2)
    : result(tokens, { value: 2, both: true }, at + 1);

/** "Everything", "everything except two"; "everything except two Salt Harrier" leaves those out of more than their like. */
export function everythingAt(tokens: readonly Token[], at: number): FoundQuantity {
  const but = exceptedAt(tokens, at + 1);
  let behind = but?.to ?? at;
  while (/^(?:of|the|my)$/.test(textAt(tokens, behind))) behind++;
  // A name stands masked.
  const isNamed = textAt(tokens, behind) === '\u0000';
  return but && !isNamed ? but : result(tokens, { whole: 'all' }, at + 1);
}

/** "Every one", "each and every one", "every one bar two". */
export function everyAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const isEach = textAt(tokens, at) === 'each';
  if (isEach && !isPhraseAt(tokens, at + 1, ['and', 'every'])) return undefined;
  const end = pastEveryOne(tokens, isEach ? at + 3 : at + 1);
  if (end === undefined) return undefined;
  return exceptedAt(tokens, end) ?? result(tokens, { whole: 'all' }, end);
}

/** Words of strength between "every" and "one". */
const EVERY =
  /^(?:last|single|blessed|blasted|bloody|damn|damned|goddamn|flaming|flipping|blooming|sodding|wretched|stinking|poor|jack)$/;

/** Past the words that make "every" all there are: "every one", "every last", "every single one", "every man jack". */
function pastEveryOne(tokens: readonly Token[], from: number): number | undefined {
  // A name, which stands masked.
  if (textAt(tokens, from) === '\u0000') return from;
  let at = from;
  while (at < from + 3 && EVERY.test(textAt(tokens, at))) at++;
  if (isPhraseAt(tokens, at, ['man', 'jack'])) return at + 2;
  if (textAt(tokens, at) === 'one') return at + 1;
  return /^(?:last|single)$/.test(textAt(tokens, at - 1)) ? at : undefined;
}

const WHOLE_LOT: readonly (readonly string[])[] = [
  ['the', 'whole', 'lot'], ['the', 'entire', 'lot'], ['the', 'lot'], ['the', 'whole', 'of'], ['whole', 'lot'],
]; // prettier-ignore

export function wholeLotAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const lot = WHOLE_LOT.find((words) => isPhraseAt(tokens, at, words));
  if (lot) return result(tokens, { whole: 'all' }, at + lot.length);
  return isPhraseAt(tokens, at, ['whole', 'of', 'the'])
    ? result(tokens, { whole: 'all' }, at + 2)
    : undefined;
}

/** "Moved whatever was in the porch": all there; "whatever had rooted" is some of them, nobody knows how many. */
export function whateverAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
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
