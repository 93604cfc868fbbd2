/** The PocketSphinx library itself, opened in place through koffi; used inside child processes only. */
import type { LibraryHandle } from 'koffi';

const libraryName = 'libpocketsphinx.so.3';

/** Throws where koffi or the library is missing. */
export async function openLibrary(): Promise<LibraryHandle> {
  const { default: koffi } = await import('koffi');
  return koffi.load(libraryName);
}
