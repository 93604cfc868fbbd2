/** What the name of a place says of warmth and shelter. */

const UNHEATED =
  /\bcool\b|window|sill|frame|cloche|shed|porch|garage|outdoor|outside|garden|\bbeds?\b|border|tunnel|house|kitchen|room|conservatory|patio|balcony|table|shelf/i;
const HEATED = /propagator|heat|\bmist\b|bottom|warm|airing cupboard/i;
const OUTDOORS =
  /outdoor|outside|garden|\bbeds?\b|border|patio|terrace|\byard\b|balcony|allotment|\bplot\b|standing ground|\bfield\b|veranda|step/i;
const FRAME = /frame|cloche/i;
const INDOORS =
  /greenhouse|glasshouse|house|kitchen|window|sill|room|propagator|conservatory|indoors|inside|shed|porch/i;

/** Whether cuttings there stand warm from below; not known to be cold, a place counts as heated. */
export function isHeated(place: string | null): boolean {
  if (place === null) return true;
  if (/\bun-?heated\b|\bcold\b/i.test(place)) return false;
  return HEATED.test(place) || !UNHEATED.test(place);
}

export type Shelter = 'outside' | 'frame' | 'inside';

/** How far frost reaches the plants there. An unknown name counts as inside: no alarm without ground. */
export function shelterOf(place: string | null): Shelter {
  if (place === null || INDOORS.test(place)) return 'inside';
  if (FRAME.test(place)) return 'frame';
  return OUTDOORS.test(place) ? 'outside' : 'inside';
}
