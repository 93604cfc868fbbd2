/** An entry put right: the words that announce it. */
import { anyOf, beginning, closing, either, opening, whole, within } from '../phrases.js';
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

/** What a deed counts: "dead", "potted on". */
const COUNTED = anyOf`
  dead|deaths?|lost|loss|losses|rooted|struck|cuttings|sold
  potted|potted (on|up)|planted|planted out
`;

/** "Sorry, can you please …". */
const ASKED = leading`please|pls|(can|could|would) you|oops|sorry|actually`;

/** The slots of an entry, and labels. */
const SLOT = anyOf`
  that|it|[a-z]+\d+
  ((the|my|this|last) )*(last|count|date|number|place|name|entry|one|pots?|size|day|[a-z]+\d+)
`;

/** "Is really", "turned out to be". */
const TRULY = anyOf`
  (is|are) (really|actually)
  (turns?|turned) out to be
`;

/** "No wait, wrong pot size, …": what is put right comes behind. */
const AT_FAULT = leadingSome`
  nvm|never mind|oops|whoops|no|no wait|sorry|actually|ah|oh|hmm|argh|damn|hang on|hold on|wait
  wrong|wrong (number|date|plant|batch|pot|pot size|name|one|size|place|day|crop|month|year)
  (date|count|number|size|place|day) was wrong|i was wrong|(i )?got that wrong
  mistake|my mistake|typo|my bad|correction
`;

export const amendRules: readonly AmendRule[] = [
  {
    name: 'should be <x> not <y>',
    pattern: within`
      (should|shd|shall|must|ought to)(?! have been [a-z\d]+ of us\b) ${anyOf`
        be(?! (needing|wanting|requiring)\b)|have been|of been|a been|ve been|'ve been
        read|have said|have read|have|say
      `}
      should've (been|said|read)
    `,
  },
  {
    name: 'should have said <x>',
    pattern: /\b(?:should|meant to) (?:have |of |'ve )?(?:said|say|put|written|write|typed|type|read)\b/,
  },
  {
    name: 'I meant <x>',
    // "Was meant to water the shelf": left undone.
    pattern: either(
      within`
        (i|we|was|were) meant\b(?! to (?!(be|say|put|write|read|type|have) ))
        i mean
      `,
      /^(?:.* )?meant (?!to\b)/,
    ),
  },
  {
    name: 'make that <x>',
    pattern: new RegExp(`^${OPEN}(?:make|call) (?:that|it|them) (?!(?:a|my|our|the) (?:target|goal|aim)\\b)`),
  },
  {
    name: 'correction: <x>',
    pattern: opening`
      ${leading`sorry|oops|no|wait|please|pls`}(correction|corrected|correct|amend|amended|amendment|fix|edit|erratum)
    `,
  },
  {
    name: 'change <slot> to <x>',
    pattern: opening`
      ${ASKED}(change|update|set|alter|put|edit|amend|correct|make|switch|fix|adjust) ${SLOT}\b.*\bto
    `,
  },
  {
    name: 'put that loss down as <x>',
    overActs: true,
    pattern: within`
      down as (only |just )?(\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?=$| (please|pls|not|one|only|sorry|thanks|instead|cuttings|then|because|as)\b)
    `,
  },
  {
    name: 'change the <number> to a <number>',
    pattern: whole`
      ${leading`please|(can|could) you`}(change|correct|alter|amend|switch) (the |that )?[\da-z]+ (to|into) (an? )?[\da-z]+
    `,
  },
  {
    name: '<plant> please correct to <x>',
    pattern: opening`
      ${ASKED}(correct|change|amend|alter|edit|update|set|fix) (the |my )?plantname( (cuttings|count|number|strike))? to
      (the )?plantname( (cuttings|count|number|strike))? ${leading`please|pls|can you|could you|kindly`}(correct|change|amend|alter|edit|update|set|fix)( (it|that|this|them))? to
    `,
    overActs: true,
  },
  {
    name: 'change the <plant> strike to <x>',
    pattern: opening`
      ${ASKED}(change|update|alter|amend|correct|adjust) … ${anyOf`
        strike|count|loss|entry|note|check|number|date|batch|pot on|move|sale
      `}\b.* to
    `,
  },
  {
    name: '<x> not <y>, fix that',
    pattern: either(
      opening`${leading`oh|no|sorry|oops`}(hang on|hold on|wait) … not`,
      closing`
        not … (pls|please) (amend|correct|fix|change)( that| it)?
        not … (amend|correct|fix|change) (that|it|this)( please| pls)?
      `,
    ),
    needsNot: true,
  },
  {
    name: 'rename <plant> to <name>',
    pattern: within`
      the label (says|reads|said)
      ${anyOf`
        been calling|called
        (down|listed|labelled|labeled|logged|entered|recorded|written|have|had|got) as
      `} … (${TRULY}|should be)
      (is|are) (really|actually) called
      (is|are) called in (fact|real|reality|truth)
      (isn't|aren't|wasn't|not) ((really|actually) )?(called|named)( the)? plantname
      name (isn't|is not|wasn't|was not|should not be|shouldn't be) plantname
      (that|this|it|the|those|these) (plantname )?(isn't|is not|wasn't|aren't) plantname … it's
      (getting|got|had|saying|writing|spelling) (it|that|the name|them) wrong … plantname (is|are)(?= )
      plantname (isn't|(is|was) not|wasn't|aren't) (the|its|her|their) ((right|correct|real|proper|actual) )?name
      plantname (${TRULY}|(is|are) in fact|(was|were) (really|actually|in fact))(?= )
      (i|we|i'd|we'd|i've|we've) (called|named|labelled|labeled) (it|them|that|this|these) plantname
      (i|we|i'd|we'd|i've|we've) (wrote|put) plantname (but )?(it's|its|it is|should be)
      rename|re name|renamed|change the name|call|(be|been) down as
    `,
  },
  {
    name: 'it was <x> not <y>',
    pattern: beginning`
      ${OPEN}${anyOf`
        it|that|they|there|this|those|these|it's|that's|(the )?(date|count|number)
      `} (was|were|is|are|should|'s)? ?(actually |really |only |in fact |all )?
    `,
    needsNot: true,
  },
  {
    name: 'was actually <x>',
    pattern: /\b(?:was|were|is|are|it's|that's) (?:actually|really|in fact|of course)\b/,
  },
  { name: '<x> not <y>', pattern: new RegExp(`^${OPEN}[^,]{0,60}\\bnot\\b`), needsNot: true },
  {
    name: 'actually it was <x>',
    pattern: opening`
      ${AT_FAULT}${anyOf`
        it|that|they|there|this|the last one|that last one|was
      `} ?(was|were|is|are|should be|'s)?
    `,
  },
  {
    name: 'the <deed> count was <x>',
    overActs: true,
    pattern: opening`
      (the )?${anyOf`
        ${COUNTED} (count|number|figure|total)
        (count|number|figure|total) (of )?${COUNTED}
      `}( (for|of|on) (the )?plantname)? (was|were|is|should)
    `,
  },
  {
    name: 'that was <day>',
    pattern: opening`
      (that|it|this|the last one|that last one) was ((on|actually|really|in fact) )*${anyOf`
        yesterday|today|last|the|(mon|tues?|wed(nes)?|thu(rs?)?|fri|sat(ur)?|sun)(day)?
      `}
    `,
  },
  {
    name: 'I said <x> but it was <y>',
    pattern: within`
      (i|we|i've) ${anyOf`
        said|put|wrote|typed|logged|told you|entered|(put|wrote) down
      `} … (but|and) … (was|were|should|meant|is|are|it's|there's)
    `,
  },
  {
    name: 'I put <x> for <plant>, it was <y>',
    overActs: true,
    pattern: whole`
      ${OPEN}(i|we|i've|we've|i'd|we'd) ${anyOf`
        said|put|wrote|typed|logged|told you|entered|reported
        (put|wrote|written|got) down
      `} [a-z\d]+ (down )?(for|on|against|of) (the |my |them |those )?plantname( ${anyOf`
        cuttings|slips|strikes?|lot|batch|ones
      `})?( and| but)? ${anyOf`
        (it|that|there|they) (was|were|should be|should've been|should have been)
        it's|there's|they're|there is|there are
      `}( only| just| really| actually)? [a-z\d]+( though| sorry| actually| really)?
    `,
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

export const AMEND_CUE = opening`
  oops|whoops|no|sorry|wait|hold on|hang on|actually|omg|damn|argh|silly me|i (meant|mean)
  correction|mistake|my mistake|typo|my bad|wrong
`;
