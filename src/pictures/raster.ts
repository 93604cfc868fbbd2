/** Turns an SVG drawing into a PNG with the shipped fonts alone, so that it looks the same everywhere. */
import { Resvg } from '@resvg/resvg-js';
import { fontFamily, shippedFonts } from './font.js';

/** PNG bytes of an SVG document at its own size in pixels. */
export function pngOf(svg: string): Uint8Array {
  const drawing = new Resvg(svg, {
    font: {
      fontFiles: shippedFonts.flatMap(({ regular, bold }) => [regular, bold]),
      loadSystemFonts: false,
      defaultFontFamily: fontFamily,
      sansSerifFamily: fontFamily,
    },
  });
  return drawing.render().asPng();
}
