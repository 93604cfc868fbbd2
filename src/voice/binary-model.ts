/** Writes a language model in the recogniser's own binary form, which it loads sooner and with less memory than text. */
import { renameSync } from 'node:fs';
import { openLibrary } from './native-library.js';

const kindFoundOut = 0;
const binaryKind = 2;

/** Puts the binary form in the place of the text; leaves the text, which is read as well, where the library cannot be loaded. */
export async function madeBinary(path: string): Promise<void> {
  try {
    const library = await openLibrary();
    library.func('void err_set_logfp(void *file)')(null);
    const logBase: unknown = library.func('void *logmath_init(double base, int shift, int table)')(
      1.0001,
      0,
      0,
    );
    const readModel = library.func(
      'void *ngram_model_read(void *config, const char *path, int type, void *logmath)',
    );
    const model: unknown = readModel(null, path, kindFoundOut, logBase);
    const write = library.func('int ngram_model_write(void *model, const char *path, int type)');
    if (model && write(model, `${path}.binary`, binaryKind) === 0) renameSync(`${path}.binary`, path);
  } catch {
    // No koffi or no library: then the program reads the text.
  }
}
