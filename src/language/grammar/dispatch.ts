/** Plants that leave the collection. */
import { given } from './dispatch/given.js';
import { swapped } from './dispatch/swapped.js';
import { newHomes } from './dispatch/new-homes.js';
import { fromMe } from './dispatch/from-me.js';
import { soldOut } from './dispatch/sold-out.js';
import { letHave } from './dispatch/let-have.js';
import { onPaper } from './dispatch/on-paper.js';
import { wentOut } from './dispatch/went-out.js';
import { orders } from './dispatch/orders.js';
import { sent } from './dispatch/sent.js';
import { carriedTo } from './dispatch/carried-to.js';
import { cameBy } from './dispatch/came-by.js';
import { fetched } from './dispatch/fetched.js';
import { tookSomeToo } from './dispatch/took-some-too.js';
import { wereGivenRules } from './dispatch/were-given.js';
import type { Rule } from './rule.js';

export const dispatchRules: readonly Rule[] = [
  ...given,
  ...swapped,
  ...fromMe,
  ...soldOut,
  ...orders,
  ...onPaper,
  ...wentOut,
  ...letHave,
  ...sent,
  ...carriedTo,
  ...fetched,
  ...cameBy,
  ...tookSomeToo,
  ...newHomes,
  ...wereGivenRules,
];
