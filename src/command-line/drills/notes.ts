/** Notes of an invented bench, for drills: distinct and identical ones mixed. */
import type { Grower } from '../fake-bot-api/grower.js';

const varieties = [
  'Ember Fox dahlia',
  'Copper Lantern dahlia',
  'Marble Wren fuchsia',
  'Harbour Moth pelargonium',
] as const;

/** A note that reads without a question; every third is the same as others. */
export function noteNumber(index: number): string {
  if (index % 3 === 0) return `took 3 tip cuttings of ${varieties[0]} in one pot`;
  return `took ${2 + (index % 9)} tip cuttings of ${varieties[index % varieties.length]} in one pot`;
}

/** Lets each grower say `rounds` notes an hour apart, so that the same words are no slip of the thumb; answers their sources. */
export function sayAll(growers: readonly Grower[], rounds: number, firstAtSeconds: number): Set<string> {
  const sources = new Set<string>();
  for (let round = 0; round < rounds; round++)
    for (const [index, grower] of growers.entries()) {
      const message = grower.says(noteNumber(index + round), { date: firstAtSeconds + round * 3600 });
      sources.add(`telegram:${grower.chat} ${message}`);
    }
  return sources;
}
