/** The third stage: tokens to pieces. Names first, then times, sizes, places, crops and counts; the rest stays words. */
import { crops, cuttingTypes, media, phraseAt, verbSense } from './lexicon.js';
import { restoreHeard } from './homophones.js';
import { findNames } from './names.js';
import type { Note, NoteContext } from './note.js';
import { normalise } from './normalise.js';
import type { Piece } from './pieces.js';
import { findPlaces, prepositionBefore } from './places.js';
import { quantityAt } from './quantities.js';
import { sizeAt, temperatureAt } from './sizes.js';
import { type Token, tokenise } from './tokens.js';
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

/** Crop words that everyday talk uses otherwise; a crop only in a plant's position. */
const EVERYDAY_CROPS = new Set([
  'pink',
  'rose',
  'box',
  'bay',
  'sage',
  'mum',
  'mint',
  'vine',
  'elder',
  'pinks',
  'boxes',
  'bays',
  'vines',
  'heather',
  'apple',
  'pear',
  'plum',
  'cherry',
  'rue',
  'zonal',
  'mums',
  'olive',
  'ivy',
  'holly',
  'iris',
  'currant',
  'lilac',
  'lemon balm',
  'basil',
  'rosemary',
  'viola',
  'jasmine',
  'lavender',
  'peach',
  'orange',
  'heathers',
  'roses',
  'succulent',
  'grape',
  'hops',
  'hop',
  'aster',
  'laurel',
  'bamboo',
  'cactus',
  'cherry pie',
  'savory',
  'pans',
]);
const ALWAYS_CROP = new Set([
  'basil',
  'rosemary',
  'lavender',
  'mint',
  'roses',
  'pinks',
  'mums',
  'sage',
  'jasmine',
  'heathers',
  'lemon balm',
  'zonal',
  'ivy',
  'succulent',
  'aster',
  'currant',
  'viola',
  'cherry pie',
  'cactus',
]);

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
  const text = normalise(note.text);
  const written = tokenise(text);
  const names = findNames(written, context);
  const inName = new Set<number>();
  for (const { from, to } of names) for (let at = from; at < to; at++) inName.add(at);
  const isName = (at: number): boolean => inName.has(at);
  const words = written.map(({ text }) => text);
  const tokens = restoreHeard(
    written,
    isName,
    (at) =>
      isName(at) ||
      isName(at + 1 && word(written, at) === 'the' ? at + 1 : at) ||
      phraseAt(crops, words, at) !== undefined,
  );
  // A restored phrase may have lost a token; names are then found again on the new row.
  const settled = tokens.length === written.length ? names : findNames(tokens, context);
  return { text, tokens, pieces: chunk(text, tokens, settled, note, context) };
}

const word = (tokens: readonly Token[], at: number): string => tokens[at]?.text ?? '';

function chunk(
  text: string,
  tokens: readonly Token[],
  names: ReturnType<typeof findNames>,
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
  for (const { from, to, variety, label } of names)
    claim({
      is: 'plant',
      from,
      to,
      known: true,
      plant: label !== undefined ? { batch: label } : { variety: variety ?? '' },
    });
  quotedNames(text, tokens, free, claim);
  namedNames(text, tokens, free, claim);
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
  for (const { from, to, when } of findWhens(tokens, note, (at) => !free(at)))
    claim({ is: 'when', from, to, when });
  const american = isAmerican(note);
  const view = (): readonly Token[] => tokens.map((token, at) => (free(at) ? token : OPAQUE));
  let open = view();
  for (let at = 0; at < tokens.length; at++) {
    if (!free(at)) continue;
    const money = moneyAt(open, at);
    if (money !== undefined && claim({ is: 'money', from: at, to: money })) continue;
    const size = sizeAt(open, at);
    if (size && claim({ is: 'size', from: at, to: size.to, size: size.size, container: size.container }))
      continue;
    const temperature = temperatureAt(open, at, american);
    if (temperature) claim({ is: 'celsius', from: at, to: temperature.to, celsius: temperature.celsius });
  }
  for (const { from, to, place, known } of findPlaces(tokens, context, free))
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
    const quantity = quantityAt(open, at);
    if (quantity && quantity.to <= tokens.length)
      claim({ is: 'count', from: at, to: Math.min(quantity.to, tokens.length), quantity: quantity.quantity });
  }
  return row(tokens, owner);
}

/** Names in quotes are names, whoever knows them. */
function quotedNames(
  text: string,
  tokens: readonly Token[],
  free: (at: number) => boolean,
  claim: (piece: Piece) => boolean,
): void {
  for (let at = 0; at < tokens.length; at++) {
    const quote = tokens[at]?.raw;
    if ((quote !== '"' && quote !== "'") || !free(at)) continue;
    let end = at + 1;
    while (end < tokens.length && end - at < 7 && tokens[end]?.raw !== quote) end++;
    if (tokens[end]?.raw !== quote || end === at + 1) continue;
    const inside = tokens.slice(at + 1, end);
    let allFree = true;
    for (let n = at + 1; n < end; n++) if (!free(n)) allFree = false;
    if (!allFree || inside.some(({ is }) => is === 'mark' || is === 'line') || inside.length > 5) {
      at = end;
      continue;
    }
    const name = text.slice(inside[0]?.start ?? 0, inside.at(-1)?.end ?? 0);
    const crop = phraseAt(
      crops,
      inside.map((token) => token.text),
      0,
    );
    if (crop && crop.words.length === inside.length && !inside.some(({ capital }) => capital)) {
      claim({ is: 'plant', from: at + 1, to: end, known: true, plant: { crop: crop.value } });
      at = end;
      continue;
    }
    claim({ is: 'plant', from: at + 1, to: end, known: false, plant: { variety: titleCase(name) } });
    at = end;
  }
}

/** "A dahlia called brown paper duchess": what follows is the name, whatever its words. */
function namedNames(
  text: string,
  tokens: readonly Token[],
  free: (at: number) => boolean,
  claim: (piece: Piece) => boolean,
): void {
  for (let at = 1; at < tokens.length; at++) {
    const isNamed =
      /^(?:called|named|labelled|labeled|calls|christened|titled)$/.test(word(tokens, at)) ||
      (/^(?:is|was)$/.test(word(tokens, at)) && word(tokens, at - 1) === 'name') ||
      /^name's$/.test(word(tokens, at)) ||
      (word(tokens, at) === 'of' && word(tokens, at - 1) === 'name' && word(tokens, at - 3) === 'by');
    if (!isNamed) continue;
    let start = at + 1;
    while (/^(?:the|it|them|this|"|')$/.test(word(tokens, start))) start++;
    const capital = tokens[start]?.capital === true;
    let end = start;
    while (
      end < tokens.length &&
      end - start < 5 &&
      free(end) &&
      tokens[end]?.is === 'word' &&
      !(capital && !tokens[end]?.capital && !/^(?:of|the|de|la|and|on|in)$/.test(word(tokens, end))) &&
      !(
        !tokens[end]?.capital &&
        /^(?:in|into|on|at|from|today|yesterday|this|for|with|to|by|and|which|that|last|please)$/.test(
          word(tokens, end),
        )
      )
    )
      end++;
    while (end > start && /^(?:of|the|de|la|and|on|in)$/.test(word(tokens, end - 1))) end--;
    if (end === start) continue;
    claim({
      is: 'plant',
      from: start,
      to: end,
      known: false,
      plant: { variety: titleCase(text.slice(tokens[start]?.start ?? 0, tokens[end - 1]?.end ?? 0)) },
    });
  }
}

export function titleCase(name: string): string {
  return name.replace(/(^|[\s-])(\p{Ll})/gu, (_, gap: string, letter: string) => gap + letter.toUpperCase());
}

function mediumPiece(
  text: string,
  tokens: readonly Token[],
  at: number,
  length: number,
  claim: (piece: Piece) => boolean,
): void {
  const bare = word(tokens, at);
  const ambiguous =
    /^(?:water|compost|soil|oasis|bark|moss)$/.test(bare) &&
    length === 1 &&
    !(/^(?:and|plus|\/)$/.test(word(tokens, at + 1)) && media.has(word(tokens, at + 2)));
  const before = word(tokens, at - 1);
  if (
    ambiguous &&
    !/^(?:in|into|of|with|and|multipurpose|fresh|plain|tap|rain|new|gritty|the|a|some|more|potting|free|purpose|plus|garden|general)$/.test(
      before,
    )
  )
    return;
  if (bare === 'water' && !/^(?:in|into|plain|tap|rain|of)$/.test(before)) return;
  let from = at;
  let to = at + length;
  // "a gritty mix of coir and perlite", "50/50 perlite and compost": joined media are one phrase.
  while (/^(?:and|plus|[/,:-]|with)$/.test(word(tokens, to)) && to < tokens.length) {
    const next = phraseAt(
      media,
      tokens.slice(to + 1, to + 7).map(({ text }) => text),
      0,
    );
    if (!next) break;
    to = to + 1 + next.words.length;
  }
  while (
    /^(?:fresh|new|gritty|sandy|plain|peat|free|tap|rain|bagged|homemade|cheap|proper|sieved|seed|fine)$/.test(
      word(tokens, from - 1),
    ) ||
    (tokens[from - 1]?.raw === '-' && word(tokens, from - 2) === 'peat')
  )
    from--;
  if (/^(?:mix|mixture|blend)$/.test(word(tokens, to))) to++;
  claim({
    is: 'medium',
    from,
    to,
    medium: mediumAsMeant(text, tokens.slice(from, to)),
  });
}

/** As written, lower case; a slip of the pen ("watr") as it was meant. */
function mediumAsMeant(text: string, tokens: readonly Token[]): string {
  const written = text.slice(tokens[0]?.start ?? 0, tokens.at(-1)?.end ?? 0).toLowerCase();
  const slipped = tokens.some((token) => token.is === 'word' && token.text !== token.raw.toLowerCase());
  return slipped ? tokens.map((token) => token.text).join(' ') : written;
}

function moneyAt(tokens: readonly Token[], at: number): number | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  if (/^[£$€]$/.test(token.raw) && tokens[at + 1]?.is === 'number')
    return /^(?:each|apiece|per|a)$/.test(word(tokens, at + 2)) ? at + 3 : at + 2;
  if (
    token.is === 'number' &&
    (/^(?:p|quid|pounds|dollars|bucks|euro|euros|pence|%|percent|nzd|aud)$/.test(word(tokens, at + 1)) ||
      /^[£$€%]$/.test(tokens[at + 1]?.raw ?? ''))
  )
    return /^(?:each|apiece)$/.test(word(tokens, at + 2)) ? at + 3 : at + 2;
  if (/^a$/.test(token.text) && /^(?:quid|fiver|tenner|pound|dollar)$/.test(word(tokens, at + 1)))
    return /^(?:each|apiece)$/.test(word(tokens, at + 2)) ? at + 3 : at + 2;
  if (
    /^(?:no|number|nr|room|page|chapter|step|version|day|week|half-past)$/.test(word(tokens, at)) &&
    tokens[at + 1]?.text === '.' &&
    tokens[at + 2]?.is === 'number'
  )
    return at + 3;
  if (/^(?:number|page|chapter|version)$/.test(word(tokens, at)) && tokens[at + 1]?.is === 'number')
    return at + 2;
  return undefined;
}

function isCuttingType(tokens: readonly Token[], at: number, length: number): boolean {
  const words = tokens
    .slice(at, at + length)
    .map(({ text }) => text)
    .join(' ');
  const next = word(tokens, at + length);
  const nextIsCutting = /^(?:cutting|cuttings|wood)$/.test(next);
  const before = word(tokens, at - 1);
  if (/^basil$/.test(words)) return false;
  if (/^(?:root|leaf|tip|tips|node|leaf bud|leaf buds|heel|heels)$/.test(words)) {
    if (/^leaf bud/.test(words) && (/^(?:x|,)$/.test(next) || tokens[at + length]?.is === 'number'))
      return true;
    if (nextIsCutting || (next === '-' && /^cutting/.test(word(tokens, at + length + 1)))) return true;
    // ", tips,": how they were taken, said by itself.
    if (/^(?:tip|tips)$/.test(words))
      return (
        tokens[at - 1]?.raw === ',' && (tokens[at + length] === undefined || tokens[at + length]?.raw === ',')
      );
    if (/^(?:heel|heels)$/.test(words)) return /^(?:with|a|have)$/.test(before) || /^(?:ones|on)$/.test(next);
    return false;
  }
  return true;
}

function cropAt(
  tokens: readonly Token[],
  at: number,
  owner: readonly (Piece | undefined)[],
): { crop: string; to: number } | undefined {
  const words = tokens.slice(at, at + 4).map(({ text }) => text.replace(/'s$/, ''));
  const found = phraseAt(crops, words, 0);
  if (!found) return undefined;
  const phrase = found.words.join(' ');
  if (
    /^(?:feed|food|fertiliser|fertilizer|soup|sandwich|sandwiches|sauce|tea|bushes?|jelly|drizzle|cake|pie)$/.test(
      word(tokens, at + found.words.length),
    )
  )
    return undefined;
  const to = at + found.words.length;
  // "Gave Rosemary a …": a person.
  if (
    tokens[at]?.capital &&
    found.words.length === 1 &&
    /^(?:gave|give|given|to|for|from)$/.test(word(tokens, at - 1)) &&
    (/^(?:a|an|some|two|three|four|five|six|the)$/.test(word(tokens, to)) || tokens[to]?.is === 'number')
  )
    return undefined;
  if (EVERYDAY_CROPS.has(phrase)) {
    const before = word(tokens, at - 1);
    const next = word(tokens, to);
    const behindPlant = owner[at - 1]?.is === 'plant';
    const counted =
      behindPlant ||
      tokens[at - 1]?.is === 'number' ||
      /^(?:of|cuttings|some|few|one|two|three|four|five|six|seven|eight|nine|ten|twelve|dozen|more|basal|tip|heel|hardwood|softwood|couple|basil)$/.test(
        before,
      );
    const cuttings = /^(?:cutting|cuttings|plants|plugs|tip|heel|stems|tips)$/.test(next);
    if (
      /^(?:box|bay|plum|pear|apple|elder|vine|mum|rose|pink|holly|olive|rue|iris|orange|peach|boxes|hop|hops|laurel|pans|savory)$/.test(
        phrase,
      ) &&
      !cuttings &&
      !(counted && before !== 'one')
    )
      return undefined;
    if (phrase === 'mum' && (!cuttings || /'s$/.test(tokens[at]?.raw.toLowerCase() ?? ''))) return undefined;
    if (!counted && !cuttings && !ALWAYS_CROP.has(phrase) && !/^(?:the|my|our)$/.test(before))
      return undefined;
  }
  return { crop: found.value, to };
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
    const run = { from: at - 1, to: at };
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
    } else if (token.is === 'line' || HARD.has(token.raw))
      pieces.push({ is: 'break', hard: true, mark: token.raw, ...run });
    else if (token.is === 'mark' && SOFT.has(token.raw))
      pieces.push({ is: 'break', hard: false, mark: token.raw, ...run });
    else if (token.is === 'mark') continue;
    else {
      const verb = verbSense(token.text);
      pieces.push({ is: 'word', text: token.text, ...(verb ? { verb } : {}), ...run });
    }
  }
  return pieces;
}
