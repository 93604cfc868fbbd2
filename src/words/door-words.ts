/** What is said at the door: to a stranger, to the owner, to one who was invited. */

export const doorWords = {
  stranger:
    'This bot keeps the notes of growers who know each other. If one of them gave you a code, send it here.',
  wrongCode: 'That code is not valid: it may have been used, or its week is over. Ask for a new one.',
  owner: 'You are in, and this bot is yours. Say "invite" to let another grower in.',
  invited: 'You are in. Your notes go into a ledger of your own.',
  ownerCode: (code: string): string =>
    `Nobody owns this bot yet. Send it the code ${code} from your own account: the first to do so owns it.`,
  invitation: (code: string): string =>
    `Pass this code on to one grower, who sends it to this bot: ${code}. It works once, for seven days.`,
} as const;
