/** Words that tell a bare number to be a temperature. */
export const STRONG_CUE =
  /\b(?:temp|temperature|temps|thermometer|degrees|min|max|minimum|maximum|down to|up to|hit|touched|dropped|fell|overnight|(?:got|gets|get|rose|went|going|climbed|crept) (?:above|below|past|over|under)|last night|steady|holding|hovering|peaked|dipped|reads?|reading|it(?:'s| is| was) \w+ (?:in|on|under)|clocked|at|showing|shows|says|low|high)\b/;
