/** Sentences that give a variety another name. */
import { wordAt } from '../grammar/rule.js';
import { isKnown } from '../row/lexicon.js';
import { type NamePutRight, nameDenied } from './name-denied.js';
import { anyOf } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { putInAs } from './put-in-as.js';
import type { Proposal } from '../proposal.js';
import { plantsIn, type Sentence, textOf, trimmed } from '../sentences/sentences.js';
import { titleCase } from '../pieces/told-names/name-piece.js';
import type { Utterance } from '../pieces/utterance.js';

/** "… to Pale Jessie please"; with a capital it is of the name. */
const BIDDING =
  / (?:please|pls|plz|thanks|would you|will you|could you|can you|from now on|instead|so (?:please |can you |could you )?(?:rename|change|call|put|fix) (?:it|them|that))\b.*$/;

/** "… new bellringer i misread the label", "… foggy kitty the phone heard me wrong": why, told without a mark. */
const REASON = new RegExp(
  ` ${anyOf`
    (i|we|id|i'd|i've|ive|just|sorry) (just )?(misread|misheard|mistook|muddled|read|got|had|wrote|couldn't|cant|can't|found|looked|checked)
    (the|my|this|stupid|blasted|blooming) (phone|tablet|keyboard|dictation|computer)('s)? (heard|misheard|changed|wrote|put|got|had|did|can't|cant)
    (bloody |damn |stupid )?(autocorrect|predictive text)
  `}\\b.*$`,
);

/** The rule of `grammar/amend.ts` that these sentences fit. */
export const RENAME = 'rename <plant> to <name>';

/** "Rename Pail Jessie to Pale Jessie, misread the label"; nothing where old or new name is missing. */
export function proposeRename(sentence: Sentence, utterance: Utterance): Proposal | undefined {
  const { pieces } = sentence;
  const denied = nameDenied(sentence, utterance);
  if (denied) return renamed(denied);
  const plants = plantsIn(pieces);
  const old = plants[0];
  if (!old) return undefined;
  const calledIt = /^(?:it|them|that|this|these|wrote|put)$/.test(wordAt(pieces, pieces.indexOf(old) - 1));
  const to = pieces.findIndex(
    (piece, at) =>
      piece.from >= old.to &&
      // "It's not Pail Jessie, the label says Pale Jessie".
      (/^(?:to|as|into)$/.test(wordAt(pieces, at)) ||
        // "The one I've been calling Tin Parson is really Zinc Parson".
        (wordAt(pieces, at) === 'called' && /^(?:really|actually|be)$/.test(wordAt(pieces, at - 1))) ||
        (/^(?:really|actually)$/.test(wordAt(pieces, at)) &&
          wordAt(pieces, at + 1) !== 'called' &&
          /^(?:is|are|was|were)$/.test(wordAt(pieces, at - 1))) ||
        // "I called it Tin Parson, it's Zinc Parson".
        (calledIt && saysWhatItIs(pieces, at)) ||
        (/^(?:fact|real|reality|truth)$/.test(wordAt(pieces, at)) && wordAt(pieces, at - 1) === 'in') ||
        (/^(?:says|reads|said)$/.test(wordAt(pieces, at)) &&
          wordAt(pieces, at - 1) === 'label' &&
          // "Took five cuttings of a salvia, the label says …": told, not put right.
          !pieces.some(({ is, to }) => is === 'count' && to <= old.from))) &&
      (wordAt(pieces, at + 1) !== 'be' || wordAt(pieces, at - 1) === 'out'),
  );
  if (to < 0) return undefined;
  // "Rename it to Pale Jessie, misread the label": the reason is no part of the name.
  const stop = pieces.findIndex(({ is }, at) => at > to + 1 && is === 'break');
  const told = pieces.slice(to + 1, stop < 0 ? undefined : stop);
  const name = trimmed(textOf(told, utterance))
    .replace(/^(?:the|be) /i, '')
    .replace(BIDDING, '')
    .replace(REASON, '');
  // "Should be down as 13"; no "3 Sisters".
  if (name === '' || /^\d+(?!\d| \p{Lu})/u.test(name)) return undefined;
  const isPlain =
    !/\b(?:call|called|calling|rename|renamed|label|labelled|name|(?:listed|logged|entered|recorded|written|down) as)\b/.test(
      sentence.line,
    );
  const [known] = told;
  // "Should be down as 14 March": a day.
  if (known?.is === 'when') return undefined;
  if (isPlain && !(known?.is === 'plant' && known.known && told.length === 1)) {
    // "Are actually Rooting Well": how they do.
    if (/^(?:are|were)$/.test(wordAt(pieces, to - 1))) return undefined;
    if (!soundsLikeName(name, textOf([old], utterance), MISREAD.test(sentence.line))) return undefined;
  }
  const variety = knownAs(told, name);
  return {
    kind: 'amend',
    rule: RENAME,
    slots: { set: { variety } },
    draft: { plant: old.plant },
  };
}

/** "I've put Silky Baker in as Sulky Baker". */
export function proposePutInAs(sentence: Sentence, utterance: Utterance): Proposal | undefined {
  const put = /\bas plantname\b/.test(sentence.line) ? putInAs(sentence, utterance) : undefined;
  return put && renamed(put);
}

function renamed({ old, told, name }: NamePutRight): Proposal {
  const variety = knownAs(told, name);
  return { kind: 'amend', rule: RENAME, slots: { set: { variety } }, draft: { plant: old.plant } };
}

/** ", it's Zinc Parson", "but it should be Zinc Parson": a name, written as one. */
function saysWhatItIs(pieces: readonly Piece[], at: number): boolean {
  const next = pieces[at + 1];
  const before = wordAt(pieces, at - 1);
  return (
    next?.is === 'plant' &&
    (/^(?:it's|its|that's|they're)$/.test(wordAt(pieces, at)) ||
      (/^(?:is|are|be)$/.test(wordAt(pieces, at)) && /^(?:it|that|they|should)$/.test(before)))
  );
}

/** The name as the ledger writes it, where it is known. */
function knownAs(told: readonly Piece[], name: string): string {
  const [known, another] = told;
  return known?.is === 'plant' &&
    known.known &&
    !another &&
    known.plant.variety?.toLowerCase() === name.toLowerCase()
    ? known.plant.variety
    : titleCase(name);
}

/** What shows that a name was wrong, in so many words. */
const MISREAD =
  /\b(?:misread|misheard|mistook|mixed up|muddled|(?:read|got|getting|had|saying|writing|spelling|wrote|spelt|heard|remembered) (?:it|the tag|the name|that|them|the writing) wrong|wrong (?:tag|name)|mistake (?:with|in|on) (?:the |its )?name)\b/;

/**
 * "Is really Zinc Parson", "is really tin person, misread it": written as a name, with a word of its own that is no
 * everyday one, or much like the old one where a reason is told; no "is really lovely", "is really Jim's", "is really Coming
 * On", "Marble Wren is really marble white".
 */
function soundsLikeName(name: string, old: string, isMisread: boolean): boolean {
  const words = name.split(' ');
  const before = old.toLowerCase().split(' ');
  if (words.length > LONGEST_NAME || (words.length === 1 && /'s$/.test(name))) return false;
  // "IS REALLY LEGGY", "is really Good".
  if (!/\p{Ll}/u.test(name) || (words.length === 1 && isKnown(name.toLowerCase()))) return false;
  const own = words.filter((word) => !before.includes(word.toLowerCase()));
  // "Flowering Beautifully", "For Doreen", "Bushing Out Nicely".
  if (!isMisread && (/(?:ing|ed)$/.test(words[0] ?? '') || own.some((word) => TELLS_HOW.test(word))))
    return false;
  const isWritten =
    words.every((word) => /^\p{Lu}/u.test(word) || /^(?:of|the|and|de|la)$/.test(word)) &&
    (isMisread || own.some((word) => !isKnown(word.toLowerCase()) && !DESCRIBES.test(word)));
  return (
    isWritten ||
    (isMisread &&
      words.length > 1 &&
      before.some((word) => word.length > 3 && name.toLowerCase().split(' ').includes(word)))
  );
}

const TELLS_HOW = /^(?:for|in|on|out|up|off|at|by|from|to|with|now|well|so|very|too|again|today|nicely)$/i;

/** Made to describe: "Tolerant", "Shaped", "Flowering". */
const DESCRIBES = /(?:ed|ing|ant|ent|ful|ous|ish|ive|less|able|ible)$/i;

const LONGEST_NAME = 5;
