/** Talk around a note that tells nothing of plants: "rain stopped at last so …", "hands filthy but …", "…, my knees are killing me". */
import { anyOf, whole } from '../phrases.js';

/*
 * Frost, heat, cold and gales are left alone here: they say what plants died of. So is whatever may be said of plants as
 * well as of the grower ("happy", "soaked", "late").
 */
const NOW = `(?: ${anyOf`
  (now|again|today|tonight|already|too|though|first|for now|at last|finally|this (morning|afternoon|evening)|so far)
`})?`;

const TEA = anyOf`tea|coffee|cuppa|brew|dinner|lunch|breakfast|supper|elevenses|tiffin|bath|shower|nap|bite to eat|bite|sit down|sleep|pint`;

const WEATHER = anyOf`
  (what |such )?(a |an )?(really |very |pretty |bit of a )?(${anyOf`
    lovely|nice|beautiful|glorious|gorgeous|grand|fine|bright|sunny|perfect|cracking|smashing|dull|grey|gray|miserable|dreary
    drizzly|rainy|wet|damp|manky|soft|dreich|soggy|busy|long|quiet|lazy|slow|hectic|mad|good|great|productive|old|drying
  `} )+${anyOf`day|morning|afternoon|evening|weekend|week|hour|session|start|light|weather`}( ${anyOf`
    here|there|out there|outside|all round|of it|for it|in the (potting )?shed|in the garden
  `})?${NOW}
  (lovely|nice|grand|all|so|very|peaceful)( and| very)? (quiet|peaceful|calm|mild) (here|out|out here|outside)${NOW}
  (what|phew what|oh what) a (day|morning|week|evening|carry on)
  (the |that )?(rain|drizzle|shower|showers|snow|downpour|mizzle)('s| is| has|s)? (at last |finally )?${anyOf`
    (stopped|stops|off|gone|over|easing|eased off|easing off|cleared|passed|held off|let up|back|on)
  `}${NOW}
  (the )?sun('s| is| has)? (at last |finally )?(out|shining|back|come out|came out|showing)${NOW}
  (the )?weather('s| is| has)? (turned|picked up|lovely|grand|better|foul|filthy)${NOW}
  (at last |finally )?(some|a bit of|a drop of|bit of|drop of|fine drop of|spot of) (sun|sunshine|rain)( overnight)?${NOW}
  (it's |it is |its )?(started )?(raining|pouring|drizzling|pelting down|lashing|lashing down|bucketing down|tipping down|tipping it down|chucking it down)( outside| here)?${NOW}
  (it's |it is |its )?too wet (to|for) (mow|dig|work|go out|mowing|digging|anything else)
  (i )?(hope|hoping|let's hope|lets hope) (the rain|it) (holds off|stays (dry|fine)|stops)${NOW}
`;

const BODY = anyOf`
  (my |me |the |our )?(hands|fingers|nails|boots|knees|jeans|wellies|gloves) (are |is |all |still )*${anyOf`
    filthy|muddy|mucky|dirty|numb|black|sticky|soggy|covered|caked|a mess|in a state|off|on
  `}( (in|with) (mud|compost|muck|soil))?${NOW}
  (soggy|wet|muddy|filthy|cold|freezing|sore) (hands|fingers|boots|knees|feet|wellies)${NOW}
  (my |me |oh my )poor (old )?(back|knees|hands|feet|shoulders|arms|bones)${NOW}
  (my |me |the )?(back|knees|hands|feet|shoulders|arms|hip|hips|knee|head|legs)('s|s| is| are)? (aches?|hurts?|sore|in bits|creaking|aching|(killing|giving) me( gyp)?)${NOW}
  (i'm |im |i am |we're |am |bit |a bit |so |dead |quite |rather |absolutely |feeling )*(tired|knackered|shattered|jiggered|exhausted|zonked|worn out|half asleep|starving|parched|productive|my age)${NOW}
`;

const ABOUT = anyOf`
  (i'm |i was |we were )?(up|home|back) (and about |nice and |bright and )?(early|late)${NOW}
  (i'm |i was )?(just|not long|only just) (got )?(in|home|back|up)${NOW}
  up with the lark|late one tonight
  (i'm |we're |am )?(just |only )?(back|home|in) from (the |my |a |our )?${anyOf`
    shops?|shopping|work|school run|school|town|church|chapel|mass|doctor's|doctors|dentist|dentist's|hospital|holiday|holidays
    walk|dog walk|run|gym|pub|match|swim|beach|bingo|library|bank|post office|vet|vet's|vets
  `}${NOW}
  (i've |we've |i |we )?(just )?(had|having|done with|sat down (with|to)) (just )?(my |our |me |a |the |some |a quick |a nice )?(cup of |mug of |spot of |bit of )?${TEA}${NOW}
  (i've |we've |i )?(got |had |have )(just )?(a )?(spare |quick |free |few )?(minutes?|moment|hour|half hour|sec|second)( to myself| to spare| spare)?${NOW}
  (the )?kettle('s| is)? (on|boiling|boiled)${NOW}
  (cuppa|brew|tea|coffee|cup of tea|mug of tea|glass of wine) (in hand|on the go|made|beside me|poured)${NOW}
  (while|whilst) (the |my )?(kettle boils|tea brews|kettle's on|tea's brewing|dinner cooks|bath runs)
  (on |in )(my |the )?(tea|coffee|lunch|dinner)( |-)?(break|hour)|on my (lunch|break)
  (just )?before (bed|tea|dinner|lunch|supper|work|i turn in|i go (to bed|up|in|out))
  (more |need more |time for |ready for |off for |gasping for |now for )(a |my |me |some )?(cup of |mug of )?(${TEA}|bed|bath|work)( needed| required| please| next)?${NOW}
  (right |now )?(off|away) (to|for) (my |a |the )?(bed|bath|${TEA}|work|church|town|shops)${NOW}|back to (the )?(telly|work|bed|it)
  (off |away |time |ready )*(to |for )?(my |a )?(bed|bath) (now|time|next|calls)
  (the )?(dinner|tea|toast)('s| is) (burning|ready|on the table|on)
  (the )?(radio|telly|music|match)('s| is)? on
  (the )?(cat|dog)('s| is)? (been )?(fast )?(asleep|snoring|sleeping|walked|fed)( on my (lap|knee|feet))?
  (the )?(dog|dogs) (wants|want|needs|need) (his|her|its|their|a) (walk|dinner|tea)
  (in|back) from the garden${NOW}
  (the |my )?(kids|children|grandkids|wife|husband|missus|hubby)('s| is| are)? (at (school|work|football)|away|out|asleep|in bed|off)( ${anyOf`for the (day|week|weekend)`})?${NOW}
  (my )?(phone|battery|phone battery)('s| is)? (nearly |almost |about )?(dead|flat|dying|low|going)
  still in my (dressing gown|pyjamas|slippers)|in my (dressing gown|pyjamas|slippers)( still)?
`;

const OF_THE_NOTE = anyOf`
  before i forget( again| it| this)?|(i )?(nearly|almost|clean) forgot( to say| to tell you)?
  (while|whilst) i (remember|think of it|have a (minute|moment|sec|second)|'m at it)
  (in case|lest|so|so that) i (don't |dont )?forget
  (just )?a (quick |short |wee )?(note|line|word)
  (just )?(a )?quick (one|note|word|line|update) before (bed|tea|dinner|lunch|supper|work|i go)
  (just )?for (the record|what it's worth)
  (sorry )?(it's |its |i'm |im |this is |this one's )?(a bit|bit|a little|a tad|rather|so)? ?late( (with|in|writing|posting|logging|noting)( (this|it|up|the day))*)?( again| i know)?
  sorry (for|about) the (delay|wait|silence|radio silence|long silence|late note)
  (i've )?been meaning to (tell you|say|write|log this|note this|mention it)
  (sorry )?(typing|texting|writing) (this )?(with|one) (one hand|handed|gloves on|in gloves|(muddy|mucky|filthy|cold) (thumbs|hands|fingers))
  (it's )?(only )?me( again)?|can't stop|cant stop|guess what|here (we|i) go|long time no (see|speak)|you'll never guess
  (a )?(small|little|tiny) (victory|win|triumph)|(a )?(progress )?report|hope (you're|you are|youre|all's|all is) (keeping )?well
`;

const PLEASED = anyOf`
  (i'm |im |am |really |very |so |quite |rather |pretty |dead |well )*(pleased|chuffed|proud|delighted|thrilled|made up)( (with|of|about) (that|this|those|these|them|it|myself|meself|the lot|how it went)| to bits)?${NOW}
  (i'm |im |am |really |very |so |quite |pretty |dead )*happy (with|about) (that|this|those|these|them|it|myself|the lot)${NOW}
  (i'm )?over the moon|happy days|smashing|bliss|lovely stuff|lovely jubbly|hip hip hooray|hooray|hurrah|champion
  not (too |so |half )?(bad|shabby)( (going|eh|at all|for (me|a beginner|a first (go|try)|my age|an old (un|one|hand|girl|boy))))
  not (too |so |half )shabby
  (not )?(a )?(good|bad|decent|fair) (day's|days|morning's|mornings|afternoon's|evening's) work${NOW}
  (keeping my |keep your |all )?fingers crossed( for (it|them|those|these|that|me))?${NOW}
  (wish (me|us|them) luck|touch wood|knock on wood)( (with|for) (it|them|those|these|that))?
  here's hoping|heres hoping|roll on (spring|summer|the weekend|easter|bedtime)|about time( too)?|job done|job's a good un|jobs a good un
`;

const FAREWELL = anyOf`
  (night|nighty) night|good night|goodnight|sleep well|more (later|tomorrow|soon)|(speak|talk|see you|write) (soon|later|tomorrow)
  bye|bye for now|bye now|ttfn|toodle pip|cheerio|end of (message|note|report)|(lots of |much )?love( from me)?
  (thanks|thank you|ta) (love|pet|duck|mate|kindly|muchly|again|as always)|much obliged|bless you
  all good here|hope (you're|you are|youre|all's|all is) (keeping )?well|hope that's clear|hope that makes sense
`;

/** What opens a note before a mark, "so", "but", "and" or "then". */
const OPENS = whole`
  ${WEATHER}
  ${BODY}
  ${ABOUT}
  ${OF_THE_NOTE}
`;

/** What closes one behind a mark. */
const CLOSES = whole`
  ${WEATHER}
  ${BODY}
  ${ABOUT}
  ${PLEASED}
  ${FAREWELL}
`;

/** No talk is longer. */
export const LONGEST_TALK = 10;

/** Whether these words, in small letters, are talk that a note opens with. */
export const opensWithTalk = (words: string): boolean => OPENS.test(words);

/** Whether they are talk that a note closes with. */
export const closesWithTalk = (words: string): boolean => CLOSES.test(words);
