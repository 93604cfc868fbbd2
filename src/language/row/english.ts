/** Whether a word is plain English, so that spelling repair leaves it alone. */
import { readFileSync } from 'node:fs';
import wordListPath from 'word-list';
import { wordsOf } from '../phrases.js';

/** Some 270,000 words of plain letters, sorted, one a line; as bytes, since a text made of them takes megabytes more. */
let sorted: Buffer | undefined;
const LINE_FEED = 10;

/** Words that are in the list, and in a grower's note a slip of a common one: "pumie", "pelite", "roted"; none that anybody says ("spayed"). */
const RATHER_SLIPS: ReadonlySet<string> = new Set(wordsOf`
  pelite pumie grund compots tubbers baals seelings seeling seedings liers fugus fungs stong scatch
  roted roting poting dopped stoped looed puled tosed wited wiled wapped lited caried cliped luged colleted colleting collet
  shuted shuting teated biled evited cosed uncoer amened traped readding reding recons brining witing liting
  tenty eeven iches thans thigs tings aways alays swith quarer dought muter nither fuffy perfet volet thrist
  shool fidge tolley couter tabes coper clour clours clotes tousers coures offie potto
  eevning leger leders tyring puring quicky troule doated staning sones
`);

/** Looks a lower-case word up in the sorted list by halving; the list is read at the first call. */
export function isEnglish(word: string): boolean {
  if (RATHER_SLIPS.has(word)) return false;
  sorted ??= readFileSync(wordListPath);
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const start = middle === 0 ? 0 : sorted.lastIndexOf(LINE_FEED, middle - 1) + 1;
    const feed = sorted.indexOf(LINE_FEED, middle);
    const end = feed < 0 ? sorted.length : feed;
    const found = sorted.toString('latin1', start, end);
    if (found === word) return true;
    if (found < word) low = end + 1;
    else high = start - 1;
  }
  return false;
}
