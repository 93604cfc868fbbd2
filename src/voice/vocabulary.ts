/** Gathers the names that a grower is likely to say from what the ledger knows. */
import type { Vocabulary } from './transcriber.js';

/** The part of a note's context that holds names; any of it may be missing. */
export interface NamesKnown {
  readonly varieties?: readonly { readonly name: string; readonly crop?: string }[];
  readonly batches?: readonly {
    readonly label: string;
    readonly variety?: string;
    readonly crop?: string;
    readonly place?: string;
  }[];
  readonly places?: readonly string[];
}

/** `cropNames`: every name of every crop that the program knows, in the singular. */
export function vocabularyOf(known: NamesKnown, cropNames: readonly string[]): Vocabulary {
  const { varieties = [], batches = [], places = [] } = known;
  const both = [...varieties.map(({ name, crop }) => ({ variety: name, crop })), ...batches];
  return {
    varieties: distinct(both.map(({ variety }) => variety)),
    crops: distinct([...cropNames, ...both.map(({ crop }) => crop)]),
    places: distinct([...places, ...batches.map(({ place }) => place)]),
    labels: distinct(batches.map(({ label }) => label)),
  };
}

function distinct(names: readonly (string | undefined)[]): string[] {
  return [...new Set(names.filter((name) => typeof name === 'string' && name.trim() !== ''))] as string[];
}
