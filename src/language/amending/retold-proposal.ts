/** Sentences that tell a deed again so as to put it right: of which plant it was, how many there were at first. */
import { leading, leadingSome } from '../grammar/runs.js';
import { anyOf, opening } from '../phrases.js';
import type { Proposal } from '../proposal.js';
import { plantsIn, type Sentence } from '../sentences/sentences.js';

const OPEN = leading('no|oh|wait|hang on|hold on|sorry|oops|actually|well|but|my mistake');
const OTHER_PLANT = opening`
  ${OPEN}(it|that) was (a |an |one of )?(the |my )?([a-z]+ )?plantname (that|which|what|as) (i |we |has |had )?${anyOf`
    rotted|died|damped|wilted|rooted|went|snapped|failed|dropped|keeled
    got|lost|took|sold|gave|moved|potted|pinched|planted
  `}
`;
/** Second thoughts, or "only", tell that it was told before. */
const AT_FIRST = new RegExp(
  `^(?:${leadingSome('no|oh|wait|hang on|hold on|sorry|oops|actually|my mistake')}(?:i|we) (?:only |just )?|(?:i|we) only )(?:took|struck)\\b.* (?:in the first place|originally|to (?:start|begin) with)$`,
);
const MAKE = new RegExp(`^${OPEN}(?:make|call) (?:the |those |my )?plantname (?:\\d+|[a-z]+(?: [a-z]+)?)$`);

/** "It was a Brass Button that rotted": another plant; "I only took three in the first place", "make the Brass Button ten": another number. */
export function proposeRetold({ line, pieces }: Sentence): Proposal | undefined {
  const [plant] = plantsIn(pieces);
  // "It was three Brass Button that died": the deed told whole, with its number.
  const isCounted = plant !== undefined && pieces[pieces.indexOf(plant) - 1]?.is === 'count';
  if (OTHER_PLANT.test(line) && plant && !isCounted)
    return {
      kind: 'amend',
      rule: 'it was <plant> that <act>',
      slots: { set: { ...plant.plant } },
      draft: {},
    };
  const [number, another] = pieces.filter((piece) => piece.is === 'count');
  const value = number?.is === 'count' ? number.quantity.value : undefined;
  const makes = MAKE.test(line) && pieces.at(-1) === number;
  if (another || value === undefined || !(makes || AT_FIRST.test(line))) return undefined;
  return {
    kind: 'amend',
    rule: makes ? 'make the <plant> <count>' : 'only <act> <count> in the first place',
    slots: { set: { count: value } },
    draft: plant ? { plant: plant.plant } : {},
  };
}
