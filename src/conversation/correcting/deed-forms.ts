/** The ways of recalling a deed that was told before, so as to put it right. */
import { deedNouns, deedVerbs } from '../../language/grammar/entry-words.js';
import { anyOf } from '../../language/phrases.js';

/** "… was actually", "… should have been". */
const WAS = ` ${anyOf`
  (is|was|were) (supposed|meant) to be|was|were
  should( be| have been|['’]ve been| say| read)|ought to be
`} (?:(?:actually|really|only|all|just|on|to|in fact) )*`;
const DID = `(?:that |who |which )?(?:(?:i|we|you|(?<whose>he|she|they|\\p{L}[\\p{L}'’-]+)) )?(?<verb>${deedVerbs})(?: (?<how>.{1,40}?))?`;

const DAY = '(?:yesterday|today|this morning|last night|last \\p{L}+|(?:on )?\\p{L}{3,6}day)';
/** What came from a nursery, and how. */
const CAME = '(?:came|arrived|turned up|landed|got here|(?:was|were) delivered|(?:was|were) dropped off)';
const PARCEL = '(?:plugs?|plug plants|liners|delivery|parcel|order|consignment|box)';

/** "Our order from Cornwall". */
const THE_PARCEL = `(?:(?:the|that|our|my) )?(?<which>.{0,30}? ?)(?<came>${PARCEL})(?: (?<how>from .{1,30}?))?`;
/** "… turned out". */
const PROVED = '(?:was|were|came|came up|is|turned out)';
const IT_IS = "it['’]s|it is|it was|there['’]s|there are|there were";

/**
 * Ways of saying it; `which` and `how` describe the deed, its `verb` or `noun` tells the kind, `value` is what it should
 * have said.
 */
export const FORMS: readonly RegExp[] = [
  // "The three Moss Cardinal I lost were four", "the ten potted on were nine".
  `(?:the|those|my) (?<which>.{1,40}?) ?${DID}${WAS}(?<value>.{1,30})`,
  // "Enid's Moss Cardinal were only four", "Enid's were four".
  `(?<owner>\\p{L}[\\p{L}'’-]+)['’]s(?: (?<which>.{1,40}?))?${WAS}(?<value>.{1,20}?)(?: of them)?`,
  // "It was two she had", "it was five Mossie got off me".
  `(?:it|that)(?:['’]s (?:only |just )?|${WAS})(?<value>.{1,20}?)(?: of them)? (?:that )?(?<theirs>\\p{L}[\\p{L}'’]*)(?: only| just)? (?:had|got|took|bought|went off with|ended up with)(?: (?:off|from) (?:me|us))?`,
  // "Only two he bought", "three she took".
  `(?:only |just )?(?<value>.{1,40}?)(?: of them)?,? (?:that )?(?<theirs>he|she|they|\\p{Lu}\\p{L}+)(?: only| just)? (?:had|got|took|bought|wanted)(?: (?:off|from) (?:me|us))?`,
  // "Only three went".
  `(?:only|just) (?<value>\\d+|\\p{L}+)(?: of (?:them|those))? (?<gone>went|(?:were|was|got) (?:taken|sold|given))`,
  // "It was four I gave Idris".
  `(?:it|that)(?:['’]s (?:only |just )?|${WAS})(?<value>.{1,30}?) ${DID}`,
  // "It was only six of the Salt Harrier that got potted on".
  `(?:it|that)(?:['’]s (?:only |just )?|${WAS})(?<value>\\d+|\\p{L}+)(?: of)? (?<which>(?:the |my )?.{2,40}?) (?:that |which )?(?:got|were|was) (?<verb>${deedVerbs})(?: (?<how>.{1,40}?))?`,
  // "What I lost was three".
  `(?<what>what) ${DID}${WAS}(?<value>.{1,30})`,
  // "It was four that went to Idris".
  `(?:it|that)(?:['’]s |${WAS})(?<value>.{1,40}?) (?:that |which |who )?(?<gone>went) (?<how>(?:to|in|into) .{1,40})`,
  // "It was four at the yard sale".
  `(?:it|that)(?:['’]s |${WAS})(?<value>\\d+|\\p{L}+)(?: of them)?(?: (?:that )?(?:went|sold|gone))? (?<sale>(?:at|for) (?:the|our|that) (?:.{1,20} )?(?:sale|market|fair|f[eê]te|show|stall|swap|open day))`,
  // "That should be three to Peg".
  `(?:(?:it|that)(?:['’]s |${WAS}))?(?<value>\\d+|\\p{L}+)(?: of them)? (?<had>to \\p{L}.{1,30})`,
  // "It was three Salt Harrier to Peg".
  `(?:it|that)(?:['’]s |${WAS})(?<value>(?:\\d+|\\p{L}+) (?:of )?(?:the )?\\p{L}.{1,40}?) (?<had>to \\p{L}.{1,30})`,
  // "Correction, 32 Salt Harrier were taken on 7 February", "the docket says 22 Salt Harrier were struck on 15 March".
  `(?:there (?:was|were) )?(?<value>\\d+|\\p{L}+) (?:of )?(?:the )?(?<which>.{2,40}?) (?<late>was|were) (?<verb>taken|struck) (?<how>(?:on )?.{2,20})`,
  // "There were 14 Salt Harrier in the 5 September lot".
  `there (?<late>were) (?:actually |really |only )?(?<value>\\d+|\\p{L}+) (?:of )?(?:the )?(?<which>.{2,40}?) in (?:the|that|my) (?<how>.{2,20}?) (?<stood>lot|batch)`,
  // "The 5 September lot of Salt Harrier was 14".
  `(?:the|that|my) (?<how>.{2,20}?) (?<stood>lot|batch)(?: of (?<which>.{2,40}?))? (?<late>was|were)(?: really| actually| only)? (?<value>\\d+|\\p{L}+)`,
  // "Mistake: the Salt Harrier I took on Sunday".
  `(?:the )?(?<which>.{2,40}?) (?<late>i|we)(?: have)? (?<verb>${deedVerbs}) (?<value>on .{2,20}|yesterday)`,
  // "We did that potting on Easter Monday actually".
  `(?:i|we)(?:['’]d| had)? (?:did|done) (?:that|the|those) (?<noun>${deedNouns})(?: (?<how>of .{1,40}?))? (?<value>(?:on .{2,20}|yesterday))`,
  // "The ones on the windowsill were four".
  `(?:the|those) (?<stood>ones?|batch|lot|cuttings) (?<which>(?:in|on|under|at|by) .{2,30}?)${WAS}(?<value>.{1,20}?)`,
  // "The Moss Cardinal loss was three", "the gift to Idris was four", "Moss Cardinal loss was only two".
  `(?:(?:the|that|my|(?<day>\\p{L}+(?: \\p{L}+)?)['’]s) |(?=(?:\\S+ ){1,4}(?:${deedNouns}) ))(?:last )?(?<which>.{0,30}? ?)(?<noun>${deedNouns})(?: (?<how>(?:to|of|on|for|with|from) .{1,40}?|${DAY}))?${WAS}(?<value>.{1,40})`,
  // "It was Monday that the plugs came".
  `(?:it|that)(?:['’]s |${WAS})(?<value>.{1,30}?) (?:that |when )?(?:the |those |my )(?<which>.{0,30}? ?)(?<came>${PARCEL})(?: (?<how>from .{1,30}?))? ${CAME}`,
  // "Delivery was short, only 192 Tallow Bell".
  `${THE_PARCEL} ${PROVED} (?:a bit |a few )?short[,.:;–—-]* ?(?:(?:there|it) (?:was|were|had) )?(?:only |just )?(?<value>.{1,30}?)(?: in it| in the box| came| arrived)?`,
  // "Short delivery. Tallow Bell 192".
  `(?:short|light) (?<came>${PARCEL})[,.:;–—-]* ?(?:only |just )?(?:(?<which>.{2,40}?) )?(?<value>\\d+(?: .{2,40}?)?)`,
  // "The delivery was eight short".
  `${THE_PARCEL} ${PROVED} (?<value>\\p{L}+|\\d+) (?<by>short|too few|light|over|too many|extra)`,
  // "The plugs came on Monday, actually".
  `(?:the|those|my) (?<which>.{0,30}? ?)(?<came>${PARCEL})(?: (?<how>from .{1,30}?))? (?<late>${CAME}) (?<value>.{1,30}?)`,
  // "The Salt Harrier for the school, that were five".
  `(?:the|those|my) (?<which>.{1,40}?) (?:for|to) (?<gave>.{1,40}?),?(?: (?:that|it|they|those))?${WAS}(?<value>.{1,20}?)`,
  // "Change the Moss Cardinal loss to three".
  `(?:change|correct|alter|amend|put) (?:the|that|my) (?:last )?(?<which>.{0,30}? ?)(?<noun>${deedNouns})(?: (?<how>of .{1,40}?))? to (?<value>.{1,40})`,
  // "The Moss Cardinal came to nine".
  `(?:the )?(?<which>.{3,40}?) (?<counted>came to|comes to|come to|turned out to be) (?<value>.{1,20}?)(?: of them)?(?:,? (?:i find|i see|all told|when i counted(?: them)?(?: again)?|on a recount))?`,
  // "I've just counted the Moss Cardinal again and it's eight".
  `(?:i|we)(?:['’]ve)? (?:just )?(?<counted>counted|recounted) (?:the )?(?<which>.{1,40}?)(?: again)?,? and (?:${IT_IS}|they['’]re|i make it|i get|i got) (?:only )?(?<value>.{1,20}?)(?: of them)?`,
  // "I've one too many down for the Moss Cardinal, it's 11".
  `(?:i|we)(?:['’]ve| have|['’]m)? (?:got )?.{1,12} (?<counted>too many|too few|short|out)(?: down)? (?:for|of|on|with) (?:the )?(?<which>.{1,40}?),? (?:and )?(?:${IT_IS}|it should be|should be|make it) (?:only )?(?<value>.{1,20}?)(?: of them)?`,
  // "The one before last should be three".
  `(?:the |my )?(?<back>(?:one|entry|note|message) before(?: the)?(?: last(?: one)?| that(?: one)?| it)?|last but one|second last|second to last)(?: one)?${WAS}(?<value>.{1,30})`,
  // "Ines had three actually".
  `(?:\\p{L}{1,5}(?: \\p{L}{1,5})?, )?(?:the )?(?<who>\\p{L}[\\p{L}'’]*(?: (?!only |actually |really )\\p{Lu}[\\p{L}'’]*)?) (?:only |actually |really )*(?:had|has(?: (?:got|had|taken|received|bought|kept))?|got|took|received|kept|wanted|needed|bought|ended up (?:with|taking|buying|having)) (?:only )?(?<value>.{1,40}?)(?: of them)?`,
].map((form) => new RegExp(`^${form}$`, 'iu'));

/** "The docket says …", "the invoice says …", "I find …", "found one more hiding, …": how it came out, before what it should have said. */
export const FOUND_OUT =
  /^(?:(?:the |my )?(?:docket|label|labels|tag|book|diary|notebook|notes?|list|sheet|ticket|invoice|paperwork|(?:delivery|packing|advice) (?:note|slip|sheet)) (?:says?|said|reads?|has)(?: that)? |(?:i|we)(?: now)? (?:find|found|see)(?: that)? (?=there )|(?:it )?turns out (?:that )?|(?:i )?found (?:one|another|two|a few)(?: more)?[^,.]{0,40}[,.] )/i;

/** "… were 120, five trays of 24". */
export const IN_POTS =
  /^(.{1,20}?),? (?:in )?([\p{L}\d]+) (?:pots?|trays?|modules?|jars?|cells?)(?: of [\p{L}\d]+| each)?$/iu;

/** "…, she came back for two more": why; "…, she had" is told of the deed. */
export const ASIDE =
  /[.!,] (?:i|we|(?:she|he|they)(?! (?:had|took|got|bought)[.!]?$)|one|two|another|turns out|just)\b[^.!?]{0,60}[.!]?$/i;
