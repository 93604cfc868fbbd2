/** "Aldous all four yes", "Mott: 4 yes 2 no": an answer with the plant before it, of which a prompt is open. */
import { answer } from './answer-given.js';
import type { Context } from './answering.js';
import { isAnswerable } from '../prompts/given-prompts.js';
import { readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import type { Prompt } from '../talk.js';

/** Whether it is one, and was taken as one; a plant of two open prompts answers neither. */
export function answersByName(sitting: Sitting, text: string, context: Context): boolean {
  const words = text.trim().split(/[\s:,–—-]+/u);
  const told = /^the$/i.test(words[0] ?? '') ? words.slice(1) : words;
  const open = sitting.talk.prompts.filter((each) => isAnswerable(sitting, each));
  const meant = open.flatMap((prompt) => {
    const length = namedFor(sitting, prompt, told);
    return length > 0 ? [{ prompt, rest: told.slice(length).join(' ') }] : [];
  });
  const [only, another] = meant;
  if (!only || another || only.rest === '') return false;
  const { about } = only.prompt;
  const pending = { kind: about.about, ...(about.batch === undefined ? {} : { batch: about.batch }) };
  const [said, more] = readIn(sitting, only.rest, { pending }).entries;
  if (said?.entry.kind !== 'answer' || said.entry.value === undefined || more) return false;
  answer(sitting, said.entry, only.rest, { ...context, ask: null, prompts: [only.prompt] });
  return true;
}

/** How many words in front name the plant of the prompt: its label, its name or words of it, one of them or more. */
function namedFor({ ledger }: Sitting, { about }: Prompt, words: readonly string[]): number {
  const label = about.batch ?? '';
  if (label !== '' && words[0]?.toLowerCase() === label.toLowerCase()) return 1;
  const variety = about.variety ?? ledger.batches.get(label)?.variety ?? '';
  const name = variety.toLowerCase().split(' ');
  const isOfName = (word: string | undefined): boolean =>
    word !== undefined &&
    word.length > 2 &&
    name.includes(word.toLowerCase().replace(/(?<=\p{L}{3})s$/u, ''));
  let length = 0;
  while (isOfName(words[length]) || name.includes(words[length]?.toLowerCase() ?? '\u0000')) length++;
  return length;
}
