/** Things asked, by what they ask about. */
import type { Topic } from '../../ledger/entry.js';
import { leadingSome, trailing } from './runs.js';

export interface QuestionRule {
  readonly name: string;
  readonly topic: Topic;
  readonly pattern: RegExp;
  /** Only with a plant or place in the sentence; without one it is small talk. */
  readonly needsPlant?: true;
  /** What a line must hold to be this though nothing in it asks; a rule without it needs a question. */
  readonly unasked?: RegExp;
  /** Unasked, it needs no plant either. */
  readonly alone?: true;
}

/** Words before the question proper. */
export const PREAMBLE = new RegExp(
  `^${leadingSome(
    "wait|omg|omfg|lol|ugh|mate|listen|right then|now then|quick one|one question|tell us|kindly|kindly inform me|kindly tell me|inform me|kindly advise|advise me|would you ever tell me|will you tell me|you might tell me|perhaps you could tell me|could you please tell me|can you please tell me|i should like to know|so|now|and|but|right|ok|okay|well|hey|hi|hello|please|hiya|morning|evening|sorry|quick question|question|just wondering|i wonder|wondering|do tell me|tell me|can you tell me|could you tell me|remind me|can you remind me|could you remind me|will you remind me|any idea|do you know|do we know|i forget|i've quite forgotten|i've forgotten|forgot|i forgot|i have forgotten|pray|um|uh|yes|hello|thanks|oh|ah|remember|just|out of interest|by the way|btw|can i ask|may i ask|would you know|you wouldn't know|bot|slipnote|yo|then|also|what on earth|i can't remember|can't remember|cannot remember|i don't remember|don't remember|i'd like to know|i want to know|let me know|say|lads|help me out|show me|give me|give us|gimme|let me see|run me through|talk me through|could do with knowing|list|print me|print|pull up|call up|a list of|list of|a rundown of|a run down of|a breakdown of|not sure|i'm not sure|no idea|be a dear and tell me|mind telling me|could you say|would you tell me|please tell me|please say me|say me|do you remember|can you remember|eh|yoke|in the name of god|in heaven's name|for the love of god",
  )}`,
);

/** "What all did I do", "where exactly are they": a word behind the one that asks changes nothing that is asked. */
const STRESSED =
  /^(what|who|where|when|which|how|why)(?:'s)? (?:all|exactly|precisely|the heck|the hell|the devil|on earth|in the world|the blazes)(?= (?:is|are|was|were|did|do|does|have|has|had|am|can|could|should|will|need|needs|got|went|rooted|died)\b)/;

/** "What have I all done": the same behind who did it. */
const STRESSED_BEHIND = /^((?:what|who|where|when|which) (?:have|did|has|had|do) (?:i|we|you)) all(?= )/;

/** "How'd they do", "whatd i get up to". */
const CLIPPED =
  /^(what|who|where|when|how)(?:'d|d|'re|re) (?=(?:i|we|they|the|my|our|it|those|these|plantname)\b)/;

/** "Salt Harrier, what have I got", "out of the Salt Harrier how many made it": what is asked about stands first. */
const PLANT_FIRST =
  /^(?:(?:out of|of|from|for|on|with|re|about|as for) )?(?:the |my |our )?plantname (?=(?:how (?:many|much|long|old|are|is|did|do)|what (?:have|did|do)|where (?:are|is|did|have|do)|when (?:did|do|was|were|will|are|is|can|should)|who (?:had|got|has|bought))\b)/;

/** A line without the stress on the word that asks, and with that word whole. */
export function unstressed(line: string): string {
  return line
    .replace(CLIPPED, (clipped: string, asks: string) => `${asks} ${/re $/.test(clipped) ? 'are' : 'did'} `)
    .replace(STRESSED, '$1')
    .replace(STRESSED_BEHIND, '$1');
}

/** A line without the words before its question, and without stress. */
export function questionProper(line: string): string {
  return unstressed(
    line
      .replace(PREAMBLE, '')
      .replace(PLANT_FIRST, '')
      .replace(/(?<=.)(?: (?:please|pls|then|thanks|thank you))+$/, ''),
  );
}

/** "Show me everything I took": what the program is bidden to tell is asked. */
export const BIDS_TO_TELL =
  /\b(?:show me|give me|give us|gimme|let me see|run me through|talk me through|could do with knowing|list|print|pull up|call up|list of|rundown of)\b/;

/** What it may be bidden to tell. */
export const TOLD_WHEN_BIDDEN =
  /^(?:everything|every|all|any|anything|last (?:week|month|year)|yesterday|what|how|which|where|when|who|(?:the|my|our) (?:losses|sales|count|numbers|figures|totals?|jobs|ones|batches|history))\b/;

/** The figures of a ledger by their names alone: "losses so far this year", "total sales last month please". */
const FIGURES = new RegExp(
  `^(?:show )?(?:(?:all|total|the|my|our|any) )*(?:losses|loss|sales|deaths|gifts|strikes|strikings|stickings|deliveries|checks|entries|swaps|dispatches)${trailing('to date|so far|on|of|for|from|in|the|my|our|plantname|please|pls|this|last|year|month|week|season|spring|summer|autumn|winter|fall|yesterday|today|january|february|march|april|may|june|july|august|september|october|november|december')}$`,
);

/** "Salt Harrier tally", "how many Salt Harrier". */
const UNASKED_COUNT =
  /\b(?:count|total|tally|headcount)$|^(?:the )?plantname numbers(?: please| pls)?$|^(?:count|total|tally|number of|qty|quantity|availability|how many|(?:stock|head) \w+)\b/;

export const questionRules: readonly QuestionRule[] = [
  {
    name: 'help',
    topic: 'help',
    unasked: /./,
    alone: true,
    pattern:
      /^(?:help(?: me| please| pls)?|(?:what|which) (?:can|could) (?:you|u|this|it|i) (?:even )?(?:do|say|ask|tell you|log|write|type)\b.*|what (?:am|are) (?:i|we) (?:allowed|able|supposed|meant) to (?:say|ask|tell|type|write)\b.*|what (?:sort|sorts|kind|kinds) of things? am i (?:allowed|able|supposed|meant) to (?:say|ask|tell|type|write)\b.*|what (?:do|can|should|must) i (?:even )?(?:say|type|write|send|tell you)\b.*|how (?:do|does|can|should|must) (?:i|this|it|you|we) (?:use|work|log|record|undo|change|correct|delete|enter|add|make an entry|start|write|tell|note|fix|set|say|get started|do this)\b.*|commands|instructions|what are the commands|what commands.*|how's this work|how does (?:this|the) (?:thing|bot) work|what words (?:do|can) (?:you|i) .*|i need help|i don't know how (?:this|it) works.*|how to use.*|what i (?:must|should|have|need|can)\b.*\b(?:write|say|type|send|do)\b.*|what else can (?:you|i) (?:do|say)\b.*|what (?:sort|sorts|kind|kinds) of things? (?:can|could|do) (?:you|i)\b.*|what are you for|show help|menu|what does this do|what do you do)$/,
  },
  {
    name: 'last frost',
    topic: 'frost',
    pattern:
      /^(?:frost (?:forecast|risk|tonight|warning|dates?)$|(?:when|what|whats|what's|when's|whens|is|will|would|are|any|do|does|how|could|have|chance|has|did|the|should|first|last|our|usual|average)\b.*\b(?:frost|frosts|frosty|freeze|freezing)\b)/,
  },
  {
    name: 'is it safe to plant out',
    topic: 'frost',
    pattern:
      /\b(?:safe|too early|warm enough|too cold|too soon|clear of frost|ok|okay|all right|alright)\b.*\b(?:plant|planting|put|putting|outside|out|outdoors)\b.*/,
  },
  {
    name: 'is it cold tonight',
    topic: 'frost',
    pattern:
      /^(?:(?:do|should|must|shall|had) (?:i|we) (?:need to |have to |better |want to |be )?(?:fleece|fleecing|cover|covering|bring|bringing)\b.* (?:tonight|this week|this weekend|yet)$|how cold (?:is|will|are|does|might)|will it be cold|is it (?:going to|gonna) be cold|is it cold|what's the (?:forecast|temperature) (?:for )?tonight|cold tonight)\b/,
  },
  {
    name: 'strike rate of <plant>',
    topic: 'rate',
    unasked: /\b(?:strike rate|success rate|rooting rate|percentage|what %|take %|percent)\b/,
    pattern:
      /\b(?:strike rate|(?:strike|rooting|striking) wise|the take|success rate|rooting rate|take rate|hit rate|rate of|percentage|what percent|what %|per cent|percent|what proportion|what fraction|success|rooting percentage|how good (?:is|am|are)|failure rate|success with|how successful|% rooted|% of|odds|what share|take %|% take|% struck|how many out of|out of plantname how many|how (?:did|have) (?:i|we) (?:do|done|get on|got on)|how well do(?:es)?|how well did|what rate|which rate|(?:did|does|do|worked|works|rooted|roots|took|struck|come up) (?:the )?(?:best|worst)|(?:best|worst) (?:rooter|rooters|crop|variety|method|result|results))\b|%/,
  },
  {
    name: 'will I have enough',
    topic: 'plan',
    pattern:
      /^(?:will|can|could|would) (?:i|we) (?:have (?!to\b)|get to|make|manage|reach|end up with)\b.*\b(?:by|before|ready|when)\b|^how many more\b(?!.*\b(?:are|were|have)\b).*\bfor\b|\b(?:on (?:track|course|target|schedule)|in time|enough|behind|ahead|make (?:it|my|the)|reach|hit my|meet my|target|how many (?:of )?(?:the |my )?plantname (?:cuttings )?(?:do|must|should) (?:i|we) (?:need|take|strike|stick|have) to (?:take|strike|stick|start|get|end|make|have)|how many (?:more )?(?:cuttings )?(?:should|do|must|shall|will) (?:i|we) (?:need|take|have to take|want|have|strike|do to)|should i take|how many to take|need to take|have to take|too late (?:in the (?:year|season|day) )?(?:to|for)|still time|what's the plan|the plan|plan for|last day to|when (?:should|must) i take(?! (?:away|off|out|down|in|the fleece|the cover|the shad(?:e|ing)|the lid|the dome))|when do i (?:need|have) to (?:take|strike|start|begin|cut)|when to take|(?:latest|last) (?:date|day|time) (?:to|for|i can)|latest i can|how (?:are we|am i) looking for|how many cuttings (?:for|to get|do i need))\b/,
  },
  {
    name: 'what is due',
    topic: 'due',
    unasked: /^(?:list|show me) .*\b(?:needs?|needing|due|wants?)\b/,
    alone: true,
    pattern:
      /^(?!what (?:did|was) )(?:what's|whats|what is|what are|what|which|anything|owt|any|is there anything|is anything|are any|are there any|have i anything|who|something|do i have anything|have we anything|jobs|tasks|is there|got anything|have i got anything|what have i|does anything|do any|is any|what do i|what should|what do we|what must|what will|what would|todo|to do|list|which ones|which of|should i|what jobs|what work|what needs|what wants|are)\b.*\b(?:due|needs? doing|wanting (?:attention|doing|seeing to)|need(?:s|ing)? (?:to be )?(?:done|doing|checking|checked|potting|potted|watering|watered|attention|pinching|pinched|misting|misted|a check|seeing to|looking at|moving|planting|feeding|to)|to do|do (?:today|tomorrow|next|now|first|this|on|at)|on (?:the|my) list|jobs|tasks|ready|overdue|late|behind|next|outstanding|wants? (?:doing|potting|checking|seeing to|looking at|watering|misting|feeding|pinching|moving|planting)|today's|on today|on for|doing (?:today|this week)|on the cards|pending|waiting|(?:be|i) doing|be looking at|be seeing to|be checking|be potting|be watering|get on with|needed|must i do|have to do|tackle first|start (?:with|on) (?:today|first)|check today|chores|(?:coming )?up (?:today|next|this|tomorrow)|coming up|happening|(?:left|still) to (?:do|pot|plant|pinch|stop|prick|harden|move|check|go out|come)|needs (?:me|my)|(?:must|should|shall|ought) (?:i|we) (?:to )?(?:check|look (?:at|over)|see to|pot|pinch|water|feed|mist|move|plant|harden))\b/,
  },
  {
    name: 'is it time to look at <plant>',
    topic: 'due',
    pattern:
      /^(?:is it|are they|is that|would it be) (?:about |nearly |getting on )?(?:time|due) (?:to|for|i|we)\b/,
  },
  {
    name: 'due today',
    topic: 'due',
    unasked: /./,
    alone: true,
    pattern:
      /^(?:due(?: today| now| this week| tomorrow)?|todo|to do|what now|what next|(?:the |my |any )?(?:jobs|tasks|chores|to do) list(?: for)?(?: today| tomorrow| (?:this|next|the) (?:week|weekend))?|(?:agenda|schedule)(?: for)?(?: today| tomorrow| (?:this|next|the) (?:week|weekend))?|(?:today's|today|tomorrow's|tomorrow|this week's|this week) (?:jobs|list|round|tasks|chores)|(?:the |my |any )?(?:jobs|tasks|chores)(?: to do)?(?: for| on| over)?(?: today| tonight| tomorrow| (?:this|next|the) (?:week|weekend)| (?:mon|tues|wednes|thurs|fri|satur|sun)day)?|what's (?:next|up|on|to do)(?: today| this week| tomorrow)?|whats (?:next|on)|anything (?:today|for me|i should do|else today|to do|doing)|what today|the list|list for today)$/,
  },
  {
    name: 'when are <plant> due',
    topic: 'due',
    pattern:
      /^(?:due date|date due|eta)\b|\b(?:eta|due date)$|^when\b.*\b(?:due|ready|need|needs|be (?:checked|potted|planted|looked)|should i (?:check|pot|plant|pinch|look|repot|move|harden|water|feed)|must i (?:check|pot|plant|pinch|look|repot|transplant|move|water)|do i (?:check|pot|plant|pinch|need)|can i (?:check|pot|plant|pinch|move|put)|shall i|to (?:check|pot|plant|pinch|look|repot)|(?:be|have) rooted)\b/,
  },
  {
    name: 'when did I',
    topic: 'when',
    pattern:
      /\bwhen$|^(?:when|what day|what date|which day|which date|how long (?:ago|since|have|has|is it|till|until|before|do|does|will|did|are|were)|what time|since when|how old|how many (?:days|weeks|months) (?:ago|since|till|until|before|have|has|old|is|are))\b/,
  },
  {
    name: 'where is <plant>',
    topic: 'where',
    pattern:
      /^(?:where(?! (?:are|do|have) (?:we|i)(?: (?:at|stand|got to|got|up to))? (?:with|on|at with|regarding)\b)(?! am i\b)|where's|wheres|which (?:bench|shelf|place|tunnel|house|frame|windowsill|tray|room|greenhouse|bed)|what (?:bench|shelf|place|tunnel) (?:is|are)|what have (?:i|we) done with(?! .* (?:last|since|this|over|during|in (?:january|february|march|april|may|june|july|august|september|october|november|december))\b)|what did (?:i|we) do with(?! .* (?:last|in|since|on|this|over|during)\b)|(?:have i|i've) lost track of|where abouts|whereabouts|what happened (?:to|with)|have you seen|has anyone seen|on what|in what|location of|contents of|the contents of)\b/,
  },
  {
    name: 'what have I got left',
    topic: 'count',
    pattern:
      /^(?:what|what's|whats|what've)(?: do| have| is| am| i| we| got| had| still| alive| there)* (?:left|remaining|alive|got|in stock)(?: (?:over|now|alive|in all|altogether|of (?:them|it all)))*$/,
  },
  {
    name: 'what is in <place>',
    topic: 'where',
    unasked: /^(?:list|show me) (?:everything|all)\b/,
    alone: true,
    pattern:
      /^(?:is|are) there (?:anything|owt|any|much)\b.*\b(?:in|on|under) (?:the |my |our )?|^(?!what (?:on earth )?did\b|what have (?:i|we) done\b|what (?:i|we) did\b|what was done\b)(?:what's|whats|what is|what are|what have (?:i|we) (?:got )?|what do (?:i|we) have|what|which|what've i got|who's|list|anything|show)\b.*\b(?:in|on|under|at) (?!(?:the |my |our )?(?:plantname|january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|autumn|winter|total|all)\b)/,
  },
  {
    name: 'list',
    topic: 'count',
    unasked: /./,
    alone: true,
    pattern:
      /^(?:list|list (?:all|everything|the lot|(?:my |the |all )?(?:plants|batches|cuttings))|full list)(?: please| pls)?$/,
  },
  {
    name: 'how many <plant>',
    topic: 'count',
    unasked: UNASKED_COUNT,
    pattern:
      /\bhow many\b|\bhow much\b|^(?:(?:grand|overall|running|stock|head|current) )*(?:number of|count|total|tally|qty|quantity|figures?|levels?|availability)\b|\b(?:count|total|tally|headcount|stock level|numbers|qty|quantity|availability)$|^numbers (?:on|in|for|of)\b|^what's (?:the|my) (?:count|total|tally)|^what (?:am i|are we|i'm|we're) down to\b|^how big (?:is|are)\b|\b(?:need|want|like|after) (?:a|the) (?:count|total|tally|headcount|number)\b|^any stock of\b|\bwhat (?:number|quantity|total|count)\b|^(?:have i|do i have|have we|do we have|is there|are there|will \d+ |got|have i got) (?:got )?any\b.*\b(?:left|more|spare|still)\b/,
  },
  {
    name: 'history of <plant>',
    topic: 'history',
    unasked: /\bhistory\b|^(?:log|diary|record|summary|recap)\b/,
    pattern:
      /\bhistory\b|^what (?:(?:did|have) (?:i|we)|did [a-z']+ (?:do|take|lose|pot|plant|sell|give)|(?:i|we) (?:did|have done|took|struck|stuck|sold|gave|lost|potted|planted|moved|pinched|bought|binned|swapped|fed|watered))\b.*|^(?:everything|all|anything|every \w+)(?: that)? (?:i|we)\b|^what (?:happened|went (?:on|out)|came in|was done|has been done|got done|was i doing)\b.*|^(?:log|diary|record|summary|recap|journal|story|notes) (?:of|for|on|from)\b.*|\b(?:log|diary|journal|summary|recap)$|^(?:what's|whats) (?:been done|happened|the story|been happening|been going)\b.*|^(?:which|what)(?: ones| plants| cuttings)? (?:have|did) (?:i|we) (?:lost|lose)\b.*|^who (?:got|had|took|bought|has had|did (?:i|we)|have (?:i|we))\b.*|^last (?:week|month)'s\b.*|^(?:last (?:week|month|year|night)|yesterday|this (?:week|month|year))$|^(?:show|show me) .*\b(?:record|records|history|story|log)$|^what (?:sold|died|rooted|arrived|left) (?:last|this|in|on|yesterday|today|over|so far)\b.*|^(?:have i|did i|have we|did we|has anyone|did anyone)\b.*|^(?:did|have|has) .*\b(?:turn(?:ed)? up|arrived?|com(?:e|ing)|show(?:ed|n)? up)\b.*/,
  },
  { name: 'losses so far', topic: 'history', unasked: /./, alone: true, pattern: FIGURES },
  {
    name: 'how are <plant>',
    topic: 'status',
    needsPlant: true,
    pattern:
      /^(?:where (?:are|do|have) (?:we|i)|how|how's|hows|how're|what way|what's (?:up|happening|the (?:state|status|story|situation|craic|news|latest))|whats (?:up|happening|the)|any (?:news|update|updates|roots|sign|signs|progress|luck|joy|change|word)|are|is|have|has|did|do|does|status|state|update on|what about|how about|will|can|should|could|would|any|which|what)\b/,
  },
  {
    name: 'show me <plant>',
    topic: 'status',
    unasked: /./,
    needsPlant: true,
    pattern:
      /^(?:show(?: me)?|tell me (?:all )?about|let me see|the story of|story of|list)(?: (?:all|the|my|of))* plantname$|^(?:pull|call|bring) up (?:the |my )?plantname(?: for (?:me|us))?(?: please)?$/,
  },
  {
    name: '<plant> status',
    topic: 'status',
    unasked: /./,
    needsPlant: true,
    pattern:
      /\b(?:status|update|progress|doing ok|(?<!(?:nothing|nowt) )doing)$|^(?:the )?(?:latest|update|news|status|progress|report) (?:on|with|of|for|about|from) (?:the |my |our )?plantname(?: please| pls)?$/,
  },
  { name: '<plant>?', topic: 'status', needsPlant: true, pattern: /./ },
];

/** Words that open a question even without its mark. */
export const OPENS_QUESTION =
  /^(?:what(?:'s|s)? (?!a\b|with\b|the (?:slugs?|snails?|frost|mice|mouse|pigeons?|rabbits?|wind) \w+\b|(?:i|we|you|i've|we've|you've)\b.*\bplantname (?:is|are|was|were|turns|turned|should)\b)|when(?:'s|s)? (?:is|are|was|were|did|do|does|will|ought|might|should|can|must|shall|have|has|am|to|would|could|the|our|my)|when's|where(?:'s|s|(?! there(?:'s| is)?\b)\b)|whereabouts (?:is|are|did|have)|how (?:big|far|often|soon|cold|warm|hot) (?:is|are|do|does|did|will|would|can|should|have|has|it)\b|how (?:many|much|are|is|do|does|did|long|old|have|has|well|about|come|can|will|should|to|goes|would|be|was|were|am|good)|how's|hows|which(?! reminds)|who|who's|whose|is (?!done)|are (?!rooted)|am i|did (?:(?:i|we|they|it|you|any)\b|(?:the|my)\b(?! plantname$| (?:watering|misting|feeding|spraying|rounds)\b))|do (?:i|we|the|my|they|you|any)\b|does|have (?:i|we|they|you|any)\b|(?:have|has) (?:the |my )?plantname (?:ever )?been\b|any (?:stock|joy|luck)\b|(?:anything|owt) (?:still|left|else) (?:in|on|under)\b|would there be\b|have (?:the|my)\b(?=.*\b(?:yet|rooted|taken|struck|got roots)\b)|has (?:the|my|it|anyone|any)\b|will (?:i|we|the|my|they|it|there|this|these)\b|can (?:i|we|they)\b|can you (?!put (?:me|us) down)|could (?:i|you|we)\b|should (?:i|we|they|the)\b|shall (?:i|we)\b|any (?:news|sign|signs|update|updates|roots|idea|jobs|word|luck|progress|change|chance|frost)|anything (?:due|to do|need|needs|ready|for|(?:rooted|struck|showing|moving|happening|up|through)\b.*\b(?:yet|so far))|owt (?:due|to do|want|need)|is there|are there|whats|whens|what way)\b/;
