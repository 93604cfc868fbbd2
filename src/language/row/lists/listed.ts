/** Lists under an act: "Took today" and, a line each, "Salt Harrier 6", "Tallow Bell - 4"; or on one line behind a colon. */
import { mark, type Token } from '../tokens.js';
import { headedBy, headingOf } from './heading.js';
import { itemOf } from './item.js';
import { takenOfCrop } from './of-crop.js';
import { plansListed } from './plans.js';

/** The tokens, where lines or parts are such a list: one sentence, its parts between commas, a number behind its name as "x 6". */
export function listed(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(({ is, text }) => is === 'line' || text === ':' || text === '-'))
    return tokens.some(({ text }) => text === ',') ? listedBehind(tokens) : tokens;
  const plans = plansListed(tokens);
  if (plans) return plans;
  const lines = linesOf(tokens);
  const [only] = lines;
  return lines.length === 1 && only ? listedBehind(only) : listedBelow(lines, tokens);
}

/** Every run of lines below a heading that is a list is joined to it; without one, the tokens stay as they are. */
function listedBelow(lines: readonly (readonly Token[])[], tokens: readonly Token[]): readonly Token[] {
  const row: Token[] = [];
  let joined = false;
  for (let at = 0; at < lines.length; at++) {
    const line = lines[at] ?? [];
    if (row.length > 0) row.push(newLine(row, line));
    const heading = headingOf(line);
    const items = heading ? itemsBelow(lines, at + 1) : [];
    if (!heading || items.length < (heading.length < line.length ? 1 : 2)) {
      const behind = listedBehind(line);
      joined ||= behind !== line;
      row.push(...behind);
      continue;
    }
    row.push(...headedBy(heading));
    for (const [n, item] of items.entries()) row.push(...(n === 0 ? [] : [markBefore(item, ',')]), ...item);
    at += items.length;
    joined = true;
  }
  return joined ? row : tokens;
}

function itemsBelow(lines: readonly (readonly Token[])[], from: number): readonly (readonly Token[])[] {
  const items: (readonly Token[])[] = [];
  for (const line of lines.slice(from)) {
    const item = headingOf(line) && !/^\d/.test(line.at(-1)?.text ?? '') ? undefined : itemOf(line);
    if (!item) break;
    items.push(item);
  }
  return items;
}

/** "Struck: Salt Harrier 6, Tallow Bell 4. …": the parts up to the end of the sentence. */
function listedBehind(line: readonly Token[]): readonly Token[] {
  const colon = line.findIndex(({ text, glued }, at) =>
    text === '-' ? !glued && !line[at + 1]?.glued : text === ':' && !(glued && line[at + 1]?.glued),
  );
  const comma = colon < 0 ? line.findIndex(({ text }) => text === ',') : -1;
  // "Dahlia cuttings taken, Ember Fox 5, Rust Duchess 6".
  if (comma > 0 && takenOfCrop(line.slice(0, comma))) return listFrom(line, line.slice(0, comma), comma);
  const heading = colon > 0 ? headingOf(line.slice(0, colon + 1)) : undefined;
  return heading ? listFrom(line, heading, colon) : line;
}

/** The line with what stands behind the mark at `colon` as a list; as it is where that is none. */
function listFrom(line: readonly Token[], heading: readonly Token[], colon: number): readonly Token[] {
  const stop = line.findIndex(({ is, text }, at) => at > colon && is === 'mark' && /^[.!?;(]$/.test(text));
  const end = stop < 0 ? line.length : stop;
  const row: Token[] = [...headedBy(heading)];
  for (let from = colon + 1; from < end;) {
    let to = from;
    while (to < end && !/^(?:,|and)$/.test(line[to]?.text ?? '')) to++;
    const item = itemOf(line.slice(from, to));
    if (!item) return line;
    row.push(...item, ...line.slice(to, Math.min(to + 1, end)));
    from = to + 1;
  }
  return [...row, ...line.slice(end)];
}

const markBefore = (item: readonly Token[], text: string): Token => mark(text, item[0]?.start ?? 0);

function newLine(row: readonly Token[], line: readonly Token[]): Token {
  const end = line[0]?.start ?? row.at(-1)?.end ?? 0;
  return { text: '\n', raw: '\n', start: end, end, is: 'line', capital: false, glued: false };
}

function linesOf(tokens: readonly Token[]): readonly (readonly Token[])[] {
  const lines: Token[][] = [[]];
  for (const token of tokens) {
    if (token.is === 'line') lines.push([]);
    else lines.at(-1)?.push(token);
  }
  return lines.filter((line) => line.length > 0);
}
