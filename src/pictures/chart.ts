/** Draws a chart described as data; the only file that knows vega. */
import { parse, type Spec, View } from 'vega';

export type ChartSpec = Spec;

/** The chart as an SVG document. */
export async function chartSvg(spec: ChartSpec): Promise<string> {
  const view = new View(parse(spec), { renderer: 'none' });
  try {
    return await view.toSVG();
  } finally {
    view.finalize();
  }
}
