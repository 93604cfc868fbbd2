/** The words that phrases of time are made of, with the ways they are spelt, shortened and misheard. */
import { mended } from './mending.js';

/** The twelve months, January first: name, then how else it is written. */
export const monthWords: readonly string[] = [
  'january jan janu janury januray',
  'february feb febuary febraury febuery feburary',
  'march mar',
  'april apr apl aprl apil aprill',
  'may',
  'june jun',
  'july jul jully',
  'august aug agust augst augest',
  'september sep sept septemer',
  'october oct octber',
  'november nov novemeber',
  'december dec decmber',
];

/** The seven days, Monday first: name, then how else it is written. */
export const weekdayWords: readonly string[] = [
  'monday mon mond mondy munday monady',
  'tuesday tue tues tuesd teusday tusday tuseday chewsday',
  'wednesday wed weds wedn wensday wendsday wednsday wenesday wedensday wednessday',
  'thursday thu thur thurs thursd thrusday thurday thersday',
  'friday fri frid firday fryday',
  'saturday sat satur satdy satday saterday satuday',
  'sunday sun sund sundy',
];

/** Each of the counted weekdays ("two Sundays ago"), in the same order. */
export const pluralWeekdayWords: readonly string[] = [
  'mondays',
  'tuesdays',
  'wednesdays',
  'thursdays',
  'fridays',
  'saturdays',
  'sundays',
];

const unitWords = [
  'day',
  'days dys',
  'week wk wek',
  'weeks wks weaks',
  "fortnight fortnite fornight forthnight f'night",
  'fortnights',
  'month mnth mth mo',
  'months mnths mths mos',
  'year yr',
  'years yrs',
  'weekend wkend wkd wknd w/end weekened',
  'weekends wkends wknds',
  'midweek',
  'hour hours hr hrs',
  'minute minutes min mins',
  'season',
];

const relativeWords = [
  'today tody todya tday 2day todays todau otd',
  'tomorrow tomorow tommorow tommorrow tomorrows tmrw tmr tmw tomoz tomorro tmorrow 2morrow 2moro tomo',
  'yesterday yestarday yesterdays yday yest yesterdy yestday yeserday yestaday yesturday ystrday ystday',
  'tonight tonite 2nite tonights',
  'last lst',
  'next nxt',
  'this',
  'ago agone',
  'gone',
  'past',
  'previous prev preceding',
  'coming upcoming comin forthcoming',
  'following',
  'current',
  'just',
  'back',
  'hence',
  'later',
  'earlier',
  'before befor b4 bfore',
  'after afer',
  'since',
  'until till til untill',
  'by',
  'within',
  'during',
  'over',
  'between btw betw btween',
  'through thru',
  'throughout',
  'around about roughly approx approximately circa',
  'rest remainder',
  'other',
  'same',
  'now',
  'recently lately',
  'ages',
  'while',
  'was',
];

const partWords = [
  'morning mornin morn mornings',
  'noon midday',
  'afternoon arvo aft afternoons',
  'evening evenin evenings',
  'eve',
  'night nite nights',
  'midnight',
  'lunchtime lunch dinnertime',
  'teatime',
  'dawn',
  'breakfast',
  "o'clock oclock",
  'am a.m',
  'pm p.m',
  'half',
  'quarter',
];

const spanWords = [
  'early erly',
  'mid middle midway halfway',
  'late',
  'beginning begining begin start',
  'end back-end',
  'commencing beginning-of comm commencin',
  'starting',
  'ending',
  'spring',
  'summer',
  'autumn autum autmn',
  'fall',
  'winter',
];

/** The words that join: as they stand. */
const smallWords = [
  'the of a an and or but one with into in on at to from for all some few several couple many odd so it first second',
  'o oh h s t w c e time times clock year only very thing number nearly almost under least most more than every each',
  'dozen any ends when st nd rd th then right also hrs wc wb ws no b prior towards & latest latter part doors little',
  'long been less these short quite good bit well tail fag sometime come best getting minute final ended tide @ jr ms',
  "plough hallows luke lukes low rogation passion ereyesterday overmorrow swithins swithin = / - . , ' \u2019 :",
].join(' ');

/** Numbers in words. */
const numberWords =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen ' +
  'eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand first second third fourth ' +
  'fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth ' +
  'eighteenth nineteenth twentieth thirtieth frist fisrt frst forth fith fifht eigth nineth twelth twelvth twentyth';

const holidayWords = [
  'easter',
  'christmas xmas chrismas crimbo christmass',
  'new',
  'good',
  'bank',
  'holiday hol hols holidays',
  'mothering',
  'mothers mother mums mum moms mom',
  'fathers father dads dad',
  'shrove',
  'pancake',
  'ash',
  'palm',
  'maundy',
  'whit',
  'whitsun',
  'jr',
  'saints',
  'pentecost',
  'ascension',
  'advent',
  'boxing',
  'stephens',
  'patricks patrick paddys paddies pattys',
  'georges george',
  'davids david',
  'andrews andrew',
  'valentines valentine',
  'saint',
  'bonfire',
  'fireworks',
  'guy',
  'fawkes',
  'halloween haloween hallowe\u2019en',
  'thanksgiving thanks-giving',
  'labor labour',
  'memorial',
  'independence',
  'presidents president',
  'veterans',
  'columbus',
  'juneteenth',
  'martin',
  'luther',
  'king',
  'kings',
  'queens',
  'birthday',
  'mlk',
  'groundhog',
  'cinco',
  'de',
  'mayo',
  'anzac',
  'australia',
  'waitangi',
  'matariki',
  'brigids brigid bridgets',
  'remembrance',
  'armistice',
  'epiphany',
  'twelfth',
  'candlemas',
  'imbolc',
  'lammas',
  'lughnasa lughnasadh',
  'martinmas',
  'bastille',
  'mardi',
  'gras',
  'koningsdag',
  'lent',
  'michaelmas',
  'burns',
  'hogmanay',
  'corpus',
  'christi',

  'jubilee',
  'lady',
  'orthodox',
  'greek',
  'fools fool',
  'earth',
  'international',
  'womens',
  'black',
  'cyber',
  'stir',
  'up',
  'trinity',
  'holy',
  'souls',
  'all',
  'women',
  'midsummer',
  'june-bank',
  'public',
  'canada',
  'victoria',
  'family',
  'civic',
  'human',
  'rights',
  'freedom',
  'youth',
  'heritage',
  'reconciliation',
  'unity',
  'assumption',
  'melbourne',
  'cup',
];

const canonical = new Map<string, string>();
for (const line of [
  ...monthWords,
  ...weekdayWords,
  ...pluralWeekdayWords,
  ...unitWords,
  ...relativeWords,
  ...partWords,
  ...spanWords,
  ...holidayWords,
]) {
  const [word = '', ...variants] = line.split(' ');
  for (const each of [word, ...variants]) if (!canonical.has(each)) canonical.set(each, word);
}
for (const each of [...smallWords.split(' '), ...numberWords.split(' ')])
  if (!canonical.has(each)) canonical.set(each, each);

/** Words long enough and unlike enough to others that one slip in them can be mended. */
const mendable = mended([
  ...[...weekdayWords, ...monthWords.filter((line) => (line.split(' ')[0] ?? '').length > 5)].map(
    (line) => line.split(' ')[0] ?? '',
  ),
  'yesterday',
  'tomorrow',
  'weekend',
  'fortnight',
  'afternoon',
  'christmas',
  'halloween',
]);

/** The form in which the rules write a word that phrases of time use; undefined for any other word. Takes lower case. */
export function canonicalWord(word: string): string | undefined {
  return canonical.get(word) ?? (word.length >= 6 ? mendable(word) : undefined);
}

/** Tells the words that the rules themselves write. */
export function isRuleWord(word: string): boolean {
  return canonical.get(word) === word;
}
