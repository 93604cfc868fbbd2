/** "I meant Pie Dish", "it says Pie Crust but it's Pie Dish": a name much like the one that was told, put in its place. */
import { anyOf } from '../../language/phrases.js';
import { titleCase } from '../../language/pieces/told-names/name-piece.js';
import { amend } from './amending.js';
import { ofLastNote } from '../leaning/last-note.js';
import type { Sitting } from '../sitting.js';
import { LONGEST, withoutDoubts } from './doubts.js';

/** So long behind a note are words of no plant about its name. */
const JUST_MS = 15 * 60_000;

const NAME = String.raw`\p{L}[\p{L}’' -]{2,40}`;
/** "Lol its called Pie Dish not", before the name that is denied. */
const CALLED_NOT = new RegExp(
  `^(?:(?:lol|haha|oh),? )?(?:(?:it|that)(?:['’]?s| is| was) )?(?:called |named )?(?:the )?(?<name>${NAME}?),? not(?: the)?$`,
  'iu',
);
const BEHIND = String.raw`(?:,? (?:lol|haha|sorry|not .{2,40}|stupid phone|damn phone))?[.!]*`;
const ONLY_SIGHS = /^(?:,? ?(?:lol|haha|sorry))*[.!]*$/i;

/** "I meant Pie Dish", "Pie Dish I meant". */
const MEANT = new RegExp(
  `^(?:(?:i|we) meant?(?: to (?:say|put|write|type))? (?:the )?(?<name>${NAME}?)${BEHIND}|(?:the )?(?<before>${NAME}?),? (?:i|we) meant${BEHIND})$`,
  'iu',
);

const TELLS = anyOf`
  (i|we|it|you|label|tag|phone|that|i've|you've) (said|says|wrote|put|typed|heard|has|have|got|misheard)( it as)?( the)?
`;
const IS_NOT = anyOf`isn't|isnt|is not|wasn't|wasnt|was not|aren't|arent|are not`;
const LEADS = anyOf`i meant|i mean|it's|its|it is|it should be|should be|should say|that's|thats`;

/** Whether the words name the last note's new plant anew, or one of the ledger's, much like it; if so, it is put right. */
export function namesAlike(sitting: Sitting, text: string): boolean {
  if (text.length > LONGEST) return false;
  const words = withoutDoubts(
    text
      .trim()
      .replace(/’/g, "'")
      .replace(/^(?:no|sorry|oops)(?= )/i, '$&,'),
  );
  const found = MEANT.exec(words)?.groups;
  const told = found?.['name'] ?? found?.['before'];
  return told === undefined ? deniesKnown(sitting, words) : meansAlike(sitting, told);
}

function meansAlike(sitting: Sitting, name: string): boolean {
  const [only, another] = ofLastNote(sitting, JUST_MS).filter(({ entry }) =>
    /^(?:strike|receive|stock)$/.test(entry.kind),
  );
  const { variety } = (only?.entry ?? {}) as { readonly variety?: string };
  if (variety === undefined || another || !isAlike(sitting, variety, name)) return false;
  amend(sitting, { kind: 'amend', set: { variety: titleCase(name) } }, []);
  return true;
}

/** "It says Pie Crust but it's Pie Dish", "Pie Crust isn't crust, it's Pie Dish", "its pie dish not pie crust haha". */
function deniesKnown(sitting: Sitting, words: string): boolean {
  for (const variety of sitting.ledger.varieties.keys()) {
    const old = variety.toLowerCase();
    const at = words.toLowerCase().indexOf(old);
    if (at < 0) continue;
    const [before, behind] = [words.slice(0, at).trim(), words.slice(at + old.length).trim()];
    const isTold = new RegExp(`(?:^|\\b)${TELLS}$`, 'i').test(before);
    const isDenied = new RegExp(`^${IS_NOT} `, 'i').test(behind);
    // "Pie Crusts, not Pie Crust": the new name may begin with the old one.
    const last = words.toLowerCase().lastIndexOf(old);
    const isLast = ONLY_SIGHS.test(words.slice(last + old.length));
    const called = isLast ? CALLED_NOT.exec(words.slice(0, last).trim())?.groups?.['name'] : undefined;
    const right = new RegExp(`^[^.!?]{0,40}?\\b${LEADS} (?:the )?(?<name>${NAME}?)${BEHIND}$`, 'iu').exec(
      behind,
    )?.groups?.['name'];
    const name = called ?? (isTold || isDenied ? right : undefined);
    if (name === undefined || !isAlike(sitting, variety, name)) continue;
    amend(sitting, { kind: 'amend', variety, set: { variety: titleCase(name) } }, []);
    return true;
  }
  return false;
}

/** As many words, one of them shared, and no plant of the ledger: "Pie Dish", of Pie Crust. */
function isAlike({ ledger }: Sitting, variety: string, name: string): boolean {
  const [own, told] = [variety, name].map((each) => each.toLowerCase().split(/[ -]+/)) as [
    string[],
    string[],
  ];
  const isKnown = [...ledger.varieties.keys()].some((each) => each.toLowerCase() === name.toLowerCase());
  return (
    !isKnown &&
    own.length > 1 &&
    own.length === told.length &&
    own.join() !== told.join() &&
    own.some((word, n) => word.length > 2 && word === told[n])
  );
}
