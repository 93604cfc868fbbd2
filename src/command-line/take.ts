/** `take`: plants wanted and records in, how many cuttings to take out. */
import { cuttingsToTake, MOST_CUTTINGS } from '../horticulture/cuttings-to-take.js';
import { takingReason } from '../words/taking-reason.js';
import type { Run } from './commands.js';
import { answerLines, BadLine } from './json-lines.js';
import { chanceField, countField, type Fields } from './line-fields.js';
import { strikeRateFields, survivalFields } from './rate-fields.js';

export const take: Run = (_args, streams) => answerLines(streams, answer);

function answer(line: Fields): object {
  const want = countField(line, 'want');
  const confidence = chanceField(line, 'confidence', 0.9);
  const rate = strikeRateFields(line);
  const survival = survivalFields(line);
  const taken = cuttingsToTake({
    want,
    confidence,
    rate: rate.next,
    ...(survival ? { survival: survival.next } : {}),
  });
  if (taken === null)
    throw new BadLine(
      `${want} plants at ${confidence} need more than ${MOST_CUTTINGS} cuttings: want fewer, or be content with a lower confidence`,
    );
  return {
    id: line['id'] ?? null,
    ...taken,
    reason: takingReason(taken, {
      want,
      meanRate: rate.mean,
      records: rate.records,
      ...(survival ? { meanSurvival: survival.mean } : {}),
    }),
  };
}
