/** Whom a correction is said to, or of, before it begins, and who told it, behind. */

const TOLD_ME =
  /,? (?:he|she|they)(?:['’](?:s|ve)| has| have)?(?: only)?(?: just)? (?:told|rang|texted|messaged) (?:me|us)(?: so)?[.!]?$/i;

/** "Col, that was …", "no Col, it was …", "Col's wrong there, it was …" without whom it is said to or of; "… she's just told me". */
export function withoutVocative(text: string): string {
  return (
    text
      .trim()
      .replace(TOLD_ME, '')
      // "Con it was six", with no mark; days and hours are nobody.
      .replace(
        /^(?:(?:[Nn]o|[Nn]ah|[Ss]orry),? )?(?!\p{L}+day\b|Then\b|Now\b|And\b|But\b|So\b|When\b|If\b)\p{Lu}\p{Ll}+ (?=['’]?twas|(?:it|that) was (?:only )?(?:\d|\p{L}+ of))/u,
        '',
      )
      .replace(
        /^(?:(?:[Nn]o|[Nn]ah|[Nn]ope|[Ss]orry|[Oo]i|[Hh]ey),? )?\p{Lu}\p{L}+(?:(?:['’]s| is| was| got it| had it) wrong(?: there)?)?, (?=(?:['’]?twas|that|it|the|those|they)\b)/u,
        '',
      )
  );
}
