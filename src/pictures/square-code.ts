/** A QR code as a square of dark and light; the only file that knows qrcode. */
import { create } from 'qrcode';

export interface SquareCode {
  /** Modules along each side, without the quiet zone of four around it. */
  readonly side: number;
  dark(row: number, column: number): boolean;
}

/** ISO/IEC 18004 QR code, error correction M (about 15 % may be dirt or damage). */
export function squareCode(text: string): SquareCode {
  const { modules } = create(text, { errorCorrectionLevel: 'M' });
  return { side: modules.size, dark: (row, column) => modules.get(row, column) === 1 };
}
