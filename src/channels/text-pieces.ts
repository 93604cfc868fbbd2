/** Cuts a text into messages that a channel can carry, at the best place near the limit. */

/**
 * Pieces of at most `limit` UTF-16 units, none of them empty or blank: cut at the last blank line, else line, else word that lies in
 * the latter half of a piece, else between two characters, never inside one.
 */
export function textPieces(text: string, limit: number): string[] {
  const pieces: string[] = [];
  let rest = text.trim();
  while (rest.length > limit) {
    const at = cutBefore(rest, limit);
    pieces.push(rest.slice(0, at).trimEnd());
    rest = rest.slice(at).trimStart();
  }
  if (rest !== '') pieces.push(rest);
  return pieces;
}

function cutBefore(text: string, limit: number): number {
  for (const mark of ['\n\n', '\n', ' ']) {
    const at = text.lastIndexOf(mark, limit);
    if (at > limit / 2) return at;
  }
  // A high surrogate at the end of the piece belongs to the character after it.
  return /[\uD800-\uDBFF]/.test(text.charAt(limit - 1)) ? limit - 1 : limit;
}
