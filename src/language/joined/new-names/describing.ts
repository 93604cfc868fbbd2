/** Words that only describe a plant: a run of nothing else is no name. */
import { placeNouns } from '../../row/lexicon.js';
import { whole, wordsOf } from '../../phrases.js';

export const COLOURS: ReadonlySet<string> = new Set(wordsOf`
  white red blue yellow purple orange pink green black brown grey gray cream golden gold silver bronze mauve lilac
  violet magenta crimson scarlet burgundy maroon apricot peach salmon coral lavender cerise turquoise
  bicolour bicoloured bicolor coloured colored colour colours multicoloured two-tone striped spotted splashed veined
`);

/** What stands before a colour to say which. */
const SHADE = whole`
  hot|cherry|dusky|sky|navy|royal|wine|ruby|blood|brick|lime|lemon|butter|shell|baby|rose|deep|dark|pale|light|bright|soft
  raspberry|strawberry|tomato|beetroot|rust|claret|port|emerald|sapphire|amber|honey|tangerine|primrose|canary|mint|olive|leaf|apple|bottle|ice
  pillar|post|box|milky|creamy|pure|snow|jet|off|candy|sugar|salmon|coral|fire|dusty|vivid|electric|powder|shocking|neon|burnt
  acid|mustard|plum|coffee|chocolate|rich|strong|pastel
`;

const HABIT = wordsOf`
  scented variegated trailing upright double single semi hardy tender dwarf giant climbing rambling bush bushy tree standard compact
  zonal regal angel ivy-leaved leaved leafed leaf flowered flowering bloomed decorative cactus pompon pompom ball collerette
  anemone spray early late winter summer spring autumn evergreen deciduous perennial annual patio bedding hanging wild common ordinary plain
  woody herbaceous prostrate creeping spreading french english cape
`;

const HEALTH = wordsOf`
  dead rotten alive dry fresh young old older oldest new newer newest healthy healthier strong stronger strongest sturdy sturdier stocky weak weaker weakest
  spindly straggly straggling straggler leggy lanky gangly drawn stretched etiolated sprawling scraggy scruffy scrappy tatty ratty manky mangy ropy
  sick sickly poorly ailing dying struggling sulking sulky tired limp floppy droopy drooping wilted wilting wilty flagging yellowing shrivelled mouldy rotted rotting
  overgrown pot-bound potbound rootbound overwintered dormant established mature immature unrooted rooted callused calloused sprouting shooting budding
  ripe unripe soft hard firm tight plump vigorous bonny lush green tall short thin thick fat skinny slim long lean chunky heavy light
  bright dark pale deep cheerful cheery
  surviving remaining leftover left-over spare extra leading main
  mushy squishy slimy soggy crispy crisp furry fuzzy frazzled blackened browned browning bruised scorched soaked soaking unflowered ropey non
  blowsy mildewed growth whippy wispy bendy weedy
  snapped broken bent crushed damaged frosted frozen nibbled eaten chewed infested stunted blind
`;

const PRAISE = wordsOf`
  good bad nice nicer nicest fine finer finest best better worst worse decent proper lovely gorgeous beautiful pretty smart handsome splendid
  sad poor sorry cute grand stonking cracking super perfect amazing fab fabulous brilliant special favourite favorite precious prize prized posh cheap cheapo
  dodgy iffy rubbish useless scabby ugly dull boring funny weird odd strange great grand whacking wee mini big bigger biggest large larger largest small smaller
  smallest little tiny titchy weeny huge massive enormous whopping medium size sized average looking
  really very quite rather pretty fairly extremely super dead half fully nearly nicely badly well newly freshly self
`;

const WHENCE = wordsOf`
  garden centre center allotment supermarket market shop bought store stall nursery bargain reduced price priced sale pound second hand rescue rescued charity donated
  homegrown home grown raised sown taken struck saved potted unpotted planted sold given gifted swapped inherited free mail online collected
  shared boxed bagged
  unnamed unknown nameless mystery unlabelled unlabeled unidentified noid named mixed assorted various random sundry different other same usual
  last first second third next final batch lot year years month week day season old new year's seedling seedlings stock mother parent
  pot potted bare root rooted plug liner side shoot shoots tip top basal heel nodal softwood hardwood semi-ripe semiripe cutting
  basket baskets tub tubs planter planters trough troughs container container-grown
  surplus unwanted unsold excess duplicate
  dozen more another further couple few pair
`;

const TIMES = wordsOf`
  monday tuesday wednesday thursday friday saturday sunday mon tue tues wed thu thur thurs fri sat sun
  january february march april may june july august september october november december
  morning afternoon evening night
`;

/** Whose. */
const PEOPLE = wordsOf`
  friend friends mate neighbour neighbours neighbor customer next door doors neighbors
`;

const NAMED_PLACES = wordsOf`front back kitchen bathroom spare school church village work office outdoor indoor upstairs downstairs`;

const DESCRIBING: ReadonlySet<string> = new Set([
  ...COLOURS,
  ...HABIT,
  ...HEALTH,
  ...PRAISE,
  ...WHENCE,
  ...TIMES,
  ...PEOPLE,
  ...NAMED_PLACES,
]);

/** "Slug eaten", "lime leaved", "shop bought": whatever stands before, such a word describes. */
const MAKES_DESCRIPTION = whole`
  eaten|bitten|ridden|damaged|infested|bought|grown|raised|rooted|struck|sown|reared|leaved|leafed|flowered|coloured|colored|scented
  ripened|ripe|thick|long|tall|wide|deep|old|inch|looking|sized|size|bound|shaped|centred|type|style|wintered
`;

/** "Aphid covered", "long stemmed"; no "seed", "head" or "hundred". */
const PARTICIPLE = /^(?!(?:hundred|kindred|sacred|naked|wicked|crooked|hatred)$)[a-z]{2,}[^aeiou]ed$/;

/** Whether the words are a description and no name: "leggy old", "slug eaten", "next door's", "hot pink". */
export function onlyDescribes(words: readonly string[]): boolean {
  const last = words.at(-1) ?? '';
  if (/^end of (?:line|range|season)$/.test(words.join(' '))) return true;
  if (MAKES_DESCRIPTION.test(last) || PARTICIPLE.test(last)) return true;
  // "Dull Monday": no description, and no day.
  const [first = '', , more] = words;
  if (more === undefined && /[a-z]day$/.test(last) && (PRAISE.includes(first) || HEALTH.includes(first)))
    return false;
  return words.every(
    (word, at) =>
      DESCRIBING.has(word) ||
      placeNouns.has(word) ||
      // "Doreen's old", "the neighbour's"; no "thursday's child".
      /s?'s?$/.test(word) ||
      (SHADE.test(word) && isColour(words[at + 1] ?? '')),
  );
}

const isColour = (word: string): boolean => COLOURS.has(word) || /ish$/.test(word);

/** How a plant fares or grows, before a name in small letters: "six leggy static gran salvia"; no part of the name. */
export const LED_BY = whole`
  rooted|unrooted|leggy|lanky|straggly|healthy|strong|sturdy|stocky|nice|good|lovely|decent|small|large|big|tiny|extra|spare|more|another|further
  established|mature|overwintered|potted|bare|basal|tip|heel|nodal|softwood|hardwood|semi-ripe|leaf
`;
