/** Verbs of carrying plants, for heads. */
import { pastOf } from '../rule.js';

/** Verbs that a place behind them makes a move of. */
export const CARRY = pastOf`
  move shift carry transfer relocate migrate rehouse switch promote demote upgrade
  lug haul drag cart trundle trolley wheel schlep ferry shuffle shunt slide hump hike bundle whisk herd traipse tote
  manhandle rush evict turf banish
`;

/** Verbs that tell of much else, and of a move only with plants beside them. */
export const PUT = `put~|pop~base|${pastOf`
  pop stick place set stand bung shove plonk tuck chuck whack sling take get send
`}`;
