/** Pots, trays and compost that a plan needs. */
import { containerLitres } from './containers.js';

export interface MaterialsQuestion {
  /** Cuttings to strike. */
  readonly cuttings: number;
  /** Struck so many to a pot of this size; a tray (`24cell`) holds one in each cell. */
  readonly strikeIn: { readonly size: string; readonly perPot: number };
  /** Rooted plants to pot on, one to a pot. */
  readonly plants: number;
  readonly potOnIn: string;
}

export interface Materials {
  readonly strikePots: number;
  readonly potOnPots: number;
  /** Of compost, to the next whole litre; null where a size tells no volume. */
  readonly striking: number | null;
  readonly pottingOn: number | null;
}

/** Compost settles and spills: so much more than the pots hold. Common practice, no source. */
const SPILL = 1.1;

/** What striking and potting on take. A pot is filled whole; sizes and their sources are those of the table of containers. */
export function materialsFor({ cuttings, strikeIn, plants, potOnIn }: MaterialsQuestion): Materials {
  const cells = /^(\d+)cell$/.exec(strikeIn.size);
  const strikePots = Math.ceil(cuttings / (cells ? Number(cells[1]) : strikeIn.perPot));
  return {
    strikePots,
    potOnPots: plants,
    striking: litres(strikePots, strikeIn.size),
    pottingOn: litres(plants, potOnIn),
  };
}

function litres(pots: number, size: string): number | null {
  const each = containerLitres(size);
  return each === null ? null : Math.ceil(pots * each * SPILL - 1e-9);
}
