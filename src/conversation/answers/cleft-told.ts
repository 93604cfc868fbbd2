/** “It was seven cuttings of Salt Harrier that I took”: the deed told plainly, for a question that waits for its number. */
const CLEFT =
  /^(?:(?:no|sorry|oh|ah|well|actually)[,. ]+)*(?:it|that) (?:was|were|['’]s) (.{1,60}?) (?:that |which )?(i|we) (took|struck|lost|sold|gave|gave away|swapped|potted on|potted up|planted out|pinched|moved|bought|threw out|binned)\b(.{0,60})$/iu;

/** "I took seven cuttings of Salt Harrier this morning"; null where the text is told otherwise. */
export function plainlyTold(text: string): string | null {
  const [, what, who, did, rest = ''] = CLEFT.exec(text.trim().replace(/[.!]$/, '')) ?? [];
  return what === undefined ? null : `${who} ${did} ${what}${rest}`;
}
