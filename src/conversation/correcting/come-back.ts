/** "Two of the Moss Cardinal I lost have come back": fewer were lost than was told. */
import type { StandingEntry } from '../../ledger/ledger.js';
import { alternatives, anyOf } from '../../language/phrases.js';
import { setSlots } from '../amending.js';
import { isAbout } from '../entry-meant.js';
import type { Sitting } from '../sitting.js';
import { takeBack } from '../undoing.js';
import { LONGEST, withoutDoubts } from './doubts.js';
import { numberIn } from './few-words.js';

const LOST = anyOf`
  lost|wrote off|written off|binned|chucked|(threw|thrown) out|(gave|given) up on
  thought (was|were) (dead|gone|goners)|(told you|said|put down) (was|were|as) (dead|lost|gone)
`;
const BACK = anyOf`
  revived|recovered|rallied|perked up|pulled through|(come|came) (back|round)|alive|on the mend
  shooting|reshooting|sprouting|sprouted|resprouted|regrown|growing|grown back
`;
/** "Growing mould", "recovered, but died again". */
const AILING = alternatives`
  [^.!?]+\b${anyOf`
    mould\w*|mold\w*|fungus|fungi|mushrooms?|moss|algae|fur|fuzz|weeds?|slime|but|wrong|died|dead|not
  `}\b
`;
/** "Two of the ten", "both of them". */
const HOW_MANY = alternatives`
  (?<number>all|both|\d+|\p{L}+)( of)?( (the|those|them|my))?( ${anyOf`
    \d+|two|three|four|five|six|seven|eight|nine|ten
  `})?( of)?( (the|those|them|my))?
`;
const COME_BACK = new RegExp(
  `^${alternatives`
    (good news[,:!.]? )?${HOW_MANY} ?(?<which>.{0,40}?) ?${anyOf`
      dead ones?
      (that |which )?(i|we)( had|['’]d)? ${LOST}
    `}( to \p{L}+)? ((have|has|are|is)( actually| all| both| now)? )?${BACK}\b(?!${AILING})[^.!?]{0,40}[.!]?
  `}$`,
  'iu',
);

/** Whether the text says that some of what was lost live, and the loss is put right. */
export function comesBack(sitting: Sitting, text: string): boolean {
  const { number, which = '' } =
    (text.length > LONGEST ? null : COME_BACK.exec(withoutDoubts(text.trim())))?.groups ?? {};
  if (number === undefined) return false;
  const { ledger } = sitting;
  const variety = [...ledger.varieties.keys()].find(
    (name) => name.toLowerCase() === which.trim().toLowerCase(),
  );
  if (variety === undefined && !/^(?:ones?)?$/i.test(which.trim())) return false;
  const loss = ledger.standing.findLast(
    (each) => each.entry.kind === 'loss' && (variety === undefined || isAbout(ledger, each, { variety })),
  );
  const left = loss && lostStill(sitting, loss, number);
  if (!loss || left === undefined || left < 0) return false;
  if (left === 0) takeBack(sitting, [loss.line]);
  else setSlots(sitting, [loss], { count: left });
  return true;
}

/** How many of the loss stay lost; undefined where that is not plain. */
function lostStill(sitting: Sitting, { entry }: StandingEntry, number: string): number | undefined {
  const { count } = entry as { readonly count?: unknown };
  if (/^(?:all|both)$/i.test(number)) return /^both$/i.test(number) && count !== 2 ? undefined : 0;
  const back = numberIn(sitting, number);
  return back === null || typeof count !== 'number' ? undefined : count - back;
}
