/** Which ledger is written in. */
import { starts } from './opening.js';
import type { InstructionRule } from './rule.js';

export const ledgers: readonly InstructionRule[] = [
  {
    name: 'switch to <ledger>',
    pattern: starts(
      '(?:(?:switch|change|go|move|swap|open|use|start|create|make|new|begin|back)\\b.*)?\\b(?:ledger|book|notebook|log book|logbook)\\b.*',
    ),
    read: ({ line, written }) => {
      if (
        !/\b(?:switch|change|go|open|use|start|create|make|new|begin|back|swap)\b/.test(line) ||
        /\b(?:never put|in the book|the book says|forgot)\b/.test(line)
      )
        return undefined;
      const named =
        /(?:called|named) (.+)$/i.exec(written)?.[1] ??
        /(?:to|open|use|start|create|make|begin) (?:a |the |my |our |new )*(.+?) (?:ledger|book|notebook|logbook)\b/i.exec(
          written,
        )?.[1] ??
        /\b(?:ledger|book) (?:to |for |of )?(.+)$/i.exec(written)?.[1];
      return {
        kind: 'switchLedger',
        name: (named ?? '').trim().replace(/["'.]/g, ''),
        create: /\b(?:new|start|create|make|begin)\b/.test(line),
      };
    },
  },
  {
    name: 'switch to the society bench',
    pattern: starts('(?:switch|change|go|swap)(?: back| over)? to (?:the |my |our )?([^,]{2,40})$'),
    read: ({ written, pieces }) => {
      if (pieces.some(({ is }) => is !== 'word' && is !== 'place')) return undefined;
      const name = /\bto (?:the |my |our )?([^,.]{2,40})[.!]?$/i.exec(written.trim())?.[1];
      return name === undefined
        ? undefined
        : { kind: 'switchLedger', name: name.replace(/["']/g, ''), create: false };
    },
  },
];
