/** Words that only lead up to what is told: "forgot to write this one down twelve Salt Harrier cuttings went in", "delivery in from the Grange 40 plugs". */
import { wordAt } from '../../grammar/rule.js';
import { anyOf, whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { tellsDeed } from './deeds.js';
import type { MarkMeant } from './record.js';

const WRITE = anyOf`
  write|jot|note|log|mention|enter|record|say|tell you|put|text|send|report|add|wrote|jotted|noted|logged|mentioned|entered
  recorded|said|told you|texted|sent|reported|added
`;

/** Talk of writing, of the grower and of whoever reads. */
const LEADS_UP = whole`
  (i |i'd |i've |we )?(forgot to|never|nearly forgot to|almost forgot to|clean forgot to|should have|didn't|did not|meant to) ${WRITE}( (this|that|it|these|them|about))?( one| ones| lot| number)?( down| up| in| before| earlier)?
  (i |we )?(couldn't|can't|could not) (help|stop|resist) (myself|it|ourselves)
  (i )?hope (you're|you are|your|all's|all is|everything's) (well|ok|okay|good|keeping well|having a good day|all well)
  (silly|daft|lucky|clever|poor|typical) (me|old me|us)
  (she|he|they|it) (only )?(wants|wanted|needs|needed|asked for|asks for)( only| just)? number( of them| of those)?
  (good|bad|sad|great|better|mixed) (news|day)( today| this morning| here)?
  (right |ok |okay |so |well |now |first |next |lastly |finally )?(job|jobs|work) done( today)?
  (a |what a |it's been a |been a )?(long|busy|good|lovely|hard|productive|proper) (day|morning|afternoon|evening|session)( of it| all round)?
  (i |we )?forgot (to (water|mist|shade|vent|feed|cover|open up|close up)( them| it)?|the (can|vents|fleece|lids?|shading))
  (late|another|one more|new|quick) (entry|one|note|update)( for the (book|log|record|diary))?
  (i )?(just |only just )?found (an|the|my|this) (old |lost )?(label|tag|note|list|diary)( (in|on|under|behind)( (the|a|my))? place)?
  (one|two) for the (book|log|record|diary|books)
`;

/** "Delivery in from the Grange", "council order": what was brought, or asked for, is listed behind it. */
const HEADS_LIST = whole`
  ([a-z'’&-]+ ){0,3}(order|delivery|deliveries|(trade|shop|sales|front) (counter|place)|counter|van|lorry|parcel|post)( today| in| (in |arrived |here )?from( [a-z'’&-]+){1,3})?
`;

/** What the whole stretch says, where it names no plant, place or day. */
function wordsOf(before: readonly Piece[]): string | undefined {
  const words = before.map((piece) =>
    piece.is === 'word' ? piece.text : piece.is === 'count' ? 'number' : piece.is === 'place' ? 'place' : '',
  );
  return words.length > 8 || words.includes('') ? undefined : words.join(' ');
}

/** A number of a plant. */
const isCounted = (behind: readonly Piece[]): boolean =>
  behind[0]?.is === 'count' && behind.slice(1, 5).some(({ is }) => is === 'plant');

const ASKS_FIRST = whole`
  (jog my memory|(go on )?(please )?remind (me|us|an old (fool|man|woman))|quick question|question|(a )?question for you|just wondering|tell me|help me out|i('ve| have)? forgot(ten)?)
`;

/** Something was done to what is counted there, and not "forgot to water three Salt Harrier". */
const isTold = (behind: readonly Piece[]): boolean =>
  behind.slice(0, 8).some((piece) => piece.is === 'word' && piece.verb?.form === 'past');

export const openersLeft: readonly MarkMeant[] = [
  {
    // What is written there, and no deed.
    name: 'packet sow at 18',
    mark: ':',
    begins: ['word'],
    when: (before, behind) =>
      /^(?:the |seed |my )*(?:packet|label|leaflet|website|forum|book|catalogue|instructions)$/.test(
        wordsOf(before) ?? '',
      ) && /^(?:sow|pinch|take|keep|prick|water|pot|plant|grow|feed|cover|harden)$/.test(wordAt(behind, 0)),
    phrasings: [['packet sow at 18C', 'packet: sow at 18C']],
  },
  {
    name: 'jog my memory <question>',
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      /^(?:what|when|where|how|which)$/.test(wordAt(behind, 0)) &&
      /^(?:did|do|are|is|was|were|many|have|has)$/.test(wordAt(behind, 1)) &&
      ASKS_FIRST.test(wordsOf(before) ?? ''),
    phrasings: [
      [
        'jog my memory what did I do with the Salt Harrier in May?',
        'jog my memory, what did I do with the Salt Harrier in May?',
      ],
    ],
    mustNot: ['remind me what I did with the Salt Harrier'],
  },
  {
    name: 'forgot to write this one down <count> <plant>',
    mark: '.',
    begins: ['count', 'word', 'plant'],
    when: (before, behind) => {
      const words = wordsOf(before);
      if (
        words === undefined ||
        (behind[0]?.is === 'count' && behind[1]?.is === 'count') ||
        !(behind[0]?.is === 'word' ? tellsDeed(behind[0]) : isTold(behind))
      )
        return false;
      return LEADS_UP.test(words);
    },
    phrasings: [
      [
        'forgot to jot this one 12 Salt Harrier cuttings went into the greenhouse',
        'forgot to jot this one. 12 Salt Harrier cuttings went into the greenhouse',
      ],
      ['never wrote this up 20 Salt Harrier struck', 'never wrote this up. 20 Salt Harrier struck'],
      [
        "couldn't help myself snipped several off the Salt Harrier",
        "couldn't help myself. snipped several off the Salt Harrier",
      ],
      [
        'she wants only two gave 2 Salt Harrier to Maureen',
        'she wants only two. gave 2 Salt Harrier to Maureen',
      ],
    ],
    mustNot: [
      'forgot to water Salt Harrier',
      'forgot to water three Salt Harrier',
      'she wants two Salt Harrier',
      "couldn't resist Salt Harrier cuttings and took six",
    ],
  },
  {
    name: 'delivery in from <giver> <count> <plant>',
    mark: ':',
    begins: ['count'],
    when: (before, behind) =>
      isCounted(behind) &&
      !before.some((piece) => piece.is === 'word' && piece.verb?.form === 'past') &&
      HEADS_LIST.test(wordsOf(before) ?? '') &&
      !before.some((_, at) => /^(?:to|i|we|need|want|please|must|for)$/.test(wordAt(before, at))),
    phrasings: [
      ['delivery in 40 plugs Salt Harrier', 'delivery in: 40 plugs Salt Harrier'],
      [
        'delivery in from brackwater 144 Salt Harrier plugs',
        'delivery in from brackwater: 144 Salt Harrier plugs',
      ],
      ['council order 500 Salt Harrier wanted by May', 'council order: 500 Salt Harrier wanted by May'],
    ],
    mustNot: ['to order 40 Salt Harrier', 'collected the order 40 Salt Harrier'],
  },
];
