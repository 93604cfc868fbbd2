/** Where what others said of plants begins, or what they would like: no part of what was done, nor of its day. */
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { pastPerson } from '../../mood/somebody-else.js';

const SAYS = whole`
  said|says|asked|asks|wants|wanted|reckons|reckoned|hopes|hoped|wondered|wonders|fancied|fancies|thinks|thought|told|tells
  swears|loved|loves|likes|liked|admired|enquired
`;
const SAYING = whole`asking|wanting|saying|hoping|wondering`;
const HELPS = whole`has|had|also|even|already|was|were|is|are|kept|been`;

/** "… and a lady asked for more next year", "… to Bridget she said her mother had five", "… to a lady who wants two in June". */
export function saysSomethingAt(pieces: readonly Piece[], at: number): boolean {
  const word = wordAt(pieces, at);
  if (word === 'who') return SAYS.test(wordAt(pieces, at + 1));
  if (/^(?:she|he|they)$/.test(word))
    // "The three she asked for on Tuesday": which.
    return (
      SAYS.test(wordAt(pieces, at + 1)) &&
      !/^(?:plant|count)$/.test(pieces[at - 1]?.is ?? '') &&
      !/^(?:ones|that|which|who|as|like)$/.test(wordAt(pieces, at - 1))
    );
  const isLed = /^(?:and|but|though|while)$/.test(word);
  if (!isLed && pieces[at - 1]?.is !== 'break') return false;
  const person = pastPerson(pieces, isLed ? at + 1 : at);
  if (person === undefined) return false;
  let verb = person.to;
  while (HELPS.test(wordAt(pieces, verb))) verb++;
  return SAYS.test(wordAt(pieces, verb)) || SAYING.test(wordAt(pieces, verb));
}
