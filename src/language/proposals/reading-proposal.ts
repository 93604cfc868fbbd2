/** Sentences that report a temperature. */
import { wholeOf } from '../clauses/clauses.js';
import { draftsOf } from '../acts/drafting.js';
import type { Draft } from '../acts/drafting/draft.js';
import {
  ABOUT,
  ADVISED,
  isWarmthBesideCare,
  NOT_MEASURED,
  SAYS_OF_OTHERS,
  STRONG_CUE,
  WARM_IN_THERE,
} from '../grammar/reading.js';
import { wordAt } from '../grammar/rule.js';
import type { Note } from '../note.js';
import type { Piece, PieceOf } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { LINE_LIMIT, plantsIn, type Sentence } from '../sentences/sentences.js';
import { isReadTonight } from './heat-told.js';
import { degrees, listedReadings } from './readings-listed.js';
import { isInFahrenheit, ownPlace, partsOfPlaces, temperaturesToo } from './readings-in-row.js';
import { isPersons, pastPerson } from '../mood/somebody-else.js';

/** What was told beside a temperature: a place that "in there" may mean, or some care of plants; or what heat did. */
export interface ToldBeforeReading {
  readonly place: boolean;
  readonly care: boolean;
  readonly heat?: boolean;
}

/** "Ten of those stop in the porch and six are up in the loft". */
const countsPlants = (pieces: readonly Piece[]): boolean =>
  pieces.some(
    (piece, at) =>
      piece.is === 'count' &&
      (/^(?:are|were|have|stop|stay|stand|live|those|these|them)$/.test(wordAt(pieces, at + 1)) ||
        /^(?:those|these|them)$/.test(wordAt(pieces, at + 2))),
  );

/** "Propagator at 20", "minus two last night": one entry a temperature. */
export function proposeReading(
  sentence: Sentence,
  note: Note,
  before: ToldBeforeReading = { place: false, care: false },
): readonly Proposal[] | undefined {
  const { pieces } = sentence;
  const line = sentence.line.slice(0, LINE_LIMIT).replace(/ would you (?:believe|credit) ?(?:it)?$/, '');
  if (NOT_MEASURED.test(line) && !isReadTonight(pieces)) return undefined;
  // "The packet says 18 to 21 degrees for …", "Edna says her greenhouse was 31": no thermometer of ours.
  if (ADVISED.test(line) || SAYS_OF_OTHERS.test(line)) return undefined;
  if (isMeasuredElsewhere(pieces)) return undefined;
  const listed = listedReadings(pieces, line, note);
  if (listed) return listed;
  const marked = pieces.filter((piece): piece is PieceOf<'celsius'> => piece.is === 'celsius');
  const isBesideCare = before.care && isWarmthBesideCare(line);
  const isThere = before.place && WARM_IN_THERE.test(line);
  const isSaid = isThere || isBesideCare || before.heat === true || STRONG_CUE.test(line);
  if (marked.length === 0 && (!isSaid || plantsIn(pieces).length > 0)) return undefined;
  const [draft = {}] = draftsOf(pieces, wholeOf(pieces));
  const base: Draft = { ...(draft.when ? { when: draft.when } : {}) };
  const place = draft.place ?? draft.fromPlace;
  const slots = place === undefined ? {} : { place };
  const parts = partsOfPlaces(pieces);
  const alike = temperaturesToo(pieces);
  const propose = (celsius: number, of?: Piece): Proposal => {
    const part = parts.find((each) => of !== undefined && each.pieces.includes(of));
    const own = of !== undefined && marked.length + alike.length > 1 ? ownPlace(pieces, of) : undefined;
    return {
      kind: 'reading',
      rule: '<place> at <celsius>',
      slots: { celsius, ...(own !== undefined ? { place: own } : part ? { place: part.place } : slots) },
      draft: part ? (part.when ? { when: part.when } : {}) : base,
    };
  };
  if (marked.length === 1 && isRange(pieces, marked[0])) return [{ ...propose(0), slots, ask: 'celsius' }];
  if (marked.length > 0) {
    const bare = /\b(?:min|max|minimum|maximum|low|high)\b/.test(line)
      ? pieces.filter(
          (piece): piece is PieceOf<'count'> => piece.is === 'count' && piece.quantity.value !== undefined,
        )
      : alike;
    return [...marked, ...bare]
      .sort((a, b) => a.from - b.from)
      .map((piece) =>
        propose(
          piece.is === 'celsius'
            ? piece.celsius
            : degrees(piece.quantity.value ?? 0, note, isInFahrenheit(line)),
          piece,
        ),
      );
  }
  if (countsPlants(pieces)) return undefined;
  // "You dropped one behind the bench": somebody let something fall.
  if (/\b(?:you|i|we|he|she) (?:dropped|dipped|hit|touched)\b/.test(line)) return undefined;
  if (
    place === undefined &&
    !isThere &&
    !/\b(?:temp|temperature|thermometer|min|max|minimum|maximum|bottom heat|heat mat|(?:low|high)s? of)\b/.test(
      line,
    )
  )
    return undefined;
  // "Gave them a drink, nearly 35 in the greenhouse": how warm, is asked.
  const vague = pieces.some((piece) => piece.is === 'count' && piece.quantity.vague === true);
  if (isBesideCare && vague) {
    // "Already up to 33".
    const [, risenTo] = /\bup to (\d{1,2})\b/.exec(line) ?? [];
    if (risenTo !== undefined) return [propose(degrees(Number(risenTo), note))];
    if (ABOUT.test(line)) return [{ ...propose(0), slots, ask: 'celsius' }];
  }
  const counts = pieces.filter(
    (piece): piece is PieceOf<'count'> =>
      piece.is === 'count' &&
      piece.quantity.value !== undefined &&
      piece.quantity.value <= HOTTEST &&
      !piece.quantity.vague,
  );
  if (counts.length === 0 || counts.length > 2 || pieces.some(({ is }) => is === 'pots' || is === 'money'))
    return undefined;
  if (
    pieces.some(
      (piece) =>
        piece.is === 'word' &&
        /^(?:cuttings|pots|plants|trays|people|minutes|hours|days|weeks|times|twice|o'clock|cats?|eggs?|watts?)$/.test(
          piece.text,
        ),
    )
  )
    return undefined;
  // "31 in the tunnel by ten": one of them is the hour.
  return (isBesideCare ? counts.slice(0, 1) : counts).map((piece) =>
    propose(degrees(piece.quantity.value ?? 0, note), piece),
  );
}

/** "20-22C", "18 to 21 degrees": which of them, is asked. */
function isRange(pieces: readonly Piece[], high: Piece | undefined): boolean {
  const at = pieces.findIndex((piece) => piece === high);
  const joint = pieces[at - 1];
  const low = pieces[at - 2];
  return (
    low?.is === 'count' &&
    low.quantity.value !== undefined &&
    ((joint?.is === 'break' && /^[-–—/]$/.test(joint.mark)) || /^(?:to|or)$/.test(wordAt(pieces, at - 1)))
  );
}

/** "Some chap at the club had minus 4 in his greenhouse", "Edna's propagator is at 24": another's. */
function isMeasuredElsewhere(pieces: readonly Piece[]): boolean {
  const person = pastPerson(pieces, 0);
  if (
    person !== undefined &&
    /^(?:had|has|got|gets|recorded|measured|saw|read)$/.test(wordAt(pieces, person.to))
  )
    return true;
  if (/^they (?:had|have|got)$/.test(`${wordAt(pieces, 0)} ${wordAt(pieces, 1)}`)) return true;
  return pieces.some(
    (piece, at) =>
      (piece.is === 'place' && /^(?:his|her|hers|their|theirs)$/.test(wordAt(pieces, at - 1))) ||
      (isPersons(wordAt(pieces, at)) && (pieces[at + 1]?.is === 'place' || wordAt(pieces, at - 1) === 'at')),
  );
}

/** No place under glass is warmer, not even in °F. */
const HOTTEST = 140;
