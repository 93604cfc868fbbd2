/** Which of a draft's slots each kind of act carries. */
import type { Draft } from './acts/drafting/draft.js';
import type { Rule } from './grammar/rule.js';

/** What a rule says of an act beside its words. */
type Told = Pick<Rule, 'kind' | 'care' | 'cause' | 'how' | 'rooted'>;

/** The slots beside plant, count and date that an act of this rule takes from what was said. */
export function slotsOf(rule: Told, draft: Draft): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(taken(rule, draft)).filter(([, value]) => value !== undefined));
}

function taken(rule: Told, draft: Draft): Record<string, unknown> {
  switch (rule.kind) {
    case 'strike':
      return {
        pots: potsOf(draft),
        cutting: draft.cutting,
        medium: draft.medium,
        hormone: draft.hormone,
        place: draft.place,
        potSize: draft.size,
      };
    case 'stock':
    case 'receive':
      return { place: draft.place, potSize: draft.size };
    case 'tend':
      return { care: rule.care, place: draft.place ?? draft.fromPlace };
    case 'loss':
      return { cause: draft.cause ?? rule.cause };
    case 'check':
      return {
        rooted:
          draft.quantity === undefined || (rule.rooted === 'none' && !draft.quantity.settles)
            ? rule.rooted
            : undefined,
      };
    case 'potOn':
      return { potSize: draft.size, medium: draft.medium };
    case 'move':
      return { place: draft.place, fromPlace: draft.fromPlace };
    case 'hardenOff':
    case 'plantOut':
      return { place: draft.place };
    case 'dispatch':
      return { how: rule.how, to: draft.to };
    default:
      return {};
  }
}

/** "12 cuttings, 3 per pot" stand in four pots. */
function potsOf({ pots, each, quantity, size }: Draft): number | undefined {
  // "One per cell": the trays are not counted.
  if (pots !== undefined || size?.endsWith('cell')) return pots;
  const count = quantity?.value;
  return each !== undefined && count !== undefined && count % each === 0 ? count / each : undefined;
}
