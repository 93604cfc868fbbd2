/** Places that only a preposition tells: "round the sundial", "in the scullery", "behind the shed". */
import type { Clause } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import { anyOf, opening, whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { LANDMARKS } from '../pieces/places/tails.js';
import type { Token } from '../row/tokens.js';
import { asMeant } from '../row/spelling/without-slips.js';

const LEAD = whole`
  in|into|inside|on|onto|over|to|at|by|near|next|beside|along|alongside|round|around|outside
  under|beneath|behind|against|up|down|among|amongst
`;

/** What weather and the hour bring: "out in the rain", "at dusk". */
const WEATHER_AND_TIME = anyOf`
  rain|sun|sunshine|breeze|wind|weather|elements|chill|cold|frost|heat|dark
  morning|afternoon|evening|night|nights|day|days|daytime|daytimes|dusk|dawn|teatime|bedtime|nightfall|sunset|sundown
  time|times|minutes?|hours?|weeks?|meantime|future|past|last|once|first
`;

/** What plants stand in: "in water", "in a pot". */
const MEDIA_AND_POTS = anyOf`
  water|earth|soil|compost|perlite|sand|peat|mix|honey|hormone|powder|gel|fleece|fresh
  pots?|trays?|plugs?|modules?|cells?|tubes|jiffies|bags?
`;

/** Parts of a plant or of a pot: "at the tips", "round the rim". */
const PARTS = anyOf`
  tips?|tops?|base|leaf|leaves|roots?|stems?|flower|bud|bush
  side|sides|rim|edges?|end|ends|left|right|foot|head|back|knees|hands?
`;

/** Words of how, how many and whose: "in pairs", "to them", "at best". */
const HOW_AND_WHOSE = anyOf`
  one|half|all|total|lot|heap|bunch|load|whole|batch|number|full|flat|together|bit|bits|layer|sprinkle|sprinkling|dusting|inch|pieces|pairs|singles|twos|threes|individual|separate
  new|bigger|larger|smaller|other|another|own|least|best|good
  a|an|it|them|me|us|you|my|her|his|their|our|which|that|this|what
  rot|mould|mush|slime|death|growth|return|advance|turn|order|use|need|hope|case|way|place|hurry|work|post|bed
  book|diary|fact|truth|theory|reality|practice|general|particular|short
`;

/** Verbs behind "to": "out to harden". */
const VERBS = anyOf`
  be|do|go|get|give|take|make|see|keep|start|stop|finish|check
  propagating|rooting|striking|sticking|cloning
  root|grow|plant|move|mist|feed|toughen|harden
`;

const NOT_PLACES = whole`
  ${WEATHER_AND_TIME}
  ${MEDIA_AND_POTS}
  ${PARTS}
  ${HOW_AND_WHOSE}
  ${VERBS}
`;

/** What is said like a place and is none: "in trouble", "on the small side", "in the long run". */
const SAYINGS = whole`
  trouble|lead|running|standby|hand|mood|mend|know|clear|process|zone|rush|main|meanwhile|interim|offing|news
  background|beginning|circumstances|bargain|balance|family|post|moon|nick|long run|first place|last legs
  (same|wrong|right) (boat|side|track)|(small|dry|wet|leggy|thin|weak|slow|large|big|late|early) side
`;
/** "At the mercy of the slugs", "in full sun". */
const OPENS_SAYING = opening`
  mercy|verge|brink|cusp|nick of|full|great|fine|poor|bad|perfect
`;

/** Words that no place goes on behind. */
const ENDS_PLACE = whole`
  and|but|then|so|because|as|if|who|which|that|where|when|while|i|we|it|they|he|she
  i'd|i've|i'm|we'd|we've|we're|it's|they're|they've|he's|she's|he'd|she'd|that's|there's|what's|who's
  for|from|with|to|in|at|by|until|till|since|after|before|instead
  are|is|was|were|have|has|had|looking
  today|yesterday|overnight|now|again|already|too|also|there|this|each|please
`;

/** What is planted up out of doors. */
const PLANTED_UP = /^(?:tubs?|urns?|troughs?|planters?|barrels?|half-barrels?|hanging baskets?)$/;

/** "Planted out eight, tubs by the gate": what they were planted in, named behind a mark. */
const isPlantedUp = (pieces: readonly Piece[], mark: number, { hit }: Pick<Clause, 'hit'>): boolean =>
  hit?.rule.kind === 'plantOut' &&
  pieces[mark]?.is === 'break' &&
  PLANTED_UP.test(wordAt(pieces, /^(?:the|my|our)$/.test(wordAt(pieces, mark + 1)) ? mark + 2 : mark + 1));

const STANDS = whole`trays?|pots?|mix|kit|tent|racks?|station|shelf|shelves|bench|shed|set up|table|box|dome|area`;

/** "…, out by the peat stack". */
const isOutBy = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:out|oot|away|back|outside)$/.test(wordAt(pieces, at)) &&
  /^(?:by|beside|behind|near|under|against|round|alongside)$/.test(wordAt(pieces, at + 1)) &&
  /^(?:the|my|our)$/.test(wordAt(pieces, at + 2));

/** "12 cuttings of the red salvia by the gate": where the plant stands that they came off. */
function isWhereParentStands(pieces: readonly Piece[], at: number): boolean {
  if (!/^(?:by|beside|near|against|behind)$/.test(wordAt(pieces, at)) || pieces[at - 1]?.is !== 'plant')
    return false;
  let of = at - 1;
  // "8 of" is one piece.
  const leads = (): boolean => /^(?:of|off|from)$/.test(wordAt(pieces, of)) || pieces[of]?.is === 'count';
  while (of > 0 && at - of < 6 && !leads()) of--;
  return leads() && /^(?:the|my|our|that)$/.test(wordAt(pieces, of + 1));
}

/** The place behind the last fitting preposition of the clause, as written, without its article. */
export function loosePlace(
  pieces: readonly Piece[],
  clause: Pick<Clause, 'from' | 'to' | 'hit'>,
  tokens: readonly Token[],
  text: string,
): string | undefined {
  const from = clause.hit ? clause.hit.from : clause.from;
  for (let at = from; at < clause.to; at++) {
    if (
      pieces[at]?.is === 'break' &&
      !LEAD.test(wordAt(pieces, at + 1)) &&
      !isOutBy(pieces, at + 1) &&
      !isPlantedUp(pieces, at, clause) &&
      // "All 14", in Scots "a' 14".
      pieces[wordAt(pieces, at + 1) === 'a' ? at + 2 : at + 1]?.is !== 'count' &&
      !tellsWhereTheyAre(pieces, at + 1)
    )
      return undefined;
    // What was going on meanwhile is no place of the plants.
    if (at > from && /^(?:while|whilst|when|because|though|although|if|unless)$/.test(wordAt(pieces, at)))
      return undefined;
    const lead = wordAt(pieces, at);
    if (clause.hit?.rule.kind === 'strike' && isWhereParentStands(pieces, at)) continue;
    const outTheFront =
      lead === 'out' && wordAt(pieces, at + 1) === 'the' && /^(?:front|back)$/.test(wordAt(pieces, at + 2));
    // "Filled the urns with them".
    const filled =
      clause.hit?.rule.kind === 'plantOut' &&
      (/^(?:filled|stuffed|crammed)$/.test(lead) || (lead === 'up' && wordAt(pieces, at - 1) === 'made'));
    const plantedUp = isPlantedUp(pieces, at, clause);
    if (
      (!LEAD.test(lead) && !outTheFront && !filled && !plantedUp) ||
      (lead === 'next' && wordAt(pieces, at + 1) !== 'to')
    )
      continue;
    // "Off the one by the gate": where the mother plant stands.
    if (
      (/^(?:one|plant|bush)$/.test(wordAt(pieces, at - 1)) || pieces[at - 1]?.is === 'count') &&
      wordAt(pieces, at - 2) === 'the' &&
      /^(?:off|from)$/.test(wordAt(pieces, at - 3))
    )
      continue;
    let start = at + 1;
    if (/^(?:to|of)$/.test(wordAt(pieces, start)) && /^(?:next|inside|outside|on|in)$/.test(lead)) start++;
    let article = false;
    while (/^(?:the|a|an|my|our|his|her|their|some)$/.test(wordAt(pieces, start))) {
      article = true;
      start++;
    }
    let end = start;
    while (end < clause.to && end < start + 6) {
      const piece = pieces[end];
      if (piece?.is === 'place' && end > start) {
        end++;
        continue;
      }
      if (piece?.is !== 'word') break;
      if (ENDS_PLACE.test(piece.text)) {
        if (
          end > start &&
          /^(?:by|outside|of|at|in|behind|under)$/.test(piece.text) &&
          /^(?:the|my|our)$/.test(wordAt(pieces, end + 1)) &&
          end - start < 3
        ) {
          end += 2;
          continue;
        }
        // "Tubs by gate".
        if (end > start && piece.text === 'by' && LANDMARKS.has(wordAt(pieces, end + 1))) {
          end += 2;
          continue;
        }
        break;
      }
      // "In the seed starting tray": no deed behind a place.
      const isThing = piece.verb?.form === 'ing' && STANDS.test(wordAt(pieces, end + 1));
      if (!isThing && /^(?:past|ing)$/.test(piece.verb?.form ?? '') && end > start) break;
      end++;
    }
    while (end > start && /^(?:of|the|by|at|in|behind|under|outside)$/.test(wordAt(pieces, end - 1))) end--;
    if (end === start) continue;
    // "In wet sand": what they stand in.
    if (pieces[end]?.is === 'medium') continue;
    const head = wordAt(pieces, start);
    const first = pieces[start];
    // "Outside to toughen up": what for.
    if (wordAt(pieces, start - 1) === 'to' && first?.is === 'word' && first.verb?.form === 'base') continue;
    if (/^(?:off|from|of|out|there|here|to|into|onto|round|around|along)$/.test(head)) continue;
    if (head === 'back' && (!article || end - start === 1)) continue;
    if (NOT_PLACES.test(head) && end - start === 1) continue;
    if (
      NOT_PLACES.test(wordAt(pieces, end - 1)) &&
      !/^(?:side|end|top|back|bed)$/.test(wordAt(pieces, end - 1))
    )
      continue;
    const said = pieces.slice(start, end).map((_, n) => wordAt(pieces, start + n));
    if (SAYINGS.test(said.join(' ')) || OPENS_SAYING.test(said.join(' '))) continue;
    if (!article && lead === 'by') continue;
    if (!article && lead === 'to' && !tokens[pieces[start]?.from ?? 0]?.capital) continue;
    return asMeant(text, tokens.slice(pieces[start]?.from, pieces[end - 1]?.to));
  }
  for (let at = from; at < clause.to; at++)
    if (/^(?:outside|indoors|outdoors|inside|upstairs|downstairs)$/.test(wordAt(pieces, at)))
      return wordAt(pieces, at);
  return undefined;
}

/** Words before where plants are: "they're all standing out …". */
const ON_THE_WAY = whole`
  they|they're|are|all|both|now|just|sat|sit|sitting|stand|standing|stood|live|living
  below|above|beyond|over|out|up|down|back|away
`;

/** "…, they're below at the gable wall", "…, now sat against the back hedge": what was done stands there. */
function tellsWhereTheyAre(pieces: readonly Piece[], from: number): boolean {
  if (!/^(?:they|they're|all|both|now|sat|sitting|standing|stood)$/.test(wordAt(pieces, from))) return false;
  let at = from;
  while (ON_THE_WAY.test(wordAt(pieces, at))) at++;
  return LEAD.test(wordAt(pieces, at));
}
