/** Long answers a page at a time. */
import type { Sitting } from '../sitting.js';

/** A page is what a phone shows without much scrolling, far below any channel's bound. */
const PAGE_CHARACTERS = 1200;

export const moreData = 'more';

/** Lines gathered into pages; a line longer than a page is cut. */
export function pagesOf(text: string): string[] {
  const pages: string[] = [];
  let page = '';
  for (const line of text.split('\n').flatMap(cut)) {
    if (page !== '' && page.length + line.length + 1 > PAGE_CHARACTERS) {
      pages.push(page);
      page = line;
    } else page = page === '' ? line : `${page}\n${line}`;
  }
  return [...pages, page];
}

export function nextPage(sitting: Sitting): void {
  const [page, ...rest] = sitting.talk.pages;
  if (page === undefined) return;
  sitting.change({ pages: rest });
  sitting.reply.text.push(page);
}

function cut(line: string): string[] {
  const parts: string[] = [];
  for (let at = 0; at < line.length || at === 0; at += PAGE_CHARACTERS)
    parts.push(line.slice(at, at + PAGE_CHARACTERS));
  return parts;
}
