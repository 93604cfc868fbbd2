/** Words behind which a name stands: "a dahlia called …", "known as …", "variety …". */
import { crops, phraseAt } from '../../row/lexicon.js';
import { isSmallName, namesSort } from './small-letters.js';
import { textAt, type Token } from '../../row/tokens.js';

export interface Announcement {
  /** Like the phrase. */
  readonly name: string;
  /** Notes in which "Tin Whistler" is told by it. */
  readonly phrasings: readonly string[];
  readonly mustNot?: readonly string[];
  /** Whether the word at `at` is the last that stands before a name. */
  readonly endsAt: (tokens: readonly Token[], at: number) => boolean;
}

export const announcements: readonly Announcement[] = [
  {
    name: 'called <name>',
    phrasings: [
      'Took six of a dahlia called Tin Whistler',
      'Struck four of a salvia christened tin whistler',
    ],
    // A visit.
    mustNot: ['Aunty Joan called over with six plugs'],
    endsAt: (tokens, at) => CALLED.test(textAt(tokens, at)),
  },
  {
    name: 'name is <name>',
    phrasings: ['Took six dahlia tips, name is tin whistler'],
    endsAt: (tokens, at) => IS.test(textAt(tokens, at)) && textAt(tokens, at - 1) === 'name',
  },
  {
    name: "name's <name>",
    phrasings: ["Took six dahlia tips, name's tin whistler"],
    endsAt: (tokens, at) => textAt(tokens, at) === "name's",
  },
  {
    name: 'the sort is <name>',
    phrasings: [
      'Took six dahlia tips, the sort is Tin Whistler',
      'Took six dahlia tips, the variety is tin whistler and they are in the porch',
    ],
    mustNot: [
      'Took six dahlia tips, the variety is unknown',
      'Took six dahlia tips, the variety is new to me',
      'Took six dahlia tips, the variety is not marked',
      'Took six dahlia tips, the variety is hard to tell',
    ],
    endsAt: (tokens, at) =>
      IS.test(textAt(tokens, at)) &&
      /^(?:variety|cultivar|sort)$/.test(textAt(tokens, at - 1)) &&
      (isCapital(tokens, at + 1) || namesSort(tokens, at + 1)),
  },
  {
    name: ', variety <Name>',
    phrasings: ['84 gazania plugs in, variety Tin Whistler', 'Took six dahlia tips (cv: Tin Whistler)'],
    endsAt: (tokens, at) =>
      /^(?:name|sorte|variety|var|cultivar|cv)$/.test(textAt(tokens, at)) &&
      (/^[,(-]$/.test(textAt(tokens, at - 1))
        ? isCapital(tokens, /^[:.]$/.test(textAt(tokens, at + 1)) ? at + 2 : at + 1) ||
          isSmallName(tokens, at + 1)
        : /^(?:variety|cultivar)$/.test(textAt(tokens, at)) &&
          /^(?:cuttings|plugs|tips|slips|today|yesterday|morning|afternoon|plants)$/.test(
            textAt(tokens, at - 1),
          ) &&
          isSmallName(tokens, at + 1)),
  },
  {
    name: 'we call <name>',
    phrasings: ['Took six of the salvia we call Tin Whistler', 'Took six of a salvia we call tin whistler'],
    // A visit, a telephone.
    mustNot: ['Took six salvia before we call Doreen', 'Took six salvia tips, we call round on Friday'],
    endsAt: (tokens, at) =>
      textAt(tokens, at) === 'call' &&
      /^(?:we|i|they|people|all)$/.test(textAt(tokens, at - 1)) &&
      ((isCapital(tokens, at + 1) && textAt(tokens, at - 2) !== 'before') || isCropAt(tokens, at - 2)),
  },
  {
    name: 'the label says <name>',
    phrasings: [
      'Took six salvia tips, the label says tin whistler',
      'Took six salvia tips think its tin whistler',
    ],
    mustNot: [
      'Took six salvia tips, label says keep frost free',
      "Took six salvia tips, I think it's red spider mite",
    ],
    endsAt: (tokens, at) =>
      (/^(?:says|said|reads)$/.test(textAt(tokens, at))
        ? /^(?:label|tag|ticket|packet|sticker)$/.test(textAt(tokens, at - 1))
        : /^(?:it's|its)$/.test(textAt(tokens, at)) &&
          /^(?:think|thinks|reckon|reckons|says|apparently)$/.test(textAt(tokens, at - 1))) &&
      isSmallName(tokens, at + 1),
  },
  {
    name: 'goes by <Name>',
    phrasings: ['Took six of a salvia that goes by Tin Whistler'],
    mustNot: ['Took six of the salvia as Doreen goes by on Fridays'],
    endsAt: (tokens, at) =>
      textAt(tokens, at) === 'by' &&
      /^(?:goes|go|going)$/.test(textAt(tokens, at - 1)) &&
      isCapital(tokens, at + 1),
  },
  {
    name: 'known as <Name>',
    phrasings: ['Took six of the salvia known as Tin Whistler'],
    endsAt: (tokens, at) =>
      textAt(tokens, at) === 'as' &&
      /^(?:known|sold|listed|labelled)$/.test(textAt(tokens, at - 1)) &&
      isCapital(tokens, at + 1),
  },
  {
    name: 'calling it <Name>',
    phrasings: ['Took six of the seedling he is calling Tin Whistler'],
    // A telephone.
    mustNot: ['Ken is calling Doreen about the six plugs'],
    endsAt: (tokens, at) =>
      /^(?:calling|naming|christening)$/.test(textAt(tokens, at)) &&
      (isCapital(tokens, textAt(tokens, at + 1) === 'it' ? at + 2 : at + 1) || isSmallName(tokens, at + 1)) &&
      isOfPlant(tokens, at),
  },
  {
    name: 'by the name of <name>',
    phrasings: [
      'Took six of a dahlia by the name of tin whistler',
      'Six tips of a dahlia by name of Tin Whistler',
      'Took six of a dahlia, name of tin whistler',
      'Took six dahlia cuttings name of tin whistler',
    ],
    endsAt: (tokens, at) =>
      textAt(tokens, at) === 'of' &&
      textAt(tokens, at - 1) === 'name' &&
      (textAt(tokens, at - 3) === 'by' ||
        textAt(tokens, at - 2) === ',' ||
        /^(?:cuttings|plugs|tips|slips|plants|aswell|too|well)$/.test(textAt(tokens, at - 2)) ||
        isCropAt(tokens, at - 2) ||
        (isCapital(tokens, at + 1) && textAt(tokens, at - 2) !== 'the')),
  },
  {
    name: 'with the name <Name>',
    phrasings: ['Took six of a dahlia with the name Tin Whistler'],
    mustNot: ['Six dahlia pots with the name rubbed off'],
    endsAt: (tokens, at) =>
      textAt(tokens, at) === 'name' &&
      textAt(tokens, textAt(tokens, at - 1) === 'the' ? at - 2 : at - 1) === 'with' &&
      (isCapital(tokens, at + 1) || isSmallName(tokens, at + 1)),
  },
];

const CALLED = /^(?:called|named|labelled|labeled|calls|christened|dubbed|nicknamed|titled)$/;
const IS = /^(?:is|was)$/;

const isCapital = (tokens: readonly Token[], at: number): boolean => tokens[at]?.capital === true;

const isCropAt = (tokens: readonly Token[], at: number): boolean =>
  phraseAt(crops, [textAt(tokens, at)], 0) !== undefined;

/** Whether the words shortly before `at` speak of a plant: "the one", "a seedling", "a dahlia". */
function isOfPlant(tokens: readonly Token[], at: number): boolean {
  for (let before = at - 1; before > at - 7 && tokens[before]?.is === 'word'; before--) {
    const word = textAt(tokens, before);
    if (/^(?:one|which|what|that|seedling|sport|variety|ones)$/.test(word) || phraseAt(crops, [word], 0))
      return true;
  }
  return false;
}
