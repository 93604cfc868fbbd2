/** The crop table of `shared/crops.json`: how each plant strikes, roots and grows on, every value with its source. */
import { readFileSync } from 'node:fs';

/** Shortest and longest, both in the unit that the field's name gives. */
export type Range = readonly [number, number];

/** Beta(a, b) of the share of cuttings that root. */
export type BetaPrior = readonly [number, number];

export type TableCutting =
  | 'basal'
  | 'nodal'
  | 'internodal'
  | 'tip'
  | 'heel'
  | 'leaf'
  | 'leafBud'
  | 'root'
  | 'softwood'
  | 'semiRipe'
  | 'hardwood';

/** One way to take cuttings of a crop: which wood, in which months, and how long it takes to first roots. */
export interface CuttingWay {
  readonly type: TableCutting;
  /** Months (1–12) of the northern hemisphere; the southern lies six later. */
  readonly months: readonly number[];
  /** In a heated, covered propagator; null where bottom heat does harm or is not used. */
  readonly heatedDays: Range | null;
  /** On a windowsill or in an unheated frame. */
  readonly unheatedDays: Range;
  readonly strikePrior: BetaPrior;
  /** Such cuttings stand over winter and are planted out in the next year. */
  readonly overwinters: boolean;
  readonly sources: Readonly<Record<string, string>>;
}

export type PotOnSign = 'rootsAtHoles' | 'rootsAbout2cm' | 'plantlets';

export type Caution =
  | 'skinIrritant'
  | 'poisonousIfEaten'
  | 'sapBurnsInSun'
  | 'thorns'
  | 'protectedVarieties'
  | 'diseaseHygiene'
  | 'keepContained'
  | 'noPinchBeforePotting';

export interface Pinch {
  /** How many pairs of leaves are left below the tip that is taken out. */
  readonly aboveLeafPairs: number;
  readonly daysAfterPottingOn: number;
}

export interface Crop {
  /** As the note contract answers it. */
  readonly name: string;
  /** The usual way first. */
  readonly cuttings: readonly CuttingWay[];
  /** Of the compost while rooting. */
  readonly mediumCelsius: Range;
  readonly cuttingCentimetres: Range;
  readonly insertCentimetres: number;
  readonly cuttingsPer9cmPot: number;
  readonly potOnSign: PotOnSign;
  readonly potOnSize: string;
  /** From potting on until hardening off may begin. */
  readonly growOnDays: number;
  readonly hardenOffDays: number;
  /** Null where the crop is not pinched at all. */
  readonly pinch: Pinch | null;
  /** Under a cover until rooted, or in open air (furry and fleshy leaves rot under one). */
  readonly cover: 'covered' | 'open';
  readonly hormone: 'helps' | 'optional' | 'notNeeded';
  /** Until a cut stock plant offers cuttings again; null where it does so once a year. */
  readonly reshootDays: number | null;
  /** Young plants that stand over winter are kept above this; null where none do. */
  readonly winterMinimumCelsius: number | null;
  /** Whether soft young growth is hurt by frost, whatever an established plant bears. */
  readonly frostTender: boolean;
  /** RHS class of an established plant, H1a (heated glass) to H7 (very hardy). */
  readonly hardiness: string;
  readonly cautions: readonly { readonly is: Caution; readonly source: string }[];
  readonly sources: Readonly<Record<string, string>>;
}

/** Where a value comes from; `class` is what the project vouches for. */
export interface Source {
  readonly class: 'published' | 'commonPractice' | 'fromMemory';
  readonly title: string | null;
  readonly publisher?: string | null;
  readonly year?: number;
  readonly url?: string | null;
  readonly kind?: string;
}

interface CropTable {
  readonly sources: Readonly<Record<string, Source>>;
  readonly crops: readonly Crop[];
}

interface ContainerTable {
  readonly pots: readonly { readonly name: string; readonly litres: number }[];
  readonly trays: readonly { readonly cells: number; readonly millilitresPerCell: number }[];
}

const table = readTable<CropTable>('crops');
const byName = new Map(table.crops.map((crop) => [crop.name, crop]));

export const crops: readonly Crop[] = table.crops;
export const containerTable = readTable<ContainerTable>('containers');

/** The crop of that name (the first on its line in the note contract's list), or null where the table lacks it. */
export function cropNamed(name: string): Crop | null {
  return byName.get(name.toLowerCase()) ?? null;
}

/** The source behind a field of a crop or of one of its cuttings; null for a field that needs none. */
export function sourceOf(of: Crop | CuttingWay, field: string): Source | null {
  const key = of.sources[field];
  return key === undefined ? null : (table.sources[key] ?? null);
}

// The schemas beside the tables are held by a test, so that a start need not check them again.
function readTable<T>(name: string): T {
  return JSON.parse(readFileSync(new URL(`../../shared/${name}.json`, import.meta.url), 'utf8')) as T;
}
