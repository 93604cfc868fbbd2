/** Words that name somebody else, by kinship, by name or by where they live: "my sister", "Bill next door", "mum's". */
import { isSomeones } from '../grammar/other-people.js';
import { wordAt } from '../grammar/rule.js';
import { isKnown } from '../row/lexicon.js';
import type { Piece } from '../pieces/pieces.js';

export const KIN =
  /^(?:sister|brother|mum|mam|mom|dad|mother|father|nan|gran|granny|grandma|grandad|aunt|auntie|uncle|cousin|niece|nephew|neighbour|neighbor|neighbours|friend|mate|wife|husband|daughter|son|boss|colleague|she|he|they)$/;
export const FOLK =
  /^(?:chap|bloke|guy|fella|fellow|man|woman|lady|girl|lad|boy|lads|girls|ladies|crowd|people|folk|folks|someone|somebody|vicar|rector|priest|doctor|postman|teacher|headmaster|customers?|visitors?|punters?|clients?|buyers?|shoppers?|guests?|gardeners?|growers?|council|kids|children|pupils|in-laws|stranger|fool|idiot)$/;
const DESCRIBED =
  /^(?:old|young|poor|other|lovely|nice|new|same|local|the|my|our|a|an|that|this|and|but|meanwhile)$/;
/** First names that are words as well, or words of every day to the reader. */
export const WORD_NAMES =
  /^(?:alan|art|bea|bill|bob|chuck|dave|dawn|dot|drew|frank|gene|grace|hope|jack|jean|jim|joan|joy|ken|mark|may|nick|pat|ray|rob|sandy|sue|ted|will)$/;
const SOMEBODYS = /^(?:lost|has|had|wants|got|took|struck|potted|sold|reckons|says)$/;
/** "The garden centre", "Wickhurst Farm Shop". */
const FIRM =
  /^(?:centre|center|nursery|nurseries|club|society|shop|stores|stall|hall|gardens|school|council|parish|landscapes)$/;
const isFirmEnd = (piece: Piece | undefined): boolean =>
  (piece?.is === 'word' && FIRM.test(piece.text)) || (piece?.is === 'place' && FIRM.test(piece.place));

/** Where they live or were met. */
const ELSEWHERE =
  /^(?:next|over|across|down|up|at|from|on|in|two|round|opposite|along|beyond|below|above|back|abroad)$/;

/**
 * Past the words that name somebody else, by kinship, by a name that is no word, or by where they live ("Bill next
 * door", "some chap at the club"); undefined where none stands at `from`.
 */
export function pastPerson(
  pieces: readonly Piece[],
  from: number,
): { readonly to: number; readonly sure: boolean } | undefined {
  let at = from;
  const opening = pieces[at];
  if (opening?.is === 'count' && (opening.quantity.some || opening.quantity.value === 1)) at++;
  while (DESCRIBED.test(wordAt(pieces, at))) at++;
  // "Her indoors has potted on six", "'im next door".
  const indoors = wordAt(pieces, at + 1) === 'indoors' ? 2 : 0;
  if (
    /^(?:her|him|'er|'im|er|im|them)$/.test(wordAt(pieces, at)) &&
    (indoors > 0 || isNextDoor(pieces, at + 1))
  )
    return { to: at + (indoors || 3), sure: true };
  // "The neighbour's planted out already": has.
  const who = wordAt(pieces, at).replace(/'s$/, '');
  const door = who === 'next' && wordAt(pieces, at + 1) === 'door';
  const firm = isFirmEnd(pieces[at + 1]) ? 2 : isFirmEnd(pieces[at + 2]) && !isVerb(pieces[at + 1]) ? 3 : 0;
  const others =
    (/^every(?:one|body)$/.test(who) && wordAt(pieces, at + 1) === 'else') ||
    // "The garden centre".
    firm > 0;
  const near = /^(?:next door|over the|across the|down the|two doors)$/.test(
    `${wordAt(pieces, at + 1)} ${wordAt(pieces, at + 2)}`,
  );
  // "Bill lost thirty": a name that is a word too, by what only somebody does.
  const named = WORD_NAMES.test(who) && SOMEBODYS.test(wordAt(pieces, at + 1));
  const sure = door || others || near || named || KIN.test(who) || FOLK.test(who);
  // "The new Fizzwick": a plant, for all we know; "cheekily took six of hers".
  if (
    !sure &&
    (who === '' ||
      isKnown(who) ||
      /(?:ly|ed|ing)$/.test(who) ||
      /^(?:the|my|our|a|an|new|other)$/.test(wordAt(pieces, at - 1)))
  )
    return undefined;
  if (/^(?:i|we|it|they|those|these)$/.test(who)) return undefined;
  if (!door) at += others ? Math.max(2, firm) : 1;
  // A surname.
  if (wordAt(pieces, at) !== '' && !isKnown(wordAt(pieces, at))) at++;
  if (ELSEWHERE.test(wordAt(pieces, at))) {
    const end = at + 5;
    while (at < end && (wordAt(pieces, at) !== '' || pieces[at]?.is === 'place') && !isVerb(pieces[at])) at++;
  }
  return { to: at, sure };
}

const isNextDoor = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:next door|over (?:the|there)|up the|down the|across the)$/.test(
    `${wordAt(pieces, at)} ${wordAt(pieces, at + 1)}`,
  );

/** A form of doing, that no place has in its name. */
const isVerb = (piece: Piece | undefined): boolean =>
  piece?.is === 'word' && (piece.verb?.form === 'past' || /^(?:has|have|had|is|says)$/.test(piece.text));

/** "Nuala's", "mum's", "next door's"; no "today's". */
export function isPersons(word: string): boolean {
  if (!isSomeones(word)) return false;
  const who = word.replace(/'s$/, '');
  return KIN.test(who) || who === 'door' || !isKnown(who);
}
