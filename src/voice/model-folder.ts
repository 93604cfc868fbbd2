/** Keeps built models on disk, each in a folder named by the hash of all that went into it. */
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { builtFile, speechFile } from './built-file.js';
import type { BuildTask } from './model-builder.js';
import type { DecoderFiles } from './pocketsphinx.js';
import type { Vocabulary } from './transcriber.js';

/** Raised when the way a model is built changes, so that older ones are built anew. */
const buildVersion = 5;
const keptModels = 8;
const buildSeconds = 240;

/** Where Debian's pocketsphinx-en-us puts the acoustic model, the stock language model and the dictionary. */
export const debianStockFolder = '/usr/share/pocketsphinx/model/en-us';

export function stockFiles(stockFolder: string): {
  acousticModel: string;
  languageModel: string;
  dictionary: string;
} {
  return {
    acousticModel: join(stockFolder, 'en-us'),
    languageModel: join(stockFolder, 'en-us.lm.bin'),
    dictionary: join(stockFolder, 'cmudict-en-us.dict'),
  };
}

/** The files of the model for a vocabulary, built where there is none yet. Throws where it cannot be built. */
export async function modelFor(
  vocabulary: Vocabulary,
  speechFolder: string,
  stockFolder: string,
): Promise<DecoderFiles> {
  const stock = stockFiles(stockFolder);
  const sorted = inOrder(vocabulary);
  const folder = join(speechFolder, hashOf(sorted, stock.dictionary));
  if (!existsSync(join(folder, 'domain.lm'))) {
    mkdirSync(speechFolder, { recursive: true });
    const task = { folder, stockDictionary: stock.dictionary, stockLanguageModel: stock.languageModel };
    await build(task, sorted);
    prune(speechFolder);
  }
  return {
    acousticModel: stock.acousticModel,
    stockLanguageModel: stock.languageModel,
    domainLanguageModel: join(folder, 'domain.lm'),
    dictionary: join(folder, 'words.dict'),
  };
}

/** The same names in another order are the same vocabulary. */
export function inOrder({ varieties, crops, places, labels }: Vocabulary): Vocabulary {
  const [v, c, p, l] = [varieties, crops, places, labels].map((names) => [...new Set(names)].sort());
  return { varieties: v ?? [], crops: c ?? [], places: p ?? [], labels: l ?? [] };
}

function hashOf(vocabulary: Vocabulary, stockDictionary: string): string {
  const hash = createHash('sha256');
  hash.update(JSON.stringify([buildVersion, vocabulary, statSync(stockDictionary).size, hasEspeak()]));
  for (const name of ['phrases.txt', 'told.txt', 'pronunciations.txt'])
    hash.update(readFileSync(speechFile(name)));
  return hash.digest('hex').slice(0, 24);
}

let espeakFound: boolean | undefined;

/** Whether names are pronounced by espeak-ng on this machine; looked up once. */
export function hasEspeak(): boolean {
  espeakFound ??= spawnSync('espeak-ng', ['--version'], { stdio: 'ignore' }).status === 0;
  return espeakFound;
}

function build(task: BuildTask, vocabulary: Vocabulary): Promise<void> {
  return new Promise((resolve, reject) => {
    const builder = spawn(process.execPath, [builtFile('model-builder.js'), JSON.stringify(task)], {
      stdio: ['pipe', 'ignore', 'ignore'],
      timeout: buildSeconds * 1000,
    });
    builder.once('error', reject);
    builder.once('exit', (code) => {
      if (code === 0) resolve();
      else reject(new Error('the speech model could not be built'));
    });
    builder.stdin.on('error', () => undefined);
    builder.stdin.end(JSON.stringify(vocabulary));
  });
}

/** Drops the models that were built longest ago. */
function prune(speechFolder: string): void {
  const folders = readdirSync(speechFolder, { withFileTypes: true })
    .filter((each) => each.isDirectory())
    .map(({ name }) => join(speechFolder, name))
    .sort((a, b) => statSync(b).mtimeMs - statSync(a).mtimeMs);
  for (const old of folders.slice(keptModels)) rmSync(old, { recursive: true, force: true });
}
