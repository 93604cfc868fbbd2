/** A child process that builds one recogniser's model into a folder and ends; started by model-folder.ts alone. */
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { madeBinary } from './binary-model.js';
import { speechFile } from './built-file.js';
import { buildModel } from './recogniser-model.js';
import { wordsOfModel } from './stock-words.js';
import type { Vocabulary } from './transcriber.js';

/** What it is told on its command line, as JSON. */
export interface BuildTask {
  /** Where the finished model is to stand. */
  readonly folder: string;
  readonly stockDictionary: string;
  readonly stockLanguageModel: string;
}

/** Of the 73,000 words of the stock model, so many are listened for beside the trade's; 10,000 to 30,000 did alike. */
const commonWords = 20_000;

const { folder, stockDictionary, stockLanguageModel } = JSON.parse(process.argv[2] ?? '') as BuildTask;
const vocabulary = JSON.parse(readFileSync(0, 'utf8')) as Vocabulary;

const model = buildModel(vocabulary, {
  phrases: readFileSync(speechFile('phrases.txt'), 'utf8'),
  told: readFileSync(speechFile('told.txt'), 'utf8'),
  byHand: readFileSync(speechFile('pronunciations.txt'), 'utf8'),
  stockDictionary: readFileSync(stockDictionary, 'utf8'),
  stockWords: wordsOfModel(readFileSync(stockLanguageModel), commonWords),
});

// Written beside and renamed, so that a model that stands there is always whole.
const draft = `${folder}.${process.pid}`;
mkdirSync(draft, { recursive: true });
writeFileSync(join(draft, 'domain.lm'), model.languageModel);
await madeBinary(join(draft, 'domain.lm'));
writeFileSync(join(draft, 'words.dict'), model.dictionary);
try {
  renameSync(draft, folder);
} catch {
  // Another process built the same one meanwhile.
  rmSync(draft, { recursive: true, force: true });
}
