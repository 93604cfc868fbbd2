/** The welcome and the three questions of the first use; each can be skipped, and set later in words. */
export const setupSkip = 'Skip';

/** After the last question. */
export const setUp = 'That is all. Tell me what you do, as you do it; “help” shows examples.';

export function welcome(): string {
  return 'Tell me what you do with your cuttings, in your own words: “took 5 basal cuttings of Copper Lantern dahlia, one pot, propagator”. I keep count, say when to look for roots, and anything can be undone. Three short questions, which you may skip:';
}

/** In a group the Bot API brings the bot nothing but commands, replies to it and mentions. */
export function groupWelcome(bot: string): string {
  return `I keep one ledger for this group, and each entry says by whom. I read what begins with @${bot}, replies to me and commands, nothing else: “@${bot} took 5 cuttings of Copper Lantern dahlia”.`;
}

export function setupQuestion(
  step: 'place' | 'zone' | 'digest',
  settings: { readonly zone: string; readonly digestAt: string },
): string {
  switch (step) {
    case 'place':
      return 'Where do you grow, or when is your usual last frost? For example “Leeds” or “20 May”.';
    case 'zone':
      return `Your clock: is ${settings.zone} right? Say yes, or name your nearest big city.`;
    case 'digest':
      return 'At what hour shall I say what is due, on days with something to do? For example “8:00”, or “never”.';
  }
}
