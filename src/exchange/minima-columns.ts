/** Which column of a station's file holds what. */

export interface MinimaColumns {
  readonly date: number;
  readonly minimum: number;
  /** Only rows whose element is TMIN count, where there is such a column. */
  readonly element: number | null;
  readonly station: number | null;
  /** A quality flag of its own; any text in it means that the value failed a check. */
  readonly qualityFlag: number | null;
  /** GHCN-Daily's measurement, quality and source flags, joined by commas. */
  readonly attributes: number | null;
  /** Heading of the minimum, which may name its unit. */
  readonly heading: string;
  /** GHCN-Daily writes tenths of a degree Celsius. */
  readonly ghcnDaily: boolean;
  readonly firstRow: number;
}

const NO_HEADING = {
  element: null,
  station: null,
  qualityFlag: null,
  attributes: null,
  heading: '',
} as const;
const DATE_HEADING = /^(?:date|day|datum|fecha)$/i;
const STATION_HEADING = /^(?:station|id|location|name|site)$/i;
const MINIMUM_HEADING = /^(?:tmin|tn|min|minimum|low|temp[ _]?min|min[ _.]?temp.*|minimum[ _]temp.*)\b/i;
const LONG_FORM_ID = /^[A-Z]{2}[\w-]{9}$/;
const LONG_FORM_DATE = /^\d{8}$/;

/**
 * Finds the columns by their headings; without headings, GHCN-Daily's long form (`id, yyyymmdd, element, value, measurement, quality, source
 * flag, time`) or two columns, date and minimum. Null where neither fits.
 */
export function minimaColumns(rows: readonly (readonly string[])[]): MinimaColumns | null {
  const [first = []] = rows;
  if (LONG_FORM_ID.test(first[0] ?? '') && LONG_FORM_DATE.test(first[1] ?? '') && first.length >= 4)
    return {
      ...NO_HEADING,
      station: 0,
      date: 1,
      element: 2,
      minimum: 3,
      qualityFlag: 5,
      ghcnDaily: true,
      firstRow: 0,
    };
  const date = first.findIndex((cell) => DATE_HEADING.test(cell));
  const minimum = first.findIndex((cell) => MINIMUM_HEADING.test(cell));
  if (date >= 0 && minimum >= 0) {
    const attributes = first.findIndex((cell) => /^tmin_attributes$/i.test(cell));
    const station = first.findIndex((cell) => STATION_HEADING.test(cell));
    return {
      date,
      minimum,
      element: null,
      station: station < 0 ? null : station,
      qualityFlag: null,
      attributes: attributes < 0 ? null : attributes,
      heading: first[minimum] ?? '',
      ghcnDaily: attributes >= 0,
      firstRow: 1,
    };
  }
  const columns = rows.slice(0, 20).every((row) => row.length === 2);
  if (!columns) return null;
  const headed = !/\d/.test(first[1] ?? '');
  return {
    ...NO_HEADING,
    date: 0,
    minimum: 1,
    heading: headed ? (first[1] ?? '') : '',
    ghcnDaily: false,
    firstRow: headed ? 1 : 0,
  };
}
