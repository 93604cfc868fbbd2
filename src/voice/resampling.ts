/** Changes a sound's sample rate with a windowed-sinc low-pass, so that nothing above the new band folds back into it. */

/** Half the filter's length, in samples of the lower of the two rates. */
const lobes = 16;

/**
 * Band-limited interpolation (J. O. Smith, "Digital Audio Resampling Home Page"): each new sample is the old ones weighted by
 * a sinc cut at 95 % of the lower rate's band, under a Hann window.
 */
export function resample(samples: Float32Array, fromHz: number, toHz: number): Float32Array {
  if (fromHz === toHz) return samples;
  const step = fromHz / toHz;
  const cutoff = 0.95 * Math.min(1, 1 / step);
  const reach = lobes * Math.max(1, step);
  const out = new Float32Array(Math.floor(samples.length / step));
  for (let index = 0; index < out.length; index++) {
    const centre = index * step;
    const first = Math.max(0, Math.ceil(centre - reach));
    const last = Math.min(samples.length - 1, Math.floor(centre + reach));
    let sum = 0;
    for (let at = first; at <= last; at++) {
      const distance = at - centre;
      const window = 0.5 + 0.5 * Math.cos((Math.PI * distance) / reach);
      sum += (samples[at] ?? 0) * cutoff * sinc(cutoff * distance) * window;
    }
    out[index] = sum;
  }
  return out;
}

function sinc(x: number): number {
  return x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
}
