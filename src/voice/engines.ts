/** Chooses the engine that the settings ask for, or the best that is installed. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { childTranscriber } from './child-transcriber.js';
import { debianStockFolder, modelFor, stockFiles } from './model-folder.js';
import type { SoundLimits, Transcriber } from './transcriber.js';

/** As SLIPNOTE_SPEECH says; `best` where it says nothing. */
export type SpeechChoice =
  { readonly kind: 'best' | 'pocketsphinx' | 'off' } | { readonly kind: 'model'; readonly folder: string };

export interface SpeechPlaces {
  /** Built models are kept in its folder `speech`. */
  readonly dataFolder: string;
  /** Folder of PocketSphinx's own models; Debian's unless told. */
  readonly stockFolder?: string;
}

/** What to do where there is no engine: one line for a reply, the README and the doctor. */
export const howToInstall = 'apt-get install pocketsphinx pocketsphinx-en-us espeak-ng';

export function openTranscriber(
  choice: SpeechChoice,
  places: SpeechPlaces,
  limits?: SoundLimits,
): Transcriber {
  if (choice.kind === 'off') return deaf('off', 'SLIPNOTE_SPEECH is off');
  if (choice.kind === 'model') {
    const { folder } = choice;
    return childTranscriber(
      {
        engine: 'model',
        missing: () => (existsSync(folder) ? undefined : `there is no folder ${folder} (SLIPNOTE_SPEECH)`),
        taskFor: () => Promise.resolve({ engine: 'model', folder }),
      },
      limits,
    );
  }
  const stockFolder = places.stockFolder ?? debianStockFolder;
  return childTranscriber(
    {
      engine: 'pocketsphinx',
      missing: () => missingStock(stockFolder),
      taskFor: async (vocabulary) => ({
        engine: 'pocketsphinx',
        files: await modelFor(vocabulary, join(places.dataFolder, 'speech'), stockFolder),
      }),
    },
    limits,
  );
}

/** Why speech cannot work as chosen, or nothing: what the doctor asks, and a start that says a word why it is off. */
export function speechFault(
  choice: SpeechChoice,
  stockFolder: string = debianStockFolder,
): string | undefined {
  if (choice.kind === 'off') return undefined;
  if (choice.kind === 'model')
    return existsSync(choice.folder) ? undefined : `there is no folder ${choice.folder}`;
  return missingStock(stockFolder);
}

function missingStock(stockFolder: string): string | undefined {
  const isThere = Object.values(stockFiles(stockFolder)).every((path) => existsSync(path));
  return isThere ? undefined : `PocketSphinx and its English models are not installed: ${howToInstall}`;
}

function deaf(engine: string, why: string): Transcriber {
  return {
    engine,
    transcribe: () => Promise.resolve({ kind: 'engineMissing', why }),
    close: () => Promise.resolve(),
  };
}
