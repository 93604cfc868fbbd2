/** Plants of which several people had so many each: "the three lads were each given a Salt Harrier", "gave the neighbours one each". */
import type { Clause } from '../../clauses/clauses.js';
import { wordAt } from '../../grammar/rule.js';
import { isKnown } from '../../row/lexicon.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import type { Draft } from './draft.js';

const PEOPLE = whole`
  sisters|brothers|aunts|aunties|uncles|cousins|nieces|nephews|neighbou?rs|friends|mates|pals|colleagues
  daughters|sons|grandchildren|grandkids|children|kids|pupils|students|lads|lasses|girls|boys|ladies|women|men
  volunteers|members|customers|visitors|helpers|guests|families|households|staff|teachers|carers|nurses|twins
  neighbou?r|friend|child|pupil|student|member|customer|visitor|helper|guest|family|household|person|volunteer
  sister|brother|lad|lass|girl|boy|lady
`;
const TO_PEOPLE = /^(?:of|the|my|our|their|her|his|those|local|next|little|young|other|door)$/;
const TO_PLANT =
  /^(?:of|the|my|our|those|these|more|rooted|little|small|young|good|nice|lovely|potted|spare)$/;

type Many = number | 'many';

/** The number that each had put by that of the people; asked for where they are not counted. */
export function perHead(draft: Draft, pieces: readonly Piece[], { from, to, hit }: Clause): Draft {
  if (hit?.rule.kind !== 'dispatch') return draft;
  const row = pieces.slice(from, to);
  const people = peopleWhoEachHad(row);
  if (people === undefined) return draft;
  const each = eachHad(row);
  if (each === undefined && draft.quantity?.whole === undefined) return draft;
  return {
    ...draft,
    quantity: people === 'many' || each === undefined ? { vague: true } : { value: people * each },
  };
}

function peopleWhoEachHad(row: readonly Piece[]): Many | undefined {
  if (row.some((_, at) => /^every(?:one|body)$/.test(wordAt(row, at)))) return 'many';
  const at = row.findIndex((_, n) => PEOPLE.test(wordAt(row, n)));
  let lead = at - 1;
  while (TO_PEOPLE.test(wordAt(row, lead))) lead--;
  const counted = row[lead];
  const quantity = counted?.is === 'count' ? counted.quantity : undefined;
  const isEveryOne = at >= 0 && (quantity?.whole === 'all' || /^(?:each|every)$/.test(wordAt(row, lead)));
  if (at >= 0 && quantity?.both) return 2;
  if (isEveryOne) return 'many';
  if (isPriced(row) || !row.some((_, n) => isEach(row, n))) return undefined;
  return at >= 0 ? (quantity?.value ?? 'many') : names(row);
}

/** "£2 each", "a quid each". */
const isPriced = (row: readonly Piece[]): boolean =>
  row.some(
    (piece, at) =>
      piece.is === 'money' ||
      /^(?:quid|pounds?|pence|fivers?|tenners?|euros?|bucks?|dollars?|p)$/.test(wordAt(row, at)),
  );

/** "Each", "apiece", of no list of plants. */
const isEach = (row: readonly Piece[], at: number): boolean =>
  /^(?:each|apiece|every)$/.test(wordAt(row, at)) &&
  !(wordAt(row, at + 1) === 'of' && row.slice(at + 2, at + 4).some(({ is }) => is === 'plant'));

/** "Ann and Bob" are two; a longer row is not counted. */
function names(row: readonly Piece[]): Many | undefined {
  const and = row.findIndex(
    (_, at) => wordAt(row, at) === 'and' && isName(row, at - 1) && isName(row, at + 1),
  );
  if (and < 0) return undefined;
  return row[and - 2]?.is === 'break' || wordAt(row, and + 2) === 'and' ? 'many' : 2;
}

const isName = (row: readonly Piece[], at: number): boolean => {
  const piece = row[at];
  return (
    piece?.is === 'word' && piece.verb === undefined && (piece.somebody === true || !isKnown(piece.text))
  );
};

/** How many stand right before the plant. */
function eachHad(row: readonly Piece[]): number | undefined {
  let at = row.findIndex(({ is }) => is === 'plant') - 1;
  while (TO_PLANT.test(wordAt(row, at))) at--;
  const counted = row[at];
  if (/^(?:a|an|another)$/.test(wordAt(row, at))) return 1;
  return counted?.is === 'count' && !PEOPLE.test(wordAt(row, at + 1)) ? counted.quantity.value : undefined;
}
