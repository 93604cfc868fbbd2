/** Sentences that say what crop a variety is. */
import type { Note } from '../note.js';
import type { Proposal } from '../proposal.js';
import { plantsIn, type Sentence } from '../sentences/sentences.js';

const TELLS =
  /^(?:oh |and |ps |by the way |btw )?(?:the )?plantname (?:is|are|was|were) (?:actually |really )?(?:an? |the )?plantname(?: btw| by the way| of course| actually| if you were wondering)*$/;

/** "That's a fuchsia, by the way", of the only variety whose crop is not known. */
const TELLS_IT =
  /^(?:oh |and |ps |by the way |btw |sorry |forgot to say )?(?:that's|thats|that is|that was|it's|its|it is|they're|they are|those are) (?:all )?(?:an? |the )?plantname(?: btw| by the way| of course| actually| if you were wondering)*$/;

/** "Barge Lantern is a dahlia, by the way": puts right a variety noted without its crop; nothing where that is known. */
export function proposeCrop({ line, pieces }: Sentence, { context }: Note): Proposal | undefined {
  if (TELLS_IT.test(line)) return cropOfOnly(pieces, context);
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

function cropOfOnly(pieces: Sentence['pieces'], context: Note['context']): Proposal | undefined {
  const [told] = plantsIn(pieces);
  const { crop, variety: another } = told?.plant ?? {};
  const [only, more] = (context?.varieties ?? []).filter((each) => each.crop === undefined);
  if (crop === undefined || another !== undefined || !only || more) return undefined;
  return {
    kind: 'amend',
    rule: '<plant> is a <crop>',
    slots: { set: { crop } },
    draft: { plant: { variety: only.name } },
  };
}
