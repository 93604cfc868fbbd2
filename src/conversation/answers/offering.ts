/** A button's words, typed or spoken, do what the button does. */
import type { Sitting } from '../sitting.js';
import type { Context } from './answering.js';
import { undoLabel } from '../../words/undo.js';

/** How many messages back a button's words still mean that button. */
const RECENT = 3;

/** The button whose words these are: of the message replied to, else of the newest one that offers it. */
export function matchButton(
  sitting: Sitting,
  text: string,
  context: Context,
): { readonly data: string; readonly key: string } | null {
  const words = normal(text);
  // "Undo" takes back the last entry, whichever note it came with.
  if (words === '' || words === normal(undoLabel)) return null;
  const { offers } = sitting.talk;
  const near = offers.filter((each) => each.key === context.key);
  const recent = context.explicit ? [] : offers.slice(-RECENT).reverse();
  for (const offer of [...near, ...recent]) {
    const button = offer.buttons.find(
      ({ label, data }) => normal(label) === words && (context.explicit || isOpen(sitting, data)),
    );
    if (button) return { data: button.data, key: offer.key };
  }
  return null;
}

/** "Not yet" is not of a prompt that is settled while another waits. */
function isOpen({ talk }: Sitting, data: string): boolean {
  const occasion = /^prompt:(.*):[^:]*$/.exec(data)?.[1];
  return occasion === undefined || talk.prompts.some((each) => each.occasion === occasion && each.open);
}

function normal(text: string): string {
  return text
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
