/** Tells which speech programs this machine has, and holds tests that need them to what SLIPNOTE_TEST_REQUIRES says. */
import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { speechFault } from '../../src/voice/engines.js';

const isRequired = (process.env['SLIPNOTE_TEST_REQUIRES'] ?? '').split(',').includes('voice');

function hasProgram(name: string, ...args: string[]): boolean {
  return spawnSync(name, args, { stdio: 'ignore' }).error === undefined;
}

const wanting = {
  'pocketsphinx pocketsphinx-en-us': speechFault({ kind: 'pocketsphinx' }) !== undefined,
  'espeak-ng': !hasProgram('espeak-ng', '--version'),
};

export type DebianPackages = keyof typeof wanting;

/** Tests that need Debian packages: skipped by name where one is missing, or failed where the run requires voice. */
export function describeWith(packages: readonly DebianPackages[], title: string, tests: () => void): void {
  const missing = packages.filter((each) => wanting[each]);
  if (missing.length === 0) describe(title, tests);
  else if (isRequired)
    it(`${title}: has the Debian packages ${missing.join(' ')}`, () => expect(missing).toEqual([]));
  else describe.skip(`${title} (wants the Debian packages ${missing.join(' ')})`, tests);
}
