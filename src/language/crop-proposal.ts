/** Sentences that say what crop a variety is. */
import type { Note } from './note.js';
import type { Proposal } from './proposal.js';
import { plantsIn, type Sentence } from './sentences.js';

const TELLS =
  /^(?:oh |and |ps |by the way |btw )?(?:the )?plantname (?:is|are|was|were) (?:actually |really )?(?:an? |the )?plantname(?: btw| by the way| of course| actually| if you were wondering)*$/;

/** "Barge Lantern is a dahlia, by the way": puts right a variety noted without its crop; nothing where that is known. */
export function proposeCrop({ line, pieces }: Sentence, { context }: Note): Proposal | undefined {
  if (!TELLS.test(line)) return undefined;
  const [named, told, more] = plantsIn(pieces);
  const variety = named?.plant.variety;
  const crop = told?.plant.crop;
  if (more || variety === undefined || crop === undefined || told?.plant.variety !== undefined)
    return undefined;
  const known = (context?.varieties ?? []).find(({ name }) => name.toLowerCase() === variety.toLowerCase());
  if (!known || known.crop !== undefined) return undefined;
  return {
    kind: 'amend',
    rule: '<plant> is a <crop>',
    slots: { set: { crop } },
    draft: { plant: { variety } },
  };
}
