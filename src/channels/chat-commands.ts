/** Slash commands: each stands for a note that could as well be typed or spoken. */

export interface ChatCommand {
  /** Lower-case letters, digits and underscores, 32 at most, as the Bot API asks. */
  readonly name: string;
  /** What the list of commands shows beside it. */
  readonly does: string;
  /** The note that it stands for; words after the command follow it. */
  readonly says: string;
}

export const chatCommands: readonly ChatCommand[] = [
  { name: 'due', does: 'What to do this week', says: 'what is due this week?' },
  { name: 'bench', does: 'What stands where', says: 'where is everything?' },
  { name: 'count', does: 'How many live, by variety', says: 'how many of each?' },
  { name: 'plan', does: 'What to strike, and by when', says: 'what is the plan?' },
  { name: 'season', does: 'The season as a picture', says: 'show me the season picture' },
  { name: 'labels', does: 'Labels to print', says: 'labels' },
  { name: 'undo', does: 'Take the last entry back', says: 'undo' },
  { name: 'help', does: 'How to write a note', says: 'help' },
];

const COMMAND = /^\/(\w{1,32})(?:@\w{1,64})?\b\s*/;

/**
 * The note that a message stands for: a known command its note, any other its own words without the slash
 * (`/struck 5 Ember Fox`), and text without a command itself. `/start` stays as it is: a channel says it, not a grower.
 */
export function noteOfCommand(text: string): string {
  const match = COMMAND.exec(text);
  if (!match) return text;
  const name = (match[1] ?? '').toLowerCase();
  const rest = text.slice(match[0].length);
  if (name === 'start') return rest === '' ? '/start' : `/start ${rest}`;
  const known = chatCommands.find((command) => command.name === name);
  const note = known && rest === '' ? known.says : `${name.replaceAll('_', ' ')} ${rest}`;
  return note.trim();
}
