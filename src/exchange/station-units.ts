/** In which unit a file writes its minima, told by the file or by what weather can be. */

export type TemperatureUnit = 'celsius' | 'fahrenheit' | 'tenthsCelsius';

/** No night stays warmer than this in °C, and none than the other in °F: 44 °C is the warmest minimum ever measured (from memory). */
const WARMEST_NIGHT_CELSIUS = 45;
const WARMEST_NIGHT_FAHRENHEIT = 113;

interface Numbers {
  readonly number: number;
  readonly text: string;
}

/**
 * The unit: that of GHCN-Daily or of the heading where they say it; else the first of °C, °F, tenths of °C in which the warmest night is
 * possible. A record of winter days alone in °F may pass for °C: let the grower tell.
 */
export function unitOf(
  minima: readonly Numbers[],
  { heading, ghcnDaily }: { readonly heading: string; readonly ghcnDaily: boolean },
): TemperatureUnit {
  if (/fahrenheit|°\s?F|\(F\)|_f$/i.test(heading)) return 'fahrenheit';
  if (/celsius|°\s?C|\(C\)|_c$/i.test(heading)) return 'celsius';
  if (ghcnDaily && minima.every(({ text }) => /^[-−]?\d+$/.test(text))) return 'tenthsCelsius';
  const warmest = minima.reduce((most, { number }) => Math.max(most, number), Number.NEGATIVE_INFINITY);
  if (warmest <= WARMEST_NIGHT_CELSIUS) return 'celsius';
  return warmest <= WARMEST_NIGHT_FAHRENHEIT ? 'fahrenheit' : 'tenthsCelsius';
}

export function celsiusFrom(number: number, unit: TemperatureUnit): number {
  switch (unit) {
    case 'celsius':
      return number;
    case 'fahrenheit':
      return ((number - 32) * 5) / 9;
    case 'tenthsCelsius':
      return number / 10;
  }
}
