/** `demo`: an invented grower's season through the real code, the clock run on; the talk is printed, the papers written. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { formatInstant } from '../calendar/zone.js';
import { type Conversation, replay, type Replayed } from '../conversation/replays/replay.js';
import { readTranscript } from '../conversation/replays/transcript.js';
import { demoPapers } from './demo-papers.js';
import type { Run } from './commands.js';

const FOLDER = 'demo-out';

/** The season of `fixtures/demo`. */
export function demoSeason(): { readonly title: string; readonly conversation: Conversation } {
  return readTranscript(readFileSync(new URL('../../fixtures/demo/season.txt', import.meta.url), 'utf8'));
}

export const demo: Run = async ([folder = FOLDER], { output }) => {
  const { title, conversation } = demoSeason();
  const replayed = replay(conversation);
  output.write(`${title}\n\n${talkOf(conversation, replayed)}\n`);
  const into = resolve(folder);
  mkdirSync(into, { recursive: true });
  for (const paper of demoPapers) writeFileSync(join(into, paper.name), await paper.make(replayed.world));
  output.write(`\nWritten to ${into}: ${demoPapers.map(({ name }) => name).join(', ')}\n`);
  return 0;
};

/** The talk as it would stand in a chat: the grower's words after ›, the bot's indented. */
export function talkOf({ turns, zone }: Conversation, { said }: Replayed): string {
  const at = (instant: number) => formatInstant(instant, zone).slice(0, 16).replace('T', ' ');
  const lines: string[] = [];
  let turn = -1;
  const tellTurnsTo = (upTo: number) => {
    while (turn < upTo) {
      const { at: when, say = '', edit } = turns[++turn] ?? { at: 0 };
      lines.push('', `${at(when)} › ${edit === undefined ? '' : '(edits the message) '}${say}`);
    }
  };
  for (const { at: when, turn: answered, outgoing } of said) {
    const reached = turns.filter((each) => each.at < when).length - 1;
    if (answered === null) tellTurnsTo(reached);
    else tellTurnsTo(answered);
    if (answered === null) lines.push('', at(when));
    const buttons = (outgoing.buttons ?? []).map((row) => row.map(({ label }) => `[${label}]`).join(' '));
    lines.push(...[...outgoing.text.split('\n'), ...buttons].map((line) => `    ${line}`));
  }
  tellTurnsTo(turns.length - 1);
  return lines.join('\n').trimStart();
}
