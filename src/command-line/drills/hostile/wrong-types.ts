/** An update as the Bot API would never send it: a good one with some of its fields gone or of another type. */

const junk: readonly unknown[] = [
  null,
  true,
  -1,
  0.5,
  2 ** 53,
  -1e308,
  '',
  '7',
  '\u0000',
  [],
  [[]],
  {},
  { length: 3 },
  { id: '7' },
  'x'.repeat(5_000),
];

/** A copy with one to three fields, at whatever depth, replaced or left out; never the update's own number. */
export function withWrongTypes(update: object, chance: () => number): object {
  const copy = structuredClone(update) as Record<string, unknown>;
  const times = 1 + Math.floor(chance() * 3);
  for (let time = 0; time < times; time++) {
    const places = placesIn(copy);
    const place = places[Math.floor(chance() * places.length)];
    if (!place) break;
    if (chance() < 0.2) delete place.in[place.field];
    else place.in[place.field] = structuredClone(junk[Math.floor(chance() * junk.length)]);
  }
  return copy;
}

/** What is left of a message. */
interface Left {
  readonly message_id?: unknown;
  readonly chat?: { readonly id?: unknown };
  readonly text?: unknown;
}

/** The message of an update that may have been meddled with. */
export function messageLeft(update: object): Left {
  const { message, edited_message: edited } = update as Record<string, Left | null | undefined>;
  return message ?? edited ?? {};
}

interface Place {
  readonly in: Record<string, unknown>;
  readonly field: string;
}

function placesIn(value: unknown): Place[] {
  if (typeof value !== 'object' || value === null) return [];
  const within = value as Record<string, unknown>;
  return Object.keys(within).flatMap((field) => [
    ...(field === 'update_id' ? [] : [{ in: within, field }]),
    ...placesIn(within[field]),
  ]);
}
