/** Words that tell a bare number to be a temperature. */
export const TEMPERATURE_CUE =
  /\b(?:at|temp|temperature|temps|thermometer|degrees|reading|reads|read|shows|showing|showed|says|said|down to|up to|hit|hits|touched|reached|min|max|minimum|maximum|low|lows|high|highs|low of|high of|overnight|sitting|holding|got to|got down|got up|dropped|fell|went down|went up|steady|hovering|climbed|rose|peaked|dipped|bottomed|running|stayed|sat|stuck|clocked|registered|is|was|it's|it is|mat|only|just|about|now)\b/;
export const STRONG_CUE =
  /\b(?:temp|temperature|temps|thermometer|degrees|min|max|minimum|maximum|down to|up to|hit|touched|dropped|fell|overnight|last night|steady|holding|hovering|peaked|dipped|low of|high of|reads|reading|clocked|at|showing|shows|says|low|high)\b/;
