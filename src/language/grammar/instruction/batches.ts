/** Batches parted and put together. */
import { starts } from './opening.js';
import { numberOf } from './number-spelt.js';
import type { InstructionRule } from './rule.js';

/** "Split three of these into a batch of their own": the number is what is parted, not how many parts. */
const OWN_BATCH = /\binto (?:(?:a|an|its|their|another) )?(?:own|new|separate|batch of)\b/;

export const batches: readonly InstructionRule[] = [
  {
    name: 'split <plant> into <counts>',
    pattern: starts('(?:split|divide|separate|break up|break)\\b.*'),
    read: (words) => {
      const { plants, numbers, line } = words;
      const plant = plants[0];
      if (!plant || /^(?:.* )?(?:broke|divided|separated)\b/.test(line)) return undefined;
      // "Into two lots of six".
      const [, parts, each] = /\b(\w+) (?:lots|batches|pots|groups|parts) of (\w+)\b/.exec(line) ?? [];
      const lots = numberOf(parts);
      const size = numberOf(each);
      if (lots !== undefined && size !== undefined && lots * size > 0 && lots <= 12)
        return { kind: 'split', plant, into: Array<number>(lots).fill(size) };
      // "In two, 45 and 45": so many parts, then their sizes.
      const sizes =
        numbers.length > 2 && numbers[0] === numbers.length - 1 && /\bin(?:to)? \w+ /.test(line)
          ? numbers.slice(1)
          : numbers;
      return {
        kind: 'split',
        plant,
        ...(numbers.length === 1 && (!/\binto\b/.test(line) || OWN_BATCH.test(line))
          ? { count: numbers[0] ?? 0 }
          : {}),
        ...(sizes.length > 1 ? { into: sizes } : {}),
      };
    },
  },
  {
    name: 'make <count> of <plant> a batch of their own',
    pattern: /\b(?:batch of (?:their|its) own|(?:a |into a )?(?:new|separate|own) batch)\b/,
    read: ({ plants, numbers, line }) =>
      // "New batch: 9 tip cuttings of …" tells of cuttings.
      plants[0] && !/^(?:took|struck|i took|a? ?new batch)\b|\bcuttings\b/.test(line)
        ? { kind: 'split', plant: plants[0], ...(numbers[0] === undefined ? {} : { count: numbers[0] }) }
        : undefined,
  },
  {
    name: 'merge <plant> and <plant>',
    pattern: starts('(?:merge|join|combine|lump|put|treat|unite|pool|amalgamate|roll)\\b.*'),
    read: ({ plants, line }) =>
      /^(?:.*\b)?(?:merge|join|combine|pool|amalgamate|unite)\b/.test(line) ||
      /\b(?:(?:into|as|in) (?:one|a single|the same) (?:batch|lot|record)|one batch|together (?:as|in|into) one)\b/.test(
        line,
      )
        ? { kind: 'merge', plants }
        : undefined,
  },
];
