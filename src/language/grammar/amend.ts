/** An entry put right: the words that announce it. */
import { leading, leadingSome } from './runs.js';
import { secondThoughts } from './second-thoughts.js';

export interface AmendRule {
  readonly name: string;
  readonly pattern: RegExp;
  /** The words of an act in it tell of none. */
  readonly overActs?: true;
  /** Holds only with "… not …" behind it. */
  readonly needsNot?: true;
}

const OPEN = leading(
  `nvm|never mind|ah|oh|um|omg|damn|argh|hmm|right|so|and|please|lol|ok|pls|${secondThoughts.join('|')}`,
);

const COUNTED =
  '(?:dead|death|deaths|lost|loss|losses|rooted|potted|potted on|potted up|planted|planted out|sold|struck|cuttings)';

export const amendRules: readonly AmendRule[] = [
  {
    name: 'should be <x> not <y>',
    pattern:
      /\b(?:should|shd|shall|must|ought to) (?:be(?! (?:needing|wanting|requiring)\b)|have been|of been|a been|read|have said|have read|have|say|ve been|'ve been)\b|\bshould've (?:been|said|read)\b/,
  },
  {
    name: 'should have said <x>',
    pattern: /\b(?:should|meant to) (?:have |of |'ve )?(?:said|say|put|written|write|typed|type|read)\b/,
  },
  {
    name: 'I meant <x>',
    // "Was meant to water the shelf": left undone.
    pattern:
      /\b(?:i|we|was|were) meant\b(?! to (?!be |say |put |write |read |type |have ))|^(?:.* )?meant (?!to\b)|\bi mean\b/,
  },
  {
    name: 'make that <x>',
    pattern: new RegExp(`^${OPEN}(?:make|call) (?:that|it|them) (?!(?:a|my|our|the) (?:target|goal|aim)\\b)`),
  },
  {
    name: 'correction: <x>',
    pattern:
      /^(?:sorry |oops |no |wait |please |pls )*(?:correction|corrected|amend|amended|correct|fix|edit|erratum|amendment)\b/,
  },
  {
    name: 'change <slot> to <x>',
    pattern:
      /^(?:please |can you |could you |would you |oops |sorry |actually |pls )*(?:change|update|set|alter|put|edit|amend|correct|make|switch|fix|adjust) (?:that|it|(?:the |my |this |last )*(?:last|count|date|number|place|name|entry|one|pots?|size|day|[a-z]+\d+)|[a-z]+\d+)\b.*\bto\b/,
  },
  {
    name: 'change the <number> to a <number>',
    pattern:
      /^(?:please |can you |could you )*(?:change|correct|alter|amend|switch) (?:the |that )?[\da-z]+ (?:to|into) (?:an? )?[\da-z]+$/,
  },
  {
    name: 'change the <plant> strike to <x>',
    pattern:
      /^(?:please |can you |could you |would you |oops |sorry |actually |pls )*(?:change|update|alter|amend|correct|adjust)\b.*\b(?:strike|count|loss|entry|note|check|number|date|batch|pot on|move|sale)\b.* to\b/,
  },
  {
    name: '<x> not <y>, fix that',
    pattern:
      /^(?:oh |no |sorry |oops )*(?:hang on|hold on|wait)\b.*\bnot\b|\bnot\b.*\b(?:(?:pls|please) (?:amend|correct|fix|change)(?: that| it)?|(?:amend|correct|fix|change) (?:that|it|this)(?: please| pls)?)$/,
    needsNot: true,
  },
  {
    name: 'rename <plant> to <name>',
    pattern:
      /\bthe label (?:says|reads|said)\b|\b(?:been calling|called|(?:down|listed|labelled|labeled|logged|entered|recorded|written|have|had|got) as)\b.*\b(?:(?:is|are) (?:really|actually)|turns? out to be|turned out to be|should be)\b|\b(?:is|are) (?:really|actually) called\b|\bplantname (?:(?:is|are|was|were) (?:really|actually|in fact)|turns? out to be|turned out to be) |\b(?:rename|re name|renamed|change the name of|change the name|call|(?:be|been) down as)\b/,
  },
  {
    name: 'it was <x> not <y>',
    pattern: new RegExp(
      `^${OPEN}(?:it|that|they|there|this|those|these|it's|that's|the date|the count|the number|date|count|number) (?:was|were|is|are|should|'s)? ?(?:actually |really |only |in fact |all )?`,
    ),
    needsNot: true,
  },
  {
    name: 'was actually <x>',
    pattern: /\b(?:was|were|is|are|it's|that's) (?:actually|really|in fact|of course)\b/,
  },
  { name: '<x> not <y>', pattern: new RegExp(`^${OPEN}[^,]{0,60}\\bnot\\b`), needsNot: true },
  {
    name: 'actually it was <x>',
    pattern: new RegExp(
      `^${leadingSome('nvm|never mind|oops|whoops|no|sorry|actually|ah|oh|wrong number|wrong date|wrong plant|wrong batch|wrong pot|wrong name|wrong (?:pot size|size|place|day|crop|month|year)|(?:date|count|number|size|place|day) was wrong|wrong|mistake|my mistake|typo|my bad|argh|damn|hang on|hold on|wait|i got that wrong|got that wrong|hmm|no wait|correction|wrong one|i was wrong')}(?:it|that|they|there|this|the last one|that last one|was) ?(?:was|were|is|are|should be|'s)?\\b`,
    ),
  },
  {
    name: 'the <deed> count was <x>',
    overActs: true,
    pattern: new RegExp(
      `^(?:the )?(?:${COUNTED} (?:count|number|figure|total)|(?:count|number|figure|total) (?:of )?${COUNTED})(?: (?:for|of|on) (?:the )?plantname)? (?:was|were|is|should)\\b`,
    ),
  },
  {
    name: 'that was <day>',
    pattern:
      /^(?:that|it|this|the last one|that last one) was (?:on |actually |really |in fact )*(?:yesterday|today|last|the|(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?)\b/,
  },
  {
    name: 'I said <x> but it was <y>',
    pattern:
      /\b(?:i|we|i've) (?:said|put|wrote|typed|logged|told you|entered|put down|wrote down)\b.*\b(?:but|and)\b.*\b(?:was|were|should|meant|is|are|it's|there's)\b/,
  },
  {
    name: 'I mistyped, <x>',
    pattern: /^(?:i (?:mistyped|miscounted|misspoke)|miscounted|mistyped|edit (?:last|that)|recount)\b/,
  },
  {
    name: 'not <y>, <x>',
    pattern: /^(?:oops |no |sorry )*(?:not|was not|wasn't|it wasn't|it was not|that wasn't)\b/,
  },
];

export const AMEND_CUE =
  /^(?:oops|whoops|no|sorry|wait|hold on|hang on|actually|correction|mistake|my mistake|omg|damn|argh|typo|my bad|silly me|wrong|i meant|i mean)\b/;
