/** Puts notes through the program's headless reader, as any other program would, and scores its answers. */
import { execFileSync } from 'node:child_process';
import type { CorpusNote } from './corpus-note.js';
import { judge, type Answer, type Judgement, type Outcome } from './score.js';

export interface JudgedNote extends Judgement {
  readonly note: CorpusNote;
  readonly answer: Answer;
}

export interface Score {
  readonly notes: number;
  /** Shares of the notes, in per cent. */
  readonly exact: number;
  readonly wrong: number;
  readonly missed: number;
  readonly needless: number;
}

/** Runs the built program once over the notes; throws where it does not answer each of them, in order. */
export function readAndJudge(notes: readonly CorpusNote[]): JudgedNote[] {
  const input = notes.map((note) => JSON.stringify(withoutGold(note))).join('\n');
  const output = execFileSync('node', ['dist/command-line/run.js', 'parse'], {
    input,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  const answers = output.trim().split('\n');
  if (answers.length !== notes.length)
    throw new Error(`${notes.length} notes went in and ${answers.length} answers came out`);
  return notes.map((note, index) => {
    const answer = JSON.parse(answers[index] ?? '') as Answer & { id: string; error?: string };
    if (answer.id !== note.id) throw new Error(`${note.id} was answered as ${answer.id}`);
    const given: Answer = answer.error === undefined ? answer : { entries: [], asks: [] };
    return { note, answer, ...judge(note, given) };
  });
}

/** Counts outcomes; an empty list scores nothing. */
export function scoreOf(judged: readonly JudgedNote[]): Score {
  const share = (outcome: Outcome): number => {
    const hits = judged.filter((one) => one.outcome === outcome).length;
    return judged.length === 0 ? 0 : Math.round((hits / judged.length) * 1000) / 10;
  };
  return {
    notes: judged.length,
    exact: share('exact'),
    wrong: share('wrong'),
    missed: share('missed'),
    needless: share('needless'),
  };
}

/** What the reader gets: the note as it would arrive, nothing of what is expected of it. */
function withoutGold({ id, text, now, zone, dateOrder, context }: CorpusNote): object {
  return { id, text, now, zone, dateOrder, context };
}
