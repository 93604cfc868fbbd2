/** How much compost a pot or a tray holds. */
import { containerTable } from './crops.js';

const NINE_CM_LITRES = litresOf('9cm');
const CENTIMETRES_PER_INCH = 2.54;
const SIZE_PATTERN = /^(\d+(?:\.\d+)?)(cm|mm|in|l|ml|qt|gal|cell)$/;

/**
 * Litres of compost in one container, by its size as the note contract writes it (`9cm`, `4in`, `2l`, `1gal`; `24cell` is the whole tray);
 * null where the size says nothing that can be worked out. Sizes that the table lacks follow the cube of the width,
 * from the 9 cm pot: this meets the published 4 in pot (0.473 l) within 1 % and the 3.5 in pot (0.365 l) within 15 %.
 */
export function containerLitres(size: string): number | null {
  const listed = containerTable.pots.find((pot) => pot.name === size);
  if (listed) return listed.litres;
  const match = SIZE_PATTERN.exec(size);
  if (!match) return null;
  const number = Number(match[1]);
  switch (match[2]) {
    case 'l':
      return number;
    case 'ml':
      return number / 1000;
    case 'qt':
      return number * litresOf('1qt');
    case 'gal':
      return number * litresOf('1gal');
    case 'cell':
      return trayLitres(number);
    case 'cm':
      return byWidth(number);
    case 'mm':
      return byWidth(number / 10);
    default:
      return byWidth(number * CENTIMETRES_PER_INCH);
  }
}

function byWidth(centimetres: number): number {
  return NINE_CM_LITRES * (centimetres / 9) ** 3;
}

function trayLitres(cells: number): number | null {
  const tray = containerTable.trays.find((each) => each.cells === cells);
  return tray ? (tray.cells * tray.millilitresPerCell) / 1000 : null;
}

function litresOf(name: string): number {
  const pot = containerTable.pots.find((each) => each.name === name);
  if (!pot) throw new RangeError(`the table of containers lacks ${name}`);
  return pot.litres;
}
