/** Stock plants bought, given, potted up or woken; rooted plants that come in. */
import { bought } from './stock/bought.js';
import { arrived } from './stock/arrived.js';
import { delivered } from './stock/delivered.js';
import { passedOn } from './stock/passed-on.js';
import { setDown } from './stock/set-down.js';
import { given } from './stock/given.js';
import { swappedFor } from './stock/swapped-for.js';
import { woken } from './stock/woken.js';
import { toldAsStock } from './stock/told-as-stock.js';
import type { Rule } from './rule.js';

export const stockRules: readonly Rule[] = [
  ...bought,
  ...arrived,
  ...delivered,
  ...setDown,
  ...passedOn,
  ...given,
  ...swappedFor,
  ...woken,
  ...toldAsStock,
];
