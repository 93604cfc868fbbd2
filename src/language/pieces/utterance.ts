/** The third stage: tokens to pieces. Names first, then times, sizes, places, crops and counts; the rest stays words. */
import { cropAt } from './crop-words.js';
import { isCuttingType } from './cutting-types.js';
import { placeNamesOf } from './places/known.js';
import { crops, cuttingTypes, media, phraseAt, verbSense } from '../row/lexicon.js';
import { mediumPiece } from './media.js';
import { namesBehindCrop, namesOfParent, namesOpening } from '../joined/new-names/behind-crop.js';
import { namesBehindCuttings } from '../joined/new-names/behind-cuttings.js';
import { countedNames } from '../joined/new-names/counted.js';
import { namesSetApart } from '../joined/new-names/set-apart.js';
import { unaccountedNames } from '../joined/new-names/unaccounted.js';
import type { FoundName } from '../row/names/known.js';
import { isNumberOf, moneyAt } from './money.js';
import { isStruckDay, isTally } from './days-beside-names.js';
import { beginsName } from './number-in-name.js';
import type { Note, NoteContext } from '../note.js';
import type { Piece } from './pieces.js';
import { findPlaces } from './places.js';
import { prepositionBefore } from './places/prepositions.js';
import { quantityAt } from './quantities.js';
import { settledRow } from '../row/settled-row.js';
import { sizeAt } from './sizes.js';
import { struckDays } from '../row/struck-days.js';
import { temperatureAt } from './temperatures.js';
import type { Token } from '../row/tokens.js';
import { namedNames } from './told-names/announced.js';
import { quotedNames } from './told-names/quoted.js';
import { findWhens } from './when.js';

export interface Utterance {
  /** The normalised text, into which tokens point. */
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly pieces: readonly Piece[];
}

const OPAQUE: Token = {
  text: '\u0000',
  raw: '\u0000',
  start: 0,
  end: 0,
  is: 'mark',
  capital: false,
  glued: false,
};

/** Whether bare degrees are Fahrenheit where the note was written. */
export function isAmerican(note: Note): boolean {
  return (
    note.dateOrder === 'MDY' ||
    /^(?:America\/(?:New_York|Chicago|Denver|Los_Angeles|Phoenix|Detroit|Boise|Anchorage|Indiana)|US\/)/.test(
      note.zone,
    )
  );
}

export function utteranceOf(note: Note): Utterance {
  const context = note.context ?? {};
  const { text, tokens, names } = settledRow(note);
  return { text, tokens, pieces: chunk(text, tokens, names, note, context) };
}

/** For names that nobody knew; the first to claim words has them. */
const searches = [
  quotedNames,
  namedNames,
  countedNames,
  namesBehindCrop,
  namesOpening,
  namesOfParent,
  namesBehindCuttings,
  namesSetApart,
  unaccountedNames,
];

function chunk(
  text: string,
  tokens: readonly Token[],
  names: readonly FoundName[],
  note: Note,
  context: NoteContext,
): readonly Piece[] {
  const owner = new Array<Piece | undefined>(tokens.length).fill(undefined);
  const free = (at: number): boolean => at >= 0 && at < tokens.length && owner[at] === undefined;
  const claim = (piece: Piece): boolean => {
    for (let at = piece.from; at < piece.to; at++) if (!free(at)) return false;
    for (let at = piece.from; at < piece.to; at++) owner[at] = piece;
    return piece.to > piece.from;
  };
  for (const { from, to, variety, label } of names) {
    const ofCrop = context.varieties?.find(({ name }) => name === variety)?.crop;
    claim({
      is: 'plant',
      from,
      to,
      known: true,
      ...(ofCrop === undefined ? {} : { ofCrop }),
      plant: label !== undefined ? { batch: label } : { variety: variety ?? '' },
    });
  }
  const placeNames = placeNamesOf(context);
  for (const search of searches) search({ text, tokens, places: placeNames, free, claim });
  const words = tokens.map(({ text }) => text);
  for (let at = 0; at < tokens.length; at++) {
    if (!free(at)) continue;
    const medium = phraseAt(media, words, at);
    if (medium) mediumPiece(text, tokens, at, medium.words.length, claim);
  }
  for (let at = 0; at < tokens.length; at++) {
    const crop = free(at) ? phraseAt(crops, words, at) : undefined;
    if (crop && crop.words.length > 1)
      claim({ is: 'plant', from: at, to: at + crop.words.length, known: true, plant: { crop: crop.value } });
  }
  // A place that has a season in its name ("winter garden") is no phrase of time.
  for (const { from, to, place, known } of findPlaces(tokens, placeNames, free))
    if (known && to - from > 1)
      claim({ is: 'place', from, to, place, known, prep: prepositionBefore(tokens, from) });
  const varietyAt = (at: number) => {
    const piece = owner[at];
    return piece?.is === 'plant' ? piece.plant.variety : undefined;
  };
  for (const each of struckDays(tokens, note, varietyAt)) claim({ is: 'when', ...each, struck: true });
  for (const { from, to, when } of findWhens(tokens, note, (at) => !free(at)))
    if (!isTally(tokens, owner[from - 1], from, to, context))
      claim({
        is: 'when',
        from,
        to,
        when,
        ...(isStruckDay(tokens, owner, { from, to, when }, context) ? { struck: true } : {}),
      });
  const american = isAmerican(note);
  const view = (): readonly Token[] => tokens.map((token, at) => (free(at) ? token : OPAQUE));
  let open = view();
  for (let at = 0; at < tokens.length; at++) {
    if (!free(at)) continue;
    const money = moneyAt(open, at);
    if (money !== undefined && claim({ is: 'money', numbers: isNumberOf(open, at), from: at, to: money }))
      continue;
    const size = sizeAt(open, at);
    if (size && claim({ is: 'size', from: at, to: size.to, size: size.size, container: size.container }))
      continue;
    // "TE1 -1 rot", "minus two Salt Harrier": so many fewer.
    const fewer =
      (open[at]?.text === '-' && owner[at - 1]?.is === 'plant') ||
      (open[at]?.text === 'minus' && (owner[at - 1]?.is === 'plant' || owner[at + 2]?.is === 'plant'));
    const temperature = fewer ? undefined : temperatureAt(open, at, american);
    if (temperature) claim({ is: 'celsius', from: at, to: temperature.to, celsius: temperature.celsius });
  }
  for (const { from, to, place, known } of findPlaces(tokens, placeNames, free))
    claim({ is: 'place', from, to, place, known, prep: prepositionBefore(tokens, from) });
  open = view();
  const openWords = open.map(({ text }) => text);
  for (let at = 0; at < tokens.length; at++) {
    if (!free(at)) continue;
    const cutting = phraseAt(cuttingTypes, openWords, at);
    if (
      cutting &&
      isCuttingType(open, at, cutting.words.length) &&
      claim({ is: 'cutting', from: at, to: at + cutting.words.length, cutting: cutting.value })
    )
      continue;
    const crop = cropAt(open, at, owner);
    if (crop && claim({ is: 'plant', from: at, to: crop.to, known: true, plant: { crop: crop.crop } }))
      continue;
    const quantity = beginsName(open, at) ? undefined : quantityAt(open, at);
    if (quantity && quantity.to <= tokens.length)
      claim({ is: 'count', from: at, to: Math.min(quantity.to, tokens.length), quantity: quantity.quantity });
  }
  return row(tokens, owner);
}

const SOFT = new Set([',', '-', ':', '(', ')', '/', '=', '|', '>']);
const HARD = new Set(['.', '!', '?', ';']);

function row(tokens: readonly Token[], owner: readonly (Piece | undefined)[]): readonly Piece[] {
  const pieces: Piece[] = [];
  for (let at = 0; at < tokens.length;) {
    const piece = owner[at];
    const token = tokens[at];
    if (piece) {
      pieces.push(piece);
      at = piece.to;
      continue;
    }
    at++;
    if (!token) continue;
    if (token.raw === '.' && tokens[at]?.raw === '.' && tokens[at]?.glued) {
      while (tokens[at]?.raw === '.' && tokens[at]?.glued) at++;
      pieces.push({ is: 'break', hard: false, mark: ',', from: at - 1, to: at });
    } else if (
      token.raw === '.' &&
      /^(?:nos|no|approx|qty|pcs|var|cv)$/.test(tokens[at - 2]?.text ?? '') &&
      token.glued &&
      tokens[at - 3]?.is === 'number'
    ) {
      // "12 nos." counts, and goes on.
    } else if (
      // "6 no. Salt Harrier": the trade's word behind a number.
      /^(?:no|nr)$/.test(token.text) &&
      tokens[at - 2]?.is === 'number' &&
      owner[tokens[at]?.raw === '.' ? at + 1 : at]?.is === 'plant' &&
      (tokens[at]?.raw === '.' || token.text === 'nr')
    ) {
      // It says nothing more.
    } else if (token.is === 'line' || HARD.has(token.raw))
      pieces.push({ is: 'break', hard: true, mark: token.raw, from: at - 1, to: at });
    else if (token.is === 'mark' && SOFT.has(token.raw))
      pieces.push({ is: 'break', hard: false, mark: token.raw, from: at - 1, to: at });
    else if (token.is === 'mark') continue;
    else {
      // A watering can waters nothing by itself.
      const isCan = token.text === 'watering' && /^cans?$/.test(tokens[at]?.text ?? '');
      // Two left over are spare; nobody left them.
      const isSpare = token.text === 'left' && tokens[at]?.text === 'over';
      const verb = isCan || isSpare ? undefined : verbSense(token.text);
      const { text } = token;
      pieces.push(
        // Each property by name, as it is for most pieces of a note: copying others' is ten times as slow.
        verb ? { is: 'word', text, verb, from: at - 1, to: at } : { is: 'word', text, from: at - 1, to: at },
      );
    }
  }
  return pieces;
}
