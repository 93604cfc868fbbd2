/** What came while the grower was away. */
import type { Day } from '../calendar/day.js';
import { dateWords, type Speech } from './speech.js';

export const missedNothing = 'You missed nothing: no question of mine is open.';

const askedAbout: Readonly<Record<string, string>> = {
  check: 'look for roots',
  potOn: 'pot on',
  pinch: 'pinch',
  hardenOff: 'begin to harden off',
  plantOut: 'plant out',
  strike: 'take cuttings',
  tend: 'tend',
};

export function missedPrompts(
  open: readonly {
    readonly about: { readonly about: string; readonly batch?: string; readonly variety?: string };
    readonly on: Day;
  }[],
  speech: Speech,
): string {
  const lines = open.map(
    ({ about, on }) =>
      `${[about.batch, about.variety].filter((each) => each).join(' ')}: ${askedAbout[about.about] ?? about.about} (since ${dateWords(on, speech)})`,
  );
  return ['Still waiting for you:', ...lines].join('\n');
}
