/** Where things stand: places the ledger knows, and places that only the words tell of. */
import { isKnown, phraseAt, placeNouns, placePhrases, verbSense } from './lexicon.js';
import type { NoteContext } from './note.js';
import { distance, slipsAllowed } from './spelling.js';
import type { Token } from './tokens.js';

export interface FoundPlace {
  readonly from: number;
  readonly to: number;
  readonly place: string;
  readonly known: boolean;
}

/** Nouns that take a number ("bench 2"). */
const NUMBERED =
  /^(?:bench|polytunnel|tunnel|glasshouse|greenhouse|house|bay|bed|shelf|table|block|row|field|frame|room|polyhouse|shadehouse|igloo|zone|plot|propagator)$/;
const MODIFIERS = new Set(
  'top bottom back front north south east west northern southern kitchen spare mist misting potting long hot cold warm cool raised new old other far near big little small left right middle bathroom bedroom utility sunny shady shaded heated unheated garden outside outdoor indoor laundry upstairs downstairs landing lounge living dining grow growing propagation prop herb flower veg vegetable rose hallway office allotment village church school main side lower upper walled patio basement attic conservatory stone brick glass plastic mini electric windowsill porch hardening seed staff end second first third standing weaning'.split(
    ' ',
  ),
);
/** Nouns that everyday talk uses too: a place only behind a preposition or a modifier. */
const EVERYDAY = new Set(
  'bed frame house rack table room yard field ground mat lights stand press window step path office study sink tent nursery bay plot fridge shelf garden kitchen lounge basement attic tunnel border deck terrace'.split(
    ' ',
  ),
);
/** What stands inside a room or a house. */
const FURNITURE = /^(?:shelf|windowsill|sill|bench|ledge|table|floor|window)$/;
const PREPOSITION = new Set(
  'in into on onto to from under at by off outside inside near beside behind above below along'.split(' '),
);
const DETERMINER = new Set([
  'the',
  'a',
  'an',
  'my',
  'our',
  'his',
  'her',
  'their',
  'your',
  'that',
  'this',
  'its',
]);

const word = (tokens: readonly Token[], at: number): string => tokens[at]?.text ?? '';

/** The preposition that governs what begins at token `at`, past an article. */
export function prepositionBefore(tokens: readonly Token[], at: number): string | undefined {
  let before = at - 1;
  while (DETERMINER.has(word(tokens, before))) before--;
  const text = word(tokens, before);
  if (text === 'of' && /^(?:out|outside|inside)$/.test(word(tokens, before - 1))) return 'from';
  if (text === 'off' && /^(?:hardening|harden|hardened)$/.test(word(tokens, before - 1))) return undefined;
  return PREPOSITION.has(text) ? text : undefined;
}

/** All places; `free(n)` says that token n belongs to nothing yet. */
export function findPlaces(
  tokens: readonly Token[],
  context: NoteContext,
  free: (at: number) => boolean,
): readonly FoundPlace[] {
  const names = [
    ...new Set([...(context.places ?? []), ...(context.batches ?? []).flatMap(({ place }) => place ?? [])]),
  ].map((place) => ({
    place,
    words: place
      .toLowerCase()
      .replace(/'/g, '')
      .split(/[\s-]+/),
  }));
  names.sort((a, b) => b.words.length - a.words.length);
  const finds: FoundPlace[] = [];
  const plain = tokens.map(({ text }) => text.replace(/'/g, ''));
  for (let at = 0; at < tokens.length; at++) {
    if (!free(at) || tokens[at]?.is === 'mark' || tokens[at]?.is === 'line') continue;
    const room = knownAt(plain, tokens, at, names, free) ?? genericAt(tokens, at, free);
    if (!room) continue;
    const found = withFurniture(room, tokens, free);
    const last = finds.at(-1);
    if (last && found.from < last.to) continue;
    finds.push(found);
    at = found.to - 1;
  }
  return finds;
}

/** "Spare room windowsill" where the spare room alone is known: a place of its own within it. */
function withFurniture(
  found: FoundPlace,
  tokens: readonly Token[],
  free: (at: number) => boolean,
): FoundPlace {
  const noun = word(tokens, found.to);
  if (!free(found.to) || !FURNITURE.test(noun) || /\d$/.test(found.place)) return found;
  return { ...found, to: found.to + 1, place: `${found.place} ${noun}`, known: false };
}

function knownAt(
  plain: readonly string[],
  tokens: readonly Token[],
  at: number,
  names: readonly { place: string; words: readonly string[] }[],
  free: (at: number) => boolean,
): FoundPlace | undefined {
  for (const { place, words } of names) {
    let to = at;
    let fits = true;
    for (const [n, expected] of words.entries()) {
      if (n > 0 && tokens[to]?.raw === '-') to++;
      const written = plain[to] ?? '';
      const raw = tokens[to]?.raw.toLowerCase();
      // "C frame", "prop house": a place's own words, however the trade would spell them out.
      const initial = n === 0 && words.length > 1 && written.length === 1 && expected.startsWith(written);
      if (!free(to) || !(same(written, expected) || raw === expected || initial)) {
        fits = false;
        break;
      }
      to++;
    }
    if (fits && !(words.length > 1 && (plain[at] ?? '').length === 1 && to - at < 2))
      return { from: at, to, place, known: true };
    if (free(at) && initialsOf(words) === plain[at]) return { from: at, to: at + 1, place, known: true };
    const joined = words.join('');
    if (words.length > 1 && free(at) && plain[at] === joined)
      return { from: at, to: at + 1, place, known: true };
    // "Kitchen window sill" of the kitchen windowsill.
    const parted = words.length + 1;
    if (
      words.length > 1 &&
      free(at) &&
      free(at + parted - 1) &&
      plain.slice(at, at + parted).join('') === joined
    )
      return { from: at, to: at + parted, place, known: true };
    if (
      words.length === 1 &&
      free(at) &&
      free(at + 1) &&
      `${plain[at]}${plain[at + 1] ?? '\u0000'}` === joined
    )
      return { from: at, to: at + 2, place, known: true };
  }
  return undefined;
}

function same(written: string, expected: string): boolean {
  if (written === expected || written === `${expected}s` || `${written}s` === expected) return true;
  const numeral: Readonly<Record<string, string>> = {
    one: '1',
    two: '2',
    three: '3',
    four: '4',
    five: '5',
    six: '6',
    too: '2',
    to: '2',
    for: '4',
    won: '1',
  };
  if (/^\d$/.test(expected)) return numeral[written] === expected;
  const slips = slipsAllowed(expected.length);
  return slips > 0 && !isKnown(written) && distance(written, expected, slips) <= slips;
}

function genericAt(
  tokens: readonly Token[],
  at: number,
  free: (at: number) => boolean,
): FoundPlace | undefined {
  // No phrase for a place is longer than three words.
  const phrase = phraseAt(
    placePhrases,
    tokens.slice(at, at + 4).map(({ text }) => text),
    0,
  );
  let to: number;
  let noun: string;
  if (phrase) {
    to = at + phrase.words.length;
    noun = phrase.words.at(-1) ?? '';
  } else if (placeNouns.has(word(tokens, at))) {
    to = at + 1;
    noun = word(tokens, at);
    // "kitchen windowsill", "greenhouse bench": the last noun of the run is the head.
    while (placeNouns.has(word(tokens, to)) && free(to)) {
      noun = word(tokens, to);
      to++;
    }
  } else return undefined;
  // "The porch planter": the place is the planter there.
  if (
    /^(?:planter|planters|urn|urns|trough|troughs|barrel|barrels|tub|tubs)$/.test(word(tokens, to)) &&
    free(to)
  )
    to++;
  if (/^(?:centre|center|club|show|society|party)$/.test(word(tokens, to))) return undefined;
  let from = at;
  while (from > 0 && free(from - 1) && isModifier(tokens, from - 1)) from--;
  if (
    NUMBERED.test(noun) &&
    free(to) &&
    !isWarmth(noun, word(tokens, to)) &&
    (tokens[to]?.is === 'number' || /^(?:one|two|three|four|five|six)$/.test(word(tokens, to))) &&
    !/^(?:of|rooted|dead|have|cm|in|x|%)$/.test(word(tokens, to + 1))
  )
    to++;
  // "In pond bed", ", display border": words between a preposition, article or comma and the noun belong to the place.
  if (from === at) {
    let start = at;
    while (start > 0 && at - start < 2 && free(start - 1) && isName(tokens, start - 1)) start--;
    const lead = tokens[start - 1];
    if (start < at && lead && (PREPOSITION.has(lead.text) || DETERMINER.has(lead.text) || lead.raw === ','))
      from = start;
  }
  // "Took 10 Porch Swing": a name that a place opens.
  if (tokens[at]?.capital && tokens[to]?.capital && at > 0 && tokens[at - 1]?.is !== 'mark') return undefined;
  if (tokens[at]?.capital && at > 0 && tokens[at - 1]?.capital && !/^[.!?]$/.test(tokens[at - 2]?.raw ?? '.'))
    return undefined;
  const bare =
    phrase === undefined && (EVERYDAY.has(noun) || EVERYDAY.has(noun.replace(/s$/, ''))) && to - from === 1;
  // "Watered the tunnel": what is tended is a place.
  const tended =
    DETERMINER.has(word(tokens, from - 1)) &&
    /^(?:water|mist|vent|shade|feed|spray|air|damp)$/.test(verbSense(word(tokens, from - 2))?.lemma ?? '');
  if (bare && !tended && prepositionBefore(tokens, from) === undefined) return undefined;
  const place = tokens
    .slice(from, to)
    .map(({ text }) => text)
    .join(' ')
    .replace(/ - /g, '-');
  return { from, to, place, known: false };
}

/** "Propagator 21", "greenhouse 14": nobody has so many; a number that tells how warm it is. */
function isWarmth(noun: string, number: string): boolean {
  return (
    /^(?:propagator|greenhouse|glasshouse|polytunnel|tunnel|frame|house|room)$/.test(noun) &&
    Number(number) >= 10
  );
}

function isModifier(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (token?.is !== 'word') return false;
  if (MODIFIERS.has(token.text) || /'s$/.test(token.text)) return true;
  if (DETERMINER.has(token.text) || PREPOSITION.has(token.text)) return false;
  return (
    !isKnown(token.text) &&
    PREPOSITION.has(word(tokens, at - 1)) === false &&
    DETERMINER.has(word(tokens, at - 1))
  );
}

/** A word that may stand before a place's noun: none of the trade's verbs or the small words. */
function isName(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  return (
    token?.is === 'word' &&
    verbSense(token.text) === undefined &&
    !DETERMINER.has(token.text) &&
    !PREPOSITION.has(token.text) &&
    !/^(?:and|of|then|but|all|some|more|them|it|one|two|three|four|five|six|ten|now|today|cuttings|cutting|plants|pots|rooted|very|really|for|with|no|not|each|every|which|that|i|we|they|both|another|rest|half)$/.test(
      token.text,
    )
  );
}

/** "PT2" of "polytunnel 2", "mb4" of "mist bench 4": only places that carry a number. */
function initialsOf(words: readonly string[]): string | undefined {
  const number = words.at(-1) ?? '';
  if (!/^\d+$/.test(number)) return undefined;
  const letters = words.slice(0, -1).map((word) =>
    word
      .replace(/^poly(.)/, 'p$1')
      .replace(/^(g)(?:lass|reen)(h)ouse$/, '$1$2')
      .slice(0, /^(?:poly|glassh|greenh)/.test(word) ? 2 : 1),
  );
  return `${letters.join('')}${number}`;
}
