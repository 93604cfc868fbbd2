/**
 * `npm run -s corpus`: how well each family of notes is read. Failing notes of the dev half are shown with what was amiss;
 * of the unseen half only the figures, so that nobody tunes on it. `-- FAMILY…` narrows, `-- --keep` records the scores.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { bringIn, bringInExamples, halves } from './corpus-note.js';
import { readAndJudge, scoreOf, type JudgedNote } from './reading.js';

const scoresFile = 'fixtures/notes/scores.json';
const args = process.argv.slice(2);
const families = args.filter((arg) => !arg.startsWith('--'));
const keep = args.includes('--keep');

const sets = [
  { name: 'examples', notes: bringInExamples(), shown: true },
  ...halves.map((half) => ({ name: half, notes: bringIn(half), shown: half === 'dev' })),
];
for (const { name, notes, shown } of sets) {
  const asked = notes.filter((note) => families.length === 0 || families.includes(note.family));
  if (asked.length === 0) continue;
  const judged = readAndJudge(asked);
  if (shown) judged.filter((one) => one.outcome !== 'exact').forEach(showFailure);
  showTable(name, judged);
  if (keep && families.length === 0 && name !== 'examples') record(name, judged);
}

function showFailure({ note, outcome, faults, answer }: JudgedNote): void {
  const { entries, asks } = answer;
  say(`${note.id}  ${outcome}: ${faults.join('; ')}`);
  say(`  text  ${JSON.stringify(note.text)}   (${note.now}, ${note.zone})`);
  say(`  gold  ${JSON.stringify(note.gold)}`);
  say(`  got   ${JSON.stringify({ entries, asks })}`);
  say(`  tree  grep -rh '"${note.id}"' fixtures | npm run -s parse -- --explain\n`);
}

function showTable(half: string, judged: readonly JudgedNote[]): void {
  say(`${half.padEnd(16)} notes  exact  wrong  missed  needless`);
  const names = [...new Set(judged.map((one) => one.note.family))].sort();
  for (const family of names)
    showRow(
      family,
      judged.filter((one) => one.note.family === family),
    );
  for (const voice of [...new Set(judged.map((one) => one.note.voice))].sort())
    showRow(
      `(${voice})`,
      judged.filter((one) => one.note.voice === voice),
    );
  showRow('all', judged);
  say('');
}

function showRow(name: string, judged: readonly JudgedNote[]): void {
  const { notes, exact, wrong, missed, needless } = scoreOf(judged);
  const cells = [exact, wrong, missed].map((share) => share.toFixed(1).padStart(6)).join(' ');
  say(`${name.padEnd(16)} ${String(notes).padStart(5)} ${cells}  ${needless.toFixed(1).padStart(8)}`);
}

function record(half: string, judged: readonly JudgedNote[]): void {
  const scores = JSON.parse(readFileSync(scoresFile, 'utf8')) as Record<string, unknown>;
  const { exact, wrong, needless } = scoreOf(judged);
  writeFileSync(
    scoresFile,
    `${JSON.stringify({ ...scores, [half]: { exact, wrong, needless } }, null, 2)}\n`,
  );
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
