/** How long a crop takes to root, taught by the grower. */
import { numberOf } from '../../number-names.js';
import type { InstructionRule } from './rule.js';

const singularOf = (crop: string): string => (/[^su]s$/.test(crop) ? crop.slice(0, -1) : crop);

export const daysToRoot: readonly InstructionRule[] = [
  {
    name: '<crop> root in <days>',
    pattern:
      /^(?:my |the |our )?(.{3,40}?)(?: cuttings)?(?: (?:usually|normally|always|generally|typically|tend to|should|will))* (?:roots?|takes?(?= .*\broot\b)) (?:here |for me )?(?:in |within |about |around |after |roughly )*(\d+|a|one|two|three|four|five|six|seven|eight|nine|ten|twelve)(?: (?:to|or|and|-) (\d+|two|three|four|five|six|seven|eight|nine|ten|twelve))? (days?|weeks?|fortnight)(?: to root)?(?: here| for me)?$/,
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
