/** What stands beside a "to" that was heard or thumbed as a number, and beside a number. */

/** Behind a "2" these say that it counts, and leads nowhere. */
export const COUNTED =
  /^(?:days?|weeks?|months?|hours?|nights?|minutes?|of|more|for|each|left|are|were|and|to|at|from|in|cuttings|pots|plants|rooted|have|had|died|dead|went)$/;
export const THEM = /^(?:them|em|it|those|these|everything|all|rest|lot|both)$/;
