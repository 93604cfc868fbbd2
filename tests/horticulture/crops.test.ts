/** Holds the crop table to its schema, its sources and what growers commonly do. */
import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { containerLitres } from '../../src/horticulture/containers.js';
import { type Crop, cropNamed, crops, sourceOf } from '../../src/horticulture/crops.js';
import { rootingDays, strikePrior, wayOf } from '../../src/horticulture/cutting-season.js';

function shared(name: string): Record<string, unknown> {
  return JSON.parse(readFileSync(new URL(`../../shared/${name}.json`, import.meta.url), 'utf8')) as Record<
    string,
    unknown
  >;
}

function crop(name: string): Crop {
  const found = cropNamed(name);
  if (!found) throw new Error(`the table lacks ${name}`);
  return found;
}

describe.each(['crops', 'containers'])('the table of %s', (name) => {
  it('keeps its schema', () => {
    const validate = new Ajv({ allErrors: true, strict: true }).compile(shared(`${name}.schema`));
    validate(shared(name));
    expect(validate.errors).toBeNull();
  });

  it('names no source that it does not describe, and describes none that it does not name', () => {
    const { sources, ...values } = shared(name);
    const named = [...JSON.stringify(values).matchAll(/"source":"([^"]+)"/g)].map((match) => match[1]);
    const maps = [...JSON.stringify(values).matchAll(/"sources":(\{[^}]*\})/g)];
    for (const [, map] of maps) named.push(...(Object.values(JSON.parse(map ?? '{}')) as string[]));
    expect([...new Set(named)].sort()).toEqual(Object.keys(sources as object).sort());
  });
});

describe('the crop table', () => {
  it('holds thirty crops or more, each once', () => {
    expect(crops.length).toBeGreaterThanOrEqual(30);
    expect(new Set(crops.map((each) => each.name)).size).toBe(crops.length);
  });

  it('lets no range run backwards, and no crop root faster without heat than with it', () => {
    const wrong = crops.filter((each) =>
      each.cuttings.some(
        ({ heatedDays, unheatedDays }) =>
          unheatedDays[0] >= unheatedDays[1] ||
          (heatedDays !== null &&
            (heatedDays[0] >= heatedDays[1] ||
              heatedDays[0] > unheatedDays[0] ||
              heatedDays[1] > unheatedDays[1])),
      ),
    );
    expect(wrong.map((each) => each.name)).toEqual([]);
  });

  it('gives the easy prior to soft young wood alone', () => {
    const easy = crops
      .flatMap((each) => each.cuttings)
      .filter(({ strikePrior: [a, b] }) => a === 6 && b === 2);
    expect(easy.length).toBeGreaterThan(20);
    expect(easy.map((way) => way.type)).not.toContain('hardwood');
    expect(easy.map((way) => way.type)).not.toContain('leaf');
  });

  it('gives a winter minimum wherever cuttings stand over winter', () => {
    const wrong = crops.filter(
      (each) => each.cuttings.some((way) => way.overwinters) && each.winterMinimumCelsius === null,
    );
    expect(wrong.map((each) => each.name)).toEqual([]);
  });

  it('tells soft young growth from the hardiness of an established plant', () => {
    expect(crop('hydrangea')).toMatchObject({ frostTender: true, hardiness: 'H5' });
    expect(crop('delphinium')).toMatchObject({ frostTender: false });
  });

  it('answers for a source of each value', () => {
    expect(sourceOf(crop('fuchsia').cuttings[0]!, 'heatedDays')).toMatchObject({
      class: 'published',
      year: 1996,
    });
    expect(sourceOf(crop('fuchsia'), 'hardiness')).toMatchObject({ class: 'fromMemory' });
  });

  it('warns of poison and of rights', () => {
    const cautions = (name: string) => crop(name).cautions.map((each) => each.is);
    expect(cautions('brugmansia')).toContain('poisonousIfEaten');
    expect(cautions('calibrachoa')).toContain('protectedVarieties');
    expect(cautions('fig')).toContain('sapBurnsInSun');
  });
});

// Common practice among growers, without a source: an amateur's propagator and first roots.
describe('common practice with a tender perennial’s basal cuttings', () => {
  const dahlia = crop('dahlia');

  it('roots them in about 10–14 days under heat and cover', () => {
    expect(rootingDays(dahlia, { cutting: 'basal', heated: true })).toEqual([10, 14]);
  });

  it('has them ready to plant out 6–7 weeks after striking', () => {
    const rest = dahlia.growOnDays + dahlia.hardenOffDays;
    expect(10 + rest).toBeGreaterThanOrEqual(42);
    expect(14 + rest).toBeLessThanOrEqual(49);
  });

  it('takes them 5–10 cm long, sets them about 2.5 cm deep, and pots them singly into about 10 cm', () => {
    expect(dahlia.cuttingCentimetres[0]).toBeGreaterThanOrEqual(5);
    expect(dahlia.cuttingCentimetres[1]).toBeLessThanOrEqual(10);
    expect(dahlia.insertCentimetres).toBe(2.5);
    expect(dahlia.potOnSize).toBe('10cm');
  });

  it('cuts the stock again after about two weeks', () => {
    expect(dahlia.reshootDays).toBe(14);
  });
});

describe('the season of a cutting', () => {
  it('tells spring cuttings from those that stand over winter, in either hemisphere', () => {
    const fuchsia = crop('fuchsia');
    expect(wayOf(fuchsia, { struckOn: asDay('2026-04-10') }).overwinters).toBe(false);
    expect(wayOf(fuchsia, { struckOn: asDay('2026-09-01') }).overwinters).toBe(true);
    expect(wayOf(fuchsia, { struckOn: asDay('2026-09-20'), hemisphere: 'south' }).type).toBe('softwood');
    expect(wayOf(fuchsia, { struckOn: asDay('2026-03-01'), hemisphere: 'south' }).overwinters).toBe(true);
  });

  it('follows the wood that the note names', () => {
    expect(rootingDays(crop('rose'), { cutting: 'hardwood' })).toEqual([270, 365]);
    expect(strikePrior(crop('mint'), { cutting: 'tip' })).toEqual([9, 1]);
  });

  it('gives a crop that heat harms one range only', () => {
    expect(rootingDays(crop('delphinium'), { heated: true })).toEqual([21, 28]);
  });
});

// Volumes printed by growers and societies; the other sizes follow from them.
describe('the compost that a container holds', () => {
  it.each([
    ['4in', 0.473, 0.01],
    ['3.5in', 0.365, 0.15],
    ['1gal', 2.9, 0.01],
    ['2gal', 5.6, 0.01],
    ['36cell', 0.147 * 36, 0.01],
    ['90mm', 0.33, 0.12],
    ['500ml', 0.5, 0],
  ])('%s is about %f litres', (size, litres, tolerance) => {
    const got = containerLitres(size) ?? Number.NaN;
    expect(Math.abs(got - litres) / litres).toBeLessThanOrEqual(tolerance + 1e-9);
  });

  it('is unknown for a size that says nothing', () => {
    expect(containerLitres('large')).toBeNull();
    expect(containerLitres('7cell')).toBeNull();
  });
});
