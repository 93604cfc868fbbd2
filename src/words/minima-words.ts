/** What is said to a weather station's file: what was read, or what to do about it. */
import { many } from './speech.js';

/** Why a file of daily minima could not be read. */
export type MinimaFault =
  | { readonly refused: 'notText' }
  | { readonly refused: 'noRows' }
  | { readonly refused: 'whichColumns'; readonly columns: readonly string[] }
  | { readonly refused: 'severalStations'; readonly stations: readonly string[] }
  | { readonly refused: 'noSuchStation'; readonly station: string; readonly stations: readonly string[] }
  | { readonly refused: 'badDate'; readonly row: number; readonly text: string }
  | { readonly refused: 'badNumber'; readonly row: number; readonly text: string };

const MOST_NAMED = 5;

export function minimaFaultWords(fault: MinimaFault): string {
  switch (fault.refused) {
    case 'notText':
      return 'I can read a text file (CSV) of daily minima, packed with gzip or not; this is neither.';
    case 'noRows':
      return 'I found no minima in that file. Send two columns, date and minimum, or a station’s GHCN-Daily CSV.';
    case 'whichColumns':
      return `I can’t tell which columns hold the date and the minimum (the first row reads “${named(fault.columns)}”). Head them “date” and “min”, and send it again.`;
    case 'severalStations':
      return `That file holds several stations: ${named(fault.stations)}. Send one of them alone.`;
    case 'noSuchStation':
      return `That file has no station “${fault.station}”; it has ${named(fault.stations)}.`;
    case 'badDate':
      return `Row ${fault.row}: “${fault.text}” is no date I know. Write 2026-04-03.`;
    case 'badNumber':
      return `Row ${fault.row}: “${fault.text}” is no temperature. Leave it empty where none was taken.`;
  }
}

export interface MinimaRead {
  readonly days: number;
  readonly unit: 'celsius' | 'fahrenheit' | 'tenthsCelsius';
  readonly flagged: number;
}

/** "5,698 daily minima read, in °F." */
export function minimaReadWords({ days, unit, flagged }: MinimaRead): string {
  const read = { celsius: 'in °C', fahrenheit: 'in °F', tenthsCelsius: 'in tenths of °C' }[unit];
  const left = flagged === 0 ? '' : `; ${many(flagged, 'day')} left out that the station doubts`;
  return `${days.toLocaleString('en-GB')} daily minima read, taken to be ${read}${left}.`;
}

export const tooFewFrostYears =
  'They hold fewer than two years with a frost, which is too little to reckon by; the usual days you gave still count.';

function named(names: readonly string[]): string {
  const shown = names.slice(0, MOST_NAMED).join(', ');
  return names.length > MOST_NAMED ? `${shown} and ${names.length - MOST_NAMED} more` : shown;
}
