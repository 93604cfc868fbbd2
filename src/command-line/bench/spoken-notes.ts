/** Has notes spoken by synthetic voices, as Ogg/Opus bytes: what the speech engine is measured on. No human was recorded. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Writes a WAV file of the text. */
interface Voice {
  readonly name: string;
  readonly command: (text: string, wav: string) => readonly [string, readonly string[]];
}

const espeak = (voice: string): Voice => ({
  name: `espeak-ng ${voice}`,
  command: (text, wav) => ['espeak-ng', ['-v', voice, '-w', wav, text]],
});
const flite = (voice: string): Voice => ({
  name: `flite ${voice}`,
  command: (text, wav) => ['flite', ['-voice', voice, '-t', text, '-o', wav]],
});

/** Five voices of two Debian packages: two British, three American; three men, a woman, a diphone machine. */
export const voices: readonly Voice[] = [
  espeak('en-gb'),
  espeak('en-us'),
  flite('slt'),
  flite('rms'),
  flite('awb'),
];

/** Throws where espeak-ng, flite or opusenc (opus-tools) is missing. */
export function speakNote(voice: Voice, text: string): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), 'slipnote-voice-'));
  try {
    const [wav, ogg] = [join(folder, 'note.wav'), join(folder, 'note.ogg')];
    const [program, args] = voice.command(text, wav);
    run(program, args);
    run('opusenc', ['--quiet', '--bitrate', '32', '--downmix-mono', wav, ogg]);
    return readFileSync(ogg);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function run(program: string, args: readonly string[]): void {
  const { status } = spawnSync(program, args, { stdio: 'ignore' });
  if (status !== 0)
    throw new Error(`${program} is missing or failed: apt-get install espeak-ng flite opus-tools`);
}
