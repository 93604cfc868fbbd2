/** Observations about plants that are no act: how they look, what has come, what sits on them. */
import { anyOf, whole, within } from '../phrases.js';

/** How leaves and stems are coloured and marked. */
const COLOURED = anyOf`
  yellow(s|ing|ed)?|chlorotic|chlorosis|brown(ing|ed)?|black|red|reddening|bronzing|purple|purpling|colouring
  pale|paler|bleached|variegated|variegation|glossy|hairy|furry
  spots?|spotted|spotty|blotchy|blotches|mottled|edges|veins?
`;

/** How they grow and how big they are. */
const SHAPED = anyOf`
  leggy|stretched|stretching|spindly|etiolated|drawn|lanky|straggly|thin|weak|slow|stunted
  compact|bushy|bushing|sturdy|strong|vigorous|lush|lopsided|leaning|toppling
  tall|taller|short|big|bigger|huge|massive|tiny|small|size|inch(es)?|cm
  curl(s|ing|ed)?|crinkled|crinkly|cupped
  outgrowing|overgrown|rootbound|pot ?bound|crowded
`;

/** How they fare, for good or ill. */
const FARING = anyOf`
  wilt(ing|ed|y)?|droop(ing|y|ed)?|flop(py|ping|ped)?|dying|limp|sad|sorry|poorly|sick|sickly|unhappy
  sulking|sulky|miserable|struggling|stressed|bad|worse|rubbish|terrible|awful
  healthy|happy|happier|perky|perked|perking|thriving|romping|racing|recover(ed|ing)|reviv(ing|ed)
  gorgeous|beautiful|lovely|fine|great|well|good|better|amazing|brilliant
  settl(ed|ing)|establish(ing|ed)|taking off|moving|early|late
`;

/** Parts of a plant, and what comes on it. */
const GROWN = anyOf`
  bud(s|ding|ded)?|flower(s|ing|ed)?|bloom(s|ing)?|blossom|petals?|seed ?heads?|pods?|open(ed|ing)?|out
  colour|color|scent|perfume|smells?
  shoots?|shooting|sideshoots?|growth|grow|growing|grown|new|sprout(ing|ed)?|suckers?|runners?|pups?
  leaf|leaves|stems?|tips?|tops|foliage|nodes?|callus(ed|ing)?|calloused
  sport|reverted|reverting
`;

/** What eats them, and what it leaves. */
const EATEN = anyOf`
  greenfly|whitefly|blackfly|aphids?|thrips?|mites?|mealybugs?|mealy|scale|gnats?|sciarid|grubs?
  slugs?|snails?|caterpillars?|weevils?|leafminer
  holes?|nibbled|chewed|munched|eaten|webbing|webs?|sticky|honeydew
`;

/** What rots, dries or burns them. */
const AILING = anyOf`
  fungus|mildew|mould|mouldy|mold|rust|botrytis|blackleg|virus|algae|moss|liverwort
  rot|rotting|rotted|rotten|mush|mushy|soft|soggy|wet
  dry|crisp|crispy|crisping|scorch(ed|ing)?|sunburn|sunburnt|burnt|frosted
  shrivelling|shrivelled|dropping|dropped|shedding|defoliated
`;

/** Words of what growers see; one of them makes a sentence about a plant a remark even without a verb. */
export const OBSERVED = within`
  ${COLOURED}
  ${SHAPED}
  ${FARING}
  ${GROWN}
  ${EATEN}
  ${AILING}
`;

/** What besets plants, or comes on them, pot by pot. */
export const BESET = within`
  ${EATEN}
  ${AILING}
  first|buds|flowers|blooms
`;

/** Strong enough to stand without any plant named. */
export const OBSERVED_ALONE = within`
  leggy|etiolated|spindly|yellowing|chlorotic|wilting|drooping|pot ?bound|rootbound|callus(ed|ing)?
  greenfly|whitefly|blackfly|aphids?|thrips|mealybugs?|spider mites?|sciarid|fungus gnats?|vine weevils?
  mildew|botrytis|algae
  first (buds?|flowers?|blooms?|shoots?|leaves)
  (buds?|flowers?|blooms|shoots) (showing|opening|coming|forming|appearing)
  new (growth|shoots?|leaves)
  leaves (curling|dropping|yellowing|browning)|leaves (are|have|all|going|gone|turning|look|looking)(?= \w)
  gone (a bit |rather |very |quite |all |really )?(drawn|pale|yellow|floppy|limp|soft|straggly|purple|brown)
`;

/** Verbs that tell how a plant is. */
export const STATIVE = whole`
  be|look|seem|become|get|go|turn|come|stay|keep|stand|hold|do|have|show|need|want|like|love|hate|smell
  grow|start|set|put|make|take|open|flower|bloom|bud
  droop|flop|yellow|wilt|sulk|struggle|drop|lose|recover
`;

/** "Itching to pot them", "wondering if they'll take". */
const ONLY_IN_MIND = anyOf`
  (itching|dying|longing|desperate|raring) to|fancy (having|a go|trying|doing|taking)|can't wait|excited|love (the|my|that|this)
  wish|hope|hoping|thinking|thought|dream|wonder|wondering|remember|forgot|forgotten
  if|would|could|might|maybe|not sure|no idea
`;

/** "Postponed", "never got round to it", "no time to". */
const NOT_DONE = anyOf`
  didn't|did not|haven't|have not|never|no (time|chance) (to|for)|not the time|before (i|we|you)
  postponed|cancelled|called off|shelved|put (off|back (a|an|till|until|to|by|for))
  (half way|halfway) (out|through|down|to)|(ran|run|running) out of
  best (left|taken|kept|potted|planted|done|struck|moved|watered|pinched)
`;

/** "They should be ready by Easter", "for the next batch", "that jar is for the Salt Harrier". */
const TO_COME = anyOf`
  (should|will|ought to) (soon |all |both )?be
  for the next (round|batch|lot|go|time)|(every|full|the best|good) intentions?
  nobody (move|touch|water|knock)|(is|are) for (the |my )?plantname
`;

/** "Doreen says", "jealous of the ones at the show", "saw a video". */
const TALK = anyOf`
  asked|told|says|said|reckons?|thinks|funny|joke|jealous|envy|envious|admire[ds]|compliments?|show off|favou?rite
  photo|picture|painting|book|video|articles|article (about|on|in)|(an|the|that|this|your) article
  visit|visited|at the show|garden centre|sold out|bought the|for (tea|dinner|lunch|breakfast|supper|pudding)
  name|named|called|labels?
`;

/** Talk about a plant that observes nothing. */
export const IDLE = within`
  ${ONLY_IN_MIND}
  ${NOT_DONE}
  ${TO_COME}
  ${TALK}
`;

/** "Everything", "all of them under the bench". */
const ALL = anyOf`
  everything('s| is| was)?|everythings|it all|it's all|they all|all of them|all|the whole lot|the lot
`;

/** "A bit", "pretty", "a little really". */
const RATHER = anyOf`
  a bit|a little|a wee bit|pretty|very|rather|really|quite|so|proper|fierce|awful|right|kind of|sort of
`;

/** "Everything's looking pretty sorry for itself": of all plants, by what only plants or their keeper's eye would tell. */
export const ALL_LOOK = whole`
  (oh |well |god |ah )?${ALL}( (in|on|under) (the |my )?\w+( \w+)?)?( all| is| are)? ${anyOf`
    looks?|looked|looking
  `} (${RATHER} ){0,2}${anyOf`
    sorry for (itself|themselves|themself)
    sad|limp|floppy|droopy|wilted|parched|thirsty|stressed|miserable
    yellow|pale|peaky|frazzled|scorched|battered|windblown|bedraggled
    healthy|lush|perky
  `}( (after|since|today|this|tonight|now|again|out there)\b.*)?
`;
