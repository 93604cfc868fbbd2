/** Words that tell a bare number to be a temperature. */
export const STRONG_CUE =
  /\b(?:temp|temperature|temps|thermometer|degrees|min|max|minimum|maximum|down to|up to|hit|touched|dropped|fell|overnight|(?:got|gets|get|rose|went|going|climbed|crept|fell) (?:above|below|past|over|under|as low as|as high as)|last night|steady|holding|hovering|peaked|dipped|low of|high of|reads|reading|clocked|at|showing|shows|says|low|high)\b/;
