/** What did it, in a sentence of its own behind a loss: "… They dried right out while we were away", "… Bone dry." */
import type { Cause } from '../../ledger/entry.js';
import { wordAt } from '../grammar/rule.js';
import { leading, trailing } from '../grammar/runs.js';
import { causes, phraseAt } from '../row/lexicon.js';
import { opening } from '../phrases.js';
import type { Proposal } from '../proposal.js';
import type { Sentence } from './sentences.js';

/** The loss with the cause that the sentence behind it tells; undefined where it says anything else. */
export function causeOf(last: Proposal, sentence: Sentence): Proposal | undefined {
  if (last.kind !== 'loss' || last.slots['cause'] !== undefined || sentence.asked) return undefined;
  const cause = causeAlone(sentence) ?? causeInVerb(sentence) ?? causeGotIn(sentence);
  return cause && { ...last, slots: { ...last.slots, cause } };
}

/** A verb of decay that says it of them: "they dried right out while we were away". */
function causeInVerb({ pieces }: Sentence): Cause | undefined {
  if (!/^(?:they|they'd|it|it'd)$/.test(wordAt(pieces, 0))) return undefined;
  let at = 1;
  while (/^(?:had|all|just|simply|completely)$/.test(wordAt(pieces, at))) at++;
  const verb = pieces[at];
  const words = pieces.map((_, n) => wordAt(pieces, n));
  const cause = phraseAt(causes, words, at)?.value;
  if (cause === undefined || verb?.is !== 'word' || verb.verb?.form !== 'past') return undefined;
  return pieces.some(({ is }) => is === 'plant' || is === 'count') ? undefined : cause;
}

const GOT_IN = opening`
  (has|have|had|must have|'ve)? (got|gotten|come|came|crept) (in|into|inside|through|under|to|at|them|it)
  (has|have|had|must have|'ve)? (had|hit|struck|took|taken|caught|done|did|found|eaten|ate|killed|finished) (them|it|for|in|off|the lot|the (frame|greenhouse|tunnel|tray|trays|bench|pots))
`;

/** What did it, and how it came to them: "frost got in the frame last night", "the slugs found them". */
function causeGotIn({ line, pieces }: Sentence): Cause | undefined {
  if (pieces.some(({ is }) => is === 'plant' || is === 'count')) return undefined;
  const words = line
    .replace(/^(?:(?:the|a|that|those|bloody|blasted|damn|stupid|i think|must be) )+/, '')
    .split(' ');
  const cause = phraseAt(causes, words, 0);
  const behind = words.slice(cause?.words.length).join(' ');
  return cause && GOT_IN.test(behind) ? cause.value : undefined;
}

const LEAD = new RegExp(
  `^${leading`
  i|we|think|reckon|suspect|guess|blame|suppose|it|it's|it'd|they|they'd|that|that's|was|were|had|been|be|have|must|looks|looked|like
  probably|possibly|maybe|likely|obviously|clearly|definitely|usual|all|just|simply|so|far|way|much
  totally|completely|absolutely|utterly|properly|gone|went|got
  the|a|an|those|these|that|my|our|their|some|pots?|compost|soil|tray|trays|mix|cells|modules|plugs
  bloody|blasted|damn|damned|darn|flipping|flaming|blooming|wretched|pesky|stupid|dreaded|bleeding|old|good|bit|of
`}`,
);

const END = new RegExp(
  `^${trailing`
  again|everywhere|probably|obviously|clearly|likely|naturally|this time|as usual|as ever|as always|of course|no doubt|by the look of (it|them)
  i (think|reckon|suspect|guess|suppose|fear)|i'd (say|guess|bet|think)|we (think|reckon|suspect)|i'm afraid|sadly|alas|it was|they were|the lot of (it|them)|all of (it|them)
  the (wee|little|rotten|greedy|evil|bloody|blasted)? (beggars|sods|buggers|devils|horrors|blighters|swines?|pests|so and sos|monsters|gits)
  damage|attack|to blame|the culprits?|the cause|it seems|sigh
`}$`,
);

/** Weather as well, where nothing says that it did the harm ("cold", "it's too hot"). */
const WEATHER = /^(?:cold|the cold|dry|ice|icy|minus|freeze|wet|baked|dried|(?:it's|so) .*)$/;

/** Nothing but what did it: "bone dry", "slugs again, I think", "probably botrytis". */
export function causeAlone({ line, pieces }: Sentence): Cause | undefined {
  if (!pieces.every(({ is }) => is === 'word' || is === 'break' || is === 'count')) return undefined;
  const words = line.replace(LEAD, '').split(' ');
  const cause = phraseAt(causes, words, 0);
  const behind = words.slice(cause?.words.length).map((word) => ` ${word}`);
  if (!cause || !END.test(behind.join(''))) return undefined;
  const ofWeather = cause.value === 'frost' || cause.value === 'drought';
  return ofWeather && WEATHER.test(line) ? undefined : cause.value;
}
