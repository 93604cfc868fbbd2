/** Words that tell a number to be a temperature, and whose: measured here, or told of somewhere else. */
import { anyOf, opening, whole, within } from '../phrases.js';
import { leading } from './runs.js';

/** A bare number is a temperature. */
export const STRONG_CUE = within`
  temp|temps|temperature|thermometer|degrees|min|max|minimum|maximum|low|high|overnight|last night
  down to|up to|(got|rose|climbed|crept|went) to (?=\d)|(got|gets|get|rose|went|going|climbed|crept) (above|below|past|over|under)
  hit|touched|dropped|dipped|fell|peaked|steady|holding|hovering|clocked
  reads?|reading|showing|shows|says|at(?! (last|least|first|home|all)\b)|it('s| is| was) (already |still |only |nearly )?\w+ (in|on|under)
`;

/** Set, wanted or foretold, and so not read off anything: "forecast says minus 2", "turned the mat to 20". */
export const NOT_MEASURED = within`
  (change|put|move|make|lower|raise) … (warning|alarm|alert|limit|threshold)|(warning|alarm|alert)s? (at|to|for|below|under)
  set|turn|turned|cranked|thermostat|oven|bake|gas|until|when it|if
  wants?|need|should|could|would|aim|aiming|prefers?|likes|like it|ideal|recommended|supposed
  plantname (like|want|enjoy|love)
  will|going to|tomorrow|tonight|expecting|expected|predicting|forecasts?|forecasting
  on the way to
  says it'll|says to|they say|people say|(they're|they are) giving|giving (it|us|minus)
`;

/** "Edna says her greenhouse was 31", "Salt Harrier roots best at 20", "22 degrees for the Salt Harrier". */
export const SAYS_OF_OTHERS = within`
  (says|said|reckons|told) … (her|his|their|hers|theirs)
  degrees (c |f )?for (the )?plantname
  plantname (\w+ )?${anyOf`
    roots?|grows?|strikes?|does|do|thrives?|survives?|germinates?|keeps?
  `} (\w+ )?(at|above|below|over|under|down to)(?= )
`;

/** "It was 38 in there", "hit 41 inside": how warm it was where something was just done. */
export const WARM_IN_THERE = opening`
  ((as|because|since|when|and|but) )?(it|it's|it was|it'd been|was|hit|reached|must have been)( ${anyOf`
    hit|reached|touched|touching|got to|up to|over|still|nearly|already|down to|only|about|all
  `})? \w+( \w+)? (in there|inside|in it)
`;

const SHEET = anyOf`(sheet|note|card|page)s?`;

/** Who tells how warm it should be. */
const ADVISER = anyOf`
  packet|label|tag|leaflet|books?|guide|manual|magazine|article|catalogue|catalog|brochure|website|internet|video
  advice|supplier|nursery|breeder|spec|specification|datasheet|factsheet
  (data|spec|specification|growing|culture|cultural|info|information|fact|advice|instruction|care) ${SHEET}
  (supplier's|suppliers|nursery's|breeder's) ${SHEET}
`;

/** "Supplier's sheet quotes 20 to 22 degrees", "14 days to root at 22": how warm it should be. */
export const ADVISED = within`
  ${ADVISER} ${anyOf`
    quotes?|states?|gives?|claims?|lists?|says|said|reads|recommends?|suggests?|reckons|specifies|wants|asks for
  `}
  (data|spec|growing|culture|fact|care) (sheet|card)
  (days|weeks) to root|to root (well |best )?(at|above|in)
  (for|optimum|ideal|best) (for )?(rooting|striking|germination)
`;

/** What may stand between a place and how warm it is: "propagator sitting at a toasty …". */
export const BETWEEN = whole`
  a|the|this|at|in|on|to|up|down|back|inside|about|around|already|again|now|just|am|pm|is|was|are|were
  min|max|minimum|maximum|temp|temperature|thermometer|sensor|probe|reads|reading|read|showing|shows
  sitting|sits|sat|holding|held|stayed|stays|stood|kept|hovered|hovering|hung|steady|crept|crawled|climbed|rose|shot|soared|peaked|dropped|fell
  balmy|toasty|warm|cosy|lovely|sweltering|cool|chilly|perishing|mere
`;

/** "Nearly 35", "up to 24", "between 18 and 21": of a number that warms a place. */
export const ABOUT = within`
  ${anyOf`
    (just |well )?over|(just )?under|nearly|almost|up to|between|getting on for|at least
  `} ([1-4]?\d|ten|twelve|fifteen|eighteen|twenty|thirty|forty)
  [1-4]\d (plus|odd)
`;

const SOME_DEGREES = String.raw`(?:minus )?[a-z\d.-]+(?: (?:one|two|three|four|five|six|seven|eight|nine|odd))?`;
const LEADS = leading`it|it's|its|was|is|been|as|because|since|with|and|cos|that's|must (be|have been)|about|around`;

const RISEN = anyOf`
  already|pushing|nearly|almost|touching|nudging|topping|hitting|over|up to|down to
  close to|getting on for|just over|well over
`;
const ABOUT_SO_MUCH = anyOf`about|around|at|over|up to|down to|nearly`;
const BY_THEN = anyOf`already|even (then|at \S+)|by (then|\S+|\S+ o'clock|half \S+)`;

/** "Gave them a drink, already 30 in the carport", "misted them, 31 in the tunnel by ten": no number of plants. */
const BESIDE_CARE = new RegExp(
  `^${LEADS}(?:${RISEN}(?: ${ABOUT_SO_MUCH})? ${SOME_DEGREES} (?:in|on|inside|under) [a-z]|` +
    `${SOME_DEGREES} (?:in|on|inside|under) [a-z].* ${BY_THEN}$)`,
);

export const isWarmthBesideCare = (line: string): boolean => BESIDE_CARE.test(line);
