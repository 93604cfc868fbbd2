/** Builds the program once before any test starts it as a process. */
import { execFileSync } from 'node:child_process';

export function setup(): void {
  execFileSync('npx', ['tsc', '-p', 'tsconfig.build.json'], { stdio: 'inherit' });
}
