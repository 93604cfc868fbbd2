/** What plants are called that came to little: "the one runt", "two stragglers". */
import { whole } from '../phrases.js';

const ONE =
  'dud|weakling|straggler|runt|laggard|goner|casualty|sulker|titch|tiddler|failure|blank|reject|no-hoper';

/** One of them. */
export const DUD = whole`${ONE}`;

/** One of them, or several. */
export const DUDS = whole`(${ONE})s?|casualties`;
