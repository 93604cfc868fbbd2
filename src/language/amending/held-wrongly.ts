/** What is noted of a plant, told with what is right: "you've got rot down for the Ebony Fern but it was slugs", "I did use hormone on them, put that right would you". */
import { anyOf, wordsOf } from '../phrases.js';
import type { Piece, PlantWords } from '../pieces/pieces.js';
import { valueSaid } from '../pieces/value-said.js';
import type { Utterance } from '../pieces/utterance.js';
import type { Proposal } from '../proposal.js';
import { causes, phraseAt } from '../row/lexicon.js';
import { plantsIn } from '../sentences/sentences.js';
import { LONGEST, markedLine, OF_PLANT, PLANT, SLOT, TOLD } from './fault-owned.js';
import { isSettable } from './settable.js';

/** One of these is in every such sentence. */
const HOLDS = new Set(
  wordsOf`
    down says say said reads logged noted entered typed wrote written recorded you've but when
    correct fix change amend sort alter update right straight
  `,
);

const NOTED = anyOf`
  ((i|we|i've|we've|you|you've|you have|i have|it|it's|it is) )((must have|have|has|had|been) )?(got|put|have|had|has|logged|noted|entered|typed|wrote|written|recorded|said|say|says|reads|down)( me)?
`;
/** What the note holds, told beside what is right: "you've got val0 down for X but it was val1", "I put X down as val0, it's val1". */
const HELD = [
  `${NOTED} (?:the )?val\\d+ (?:down )?${OF_PLANT}(?: down)?`,
  `${NOTED} ${PLANT} (?:down )?(?:as|at|under|with)(?: (?:being|in|on|at|having))?(?: the)? val\\d+(?: down)?`,
  `(?:you've got|you have got|you have|it says|it's got) ${PLANT} (?:(?:down|in|on|at|under|as|are|is) )*(?:the )?val\\d+`,
].map((source) => new RegExp(`\\b${source}(?=$| )`));

/** "…, please correct", "…, can you sort it", "…, put that right would you". */
const BID = new RegExp(
  ` (?:(?:please|pls|can you|could you|would you) )*${anyOf`
    (correct|fix|change|amend|sort|alter|update)( (it|that|this))?( out)?
    put (it|that|this) (right|straight)
  `}(?: (?:please|pls|for me|would you|will you|can you|could you|thanks|ta))*$`,
);

/** "Could you correct the count on X, …". */
const BID_AHEAD = new RegExp(
  `^(?:(?:hi|hiya|hello|sorry|oops|please|pls|can you|could you|would you|can we|need to) )*(?:correct|fix|change|amend|alter|update|sort)(?: out)? (?:(?:the|that|my) )?(?:${SLOT} )?(?:${OF_PLANT}|${PLANT}) (?=${NOTED} )`,
);
const SAID_SO = new RegExp(`^${NOTED} (?:the )?val\\d+(?: down)?(?=$| )`);

/** Only with a bid: whether hormone was used, which no value says. */
const HORMONE =
  /\b(?:i|we) (?:(did|didn't|did not|never|have|haven't) )?(?:use|used|put|dip|dipped|give|given)(?: them)?(?: in| any| the| some)* (?:hormone|rooting powder|rooting hormone|rooting gel|hormone powder)(?: powder| gel)?(?: on| with| for)?\b/;

/** What is right beside what was noted of the same plant in the same slot; undefined where the sentence says anything besides. */
export function proposeHeldWrongly(row: readonly Piece[], utterance: Utterance): Proposal | undefined {
  if (row.length > LONGEST || !row.some((piece) => piece.is === 'word' && HOLDS.has(piece.text)))
    return undefined;
  const [named, another] = plantsIn(row);
  if (!named || another) return undefined;
  const { plant } = named;
  const pieces = row.filter((piece) => piece.is !== 'plant' && isSettable(piece));
  const line = markedLine(row, pieces, utterance);
  const values = pieces.map((piece) => ({ ...valueSaid(piece) }) as Record<string, unknown>);
  const marked = withCauses(line, values);
  const ahead = BID_AHEAD.exec(marked)?.[0] ?? '';
  const bare = marked.slice(ahead.length).replace(BID, '');
  const isBidden = bare !== marked;
  const hormone = isBidden ? HORMONE.exec(bare) : null;
  if (
    hormone &&
    bare
      .replace(hormone[0], '')
      .split(' ')
      .every((word) => word === '' || word === 'plantname' || TOLD.has(word))
  )
    return putRight(plant, { hormone: /^(?:did|have)$/.test(hormone[1] ?? 'did') });
  for (const pattern of ahead === '' ? HELD : [SAID_SO]) {
    const fault = pattern.exec(bare);
    if (!fault) continue;
    const told = `${bare.slice(0, fault.index)} ${bare.slice(fault.index + fault[0].length)}`;
    const words = told.split(' ').filter((word) => word !== '');
    const [right, more] = words.filter((word) => MARK.test(word));
    if (
      right === undefined ||
      more !== undefined ||
      words.some((word) => !MARK.test(word) && !TOLD.has(word))
    )
      continue;
    const [noted] = fault[0].split(' ').filter((word) => MARK.test(word));
    const [slots, denied] = [right, noted].map((mark) => values[Number(mark?.slice(3))] ?? {});
    const [slot, extra] = Object.keys(slots ?? {});
    if (slot === undefined || extra !== undefined || !denied || !(slot in denied)) continue;
    if (denied[slot] !== slots?.[slot]) return putRight(plant, { [slot]: slots?.[slot] });
  }
  return undefined;
}

const MARK = /^val\d+$/;

const putRight = (plant: PlantWords, set: Readonly<Record<string, unknown>>): Proposal => ({
  kind: 'amend',
  rule: 'noted <x> for <plant>, it was <y>',
  slots: { set },
  draft: { plant },
});

/** The line with each cause that it names as one value more. */
function withCauses(line: string, values: Record<string, unknown>[]): string {
  const words = line.split(' ');
  const marked: string[] = [];
  for (let at = 0; at < words.length; at++) {
    const found = phraseAt(causes, words, at);
    if (found) {
      marked.push(`val${String(values.length)}`);
      values.push({ cause: found.value });
      at += found.words.length - 1;
    } else marked.push(words[at] ?? '');
  }
  return marked.join(' ');
}
