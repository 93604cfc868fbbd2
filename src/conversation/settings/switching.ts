/** Several ledgers of one grower: which is meant, however it is called, and which there are. */
import type { LedgerName } from '../world.js';

/** What a grower calls the ledger of their own, whatever its name. */
const HOME = /^(?:home|(?:my |our )?(?:own|private|personal)(?: one)?|mine)$/i;
const FILLED = /^(?:(?:back )?to )?(?:the |my |our )?|(?:['’]s)? (?:ledger|book|notebook|log ?book)$/gi;

/** The ledger of that name, the only one that holds all its words, or the grower's own. */
export function ledgerMeant(ledgers: readonly LedgerName[], name: string): LedgerName | undefined {
  const wanted = plain(name.replace(FILLED, ''));
  if (wanted === '') return undefined;
  const exact = ledgers.find((each) => plain(each.name) === wanted || plain(each.name) === plain(name));
  const holding = ledgers.filter((each) =>
    wanted.split(' ').every((word) => plain(each.name).split(' ').includes(word)),
  );
  const own = HOME.test(wanted) ? ledgers.find(({ shared }) => !shared) : undefined;
  return exact ?? (holding.length === 1 ? holding[0] : own);
}

const SWITCH =
  /^(?:please |ok(?:ay)?,? |now |let['’]?s )*(?:(?:switch|change|go|swap|return|get)(?: back| over)? to|back to|go|use|open) (.{2,60}?)(?: please)?[.!]?$/i;

/** The name of one of these ledgers, where the text asks to go over to it and nothing else; "go home" too. */
export function switchAsked(ledgers: readonly LedgerName[], text: string): string | null {
  const name = SWITCH.exec(text.trim())?.[1];
  return name === undefined ? null : (ledgerMeant(ledgers, name)?.name ?? null);
}

const WHICH =
  /^(?:in )?(?:which|what) (?:ledgers?|books?|notebooks?) (?:.* )?(?:in|is|this|have|got|are|mine|using|there)\b|^(?:list|show) (?:me )?(?:my |the )?(?:ledgers|books|notebooks)\b|^(?:my )?ledgers\??$/i;

/** Whether the text asks which ledger this is, or which there are. */
export function asksWhichLedger(text: string): boolean {
  return WHICH.test(text.trim());
}

function plain(name: string): string {
  return name
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
