/** Words that look like the name of a crop that is on no list. */

/** Ends as the names of crops do. */
export function looksLikeCrop(name: string): boolean {
  return /(?:ia|um|us|is|a|ea|on|ums|ias|as|ons|wort|berry|bush|ss|grass|wood|mint|bane|flower|daisy|ella)s?$/.test(
    name,
  );
}

/** "Sweet pea", "marsh thistle": small letters, and a word that many plants are called by. */
export const isCropOfTwo = (name: string): boolean =>
  /^[a-z]+ (?:peas?|beans?|williams?|lily|lilies|daisy|daisies|thistles?|poppy|poppies|clovers?|ferns?|flowers?|violets?)$/.test(
    name,
  );
