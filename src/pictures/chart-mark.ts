/** Marks of a chart in short: a plain number or word is a constant, an object says where the value comes from. */
import type { ChartSpec } from './chart.js';
import { fontFamily } from './font.js';
import { ink } from './palette.js';

export type MarkSpec = NonNullable<ChartSpec['marks']>[number];

/** A constant, or vega's way to say scale, field, signal, offset. */
export type Channel = number | string | boolean | readonly number[] | Readonly<Record<string, unknown>>;

/** One mark for each row of `data`, or a single one without. */
export function mark(
  type: 'rect' | 'rule' | 'text' | 'symbol' | 'area' | 'line',
  channels: Readonly<Record<string, Channel>>,
  data?: string,
): MarkSpec {
  const enter = Object.fromEntries(
    Object.entries(channels).map(([name, channel]) => [name, valueOf(channel)]),
  );
  return { type, ...(data === undefined ? {} : { from: { data } }), encode: { enter } } as MarkSpec;
}

/** A text of the shipped font, its middle at `y`. */
export function textMark(channels: Readonly<Record<string, Channel>>, data?: string): MarkSpec {
  return mark('text', { baseline: 'middle', font: fontFamily, fontSize: 24, fill: ink, ...channels }, data);
}

/**
 * A text's `limit` for so many pixels. Without a canvas to measure on, vega takes every letter for 0.8 of the size; those of
 * the shipped font take 0.48 to 0.52 in the lines of the demo, and 0.56 leaves some room.
 */
export function limitOf(pixels: number): number {
  return (pixels * 0.8) / 0.56;
}

function valueOf(channel: Channel): unknown {
  return typeof channel === 'object' && !Array.isArray(channel) ? channel : { value: channel };
}
