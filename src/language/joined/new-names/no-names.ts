/** Words that no new name in small letters begins, holds or ends with. */
import { whole, wordsOf } from '../../phrases.js';

/** Words that join others. */
const JOINING = wordsOf`
  i we he she they it you me us them her my our your his its their own mine yours ours theirs hers
  the a an this that these those and or but then than so if as because while yes no not
  of to in into on onto from ex with without for at by under over off out up down back about around through during
  till until after before since per apiece near beside behind beneath above below against along amongst opposite
  who what which when where why how let's lets that's thats it's what's whatever they're
  they've i'd i've i'm we'd we've we're he's she's he'd she'd they'd there's who's wrong let alone
`;

/** Forms of the verbs that a telling is made of. */
const VERBS = wordsOf`
  is are was were be been being am has have had do did does can could
  going goes gone went come came get gets getting got look looks looking seem seems make wait punt
  call calls called serve serves
  sorry please thanks cheers oops according written
`;

/** How many, and how often. */
const NUMBERS = wordsOf`
  x one ones nine further dozen pair pairs all some any each every both few more most other another rest else extra spare
  nothing nowt doing everything everyone total lots lot loads heap bit bits piece pieces
  only just also too very really quite still yet again already always never here there now
  individually separately singly together properly
`;

/** What is taken, potted and counted. */
const PLANTS = wordsOf`
  cutting cuttings slip slips plant plants plug plugs liner liners seedling seedlings tuber tubers crown crowns stool stools
  division divisions corm corms rhizome rhizomes offset offsets
  batch batches dud duds weakling weaklings straggler stragglers growth sorts kinds types varieties
  root roots rooted leaf leaves bud buds tip tips tops heads ends stem stems shoot shoots starts node nodes points
  side sides top bottom end edge way left right
  pot pots tray trays bench label labels box bag bags
`;

/** What stands about a garden or goes on plants. */
const GARDEN = wordsOf`
  house home garden moss water sand perlite compost hormone powder gel seaweed tomato tomorite comfrey
  plastic fleece bubblewrap cloche shade sun newspaper cardboard air blow breeze min max minimum maximum
  mower lawnmower strimmer spade barrow wheelbarrow cloth hessian burlap tarp tarpaulin mesh netting polythene clingfilm cling towel towels duvet
  twine stakes canes trowel dibber secateurs scissors gloves wellies sprayer hose mulch pellets nematodes bike telly sofa caravan trampoline piano socks
  session sessions blitz marathon roundup tally
  slug slugs snail snails greenfly whitefly blackfly aphid aphids caterpillar caterpillars weevil weevils gnats mites
  delivery parcel order photo photos picture chance rip pinch strength
`;

/** How a plant looks. */
const LOOKS = wordsOf`
  scented variegated trailing upright double single hardy tender dwarf giant striped bicolour colour colours
  white red blue yellow purple orange dark pale bright
  dead rotten lost alive dry wet bare fresh young old new healthy strong sturdy stocky weak spindly straggly
  good bad nice fine fast firm tight sad poor lovely gorgeous beautiful bonny cute grand
  big large small little tiny titchy weeny wee mini chunky fat skinny huge massive enormous whopping
`;

const TIMES = wordsOf`
  today yesterday tomorrow morning afternoon evening night day days week weekend month year time times next
`;

const PEOPLE = wordsOf`
  friend friends people customer lady man woman mate guy guys bloke blokes chap fella lad lass mum dad nan gran
  somebody nobody person persons
`;

export const NEVER: ReadonlySet<string> = new Set([
  ...JOINING,
  ...VERBS,
  ...NUMBERS,
  ...PLANTS,
  ...GARDEN,
  ...LOOKS,
  ...TIMES,
  ...PEOPLE,
]);

const WISH = whole`
  (happy|merry) (birthday|christmas|xmas|easter|anniversary|new year|gardening|days)( .*)?
  (many thanks|thanks|thank you|bless|well done|love from)( .*)?
  good (luck|news|morning|afternoon|evening|night|day|job|stuff)( .*)?
`;

/** "Happy Birthday", "Many Thanks", however they are written; no "Merry Widow". */
export const isWish = (words: readonly string[]): boolean => WISH.test(words.join(' '));

/** What sounds like an adverb and is none: "wobbly nan". */
const LIKE_ADVERBS = whole`
  wobbly|woolly|wooly|silly|jolly|jelly|belly|smelly|chilly|hilly|frilly|bubbly|crinkly|wriggly|prickly|tiddly|cuddly|ghostly|curly|lonely
  molly|polly|sally|nelly|billy|willy|milly|dolly|tilly|lily|bully|trolley|wily|surly|pearly|gnarly|knobbly|squiggly|giggly|grizzly
`;

/** "Really", "mostly", "rooting": no word of a name in small letters. */
export const isAdverbOrDoing = (word: string): boolean =>
  /(?:ing|ly)$/.test(word) && !LIKE_ADVERBS.test(word);
