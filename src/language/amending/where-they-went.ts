/** How plants went and to whom, put right: "should have said sold, not gave", "they went to Suizebol, not Dwarrelhof". */
import { leading } from '../grammar/runs.js';
import { anyOf, whole } from '../phrases.js';
import { numberAt } from '../pieces/numbers.js';
import type { PlantWords } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { tokenise } from '../row/tokens.js';

/** How plants went, by the words for it. */
const HOW: Readonly<Record<string, string>> = {
  sold: 'sold', sell: 'sold', sale: 'sold', gave: 'given', given: 'given', gift: 'given', swapped: 'swapped', swap: 'swapped',
}; // prettier-ignore
/** "They went to Suizebol, not Dwarrelhof". */
const WENT_TO =
  /^(?:(?:[Nn]o|[Ss]orry|[Oo]ops|[Aa]ctually)[, ]+)*(?:[Ii]t|[Tt]hey|[Tt]hat|[Tt]hose) (?:went|were sold|were given|was) to (?:the )?(\p{Lu}[\p{L}'’ -]{1,40}?),? not (?:to )?(?:the )?\p{Lu}[\p{L}'’ -]{1,40}$/u;

/** "That was 3 for Orla", "it was four to Ken": how many somebody had. */
const SO_MANY_TO =
  /^(?:(?:[Nn]o|[Ss]orry|[Oo]ops|[Aa]ctually)[, ]+)*(?:[Ii]t|[Tt]hat|[Tt]hose) (?:was|were|should be|should have been) (?:only |actually )?(\d{1,3}|\p{Ll}{3,9}) (?:for|to|went to) (?:my \p{Ll}{2,10} |the )?(\p{Lu}[\p{L}'’-]{1,20}(?: \p{Lu}[\p{L}'’-]{1,20})?)$/u;

const WENT = '(?:sold|given|swapped|gave|sale|gift|swap)(?: it| them)?';
const IT_SHOULD_BE = anyOf`
  (it|that|they|those|these|i) (was|were|meant|should (be|have been|have said|say))
  should (be|have said|have been|say)|make that
`;
/** "Should have said sold, not gave", "it was a swap, not a sale". */
const HOW_IT_WENT = whole`
  ${leading`no|sorry|oops|actually|and`}${anyOf`
    ${IT_SHOULD_BE} (a |an )?${WENT}( not (a |an )?${WENT})?
    ${WENT} not ${WENT}
  `}
`;

const BID = anyOf`
  ( (please|pls|can you|could you))* (correct|fix|change|amend|sort|alter|update)( (it|that|this))?( (out|please|pls|for me|would you|will you))*
  ( (please|pls|can you|could you))* put (it|that|this) (right|straight)( (please|pls|for me|would you|will you))*
`;
/** "The Salt Harrier weren't given away, they were sold": of which plant it is. */
const HOW_PLANTS_WENT = new RegExp(
  `^${leading`no|sorry|oops|actually|and|about|the|those|my|hi|hiya|hello`}plantname (?:${anyOf`
    (weren't|wasn't|were not|was not|were never|aren't) (a |an )?${WENT}( away)?( but)?( (it|they|that|those) (was|were)| were)? (?<how>(a |an )?${WENT})( away| off)?
    (was|were|got) (actually |really )?(?<instead>(a |an )?${WENT})( away| off)? not (a |an )?${WENT}( away| off)?
  `})(?<to> to .{2,30}?)?(?:${BID})?$`,
);

const RECIPIENT = /(?:^| )(?:to|for) (?:the |my |our )?([\p{L}'’ -]{2,40})$/u;

const WRONG_ONE = anyOf`
  ((i|we|i've|we've|you|you've|you have|it's|it has) )?((named|said|put|gave|wrote|got|had|told you|typed|logged)( down)? )?(the )?wrong (person|name|recipient|man|woman|lady|chap|bloke|fella|neighbour|friend|school|club)( down)?
`;
/** "I named the wrong person, those Salt Harrier went to Maureen". */
const WENT_ELSEWHERE = new RegExp(
  `^${leading`no|sorry|oops|actually|and|so`}${WRONG_ONE}( (for|with|on) (the )?plantname)? ${leading`it|they|that|those|these|the|was|were|my`}(plantname )?(went|gone|were given|were sold|was for|were for|it was for|should be|should have been|should say|go|goes)( to| for)? `,
);

/** The amendment that a sentence makes of it; `line` in small letters, `written` as the grower wrote it. */
export function proposeWhereTo(
  line: string,
  written: string,
  plant: PlantWords | undefined,
): Proposal | undefined {
  const went = HOW_PLANTS_WENT.exec(line)?.groups;
  const now = /\b(?:sold|given|swapped|gave|sale|gift|swap)\b/.exec(
    went?.['how'] ?? went?.['instead'] ?? '',
  )?.[0];
  const named = went?.['to'] === undefined ? undefined : RECIPIENT.exec(written)?.[1];
  if (now !== undefined && plant)
    return {
      kind: 'amend',
      rule: 'sold, not given',
      slots: { set: { how: HOW[now], ...(named === undefined ? {} : { to: named }) } },
      draft: { plant },
    };
  const elsewhere = WENT_ELSEWHERE.exec(line);
  const whom = elsewhere && RECIPIENT.exec(written)?.[1];
  if (whom)
    return {
      kind: 'amend',
      rule: 'went to <recipient>, not <recipient>',
      slots: { set: { to: whom } },
      draft: plant ? { plant } : {},
    };
  const [how] = HOW_IT_WENT.test(line)
    ? (/\b(?:sold|given|swapped|gave|sale|gift|swap)\b/.exec(line) ?? [])
    : [];
  if (how !== undefined)
    return { kind: 'amend', rule: 'sold, not given', slots: { set: { how: HOW[how] } }, draft: {} };
  const [, many, taker] = SO_MANY_TO.exec(written) ?? [];
  const count = many === undefined ? undefined : numberAt(tokenise(many), 0)?.value;
  if (count !== undefined)
    return {
      kind: 'amend',
      rule: 'that was <count> for <recipient>',
      slots: { set: { count, to: taker } },
      draft: {},
    };
  const [, to] = WENT_TO.exec(written) ?? [];
  if (to !== undefined)
    return { kind: 'amend', rule: 'went to <recipient>, not <recipient>', slots: { set: { to } }, draft: {} };
  return undefined;
}
