/** How long a crop takes to root, taught by the grower. */
import { numberOf } from '../../pieces/number-names.js';
import { alternatives, anyOf, whole } from '../../phrases.js';
import type { InstructionRule } from './rule.js';

const singularOf = (crop: string): string => (/[^su]s$/.test(crop) ? crop.slice(0, -1) : crop);

const NUMBER = 'two|three|four|five|six|seven|eight|nine|ten|twelve';

/** "Our fuchsia cuttings usually root in about 2 to 3 weeks here": the crop, one number or two, and what they count. */
const ROOTS_IN = whole`
  (my |the |our )?(?<crop>.{3,40}?)( cuttings)?( ${anyOf`
    usually|normally|always|generally|typically|tend to|should|will
  `})* (roots?|takes?(?= .*\broot\b)) (here |for me )?((in|within|about|around|after|roughly) )*${alternatives`
    (?<from>\d+|a|one|${NUMBER})( (to|or|and|-) (?<to>\d+|${NUMBER}))?
  `} (?<unit>days?|weeks?|fortnight)( to root)?( here| for me)?
`;

export const daysToRoot: readonly InstructionRule[] = [
  {
    name: '<crop> root in <days>',
    pattern: ROOTS_IN,
    read: ({ line, plants }, match) => {
      if (/\b(?:rooted|took|taken|remind|when|if)\b/.test(line)) return undefined;
      const crop = plants[0] ? plants[0].crop : singularOf(match[1] ?? '');
      const from = numberOf(match[2]);
      if (crop === undefined || from === undefined) return undefined;
      const days = match[4] === 'fortnight' ? 14 : match[4]?.startsWith('week') ? 7 : 1;
      const to = numberOf(match[3]);
      // One number is a middle, not a promise to the day.
      const daysToRoot: readonly [number, number] =
        to === undefined
          ? [Math.round(from * days * 0.8), Math.round(from * days * 1.2)]
          : [from * days, to * days];
      return daysToRoot[0] > 0 && daysToRoot[0] < daysToRoot[1]
        ? { kind: 'teach', crop, daysToRoot }
        : undefined;
    },
  },
];
