/** The season as a picture for the phone. */
import { chartSvg } from './chart.js';
import { pngOf } from './raster.js';
import { seasonSpec } from './season-spec.js';
import type { SeasonView } from './season-view.js';

/** PNG bytes, 1080 px wide, as tall as its batches need. */
export async function seasonPicture(view: SeasonView): Promise<Uint8Array> {
  return pngOf(await chartSvg(seasonSpec(view)));
}
