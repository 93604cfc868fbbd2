/** Misted, watered, vented, fed, shaded, covered, uncovered. */
import type { Care } from '../../ledger/entry.js';
import type { Piece } from '../pieces.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from './rule.js';

const DOING =
  /^(?:to|the|some|more|tap|rain|in|with|fresh|of|no|my|a|got|get|needs|need|lovely|hot|cold|any|without|under|for)$/;
const noun = (pieces: readonly Piece[], from: number): boolean => DOING.test(wordAt(pieces, from - 1));
const verb = (lemmas: string, care: Care, name: string, unless?: Rule['unless']): Rule => ({
  name,
  kind: 'tend',
  head: lemmas
    .split(' ')
    .map((lemma) => `${lemma}~past`)
    .join('|'),
  shape: 'object',
  care,
  ...(unless ? { unless } : {}),
});
const bare = (lemma: string, care: Care): Rule => ({
  name: `${lemma} <plant>`,
  kind: 'tend',
  head: `${lemma}~base|${lemma}~ing`,
  shape: 'object',
  care,
  // "The water butt", "the feed bins", "spray for greenfly".
  unless: (p, f, t) =>
    noun(p, f) ||
    (lemma === 'spray' && wordAt(p, t) === 'for') ||
    /^(?:butts?|cans?|bottles?|tanks?|bins?|bill|meter|barrels?|company|feature|pipes?|bags?|crops?)$/.test(
      wordAt(p, t),
    ),
  when: (p, _f, t) => follows(p, t, 'plant', 'place', 'count') || followsWord(p, t, ALL_OF_THEM),
});
/** Words for whatever is cared for. */
const ALL_OF_THEM = /^(?:everything|all|them|lot)$/;

/** Where a thing is only wanted or on offer: "fleece on my shopping list". */
const ON_PAPER = /^(?:list|shopping|order|ebay|offer|budget)$/;

const turnedOff = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  /^(?:off|down)$/.test(wordAt(pieces, to));

const aboutPlants = (pieces: readonly Piece[], from: number, to: number): boolean =>
  follows(pieces, to, 'plant', 'place') ||
  followsWord(pieces, to, /^(?:them|everything|all|it|lot|cuttings|babies|those|trays|pots|plants)$/) ||
  precedes(pieces, from, 8, 'plant', 'place');

/** "Somebody left the dome off": no care of the grower's. */
const leftByOthers = (pieces: readonly Piece[], from: number): boolean => {
  const left = pieces.findIndex((_, at) => at < from && at >= from - 3 && wordAt(pieces, at) === 'left');
  return SOMEBODY.test(wordAt(pieces, left - 1));
};
const SOMEBODY = /^(?:somebody|someone|who|he|she|they|kids|cat|dog|wind)$/;

/** "Somebody opened the vents". */
const byOthers = (pieces: readonly Piece[], from: number): boolean => SOMEBODY.test(wordAt(pieces, from - 1));

/** "Minus 3 when I lifted the lid": when something was seen. */
const whenIDid = (pieces: readonly Piece[], from: number): boolean =>
  /^(?:i|we)$/.test(wordAt(pieces, from - 1)) && wordAt(pieces, from - 2) === 'when';

/** "No water for them", "needs a drop of water": wanted, and not given. */
const WANTING = /^(?:no|not|need|needs|want|wants|without|any|more|could|due)$/;

/** Water, as a word or as what something stands in. */
const isWatery = (pieces: readonly Piece[], from: number, to: number): boolean =>
  pieces
    .slice(from, to)
    .some(
      (piece) =>
        (piece.is === 'medium' && /water$/.test(piece.medium)) ||
        (piece.is === 'word' && /water$/.test(piece.text)),
    );
const among = (
  pieces: readonly Piece[],
  from: number,
  to: number,
  ...kinds: readonly Piece['is'][]
): boolean => pieces.slice(from, to).some(({ is }) => kinds.includes(is));

export const tendRules: readonly Rule[] = [
  verb('mist spray spritz fog', 'mist', 'misted <plant>', (p, _f, t) => wordAt(p, t) === 'up' || followsWord(p, t, /^(?:aphids|greenfly|whitefly|weeds|path|against|soap|neem|insecticide|fungicide)$/)),
  { name: 'watered <plant> in', kind: 'tend', head: 'water~past', shape: 'object', care: 'water', unless: (p, f, t) => /^(?:over|under)$/.test(wordAt(p, f - 1)) || (wordAt(p, t) === 'down' && (!follows(p, t, 'plant', 'place') || followsWord(p, t, /^(?:feed|seaweed|tomorite|fertiliser|fertilizer)$/))), mustNot: ['lost 3 Salt Harrier, I think I over watered', 'watered down the paint', 'watered down the feed for the Salt Harrier'], phrasings: ['watered Salt Harrier in', 'bottom watered Salt Harrier'] },
  verb('soak dunk drench irrigate hose sprinkle', 'water', 'soaked <plant>', (p, f, t) => !aboutPlants(p, f, t) || /^(?:got|am|was|i'm|be|is|are|absolutely|completely|tubers)$/.test(wordAt(p, f - 1))),
  verb('vent ventilate air', 'vent', 'vented <place>'),
  verb('feed fertilise fertilize', 'feed', 'fed <plant>', (p, f, t) => /^up$/.test(wordAt(p, t)) || /^(?:cat|dog|kids|hens|chickens|birds|children|family|cats)$/.test(wordAt(p, t + 1)) || (/^(?:am|i'm|was|being)$/.test(wordAt(p, f - 1)))),
  verb('shade whitewash', 'shade', 'shaded <place>'),
  { name: 'took off the cover', kind: 'tend', head: 'take~past|pull~past|whip~past|remove~past|lift~past|peel~past|strip~past off? the|their|all|its|those|my fleece|cover|covers|bag|bags|cloche|dome|domes|plastic', shape: 'object', care: 'uncover', phrasings: ['took off the cover', 'took the cover off the greenhouse'] },
  { name: 'fleece off <place>', kind: 'tend', head: 'fleece|covers|cover|dome|domes|bag|bags|netting|bubblewrap|blankets|sheets taken|pulled|stripped|removed|whipped|lifted? off|from', shape: 'object', care: 'uncover', unless: (p, f, t) => leftByOthers(p, f) || wordAt(p, t) === 'by' || (wordAt(p, t - 1) === 'from' && wordAt(p, t - 2) !== 'removed'), phrasings: ['fleece taken off the greenhouse', 'covers removed from the cold frame'], mustNot: ['lost 4 Salt Harrier, somebody left the dome off', 'covers pulled off by the wind in the greenhouse'] },
  { name: 'fleece on <place>', kind: 'tend', head: 'fleece|covers|cover|dome|bubblewrap|wrap|netting|net|blanket|blankets|newspaper|newspapers|cloche|cloches|polythene|sheet|sheets on|over|back|round|around|across', shape: 'object', care: 'cover', unless: (p, f, t) => followsWord(p, t, ON_PAPER) || (among(p, 0, f, 'cutting') && among(p, 0, f, 'count', 'pots') && among(p, 0, f, 'plant')), mustNot: ['fleece on my shopping list for the Salt Harrier', 'Salt Harrier, 6 tip cuttings, dipped in Clonex, dome on'] },
  verb('cover fleece wrap tuck', 'cover', 'covered <place>', (p, f, t) => /^in$/.test(wordAt(p, t)) && !follows(p, t, 'plant', 'place') ? true : wordAt(p, f).startsWith('tuck') && !followsWord(p, t, /^(?:fleece|blanket|bubblewrap)$/)),
  verb('uncover unwrap unfleece', 'uncover', 'uncovered <place>'),
  { name: 'opened the vents', kind: 'tend', head: 'open~past|prop~past|crack~past|throw~past|lift~past|raise~past|tilt~past|wedge~past|leave~past .. vents|vent|lid|lids|windows|window|door|doors|lights|flaps|sides|tops|lantern|louvres', shape: 'object', care: 'vent', unless: (p, f) => whenIDid(p, f) || byOthers(p, f) },
  { name: 'opened up both ends of <place>', kind: 'tend', head: 'open~past|prop~past up? both|the|one|<count> ends|end|sides|doors', shape: 'object', care: 'vent', phrasings: ['opened up both ends of the polytunnel to let some air through'] },
  { name: 'hung netting to shade <plant>', kind: 'tend', head: 'hang~past|rig~past|put~|drape~past .. to shade', shape: 'object', care: 'shade', phrasings: ['hung some netting to shade the Salt Harrier'] },
  { name: 'opened up <place>', kind: 'tend', head: 'open~past up? the|my? <place>', shape: 'object', care: 'vent' },
  { name: 'vents open', kind: 'tend', head: 'vents|vent|lid|lids|doors|door|lights|windows open|opened|full|up|ajar|wide|cracked|propped', shape: 'object', care: 'vent', unless: leftByOthers, mustNot: ['4 Salt Harrier died, somebody left the vent open'] },
  { name: 'sides up', phrasings: ['greenhouse sides up'], kind: 'tend', head: 'sides|side|doors|door rolled? up', shape: 'object', care: 'vent', when: (p) => p.some(({ is }) => is === 'place') },
  { name: 'door left open', kind: 'tend', head: 'vents|vent|lid|lids|doors|door|lights|windows|window left|kept|held|wedged|standing open|ajar|up', shape: 'object', care: 'vent', when: (p, f, t) => precedes(p, f, 3, 'place') || follows(p, t, 'place'), unless: (p, f, t) => leftByOthers(p, f) || followsWord(p, t, /^(?:by|overnight|mistake|accident)$/) || /^(?:died|lost|dead)$/.test(wordAt(p, 0)), phrasings: ['greenhouse door left open to cool it'], mustNot: ['greenhouse door left open by somebody'] },
  { name: 'lid off', kind: 'tend', head: 'lid|lids off', shape: 'object', care: 'vent', unless: leftByOthers },
  { name: 'took the lid off', kind: 'tend', head: 'take~past|pull~past|whip~past|remove~past|pop~past|lift~past .. lid|lids off?', shape: 'object', care: 'vent', unless: whenIDid },
  { name: 'gave <plant> a drink', kind: 'tend', head: 'give~past|give~ing|give~base .. drink|water|soak|watering|soaking|dunk|drench|dousing', shape: 'object', care: 'water' },
  { name: 'gave <plant> a feed', kind: 'tend', head: 'give~past|give~ing .. feed|feeding|seaweed|tomorite|fertiliser|fertilizer|plantfood|food|seasol|maxicrop|comfrey', shape: 'object', care: 'feed', unless: (p, _f, t) => /^(?:pantry|bank|hub|larder|festival|fair)$/.test(wordAt(p, t)), mustNot: ['gave 10 Salt Harrier to the food pantry'] },
  { name: 'gave <plant> a mist', kind: 'tend', head: 'give~past|give~ing .. mist|misting|spray|spritz|spritzing|squirt', shape: 'object', care: 'mist' },
  { name: 'gave <place> some air', kind: 'tend', head: 'give~past|give~ing|let~ .. air|airing|ventilation|breather', shape: 'object', care: 'vent' },
  { name: '<plant> treated to a feed', kind: 'tend', head: 'treat~past .. feed|seaweed|tomorite|fertiliser|fertilizer|food|comfrey', shape: 'object', care: 'feed', phrasings: ['treated the Salt Harrier to a feed', 'the Salt Harrier were treated to a weak feed'] },
  { name: '<plant> treated to a drink', kind: 'tend', head: 'treat~past .. drink|water|soak|watering|soaking|drench', shape: 'object', care: 'water', phrasings: ['treated the Salt Harrier to a good soak'], unless: (p, f) => /^(?:myself|ourselves|him|her|us)$/.test(wordAt(p, f + 1)), mustNot: ['treated myself to a drink after the Salt Harrier'] },
  { name: 'a drop of water over <plant>', kind: 'tend', head: 'drop|splash|skoosh|sup|bit|dash|sprinkle|glug|mouthful|can|cans|canful|cup|lick|bucket|bucketful|jug|jugful|<pots> of? water|rainwater|<medium> for|over|on|to|into', shape: 'object', care: 'water', when: (p, f, t) => isWatery(p, f, t) && (follows(p, t, 'plant', 'place') || followsWord(p, t, ALL_OF_THEM)), unless: (p, f, t) => (p[f]?.is === 'pots' && wordAt(p, t - 1) !== 'over') || p.slice(Math.max(0, f - 4), f).some((_, n) => WANTING.test(wordAt(p, Math.max(0, f - 4) + n))), phrasings: ['quick splash of water over the Salt Harrier', 'chucked a bucket of water over the cold frame', 'drop of water for everything in the greenhouse'], mustNot: ['no drop of water for the Salt Harrier', 'needs a drop of water on the Salt Harrier'] },
  { name: 'quick spritz for <plant>', kind: 'tend', head: 'spritz|misting|squirt for|over', shape: 'object', care: 'mist', when: (p, f, t) => f < 3 && closeBehind(p, t, 'plant', 'place'), unless: (p, f, t) => WANTING.test(wordAt(p, f - 1)) || followsWord(p, t, /^(?:needed|wanted|later)$/), phrasings: ['quick spritz for the Salt Harrier'], mustNot: ['no misting for the Salt Harrier', 'spritz for the Salt Harrier needed'] },
  { name: 'watering round done', kind: 'tend', head: 'watering round|rounds? done|finished', shape: 'object', care: 'water', when: (_p, f) => f < 2, phrasings: ['watering round done'], mustNot: ['watering round not done'] },
  { name: 'did the watering in <place>', kind: 'tend', head: 'do~past the|some|all|my? watering', shape: 'object', care: 'water', when: (p, _f, t) => follows(p, t, 'plant', 'place') || endsAt(p, t), phrasings: ['did the watering in the greenhouse', 'did the watering this morning'], mustNot: ['did the watering can turn up?', 'somebody else does the watering in the greenhouse'] },
  { name: 'did the misting in <place>', kind: 'tend', head: 'do~past the|some|all|my? misting|spraying', shape: 'object', care: 'mist', when: (p, _f, t) => follows(p, t, 'plant', 'place') || endsAt(p, t), phrasings: ['did the misting in the greenhouse', 'did the misting'] },
  { name: 'did the feeding in <place>', kind: 'tend', head: 'do~past the|some|all|my? feeding', shape: 'object', care: 'feed', when: (p, _f, t) => follows(p, t, 'plant', 'place') || endsAt(p, t), phrasings: ['did the feeding in the greenhouse', 'did my feeding'] },
  { name: 'went round <place> with the watering can', kind: 'tend', head: 'go~past|whizzed|walked|been|ran|run|played .. with? the|a|my watering|hose|hosepipe|hosepipes can|over|round?', shape: 'object', care: 'water', when: (p, f, t) => among(p, f, t, 'plant', 'place') || (/^(?:over|round)$/.test(wordAt(p, t - 1)) && t < f + 5 && closeBehind(p, t, 'plant', 'place')), phrasings: ['ran the hose over the cold frame', 'went round the greenhouse with the watering can', 'went over the Salt Harrier with the hose'], mustNot: ['broke 3 Salt Harrier with the hose'] },
  { name: 'went over <plant> with the mister', kind: 'tend', head: 'go~past|whizzed|walked|been .. with the|a|my mister|sprayer|spray|atomiser|spritzer', shape: 'object', care: 'mist', when: (p, f, t) => among(p, f, t, 'plant', 'place'), phrasings: ['went over the Salt Harrier with the mister'] },
  { name: 'turned the mister on in <place>', kind: 'tend', head: 'turn~past|switch~past|put~|ran .. mister|misters|fogger|misting on?', shape: 'object', care: 'mist', when: (p, _f, t) => follows(p, t, 'plant', 'place'), unless: turnedOff, phrasings: ['turned the mister on in the propagator for ten minutes'], mustNot: ['turned the mister off in the propagator'] },
  { name: 'turned the sprinkler on in <place>', kind: 'tend', head: 'turn~past|switch~past|put~|ran .. sprinkler|sprinklers|irrigation|drippers on?', shape: 'object', care: 'water', when: (p, _f, t) => follows(p, t, 'plant', 'place'), unless: turnedOff, phrasings: ['turned the sprinklers on in the greenhouse'] },
  { name: 'blinds down in <place>', kind: 'tend', head: 'pull~past|drew|close~past|blinds|blind the? down|drawn|pulled|closed|blinds|blind', shape: 'object', care: 'shade', when: (p, f, t) => /^blinds?$/.test(wordAt(p, f)) !== /^blinds?$/.test(wordAt(p, t - 1)) && (follows(p, t, 'place') || precedes(p, f, 3, 'place')), phrasings: ['pulled the blinds in the greenhouse', 'blinds down in the greenhouse', 'greenhouse blinds drawn'] },
  { name: 'bagged up <plant>', kind: 'tend', head: 'bag~past up?', shape: 'object', care: 'cover', when: (p, _f, t) => follows(p, t, 'plant') && followsWord(p, t, /^(?:humid|humidity|moist|moisture|damp)$/), phrasings: ['bagged up the Salt Harrier to keep them humid'], mustNot: ['bagged up 6 Salt Harrier for a customer'] },
  { name: 'wet <plant> down', kind: 'tend', head: 'wet|wetted|damped|dampened|hosed .. down', shape: 'object', care: 'water', when: (p, f, t) => (among(p, f, t, 'plant', 'place') && p[f + 1]?.is !== 'break') || (t === f + 2 && precedes(p, f, 3, 'place')), unless: (p, f) => /^(?:was|were|is|are|too|very|so|got)$/.test(wordAt(p, f - 1)), phrasings: ['wet the Salt Harrier down', 'greenhouse damped down at lunch'], mustNot: ['too wet, the Salt Harrier went down with rot'] },
  { name: 'sat <plant> in a tray of water', kind: 'tend', head: 'sat|stood|stand~past .. in|into <pots>|sink|bath|basin|bucket of? <medium>|water', shape: 'object', care: 'water', when: (p, f, t) => isWatery(p, f, t) && among(p, f, t, 'plant') && !among(p, f, t, 'count', 'cutting'), unless: (p, f, t) => p.slice(f, t).some((piece) => piece.is === 'word' && /^(?:cuttings?|slips?|tips?|stems?)$/.test(piece.text)), phrasings: ['sat the Salt Harrier in a tray of water for an hour'], mustNot: ['stood the Salt Harrier cuttings in a jar of water'] },
  { name: 'topped <plant> up with water', kind: 'tend', head: 'top~past .. up with water|rainwater|<medium>', shape: 'object', care: 'water', when: isWatery, phrasings: ['topped the Salt Harrier up with water'], mustNot: ['topped the Salt Harrier pots up with compost'] },
  { name: 'seaweed for <plant>', kind: 'tend', head: 'seaweed|phostrogen|tomorite|fertiliser|fertilizer|comfrey|maxicrop|seasol|plantfood for|to|on|over', shape: 'object', care: 'feed', when: (p, _f, t) => follows(p, t, 'plant', 'place') || followsWord(p, t, ALL_OF_THEM), unless: (p, f, t) => followsWord(p, t, ON_PAPER) || followsWord(p, t, /^(?:is|was|are|arrived|came|needed|wanted|out)$/) || p.slice(0, f).some((piece) => piece.is === 'word' && (piece.verb !== undefined || WANTING.test(piece.text))), phrasings: ['seaweed for the Salt Harrier', 'weak tomorite to everything in the greenhouse'], mustNot: ['bought seaweed for the Salt Harrier', 'no seaweed for the Salt Harrier', 'seaweed on the list for the Salt Harrier'] },
  { name: 'irrigation run on <place>', kind: 'tend', head: 'irrigation|sprinkler|sprinklers|drippers run|ran|on|going on|in|at|over?', shape: 'object', care: 'water', when: (p, f, t) => closeBehind(p, t, 'place') || precedes(p, f, 3, 'place'), unless: (p, f, t) => !(f === 0 || p[f - 1]?.is === 'place') || followsWord(p, t, ON_PAPER) || followsWord(p, t, /^(?:broken|broke|burst|leaking|leaks|blocked|fixed|mended|repaired|needs|off)$/), phrasings: ['irrigation run on the greenhouse', 'greenhouse sprinklers on'], mustNot: ['irrigation in the greenhouse blocked', 'fixed the irrigation in the greenhouse', 'sprinkler on order for the greenhouse'] },
  { name: 'whitewash on <place>', kind: 'tend', head: 'whitewash|varishade|coolglass on|onto|applied|painted', shape: 'object', care: 'shade', when: (p, f, t) => closeBehind(p, t, 'place') || precedes(p, f, 3, 'place'), phrasings: ['whitewash on the greenhouse'], mustNot: ['whitewash on the list for the greenhouse', 'whitewash on the greenhouse coming off'], unless: (p, _f, t) => followsWord(p, t, ON_PAPER) || followsWord(p, t, /^(?:off|peeling|flaking|over)$/) },
  { name: '<plant> got water', kind: 'tend', head: 'get~past|have~past .. water|drink|soak|watering|<medium>', shape: 'subject', care: 'water', phrasings: ['the Salt Harrier got a dribble of water'], mustNot: ['the Salt Harrier got shoved into water', 'the Salt Harrier have had no water', 'the Salt Harrier had too much water'], unless: (p, f, t) => followsWord(p.slice(0, t), f, /^(?:no|too|not|any|without|never)$/), when: (p, f, t) => (p[t - 1]?.is === 'word' || (isWatery(p, t - 1, t) && !among(p, f, t, 'count') && /^(?:of|some|more)$/.test(wordAt(p, t - 2)))) && (precedes(p, f, 6, 'plant', 'place') || /^(?:they|they've|they'd)$/.test(wordAt(p, 0))) && p.slice(f, t).length < 6 },
  { name: '<plant> got a feed', kind: 'tend', head: 'get~past|have~past .. feed|food|seaweed|tomorite|comfrey', shape: 'subject', care: 'feed', when: (p, f) => precedes(p, f, 6, 'plant', 'place') },
  { name: '<place> got its shading', kind: 'tend', head: 'get~past|have~past .. shading|shadecloth', shape: 'subject', care: 'shade', when: (p, f) => precedes(p, f, 4, 'place') },
  { name: '<plant> got a mist', kind: 'tend', head: 'get~past|have~past .. mist|misting|spray|spritz', shape: 'subject', care: 'mist', when: (p, f) => precedes(p, f, 6, 'plant', 'place') },
  { name: 'put fleece over <place>', kind: 'tend', unless: (p, f, t) => followsWord(p, t, ON_PAPER) || wordAt(p, t - 1) === 'on' && among(p, f, t, 'pots') && among(p, f, t, 'plant'), mustNot: ['stuck 3 Salt Harrier softwood cuttings in a pot on the porch'], head: 'put~|throw~past|chuck~past|drape~past|lay~past|pop~past|sling~past|stick~past|pull~past|whack~past|bung~past|tuck~past|wrap~past .. fleece|cover|covers|bubblewrap|bag|bags|cloche|cloches|sheet|blanket|newspaper|<pots>|lid|lids|dome|domes|net|netting|plastic over|on|across|back|round|around', shape: 'object', care: 'cover' },
  { name: 'put the shading up', kind: 'tend', phrasings: ['put the shade cloth up over the greenhouse'], unless: (p, _f, t) => followsWord(p, t, /^(?:list|order)$/), mustNot: ['put shade cloth on the shopping list'], head: 'put~|throw~past|chuck~past|sling~past|drape~past|stick~past|hang~past|pull~past|rig~past .. shading|shade|shadecloth|blinds cloth|netting|net? up|over|on|down|across', shape: 'object', care: 'shade' },
  { name: 'hung up the shading', kind: 'tend', phrasings: ['hung up the shade cloth', 'put up the shade netting in the greenhouse', 'hanged up the shadow cloth'], mustNot: ['hung up the shade catalogue', 'hung up my coat', 'put up a shade cloth display at the show'], head: 'put~|hang~past|rig~past|pull~past|get~past|drape~past|strung|drew|fixed up|over|across|down the|my|our|some|a|its? shading|shade|shadow|shadecloth|blinds|blind cloth|netting|net|sail?', shape: 'object', care: 'shade', unless: (p, _f, t) => (/^(?:shade|shadow)$/.test(wordAt(p, t - 1)) && /^\w/.test(wordAt(p, t)) && !/^(?:in|over|on|for|at|and|today|again|because|as|so|this)$/.test(wordAt(p, t))) || /^(?:display|order|list|catalogue|sample)$/.test(wordAt(p, t)) },
  { name: 'lid back on', kind: 'tend', head: 'lid|lids back? on', shape: 'object', care: 'cover' },
  { name: 'topped up the water', kind: 'tend', head: 'top~past up', shape: 'object', care: 'water', when: (p, f, t) => (followsWord(p, t, /^(?:water|jars|jar|glass|saucers|tray|reservoir)$/) || p.slice(f).some(({ is }) => is === 'medium')) && !p.slice(f).some((piece) => piece.is === 'medium' && /compost|grit|bark|soil|loam|mix|perlite|vermiculite|mulch/.test(piece.medium)), mustNot: ['topped up the Salt Harrier pots with compost'] },
  bare('mist', 'mist'), bare('water', 'water'), bare('vent', 'vent'), bare('feed', 'feed'), bare('shade', 'shade'), bare('spray', 'mist'), bare('cover', 'cover'), bare('uncover', 'uncover'),
]; // prettier-ignore
