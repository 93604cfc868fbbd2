/** “3 of Oriel’s Salt Harrier”, “the Salt Harrier that Oriel took”: a lot told by the grower of this ledger who took it. */
import { SMALL } from '../../language/pieces/number-names.js';
import type { Batch } from '../../ledger/batch.js';
import { type Ledger, liveBatches } from '../../ledger/ledger.js';
import type { Sitting } from '../sitting.js';

const TOOK = "(?: has|['’]s)? (?:took|taken|struck|did|put in|potted up|brought)";
const ONES = 'ones|lot|batch|tray|pot|cuttings|plugs';
const BOUNDARY = '(?![\\p{L}\\d])';
/** What is cut from a plant, or got of somebody, is another lot. */
const FROM_IT =
  /\b(?:(?:took|taken?|taking|struck|strik(?:e|ing)|stuck|cut|snipp(?:ed|ing))\b(?! (?:a|another) (?:look|peek|peep|gander))[^.;\n]*|(?:off|from|like|with|than|to|for|beside|near)(?: (?:some|all|one|\d+))?(?: of)? )$/i;
/** In UTF-16 units; a longer text tells of more than one thing. */
const LONGEST = 300;

/** The text with the label of the only live lot that such words can mean; as it is where they may mean another, or none. */
export function withGrowersNamed({ ledger }: Sitting, text: string): string {
  if (text.length > LONGEST) return text;
  for (const [name, lots] of lotsByGrower(ledger)) {
    if (!text.toLowerCase().includes(name.toLowerCase()) || isPartOfName(name, text, ledger)) continue;
    const named = withLotOf(name, lots, text);
    if (named !== text) return named;
  }
  return text;
}

/** What each grower took or brought in that lives, by the name that others call them. */
function lotsByGrower(ledger: Ledger): ReadonlyMap<string, readonly Batch[]> {
  const lots = new Map<string, Batch[]>();
  const live = liveBatches(ledger);
  for (const { entry, by, touched } of ledger.standing) {
    if (by === null || !/^(?:strike|receive)$/.test(entry.kind)) continue;
    const [name = ''] = by.split(' ');
    const begun = live.filter(({ label }) => touched.includes(label));
    if (name !== '') lots.set(name, [...new Set([...(lots.get(name) ?? []), ...begun])]);
  }
  return lots;
}

/** A variety that has the grower's name in its own. */
const isPartOfName = (name: string, text: string, { varieties }: Ledger): boolean =>
  [...varieties.keys()].some(
    (variety) =>
      new RegExp(`(?<!\\p{L})${escaped(name)}(?!\\p{L})`, 'iu').test(variety) &&
      text.toLowerCase().includes(variety.toLowerCase()),
  );

function withLotOf(name: string, lots: readonly Batch[], text: string): string {
  const who = escaped(name);
  const whose = `(?<!\\p{L})${who}['’]?s`;
  for (const variety of new Set(lots.map((lot) => lot.variety))) {
    const [only, another] = lots.filter((lot) => lot.variety === variety);
    if (variety === null || !only || another) continue;
    const plant = `${escaped(variety)}s?${BOUNDARY}`;
    const before = `${whose} ${plant}`;
    const behind = `(?<!\\p{L})(?:the )?${plant}(?: (?:${ONES}))?(?: (?:that|which))? ${who}${TOOK}${BOUNDARY}`;
    const put = replaced(text, new RegExp(`${before}|${behind}`, 'iu'), only.label);
    if (put !== text) return put;
    // "Lost two Salt Harrier, Oriel's ones".
    const apart = new RegExp(
      `(?<plant>(?<!\\p{L})(?:the )?${plant})(?<between>[^.;\\n]*?),? (?:the )?(?:${whose} (?:${ONES})|(?:${ONES})(?: (?:that|which))? ${who}${TOOK})${BOUNDARY}`,
      'iu',
    );
    const { between } = apart.exec(text)?.groups ?? {};
    if (between !== undefined) return replaced(text, apart, `${only.label}${between}`);
  }
  const [only, another] = lots;
  if (!only || another) return text;
  const some = new RegExp(
    `${whose} (?<many>\\d+|${SMALL.slice(2).join('|')})(?= (?:have|has|are|rooted|died)\\b)`,
    'iu',
  );
  const many = some.exec(text)?.groups?.['many'];
  if (many !== undefined) return replaced(text, some, `${many} ${only.label}`);
  return replaced(text, new RegExp(`${whose} (?:${ONES})${BOUNDARY}`, 'iu'), only.label);
}

/** With `label` for the words, unless what stands before them makes them a place that something came from. */
function replaced(text: string, words: RegExp, label: string): string {
  const found = words.exec(text);
  if (!found || FROM_IT.test(text.slice(0, found.index))) return text;
  return `${text.slice(0, found.index)}${label}${text.slice(found.index + found[0].length)}`;
}

const escaped = (words: string): string =>
  words
    .replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
    .replace(/['’]/g, "['’]?")
    .replace(/ /g, ' +');
