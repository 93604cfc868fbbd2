/** "Fuchsia cuttings today", "did the dahlias this morning", "dahlias struck": a heading that names what all of the list are. */
import { cropAt } from '../../pieces/crop-words.js';
import { verbSense } from '../lexicon.js';
import { textAt, type Token } from '../tokens.js';

/** The heading as "took dahlia cuttings this morning", without its colon; undefined where it is another. */
export function takenOfCrop(heading: readonly Token[]): readonly Token[] | undefined {
  const did = textAt(heading, 0) === 'did';
  let at = did ? 1 : 0;
  while (/^(?:the|some|my|a|few|more)$/.test(textAt(heading, at))) at++;
  const crop = cropAt(heading, at, []);
  if (!crop) return undefined;
  let to = crop.to;
  if (/^(?:cuttings|slips)$/.test(textAt(heading, to))) to++;
  if (!did && /^(?:taken|struck|stuck|done)$/.test(textAt(heading, to))) to++;
  const rest = heading.slice(to);
  if ((!did && to === crop.to) || rest.some(({ text }) => verbSense(text)?.form === 'past')) return undefined;
  const start = heading[0]?.start ?? 0;
  const end = heading[to - 1]?.end ?? start;
  return [unwritten('took', start), ...heading.slice(at, crop.to), unwritten('cuttings', end), ...rest];
}

/** A word that nobody wrote. */
const unwritten = (text: string, start: number): Token => ({
  text,
  raw: text,
  start,
  end: start,
  is: 'word',
  capital: false,
  glued: false,
});
