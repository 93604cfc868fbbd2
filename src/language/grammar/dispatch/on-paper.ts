/** Sales told as their paper tells them: "invoice 2214: 120 Salt Harrier to Hexley". */
import { followsWord, type Rule, wordAt } from '../rule.js';

/** Still to be paid, made up or taken out, or come in from somebody. */
const NOT_GONE =
  /^(?:from|ex|plugs?|liners?|due|overdue|ready|reserved|provisional|draft|proforma|quote|quoted|cancelled|void|compost|pots|labels|paid|unpaid|tomorrow|next|going|go|will|for)$/;

export const onPaper: readonly Rule[] = [
  {
    name: 'invoice: <count> <plant> to <recipient>',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'invoice|docket|consignment no|nr|number|note? <count>? <break>?',
    shape: 'object',
    how: 'sold',
    when: (p, f, t) => {
      const to = p.findIndex((_, at) => at > t && wordAt(p, at) === 'to');
      const goods = p.slice(t, Math.max(t, to));
      return (
        f === 0 &&
        p[t - 1]?.is === 'break' &&
        p[t]?.is === 'count' &&
        goods.some(({ is }) => is === 'plant') &&
        goods.every(
          (piece) =>
            /^(?:count|plant|size|pots|break)$/.test(piece.is) ||
            (piece.is === 'word' && /^(?:and|x|of|plants)$/.test(piece.text)),
        ) &&
        p[to + 1]?.is === 'word'
      );
    },
    unless: (p, _f, t) =>
      p.slice(t).some((piece) => piece.is === 'word' && NOT_GONE.test(piece.text)) ||
      p.some((piece) => piece.is === 'when' && /^(?:undefined|ask)$/.test(String(piece.when.past))) ||
      followsWord(p, t, /^(?:us|me)$/),
    phrasings: [
      'Invoice 2214: 120 Salt Harrier and 60 Tallow Bell to Hexley Garden Centre, left on the van',
      'invoice 88 - 40 Salt Harrier to Marsh & Sons',
      'docket 310: 24 Salt Harrier, 36 Tallow Bell to Hexley, collected',
    ],
    mustNot: [
      'Invoice 2214 from Hexley: 120 Salt Harrier plugs',
      'Invoice 2214: 120 Salt Harrier to Hexley, due out Friday',
      'Invoice 2214 to Hexley paid, 120 Salt Harrier',
      'Invoice to write: 120 Salt Harrier to Hexley tomorrow',
      'must invoice Hexley for 120 Salt Harrier',
      'Invoice 2214: 120 Salt Harrier to Hexley tomorrow',
    ],
  },
];
