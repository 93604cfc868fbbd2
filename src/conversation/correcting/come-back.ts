/** "Two of the Moss Cardinal I lost have come back": fewer were lost than was told. */
import type { StandingEntry } from '../../ledger/ledger.js';
import { alternatives, anyOf } from '../../language/phrases.js';
import { normalise } from '../../language/row/normalise.js';
import { setSlots } from './amending.js';
import { withWholeNames } from '../../language/row/whole-names.js';
import { isAbout } from './entry-meant.js';
import { noteOf } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import { takeBack } from './undoing.js';
import { LONGEST, withoutDoubts } from './doubts.js';
import { numberIn } from './few-words.js';

const LOST = anyOf`
  lost|wrote off|written off|binned|chucked|(threw|thrown) out|(gave|given) up on
  thought (was|were) (dead|gone|goners)|(told you|said|put down) (was|were|as|had) (dead|lost|gone|died)
`;
const BACK = anyOf`
  revived|recovered|rallied|perked up|pulled through|(come|came) (back|round)|alive|on the mend|fine|ok|okay|all right|alright|green
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
  (the (?=\d|two\b|three\b|four\b|five\b|six\b))?(?<number>all|both|\d+|\p{L}+)( of)?( (the|those|them|my))?( ${anyOf`
    \d+|two|three|four|five|six|seven|eight|nine|ten
  `})?( of)?( (the|those|them|my))?
`;
/** Cheap to ask, before names are made whole for what most texts do not say. */
const SAYS_BACK = new RegExp(String.raw`\b${BACK}\b`, 'iu');
const COME_BACK = new RegExp(
  `^${alternatives`
    (good news[,:!.]? |(i |we )?(found|spotted|noticed) )?${HOW_MANY} ?(?<which>.{0,40}?) ?${anyOf`
      dead ones?
      (that |which )?(i|we)( had|['’]d)? ${LOST}
    `}( to \p{L}+)? ((have|has|are|is)( actually| all| both| now)? )?(still )?${BACK}\b(?!${AILING})[^.!?]{0,40}[.!]?
  `}$`,
  'iu',
);

/** "Bob brought one back", "Bridie gave me two of them back". */
const RETURNED =
  /^(?<who>(?:(?:my|the) )?\p{L}[\p{L}'’-]*(?: \p{L}[\p{L}'’-]*)?)(?: (?:has|had|have))? (?:brought|gave|given|sent|handed|returned|fetched)(?: me| us)? (?<number>the (?:rest|others|lot|whole lot)|them all|all of them|\d+|\p{L}+)(?: of (?:them|those|these|the (?<which>[^,.!?]{2,40}?)))?(?: back| again| home)?[.!]?$/iu;

/** "2 came back unsold so 28". */
const UNSOLD =
  /^(?<number>\d+|\p{L}+)(?: of (?:them|those))? (?:(?:came|come|went) back|(?:was|were) returned|returned)(?: home)?(?: unsold)?(?:,? so (?:that['’]s |it['’]s |it was |makes )?(?:only )?(?<left>\d+|\p{L}+)(?: sold| in all| altogether)?)?[.!]?$/iu;

/** Whether some of what was last sold or given came back, and that is put right. */
function comesBackUnsold(sitting: Sitting, words: string): boolean {
  const { number = '', left } = UNSOLD.exec(words)?.groups ?? {};
  const last = sitting.ledger.standing.at(-1);
  if (number === '' || last?.entry.kind !== 'dispatch') return false;
  const still = lostStill(sitting, last, number);
  if (still === undefined || still < 1 || (left !== undefined && numberIn(sitting, left) !== still))
    return false;
  return setSlots(sitting, [last], { count: still });
}

/** Whether somebody gave back some of what they had, and the gift is put right. */
export function givesBack(sitting: Sitting, text: string): boolean {
  const words = withoutDoubts(text.trim());
  if (text.length <= LONGEST && comesBackUnsold(sitting, words)) return true;
  const { who = '', number = '' } = (text.length > LONGEST ? null : RETURNED.exec(words))?.groups ?? {};
  if (who === '' || !/\b(?:back|returned)\b/i.test(words)) return false;
  const [last = ''] = who.toLowerCase().split(' ').slice(-1);
  const isPronoun = /^(?:he|she|they)$/i.test(who);
  const gift = sitting.ledger.standing.findLast(
    ({ entry }) =>
      entry.kind === 'dispatch' &&
      (isPronoun ? entry.to !== undefined : (entry.to ?? '').toLowerCase().split(/\s+/).includes(last)),
  );
  const left =
    gift &&
    lostStill(
      sitting,
      gift,
      /^(?:them|it|all|them all|all of them|the (?:rest|others|lot|whole lot))$/i.test(number)
        ? 'all'
        : number,
    );
  if (!gift || left === undefined || left < 0) return false;
  if (left === 0) takeBack(sitting, [gift.line]);
  else setSlots(sitting, [gift], { count: left });
  return true;
}

/** "One of those Moss Cardinal has come back, so 2 lost": with what is lost still. */
const SO_MANY_LOST =
  /^(?<number>\d+|\p{L}+)(?: of)? (?:those |the |them )?(?:(?:two|three|four|five|six|\d+) )?(?<which>.{0,40}?) ?(?:(?:has|have|had|['’]s) )?(?:(?:come|came) (?:back|round)|pulled through|revived|recovered|survived)[^,;]{0,30}[,;]? so (?:it['’]s |that['’]s |there['’]s )?(?:only |just )?(?:the )?(?<left>\d+|\p{L}+)(?: (?:lost|dead|gone|died))?[.!]?$/iu;

/** So long after a loss was told is what only droops of it. */
const DROOPS_MS = 3 * 24 * 3_600_000;
/** "Ah no, she's only drooping, leave her in": what was given up lives. */
const ONLY_DROOPS =
  /^(?:(?:ah|oh|och|well)[, ]+)?(?:no|wait|hang on|hold on|actually|false alarm)[, ]+(?:it|she|he|they)(?:['’]s|['’]re| is| are| was| were) (?:only|just) (?:drooping|droopy|sulking|thirsty|limp|dry|resting|asleep|dormant|wilting|wilted)(?:(?:[,.!]| after| from| with) [^?]{0,40})?[.!]?$/i;

/** "Nope, my mistake, none dead", a moment after a loss. */
const NONE_DEAD =
  /^(?:(?:ah|oh|no|nope|sorry|wait|hang on|actually|ignore me)[, ]+)*(?:my (?:mistake|bad|error)|false alarm|i was wrong|i got that wrong)[,.! ]+(?:none|nothing|not one|no plants)(?: of (?:them|those|it))?(?:['’]s| is| are| was| were| has| have)? ?(?:actually )?(?:dead|died|lost|gone)[.!]?$/i;

function onlyDroops(sitting: Sitting, text: string): boolean {
  const { ledger, origin, world } = sitting;
  const last = ledger.standing.at(-1);
  if (!last || text.length > LONGEST || ![ONLY_DROOPS, NONE_DEAD].some((form) => form.test(text.trim())))
    return false;
  const isHere = last.journal.source?.chat === world.chat && origin.at - last.journal.at <= DROOPS_MS;
  if (last.entry.kind !== 'loss' || !isHere) return false;
  takeBack(sitting, [last.line]);
  return true;
}

/** "Two of those might pull through so call it one lost", "make it one lost": what is lost still, of a loss told lately. */
const MAY_LIVE =
  /^(?:(?:(?:no|well|oh|actually|hang on|wait)[, ]+)*(?:\d+|\p{L}+)(?: of (?:them|those|these|the \p{L}+))? (?:might|may|could|should|look|looks|seem|seems|will)\b[^.?!;]{3,50}?,?(?: actually)?,? so )?(?<said>call it|make it|make that|put(?: it)? down as|that['’]s|it['’]s)? ?(?:only |just )?(?:the )?(?<number>\d+|\p{L}+)(?<lost> (?:lost|dead|gone))?[.!]?$/iu;

function mayLive(sitting: Sitting, text: string): boolean {
  const words = text.trim();
  const { said, number = '', lost } = (text.length > LONGEST ? null : MAY_LIVE.exec(words))?.groups ?? {};
  // "One dead" alone, and "make it one" of whatever was told, are read as they are.
  if (
    number === '' ||
    !(/ so /i.test(words) || (lost !== undefined && /^(?:call|make|put)/i.test(said ?? '')))
  )
    return false;
  const { ledger, origin, world } = sitting;
  const last = ledger.standing.at(-1);
  if (last?.entry.kind !== 'loss' || last.journal.source?.chat !== world.chat) return false;
  const { count } = last.entry as { readonly count?: unknown };
  const still = numberIn(sitting, number);
  const isLess = still !== null && typeof count === 'number' && still > 0 && still < count;
  return isLess && origin.at - last.journal.at <= DROOPS_MS && setSlots(sitting, [last], { count: still });
}

/** Whether the text says that some of what was lost live, and the loss is put right. */
export function comesBack(sitting: Sitting, text: string): boolean {
  if (onlyDroops(sitting, text) || mayLive(sitting, text)) return true;
  const {
    number,
    which = '',
    left: told,
  } = (text.length > LONGEST || !SAYS_BACK.test(normalise(text))
    ? null
    : saidBack(withoutDoubts(withWholeNames(noteOf(sitting, text)).trim()))
  )?.groups ?? {};
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
  if (told !== undefined && numberIn(sitting, told) !== left) return false;
  if (left === 0) takeBack(sitting, [loss.line]);
  else setSlots(sitting, [loss], { count: left });
  return true;
}

const saidBack = (words: string): RegExpExecArray | null => COME_BACK.exec(words) ?? SO_MANY_LOST.exec(words);

/** How many of the loss stay lost; undefined where that is not plain. */
function lostStill(sitting: Sitting, { entry }: StandingEntry, number: string): number | undefined {
  const { count } = entry as { readonly count?: unknown };
  if (/^(?:all|both)$/i.test(number)) return /^both$/i.test(number) && count !== 2 ? undefined : 0;
  const back = numberIn(sitting, number);
  return back === null || typeof count !== 'number' ? undefined : count - back;
}
