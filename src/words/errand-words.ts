/** What is said to errands outside the ledger. */

export const errandWords = {
  exported: (lines: number): string =>
    `Here is the ledger, ${lines} ${lines === 1 ? 'line' : 'lines'} of it.`,
  failed:
    'That did not work, and nothing was changed. Try it again; if it fails again, tell whoever runs me.',
  fromCommandLine: 'Whoever runs this bot can make that on its machine; here I cannot send it yet.',
} as const;
