/** One JSON object in, one JSON object out, line by line and in order: the shape of every headless face. */
import { createInterface } from 'node:readline';
import type { CommandStreams } from './commands.js';

/** A line that cannot be answered; its message says what to do. */
export class BadLine extends Error {}

/**
 * Answers each non-empty line with `answer`'s object, flushed line by line. A line that is no JSON object, or for which
 * `answer` throws `BadLine`, is answered `{id, error}` and makes the exit status 1; the run goes on. So it is with a fault
 * of our own, which is also told on `errors`.
 */
export async function answerLines(
  { input, output, errors }: CommandStreams,
  answer: (line: Record<string, unknown>) => object | Promise<object>,
): Promise<number> {
  let status = 0;
  for await (const text of createInterface({ input, crlfDelay: Infinity })) {
    if (text.trim() === '') continue;
    let id: unknown = null;
    let reply: object;
    try {
      const line = parseObject(text);
      id = line['id'] ?? null;
      reply = await answer(line);
    } catch (error) {
      status = 1;
      if (error instanceof BadLine) reply = { id, error: error.message };
      else {
        errors.write(`${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
        reply = { id, error: 'this line could not be worked out: a fault of the program, not of the line' };
      }
    }
    if (!output.write(`${JSON.stringify(reply)}\n`))
      await new Promise((resolve) => output.once('drain', resolve));
  }
  return status;
}

export function parseObject(text: string): Record<string, unknown> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw new BadLine('not JSON: write one JSON object a line');
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new BadLine('not an object: write one JSON object a line');
  return value as Record<string, unknown>;
}
