/** What a channel itself has to say, outside any conversation. */

export const channelWords = {
  oldButton: 'That button is out of date.',
  setAside:
    'Something in that message defeated me, and nothing was logged from it. It is kept for whoever runs this bot. Please say it in other words.',
} as const;
