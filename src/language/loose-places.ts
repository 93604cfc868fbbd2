/** Places that only a preposition tells: "round the sundial", "in the scullery", "behind the shed". */
import { wordAt } from './grammar/rule.js';
import type { Clause } from './clauses.js';
import type { Piece } from './pieces.js';
import type { Token } from './tokens.js';

const LEAD =
  /^(?:in|into|on|onto|to|at|under|by|down|up|beside|along|near|outside|inside|round|around|behind|against|beneath|over|amongst|among|next|alongside)$/;
const NOT_PLACES =
  /^(?:water|earth|soil|daytime|daytimes|nights|weather|compost|perlite|sand|fleece|morning|evening|dusk|dawn|teatime|bedtime|nightfall|sunset|sundown|afternoon|night|mix|post|half|end|dark|one|own|total|all|them|it|rot|mould|death|time|times|growth|return|advance|future|past|rain|sun|breeze|wind|elements|sunshine|chill|cold|frost|heat|bag|bags|day|days|week|weeks|hour|hours|minute|minutes|last|once|least|first|best|way|good|case|order|use|need|place|hope|bits|pieces|pot|pots|tray|trays|plugs|tubes|modules|cells|module|cell|plug|jiffies|honey|turn|which|that|this|what|another|other|me|us|you|my|her|his|their|our|a|an|mush|slime|hormone|powder|gel|hand|hands|hurry|meantime|go|fresh|peat|work|bed|be|make|see|get|do|keep|root|stop|start|finish|bush|toughen|harden|grow|give|take|check|plant|move|mist|feed|tip|tips|top|tops|base|leaf|leaves|roots|stems|stem|flower|bud|full|flat|foot|knees|head|back|left|right|side|sides|number|book|diary|rim|edge|edges|ends|lot|whole|batch|new|bigger|larger|smaller|individual|separate|singles|threes|twos|pairs)$/;

/** The place behind the last fitting preposition of the clause, as written, without its article. */
export function loosePlace(
  pieces: readonly Piece[],
  clause: Clause,
  tokens: readonly Token[],
  text: string,
): string | undefined {
  const from = clause.hit ? clause.hit.from : clause.from;
  for (let at = from; at < clause.to; at++) {
    if (
      pieces[at]?.is === 'break' &&
      !LEAD.test(wordAt(pieces, at + 1)) &&
      pieces[at + 1]?.is !== 'count' &&
      !tellsWhereTheyAre(pieces, at + 1)
    )
      return undefined;
    // What was going on meanwhile is no place of the plants.
    if (at > from && /^(?:while|whilst|when|because|though|although|if|unless)$/.test(wordAt(pieces, at)))
      return undefined;
    const lead = wordAt(pieces, at);
    const outTheFront =
      lead === 'out' && wordAt(pieces, at + 1) === 'the' && /^(?:front|back)$/.test(wordAt(pieces, at + 2));
    // "Filled the urns with them".
    const filled =
      clause.hit?.rule.kind === 'plantOut' &&
      (/^(?:filled|stuffed|crammed)$/.test(lead) || (lead === 'up' && wordAt(pieces, at - 1) === 'made'));
    if ((!LEAD.test(lead) && !outTheFront && !filled) || (lead === 'next' && wordAt(pieces, at + 1) !== 'to'))
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
      if (
        /^(?:and|but|then|so|because|for|from|with|who|which|that|where|as|today|yesterday|this|when|while|since|to|are|is|was|were|have|has|had|until|till|if|again|now|too|also|there|after|before|in|at|instead|looking|already|each|overnight|please|they|i|we|it|by)$/.test(
          piece.text,
        )
      ) {
        if (
          end > start &&
          /^(?:by|outside|of|at|in|behind|under)$/.test(piece.text) &&
          /^(?:the|my|our)$/.test(wordAt(pieces, end + 1)) &&
          end - start < 3
        ) {
          end += 2;
          continue;
        }
        break;
      }
      if (piece.verb && (piece.verb.form === 'past' || piece.verb.form === 'ing') && end > start) break;
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
    if (/^(?:off|from|of|out|there|here|to|into|onto)$/.test(head)) continue;
    if (head === 'back' && (!article || end - start === 1)) continue;
    if (NOT_PLACES.test(head) && end - start === 1) continue;
    if (
      NOT_PLACES.test(wordAt(pieces, end - 1)) &&
      !/^(?:side|end|top|back|bed)$/.test(wordAt(pieces, end - 1))
    )
      continue;
    if (!article && lead === 'by') continue;
    if (!article && lead === 'to' && !tokens[pieces[start]?.from ?? 0]?.capital) continue;
    return text.slice(
      tokens[pieces[start]?.from ?? 0]?.start ?? 0,
      tokens[(pieces[end - 1]?.to ?? 1) - 1]?.end ?? 0,
    );
  }
  for (let at = from; at < clause.to; at++)
    if (/^(?:outside|indoors|outdoors|inside|upstairs|downstairs)$/.test(wordAt(pieces, at)))
      return wordAt(pieces, at);
  return undefined;
}

/** "…, they're below at the gable wall", "…, now sat against the back hedge": what was done stands there. */
function tellsWhereTheyAre(pieces: readonly Piece[], from: number): boolean {
  if (!/^(?:they|they're|all|both|now|sat|sitting|standing|stood)$/.test(wordAt(pieces, from))) return false;
  let at = from;
  while (
    /^(?:they|they're|are|all|both|now|just|sat|sitting|standing|stood|below|above|beyond|over|out|up|down|back|away)$/.test(
      wordAt(pieces, at),
    )
  )
    at++;
  return LEAD.test(wordAt(pieces, at));
}
