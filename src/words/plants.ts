/** Plants, pots, cuttings and their troubles by name. */
import type { Batch } from '../ledger/batch.js';
import type { Care, Cause, CuttingType, Manner, Plant } from '../ledger/entry.js';
import type { Speech } from './speech.js';

/** "Ember Fox", "dahlia", or the label where neither is known. */
export function plantWords({ variety, crop, batch }: Plant): string {
  return variety ?? crop ?? batch ?? 'cuttings';
}

/** "EF1 Ember Fox": label first, as it stands on the pot. */
export function batchWords(batch: Batch): string {
  const name = batch.variety ?? batch.crop;
  return name === null ? batch.label : `${batch.label} ${name}`;
}

const cuttings: Readonly<Record<CuttingType, string>> = {
  basal: 'basal cutting',
  nodal: 'nodal cutting',
  internodal: 'internodal cutting',
  tip: 'tip cutting',
  heel: 'heel cutting',
  leaf: 'leaf cutting',
  leafBud: 'leaf-bud cutting',
  root: 'root cutting',
  softwood: 'softwood cutting',
  semiRipe: 'semi-ripe cutting',
  hardwood: 'hardwood cutting',
};

export function cuttingWords(type: CuttingType | null | undefined): string {
  return type === null || type === undefined ? 'cutting' : cuttings[type];
}

const causes: Readonly<Record<Cause, string>> = {
  rot: 'rot',
  dampingOff: 'damping off',
  mould: 'mould',
  wilt: 'wilting',
  drought: 'drought',
  frost: 'frost',
  pest: 'pests',
  broken: 'breakage',
  other: 'other causes',
};

export function causeWords(cause: Cause, speech: Speech): string {
  return cause === 'mould' && speech.wording === 'US' ? 'mold' : causes[cause];
}

const cares: Readonly<Record<Care, string>> = {
  mist: 'misted',
  water: 'watered',
  vent: 'vented',
  feed: 'fed',
  shade: 'shaded',
  cover: 'covered',
  uncover: 'uncovered',
};

export function careWords(care: Care | undefined): string {
  return care === undefined ? 'tended' : cares[care];
}

const manners: Readonly<Record<Manner, string>> = {
  given: 'given away',
  sold: 'sold',
  swapped: 'swapped',
};

export function mannerWords(manner: Manner | undefined): string {
  return manner === undefined ? 'sent out' : manners[manner];
}

/** "To the shed", "in the shed", "the shed", and "indoors" whatever stands before it. */
export function placeWords(place: string, preposition?: 'in' | 'to'): string {
  if (/^(?:indoors|outdoors|inside|outside)$/i.test(place)) return place;
  return preposition === undefined ? `the ${place}` : `${preposition} the ${place}`;
}

/** "9 cm pots", "24-cell trays", "2 l pots". */
export function potWords(size: string): string {
  const match = /^([\d.]+)([a-z]+)$/.exec(size);
  if (!match) return `${size} pots`;
  return match[2] === 'cell' ? `${match[1]}-cell trays` : `${match[1]} ${match[2]} pots`;
}

/** "20 °C", "68 °F". */
export function temperatureWords(celsius: number, speech: Speech): string {
  return speech.units === 'us'
    ? `${Math.round((celsius * 9) / 5 + 32)} °F`
    : `${Math.round(celsius * 10) / 10} °C`;
}
