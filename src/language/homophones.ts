/** Puts right what dictation writes for a number or a verb, only where the neighbours leave no other sense. */
import { placeNouns, verbSense } from './lexicon.js';
import type { Token } from './tokens.js';

const NUMBER_FOR: Readonly<Record<string, string>> = {
  for: 'four',
  fore: 'four',
  to: 'two',
  too: 'two',
  won: 'one',
  wan: 'one',
  ate: 'eight',
  tree: 'three',
  free: 'three',
  sicks: 'six',
  sex: 'six',
  fife: 'five',
  ait: 'eight',
};
const KIND = new Set(
  'cutting cuttings basal basil nodal internodal tip tips heel heal softwood semi hardwood stem root leaf of'.split(
    ' ',
  ),
);
const STATE = new Set(
  'rooted routed dead died damped dampened rotted have has had rotten gone wilted failed survived'.split(' '),
);
const ACT = new Set(
  'toss ditch dump finish throw chuck tug check take strike stick insert cut snip pot pinch lose move shift sell give bin chuck plant dispatch root swap'.split(
    ' ',
  ),
);
const BEFORE_COUNT = new Set([
  'were',
  'was',
  'there',
  'have',
  'had',
  'has',
  'and',
  'checked',
  'another',
  'all',
  'the',
  'only',
  'just',
  'of',
  'are',
  'with',
  'about',
  'got',
]);

/**
 * `isPlant(n)` says whether a plant's name or crop begins at token n. Answers the tokens with numbers restored
 * ("took for cuttings", "had won rooted and too dead"), "routed" as "rooted", "mystic the" as "misted the", "basil cuttings of"
 * as "basal".
 */
export function restoreHeard(
  tokens: readonly Token[],
  isName: (at: number) => boolean,
  isPlant: (at: number) => boolean,
): readonly Token[] {
  const restored = [...tokens];
  const put = (at: number, text: string, is: Token['is'] = 'word'): void => {
    const token = restored[at];
    if (token) restored[at] = { ...token, text, is };
  };
  const word = (at: number): string => restored[at]?.text ?? '';
  for (let at = 0; at < restored.length; at++) {
    if (isName(at)) continue;
    const text = word(at);
    if (text === 'routed') put(at, 'rooted');
    // "Six with roots and to dampened off".
    else if (text === 'dampened' && word(at + 1) === 'off') put(at, 'damped');
    // "Still know roots".
    else if (text === 'know' && /^(?:roots|root|routes|sign|signs)$/.test(word(at + 1))) put(at, 'no');
    else if (text === 'dyed') put(at, 'died');
    else if (
      Object.hasOwn(NUMBER_FOR, text) &&
      /^(?:pots|trays|pot|tray)$/.test(word(at + 1)) &&
      word(at + 2) === 'of'
    )
      put(at, NUMBER_FOR[text] ?? text);
    else if (
      text === 'won' &&
      (word(at + 1) === 'degree' ||
        (/^(?:is|has|was)$/.test(word(at + 1)) &&
          /^(?:dead|died|gone|rotted|rotten|dyed)$/.test(word(at + 2))))
    )
      put(at, 'one');
    else if (/^(?:to|too)$/.test(text) && word(at + 1) === 'dozen') put(at, 'two');
    else if (
      text === 'punched' &&
      /^(?:out|back|the)$/.test(word(at + 1)) &&
      (isPlant(at + 1) ||
        isPlant(at + 2) ||
        isPlant(at + 3) ||
        /^(?:tips|tops|out)$/.test(word(at + 1)) ||
        /^(?:tips|tops)$/.test(word(at + 2)))
    )
      put(at, 'pinched');
    else if (
      Object.hasOwn(NUMBER_FOR, text) &&
      (word(at - 1) === 'minus' || /^(?:inch|litre|litres|mil|cm)$/.test(word(at + 1)))
    )
      put(at, NUMBER_FOR[text] ?? text);
    else if (
      /^(?:to|too|for)$/.test(text) &&
      /^(?:except|bar|but|for)$/.test(word(at - 1)) &&
      /\b(?:except|bar|all but)\b/.test(`${word(at - 3)} ${word(at - 2)} ${word(at - 1)}`) &&
      restored[at + 1] === undefined
    )
      put(at, NUMBER_FOR[text] ?? text);
    else if (
      text === 'for' &&
      word(at - 1) === 'and' &&
      /^(?:tossed|binned|chucked|lost|thrown|dumped|died|dead|rotted|rotten|potted|moved|sold|pinched)$/.test(
        word(at + 1),
      )
    )
      put(at, 'four');
    else if (
      /^(?:to|too)$/.test(text) &&
      /^(?:thrown|threw|chucked|tossed|gave|given|put|took|knocked)$/.test(word(at - 1)) &&
      /^(?:away|out|on|off)$/.test(word(at + 1))
    )
      put(at, 'two');
    else if (
      /^(?:too|to)$/.test(text) &&
      word(at - 1) === 'of' &&
      /^(?:cuttings|cutting|plants)$/.test(word(at + 1))
    )
      put(at, 'two');
    else if (
      text === 'buy' &&
      /^(?:the|end|early|mid|late|next|june|july|may|august|september|october|november|december|january|february|march|april|easter|christmas|monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/.test(
        word(at + 1),
      ) &&
      !isPlant(at + 2) &&
      at > 2
    )
      put(at, 'by');
    // "The other ate have rooted".
    else if (
      Object.hasOwn(NUMBER_FOR, text) &&
      word(at - 1) === 'other' &&
      /^(?:have|has|are|is|rooted|died|went|look|looks)$/.test(word(at + 1))
    )
      put(at, NUMBER_FOR[text] ?? text);
    else if (
      text === 'ate' &&
      ((/^(?:cuttings|cutting|of|plants|pots)$/.test(word(at + 1)) &&
        /^(?:was|were|took|it|only|had|and|is|potted|on)$/.test(word(at - 1))) ||
        (isPlant(at + 1) && word(at - 1) === 'and' && actBefore(restored, at)) ||
        // "Two Left Feet ate of twelve have rooted".
        (isName(at - 1) && word(at + 1) === 'of'))
    )
      put(at, 'eight');
    else if (
      text === 'won' &&
      (/^(?:bar|except|save|but)$/.test(word(at - 1)) ||
        (word(at - 1) === 'from' && /^(?:apart|aside)$/.test(word(at - 2))))
    )
      put(at, 'one');
    else if (text === 'time' && /^cuttings?$/.test(word(at + 1))) put(at, 'thyme');
    else if (text === '4' && /^(?:the|my|our|her|his|mum|dad|a)$/.test(word(at + 1)) && isName(at - 1))
      put(at, 'for');
    else if (/^(?:won|wan)$/.test(text) && /^(?:pot|tray|jar|plant|cutting)$/.test(word(at + 1)))
      put(at, 'one');
    else if (
      Object.hasOwn(NUMBER_FOR, text) &&
      /^(?:twenty|thirty|forty|fifty|sixty)$/.test(word(at - 1)) &&
      /^(?:have|has|rooted|routed|died|rotted|dead|cuttings)$/.test(word(at + 1))
    )
      put(at, NUMBER_FOR[text] ?? text);
    else if (
      text === 'heal' &&
      (/^(?:cutting|cuttings|ones)$/.test(word(at + 1)) || (word(at - 1) === 'a' && word(at - 2) === 'with'))
    )
      put(at, 'heel');
    else if (
      text === 'two' &&
      /^(?:the|my|her|his|our)$/.test(word(at + 1)) &&
      /^(?:sold|gave|given|sent|donated|gone|went)$/.test(word(at - 1))
    )
      put(at, 'to');
    else if (text === 'pearlite') put(at, 'perlite');
    else if (text === 'route' || text === 'routes') {
      if (
        at === 0 ||
        /^(?:have|has|a|no|some|white|good|new|first|the|showing|taken|any|one|two|three|four|five|six|seven|eight|nine|ten|with)$/.test(
          word(at - 1),
        ) ||
        /^(?:showing|out|coming|poking|visible)$/.test(word(at + 1)) ||
        Object.hasOwn(NUMBER_FOR, word(at - 1))
      )
        put(at, text === 'route' ? 'root' : 'roots');
    } else if (
      /^(?:mystic|mistake|missed|mister|misty)$/.test(text) &&
      (/^(?:the|everything|all|them|it)$/.test(word(at + 1)) ||
        (text !== 'missed' && placeNouns.has(word(at + 1)))) &&
      !/^(?:a|i|we|the)$/.test(word(at - 1)) &&
      clauseStart(restored, at)
    )
      put(at, 'misted');
    else if (
      text === 'basil' &&
      /^(?:cutting|cuttings)$/.test(word(at + 1)) &&
      (/^(?:of|from|off)$/.test(word(at + 2)) || isPlant(at + 2) || isName(at - 1))
    )
      put(at, 'basal');
    else if (
      text === 'put' &&
      word(at + 1) === 'it' &&
      /^(?:on|up)$/.test(word(at + 2)) &&
      (isPlant(at + 3) || isPlant(at + 4))
    ) {
      put(at, 'potted');
      put(at + 1, 'the');
    } else if (text === 'harding' && /^(?:off|of)$/.test(word(at + 1))) put(at, 'hardening');
    else if (text === 'hard' && /^(?:in|and|an)$/.test(word(at + 1)) && word(at + 2) === 'off') {
      put(at, 'hardening');
      put(at + 1, 'the');
    } else if (
      /^(?:two|too|2)$/.test(text) &&
      isName(at - 1) &&
      gaveBefore(restored, at) &&
      restored[at + 1]?.is === 'word' &&
      !isPlant(at + 1) &&
      !/^(?:of|more|for|each|left|are|were|and|to|at|from|in|cuttings|pots|plants|rooted|have|had|died|dead|went|each)$/.test(
        word(at + 1),
      )
    )
      put(at, 'to');
    else if (text === 'party' && /^(?:on|up)$/.test(word(at + 1)) && clauseStart(restored, at))
      put(at, 'potted');
    else if (
      text === 'pot' &&
      word(at + 1) === 'it' &&
      /^(?:on|up)$/.test(word(at + 2)) &&
      isBareNumberOrPlant(restored, at + 3, isPlant)
    ) {
      put(at, 'potted');
      put(at + 1, 'the');
    } else if (Object.hasOwn(NUMBER_FOR, text) && countFits(restored, at, isName, isPlant))
      put(at, NUMBER_FOR[text] ?? text);
  }
  return restored;
}

function isBareNumberOrPlant(
  tokens: readonly Token[],
  at: number,
  isPlant: (at: number) => boolean,
): boolean {
  return (
    isPlant(at + 1) ||
    isPlant(at) ||
    tokens[at]?.is === 'number' ||
    /^(?:one|two|three|four|five|six|seven|eight|nine|ten|for|to|too|the|all)$/.test(tokens[at]?.text ?? '')
  );
}

/** A verb of giving earlier in the clause. */
function gaveBefore(tokens: readonly Token[], at: number): boolean {
  for (let before = at - 1; before >= Math.max(0, at - 8); before--) {
    const token = tokens[before];
    if (!token || token.is === 'mark') return false;
    if (
      /^(?:give|sell|send|swap|hand|pass|donate|flog|dispatch|post|deliver)$/.test(
        verbSense(token.text)?.lemma ?? '',
      )
    )
      return true;
  }
  return false;
}

/** Cuttings were taken or lost earlier in the sentence. */
function actBefore(tokens: readonly Token[], at: number): boolean {
  for (let before = at - 1; before >= Math.max(0, at - 14); before--) {
    const token = tokens[before];
    if (!token || (token.is === 'mark' && /^[.!?;]$/.test(token.raw))) return false;
    if (/^(?:take|strike|stick|insert|cut|lose|pot|bin)$/.test(verbSense(token.text)?.lemma ?? ''))
      return true;
  }
  return false;
}

function clauseStart(tokens: readonly Token[], at: number): boolean {
  const before = tokens[at - 1];
  return (
    !before ||
    before.is === 'mark' ||
    before.is === 'line' ||
    /^(?:and|then|i|we|today|also|so|just|yesterday|morning)$/.test(before.text)
  );
}

function countFits(
  tokens: readonly Token[],
  at: number,
  isName: (at: number) => boolean,
  isPlant: (at: number) => boolean,
): boolean {
  const text = tokens[at]?.text ?? '';
  const next = tokens[at + 1]?.text ?? '';
  const before = tokens[at - 1];
  const act = before ? verbSense(before.text) : undefined;
  const afterAct = act !== undefined && ACT.has(act.lemma) && before?.text !== 'pots' && !isName(at - 1);
  const afterParticle =
    before !== undefined &&
    /^(?:on|up|out|off)$/.test(before.text) &&
    ACT.has(verbSense(tokens[at - 2]?.text ?? '')?.lemma ?? '');
  const start = clauseStart(tokens, at);
  const afterCountWord = before !== undefined && BEFORE_COUNT.has(before.text);
  if (
    /^(?:degrees|days|weeks)$/.test(next) &&
    (next === 'degrees' || /^(?:in|for|about)$/.test(before?.text ?? ''))
  )
    return text !== 'for';
  if (before?.text === 'of' && /^(?:pots|trays|pot|tray|jars|modules)$/.test(tokens[at - 2]?.text ?? ''))
    return true;
  if (/^(?:sicks|fife|ait|sex)$/.test(text))
    return isPlant(at + 1) || KIND.has(next) || STATE.has(next) || next === 'of';
  if (STATE.has(next) && !isName(at + 1)) {
    if (/^(?:rooted|routed|dead|rotted|rotten|died|damped|dampened|failed|wilted)$/.test(next))
      return start || afterCountWord || isName(at - 1) || afterAct;
    if (
      isName(at - 1) &&
      (/^(?:ate|won|too)$/.test(text) ||
        (/^(?:tree|free|for|to)$/.test(text) &&
          /^(?:have|has)$/.test(next) &&
          /^(?:rooted|routed|roots|died|rotted)$/.test(tokens[at + 2]?.text ?? '')))
    )
      return true;
    return start && text !== 'for' && text !== 'to' ? true : start && /^(?:have|has|gone)$/.test(next);
  }
  if (
    text === 'for' &&
    /^(?:have|had|got)$/.test(before?.text ?? '') &&
    isPlant(at + 1) &&
    tokens.slice(at + 2, at + 6).some(({ text }) => /^(?:rooted|routed|dead|died)$/.test(text))
  )
    return true;
  // "Six Tin Whistler too Thursday Muffin and for Old Skerry": a list of numbers and names.
  if (
    isPlant(at + 1) &&
    (isName(at - 1) || (before?.text === 'and' && isName(at - 2))) &&
    actBefore(tokens, at)
  )
    return !(text === 'to' && isName(at - 1));
  // "For Rusty Abbot dead".
  if (
    text === 'for' &&
    start &&
    isPlant(at + 1) &&
    tokens.slice(at + 2, at + 6).some(({ text }) => /^(?:rooted|routed|dead|died|rotted)$/.test(text))
  )
    return true;
  if (text === 'free' || text === 'tree') return false;
  if (next === 'of' && /^(?:the|my|them|those|em)$/.test(tokens[at + 2]?.text ?? ''))
    return start || afterAct || afterParticle || afterCountWord;
  if (KIND.has(next) && next !== 'of')
    return start || afterAct || afterParticle || (afterCountWord && text !== 'to' && text !== 'for');
  if (next === 'of' && isPlant(at + 2)) return start || afterAct || afterParticle || afterCountWord;
  if (next === 'more') return start || afterAct;
  if (isPlant(at + 1))
    return (
      (afterAct &&
        // "Gave to half crown to Bea": the second tells who has them.
        (!(text === 'to' && /^(?:sell|give|move|shift)$/.test(act?.lemma ?? '')) ||
          tokens.slice(at + 2).some((token) => token.text === 'to'))) ||
      afterParticle ||
      (start && text !== 'for' && text !== 'to') ||
      (text !== 'to' && text !== 'for' && afterCountWord)
    );
  if (/^(?:pot|pots|tray|trays)$/.test(next))
    return /^(?:in|into|all|pots)$/.test(before?.text ?? '') && !(text === 'to' && before?.text === 'in');
  if (before?.text === 'of' && /^(?:pots|trays|pot|tray|jars|modules)$/.test(tokens[at - 2]?.text ?? ''))
    return true;
  return false;
}
