/** Things of the bench that stand where plants would: labels, lids, bags of compost, a picture of them. */
import type { Clause } from '../clauses/clauses.js';
import type { Draft } from '../acts/drafting/draft.js';
import { wordAt } from '../grammar/rule.js';
import { whole } from '../phrases.js';
import type { Piece } from './pieces.js';

const BOUGHT = /^(?:bought|got|ordered|purchased|received)$/;

/** "Rooting hormone arrived for …": what came is no plant. */
export const isThingItself = (pieces: readonly Piece[], from: number): boolean =>
  pieces[from - 1]?.is === 'medium' ||
  isThing(wordAt(pieces, from - 1)) ||
  /^(?:hormone|powder|gel|compost|perlite|grit|labels|pots|feed|fleece|lights|heater|mat|bags)$/.test(
    wordAt(pieces, from - 1),
  );

const THING = whole`
  labels?|tags?|notes?|idea|story|news|photos?|pictures?|books?|catalogue|packets?|seeds?|coffee|table|chair
  heaters?|fans?|lamps?|thermometer|lids?|hose|sprayer|mower|strimmer|barrow|stakes|canes
  tools?|spade|fork|trowel|dibber|knife|secateurs|shears|loppers
`;

const WASTE = whole`
  rubbish|trash|waste|weeds?|prunings|clippings|trimmings|leaves|grass|junk|litter|cardboard|soil|muck
`;

export const isThing = (word: string): boolean => THING.test(word);

/** "Swapped the labels on …", "potted up some compost for …": another thing is named where plants would be. */
export function actsOnThing(pieces: readonly Piece[], to: number): boolean {
  // "Sent Edna a picture of …".
  const another =
    /^(?:a|an|the|some)$/.test(wordAt(pieces, to + 1)) && !/^(?:the|a|an|my)$/.test(wordAt(pieces, to));
  let at = another ? to + 1 : to;
  while (/^(?:on|off|out|up|round|over|across)$/.test(wordAt(pieces, at))) at++;
  while (/^(?:the|a|an|my|our|some)$/.test(wordAt(pieces, at)) || pieces[at]?.is === 'count') at++;
  // "Bought six bags of compost for …", "bought ten 9cm pots for …".
  if (/^(?:bag|bags|sack|sacks|bale|bales)$/.test(wordAt(pieces, at)) && wordAt(pieces, at + 1) === 'of')
    return pieces[at + 2]?.is === 'medium';
  if (pieces[at]?.is === 'pots' && wordAt(pieces, at + 1) === 'of' && pieces[at + 2]?.is === 'medium')
    return BOUGHT.test(wordAt(pieces, to - 1)) || !pieces.some(({ is }) => is === 'plant');
  // "Binned 3 bags of rubbish".
  if (pieces[at]?.is === 'pots' && wordAt(pieces, at + 1) === 'of' && WASTE.test(wordAt(pieces, at + 2)))
    return true;
  if (BOUGHT.test(wordAt(pieces, to - 1)) && (pieces[at]?.is === 'pots' || pieces[at]?.is === 'size')) {
    while (pieces[at]?.is === 'pots' || pieces[at]?.is === 'size') at++;
    return wordAt(pieces, at) === 'for';
  }
  const behind = pieces[at + 1];
  if (pieces[at]?.is === 'medium')
    return wordAt(pieces, at + 1) === 'for' || (behind?.is === 'when' && /^for\b/i.test(behind.when.words));
  return at > to && THING.test(wordAt(pieces, at));
}

const PART =
  /^(?:label|labels|tag|tags|leaf|leaves|bud|buds|flower|flowers|bloom|blooms|seed|seeds|packet|packets)$/;

/** "Binned two Salt Harrier labels": something of theirs. */
export function isPartOf({ plant }: Draft, pieces: readonly Piece[], { from, to, hit }: Clause): boolean {
  if (hit?.rule.kind === 'strike' || plant === undefined) return false;
  return pieces.some(
    (piece, at) =>
      at >= from &&
      at < to &&
      piece.is === 'plant' &&
      piece.plant === plant &&
      PART.test(wordAt(pieces, at + 1)) &&
      !/^(?:cuttings?|tomorrow|today|for)$/.test(wordAt(pieces, at + 2)),
  );
}
