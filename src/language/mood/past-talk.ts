/** Talk that denies something of its own before a deed told anew: "can't sleep, fed the Salt Harrier". */
import { wordAt } from '../grammar/rule.js';
import { DENIAL, REPORT, SUPPOSED } from './words.js';
import type { Piece } from '../pieces/pieces.js';

/** Words between a break and a deed told anew. */
const ANEW = /^(?:i|we|i've|we've|have|just|also|then|and|so|but|only|still|anyway|anyways|finally)$/;
/** What still waits for its verb behind an aside ("I haven't, sadly, fed them"), or denies alone ("not, never"). */
const WAITING =
  /^(?:not|never|no|cannot|without|nearly|almost|haven't|hasn't|hadn't|didn't|don't|doesn't|won't|can't|couldn't|isn't|aren't|wasn't|weren't|ain't|ever|yet|have|had|has|been|to|or|nor|and|but)$/;
/** "Not yet, fed them": an answer by itself, whatever was asked. */
const NOT_YET = /^(?:no |nope |sorry )?(?:not|none|nothing)(?: just| quite)? yet$/;
/** Doubt that hangs over what follows ("can't remember, took 4 or so"). */
const DOUBT = /^(?:sure|certain|remember|recall|know|idea|think|clue|positive)$/;

/**
 * "Can't sleep, fed the Salt Harrier": past a sentence of talk that denies something of its own, no plant and no number
 * in it, where a deed is told behind its break; else the start.
 */
export function pastTalk(pieces: readonly Piece[], start: number, head: number): number {
  const from = pastNo(pieces, start);
  let at = head;
  while (
    at > from &&
    (ANEW.test(wordAt(pieces, at - 1)) || /^(?:when|count)$/.test(pieces[at - 1]?.is ?? ''))
  )
    at--;
  // "Not well watered" is one telling, "not well, one dead" are two.
  if ((at < head || pieces[at - 1]?.is === 'break') && isTakenIll(pieces.slice(from, at))) return at;
  if (pieces[at - 1]?.is !== 'break') return from;
  const talk = pieces.slice(from, at - 1);
  const words = talk.flatMap((piece) => (piece.is === 'word' ? [piece.text] : []));
  // Of two breaks the first may open an aside ("I haven't so far, mind you, fed them").
  const isTalk =
    words.length > 1 &&
    words.some((word) => DENIAL.test(word)) &&
    (NOT_YET.test(words.join(' ')) || !WAITING.test(words.at(-1) ?? '')) &&
    // "No idea why, lost three": that they were lost is no doubt.
    (/^(?:why|how)$/.test(words.at(-1) ?? '') || !words.some((word) => DOUBT.test(word))) &&
    !words.some((word) => SUPPOSED.test(word) || REPORT.test(word)) &&
    talk.every(({ is }) => is === 'word' || is === 'when');
  return isTalk ? at : from;
}

/** "Salt Harrier didn't like the heat, lost two", "… not at all happy, one dead": how plants took something, and no deed. */
function isTakenIll(talk: readonly Piece[]): boolean {
  const not = talk.findIndex((_, at) => DENIAL.test(wordAt(talk, at)));
  let how = not + 1;
  while (/^(?:at|all|really|very|too|much|so|a|bit)$/.test(wordAt(talk, how)) || talk[how]?.is === 'count')
    how++;
  return (
    not > 0 &&
    talk[not - 1]?.is !== 'break' &&
    talk.slice(0, not).filter(({ is }) => is === 'plant').length === 1 &&
    TOOK_IT.test(wordAt(talk, how)) &&
    talk
      .slice(not)
      .every(
        (piece) => piece.is === 'break' || piece.is === 'word' || piece.is === 'when' || piece.is === 'place',
      ) &&
    !talk.some((_, at) => SUPPOSED.test(wordAt(talk, at)) || REPORT.test(wordAt(talk, at)))
  );
}
const TOOK_IT =
  /^(?:like|liked|love|loved|enjoy|enjoyed|enjoying|appreciate|appreciated|care|fancy|cope|coped|coping|happy|keen|impressed|thrilled|well|good|great|clever|hot)$/;

/** "No, I potted on five", "no no I gave two": past a "no" that denies what was said before. */
function pastNo(pieces: readonly Piece[], from: number): number {
  let at = from;
  while (NO.test(wordAt(pieces, at))) at++;
  if (at === from) return from;
  if (pieces[at]?.is === 'break') return at + 1;
  return /^(?:i|we|i've|we've)$/.test(wordAt(pieces, at)) ? at : from;
}
const NO = /^(?:no|nope|nah|oh|ah|wait|sorry|oops|actually|well)$/;
