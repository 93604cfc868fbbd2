/** Finds a built file of this folder: a child process runs JavaScript, also where tests run the TypeScript beside it. */
import { fileURLToPath } from 'node:url';

export function builtFile(name: string): string {
  const here = import.meta.url;
  return fileURLToPath(new URL(here.endsWith('.ts') ? `../../dist/voice/${name}` : name, here));
}

/** A file of the project's shared/speech. */
export function speechFile(name: string): string {
  return fileURLToPath(new URL(`../../shared/speech/${name}`, import.meta.url));
}
