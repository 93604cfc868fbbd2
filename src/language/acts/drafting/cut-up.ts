/** Cuttings made of one part of a plant: "a leaf into nine". */
import { wordAt } from '../../grammar/rule.js';
import type { CountSeen } from './count-seen.js';

/** What part of the plant the words of a strike say was cut into so many. */
export function cutUp({ clause, pieces, at }: CountSeen): 'leaf' | 'root' | 'stem' | undefined {
  if (clause.hit?.rule.kind !== 'strike') return undefined;
  for (let before = at - 1; before >= clause.from; before--) {
    const [, part] = /^(leaf|leav|root|stem)(?:e?s)?$/.exec(wordAt(pieces, before)) ?? [];
    if (part !== undefined) return part === 'leav' ? 'leaf' : (part as 'leaf' | 'root' | 'stem');
  }
  return undefined;
}
