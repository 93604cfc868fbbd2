/** Moves told without a verb: "into the porch with the Salt Harrier", "Salt Harrier back in the propagator". */
import { groundAt } from '../plant-out/quarters.js';
import { TIP } from '../loss/tip.js';
import { anyStock } from '../stock/kinds-of-plant.js';
import { closeBehind, endsAt, type Rule, wordAt } from '../rule.js';

/** Not where plants are thrown away, planted or sold. */
export const isOnBench = (place: string): boolean =>
  !TIP.test(place) && !/\b(?:bed|border|ground|market|shop|sale|school)$/.test(place);

export const movedInShort: readonly Rule[] = [
  {
    name: '<plant> all in <place> now',
    kind: 'move',
    head: '<count> in|on|under the|my? <place> now',
    shape: 'subject',
    when: (p, f, t) => {
      const all = p[f];
      const before = p.slice(0, f);
      return (
        p[f - 1]?.is === 'plant' &&
        all?.is === 'count' &&
        all.quantity.whole !== undefined &&
        !groundAt(p, t - 2) &&
        !before.some((piece) => piece.is === 'count' || (piece.is === 'word' && piece.verb !== undefined))
      );
    },
    phrasings: ['Salt Harrier all in the greenhouse now'],
    mustNot: ['are the Salt Harrier all in the greenhouse now?'],
  },
  {
    name: 'into <place> with <plant>',
    kind: 'move',
    head: 'in|out|over|off|back? into|to|onto the|my? <place> with',
    shape: 'object',
    when: (p, f, t) => {
      const place = p.slice(f, t).find((piece) => piece.is === 'place');
      return (
        (f === 0 || p[f - 1]?.is === 'when' || p[f - 1]?.is === 'break') &&
        closeBehind(p, t, 'plant') &&
        !p.some((piece) => piece.is === 'when' && /\b(?:tomorrow|next|later)\b/i.test(piece.when.words)) &&
        place?.is === 'place' &&
        isOnBench(place.place)
      );
    },
    phrasings: ['into the porch with the Salt Harrier', 'out to the cold frame with the Salt Harrier'],
    mustNot: [
      'off to the greenhouse with the Salt Harrier tomorrow',
      'into the bin with the Salt Harrier',
      'into the greenhouse with a cup of tea',
    ],
  },
  {
    name: '<plant> back in <place>',
    kind: 'move',
    head: 'back in|into|on|onto|under the|my? <place>',
    shape: 'subject',
    faint: true,
    when: (p, f) =>
      (p[f - 1]?.is === 'plant' ||
        (anyStock(p.slice(0, f)) && p.slice(0, f).some(({ is }) => is === 'plant'))) &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined),
    phrasings: ['Salt Harrier back in the propagator again', 'Salt Harrier tubers all back in the garage'],
    mustNot: ['are the Salt Harrier back in the propagator?'],
  },
  {
    name: '…, other <count> on <place>',
    kind: 'move',
    head: '<count> in|on|onto|under the|my? <place>',
    shape: 'object',
    when: (p, f, t) => {
      const others = p[f];
      const before = /^(?:the|my)$/.test(wordAt(p, f - 1)) ? f - 2 : f - 1;
      return (
        others?.is === 'count' &&
        others.quantity.besides === true &&
        p[before]?.is === 'break' &&
        endsAt(p, t) &&
        p.slice(0, f).some(({ is }) => is === 'plant') &&
        p
          .slice(0, f)
          .every(
            (piece) =>
              piece.is !== 'word' ||
              piece.verb?.form !== 'past' ||
              /^(?:pot|repot|break|lose|bin|sell|give|be)$/.test(piece.verb.lemma),
          )
      );
    },
    phrasings: ['repotted the Salt Harrier, broke one, other five on the windowsill'],
    mustNot: ['planted two Salt Harrier by the pond, other five on the windowsill'],
  },
  {
    name: '<rest> back in <place>',
    kind: 'move',
    head: '<count> back in|into|on|onto|under the|my? <place>',
    shape: 'object',
    when: (p, f) => {
      const rest = p[f];
      return (
        rest?.is === 'count' &&
        (rest.quantity.whole === 'rest' || rest.quantity.besides === true) &&
        p.slice(0, f).some(({ is }) => is === 'plant')
      );
    },
    phrasings: ['ten of the Salt Harrier potted up and the others back in the propagator'],
    mustNot: ['are the others of the Salt Harrier back in the propagator?'],
  },
  {
    name: 'into <place>: <count> <plant>',
    kind: 'move',
    head: 'into|to|onto the|my? <place>',
    shape: 'object',
    when: (p, f, t) => {
      const mark = p[t]?.is === 'when' ? t + 1 : t;
      const place = p[t - 1];
      const listed = p.slice(mark + 1);
      return (
        (f === 0 || p[f - 1]?.is === 'when') &&
        p[mark]?.is === 'break' &&
        listed.some(({ is }) => is === 'plant') &&
        !listed.some((piece) => piece.is === 'word' && piece.verb?.form === 'past') &&
        place?.is === 'place' &&
        isOnBench(place.place)
      );
    },
    phrasings: [
      'into the cold frame this morning: the last of the Salt Harrier, and four of the Tallow Bell',
    ],
    mustNot: ['into the bin: four Tallow Bell', 'to the greenhouse, then watered the Salt Harrier'],
  },
];
