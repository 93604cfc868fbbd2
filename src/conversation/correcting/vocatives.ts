/** Whom a correction is said to, or of, before it begins. */

/** "Col, that was …", "no Col, it was …", "Col's wrong there, it was …" without whom it is said to or of. */
export function withoutVocative(text: string): string {
  return text
    .trim()
    .replace(
      /^(?:(?:[Nn]o|[Nn]ah|[Nn]ope|[Ss]orry|[Oo]i|[Hh]ey),? )?\p{Lu}\p{L}+(?:(?:['’]s| is| was| got it| had it) wrong(?: there)?)?, (?=(?:that|it|the|those|they)\b)/u,
      '',
    );
}
