/** “Call it five”: an answer in the words of a correction. */
import type { Amend } from '../../ledger/entry.js';
import { named } from '../../ledger/reach.js';
import type { Context } from './answering.js';
import type { Sitting } from '../sitting.js';

/** "Call it five" to how many have rooted, where nothing was noted since that was asked. */
export function callsIt(
  { ledger }: Sitting,
  text: string,
  { set = {}, ...about }: Amend,
  { prompts }: Context,
): boolean {
  const [prompt] = prompts;
  const last = ledger.standing.at(-1)?.journal;
  return (
    prompt?.about.about === 'check' &&
    /^(?:let['’]?s )?(?:call|say) (?:it |that )?(?:about )?[\p{L}\d]+\b/iu.test(text.trim()) &&
    Object.keys(set).join() === 'count' &&
    !named(about) &&
    (last === undefined || last.postedAt <= prompt.givenAt)
  );
}
