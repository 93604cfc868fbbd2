/** "Two of each": of the plants named before, or of every variety that lives. */
import { describe, expect, it } from 'vitest';
import { read } from '../../src/language/read.js';

const batch = (label: string, variety: string) => ({ label, variety, crop: 'fuchsia', count: 9 });
const context = {
  varieties: ['Salt Harrier', 'Tallow Bell', 'Ribbon Sparrow'].map((name) => ({ name, crop: 'fuchsia' })),
  batches: [batch('SH1', 'Salt Harrier'), batch('TB1', 'Tallow Bell'), batch('RS1', 'Ribbon Sparrow')],
};

const told = (text: string): unknown[] =>
  read({ text, now: Date.parse('2026-05-02T10:00:00+01:00'), zone: 'Europe/London', context }).entries.map(
    ({ entry }) => {
      const { kind, variety, count } = entry as unknown as Record<string, unknown>;
      return [kind, variety, count].join(' ');
    },
  );

describe('so many of each', () => {
  it('is of every variety that lives', () => {
    expect(told('gave Betty 2 of each')).toEqual([
      'dispatch Salt Harrier 2',
      'dispatch Tallow Bell 2',
      'dispatch Ribbon Sparrow 2',
    ]);
    expect(told('lost one of each')).toEqual([
      'loss Salt Harrier 1',
      'loss Tallow Bell 1',
      'loss Ribbon Sparrow 1',
    ]);
  });

  it('is of those named before it', () => {
    expect(told('took 6 Salt Harrier and 4 Tallow Bell, gave Betty 2 of each')).toEqual([
      'strike Salt Harrier 6',
      'strike Tallow Bell 4',
      'dispatch Salt Harrier 2',
      'dispatch Tallow Bell 2',
    ]);
  });

  it('is nothing of plants where it counts something else', () => {
    expect(told('two of each colour')).toEqual([]);
  });
});
