/** The log is machine-readable and keeps notes and tokens to itself. */
import { describe, expect, it } from 'vitest';
import { createLog, traced } from '../src/log.js';

function logging(level: 'debug' | 'warn') {
  const lines: string[] = [];
  return { lines, log: createLog({ level, write: (line) => lines.push(line), now: () => 0 }) };
}

describe('the log', () => {
  it('writes one object a line, from its level up', () => {
    const { lines, log } = logging('warn');
    log.info('started');
    log.warn('told to slow down', { seconds: 3 });
    expect(lines.map((line) => JSON.parse(line) as object)).toEqual([
      { at: '1970-01-01T00:00:00.000Z', level: 'warn', event: 'told to slow down', seconds: 3 },
    ]);
    expect(lines[0]?.endsWith('\n')).toBe(true);
  });

  it('masks whatever looks like a token', () => {
    const { lines, log } = logging('debug');
    log.error('odd', { why: 'GET http://x/bot4711000001:AAfakefakefakefakefakefakefakefakefa/getMe' });
    expect(lines[0]).toContain('(token)');
    expect(lines[0]).not.toContain('AAfake');
  });

  it('traces an error without its message, which may quote a note', () => {
    const fields = traced(new RangeError('not a day: took 3 of Ember Fox\n    at the bench'));
    expect(fields['error']).toBe('RangeError');
    expect(fields['trace']).toContain('log.test.ts');
    expect(JSON.stringify(fields)).not.toContain('Ember Fox');
  });
});
