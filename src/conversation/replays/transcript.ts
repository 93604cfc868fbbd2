/** Reads a conversation as it would stand on paper, with the ledger that it must end with; see `fixtures/sessions`. */
import { asDay } from '../../calendar/day.js';
import { instantAt } from '../../calendar/zone.js';
import { defaultSettings, type LedgerSettings } from '../settings/ledger-settings.js';
import type { Conversation, ReplayTurn } from './replay.js';
import type { PromptAbout } from '../turn.js';

export interface Transcript {
  readonly title: string;
  readonly conversation: Conversation;
  /** Words that must occur in what the bot said to each turn, or, under -1, unasked. */
  readonly replies: readonly { readonly turn: number; readonly words: string; readonly absent: boolean }[];
  /** The ledger at the end, a line a batch. */
  readonly batches: readonly string[];
  /** The entries that stand, in order, each in a few words; null where the transcript does not say. */
  readonly entries: readonly string[] | null;
}

/**
 *     Title
 *     zone Europe/London
 *     last frost 05-20
 *
 *     2026-03-02 09:10  took 10 cuttings of Ember Fox dahlia
 *         < EF1: 10 cuttings
 *         <! words that must not come
 *     2026-03-02 09:11  edit 1: took 12 cuttings of Ember Fox dahlia
 *     2026-03-20 18:00  Bea, to check Ember Fox 2026-03-02: 2
 *     2026-03-20 18:05  to a forgotten message: 3
 *     until 2026-06-15 12:00
 *
 *     EF1 Ember Fox: struck 2026-03-02, count 12, alive 12, rooted 2
 *     entries: strike EF1 12; check EF1 2
 */
export function readTranscript(text: string): Transcript {
  const [title = '', ...lines] = text.split('\n');
  let zone = 'Europe/London';
  let settings: Partial<LedgerSettings> = {};
  let until: number | undefined;
  const turns: ReplayTurn[] = [];
  const replies: { turn: number; words: string; absent: boolean }[] = [];
  const batches: string[] = [];
  let entries: string[] | null = null;
  for (const line of lines) {
    const setting = /^(zone|last frost|first frost|digest|order|units) (\S+)$/.exec(line);
    const said = /^(\d{4}-\d{2}-\d{2}) (\d{2}:\d{2})(?::(\d{2}))? {2}(.*)$/.exec(line);
    const reply = /^ +<(!?) (.*)$/.exec(line);
    const end = /^until (\S+) (\S+)$/.exec(line);
    const listed = /^entries: ?(.*)$/.exec(line);
    if (line.trim() === '' || line.startsWith('#')) continue;
    if (setting?.[1] === 'zone') zone = setting[2] ?? zone;
    else if (setting) settings = { ...settings, ...settingOf(setting[1] ?? '', setting[2] ?? '') };
    else if (said) {
      const at = instantAt(asDay(said[1] ?? ''), said[2] ?? '', zone) + Number(said[3] ?? 0) * 1000;
      turns.push(turnOf(at, said[4] ?? ''));
    } else if (reply)
      replies.push({ turn: turns.length - 1, words: reply[2] ?? '', absent: reply[1] === '!' });
    else if (end) until = instantAt(asDay(end[1] ?? ''), end[2] ?? '', zone);
    else if (listed) entries = (listed[1] ?? '').split('; ').filter((each) => each !== '');
    else if (/^\S+ .*: (?:struck|received) /.test(line)) batches.push(line);
    else throw new Error(`not a line of a transcript: ${line}`);
  }
  const conversation = {
    zone,
    start: turns[0]?.at ?? 0,
    settings: { ...defaultSettings(zone), ...settings },
    turns,
    ...(until === undefined ? {} : { until }),
  };
  return { title, conversation, replies, batches, entries };
}

function turnOf(at: number, text: string): ReplayTurn {
  const [head = '', ...rest] = text.split(': ');
  const parts = head.split(', ');
  const from = /^[A-Z][a-z]+$/.test(parts[0] ?? '') ? parts.shift() : undefined;
  const edit = /^edit (\d+)$/.exec(parts[0] ?? '');
  const answers = /^to ([a-zA-Z]+)(?: ([A-Z].*?))??(?: (\d{4}-\d{2}-\d{2}))?$/.exec(parts[0] ?? '');
  const toForgotten = parts[0] === 'to a forgotten message';
  if (rest.length === 0 || (from === undefined && !edit && !answers && !toForgotten))
    return { at, say: text };
  return {
    at,
    say: rest.join(': '),
    ...(from === undefined ? {} : { from }),
    ...(edit ? { edit: Number(edit[1]) - 1 } : {}),
    ...(toForgotten ? { toForgotten } : {}),
    ...(answers
      ? {
          answers: {
            about: answers[1] as PromptAbout['about'],
            ...(answers[2] === undefined ? {} : { variety: answers[2] }),
            ...(answers[3] === undefined ? {} : { struck: asDay(answers[3]) }),
          },
        }
      : {}),
  };
}

function settingOf(name: string, value: string): Partial<LedgerSettings> {
  switch (name) {
    case 'last frost':
      return { lastFrost: value };
    case 'first frost':
      return { firstFrost: value };
    case 'digest':
      return { digestAt: value };
    case 'order':
      return { dateOrder: value as LedgerSettings['dateOrder'] };
    default:
      return { units: value as LedgerSettings['units'] };
  }
}
