/** What a channel itself has to say, outside any conversation. */

export const channelWords = {
  oldButton: 'That button is out of date.',
  setAside:
    'Something in that message defeated me, and nothing was logged from it. It is kept for whoever runs this bot. Please say it in other words.',
  givenUp:
    'Something I had to say could not be sent for three days, and I gave it up. What you noted is in the ledger all the same: ask “what’s due?” or “what did I miss?”.',
} as const;
