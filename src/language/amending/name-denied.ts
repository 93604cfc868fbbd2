/** "Isn't called Pail Jessie but Pale Jessie", "Pail Jessie is not the right name, it's Pale Jessie", "that isn't Pail Jessie, it's Pale Jessie": a name that is denied, and the right one. */
import { wordAt } from '../grammar/rule.js';
import { anyOf, within } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { type Sentence, textOf, trimmed } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

const NOT = anyOf`isn't|is not|it's not|aren't|are not|they're not|wasn't|was not|not`;
const DENIES = within`
  ${NOT} ((really|actually) )?(called|named)( the)? plantname
  name (isn't|is not|wasn't|was not|should not be|shouldn't be) plantname
  plantname ${NOT} (the|its|her|their) ((right|correct|real|proper|actual) )?name
  (that|this|it|the|those|these) (plantname )?${NOT} plantname … it's
`;

/** What leads from the name that is denied to the right one. */
const LEADS =
  /^(?:but|at|all|by|way|after|the|a|its|their|her|right|correct|real|proper|actual|name|not|isn't|then|it|it's|she|she's|they|they're|that's|is|are|was|called|named|really|actually|rather|should|be|read|reads|says)$/;
/** "So please change it": behind the name. */
const BIDS =
  /(?:^| )(?:so|and|please|pls|can you|could you|would you|rename|change|thanks|thank you|cheers|sorry)\b.*$/i;

/** A name that the ledger has, and what the plant is called instead. */
export interface NamePutRight {
  readonly old: Piece & { is: 'plant' };
  readonly told: readonly Piece[];
  readonly name: string;
}

/** Where the denied name stands and what it is called instead; undefined where that is not said. */
export function nameDenied({ pieces, line }: Sentence, utterance: Utterance): NamePutRight | undefined {
  if (!DENIES.test(line)) return undefined;
  const at = pieces.findIndex((piece) => piece.is === 'plant' && piece.plant.variety !== undefined);
  const old = pieces[at];
  if (old?.is !== 'plant') return undefined;
  let from = at + 1;
  while (pieces[from]?.is === 'break' || LEADS.test(wordAt(pieces, from))) from++;
  const stop = pieces.findIndex(({ is }, n) => n > from && is === 'break');
  const told = pieces.slice(from, stop < 0 ? undefined : stop);
  const name = trimmed(textOf(told, utterance)).replace(BIDS, '');
  const led = pieces.slice(at + 1, from).map((_, n) => wordAt(pieces, at + 1 + n));
  // "Not called Tin Parson for nothing", "it's not called Tin Parson, it is huge".
  const isNamed = led.some((word) => /^(?:but|called|named|name)$/.test(word)) || /^\p{Lu}/u.test(name);
  // "That isn't Pail Jessie, it's Salt Harrier": another plant of the ledger.
  const isOther = told.some((piece) => piece.is === 'plant' && piece.known);
  return isOther || led.length === 0 || !isNamed || name.split(' ').length > 5 || name === ''
    ? undefined
    : { old, told, name };
}
