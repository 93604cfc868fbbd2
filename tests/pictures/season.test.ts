import { describe, expect, it } from 'vitest';
import { addDays, asDay } from '../../src/calendar/day.js';
import { fold } from '../../src/ledger/fold.js';
import type { Posting } from '../../src/ledger/posting.js';
import { stageColour, stages } from '../../src/pictures/palette.js';
import { seasonPicture } from '../../src/pictures/season-picture.js';
import { seasonViewOf, type SeasonAhead } from '../../src/pictures/season-view.js';

const nothingAhead: SeasonAhead = { rooting: () => null, frost: null, targets: [] };
const struck = { kind: 'strike', label: 'EF1', variety: 'Ember Fox', crop: 'dahlia', count: 12, date: asDay('2026-03-02') } as const; // prettier-ignore

function ledgerOf(...postings: Posting[]) {
  return fold(
    postings.map((what, index) => ({ line: index + 1, at: 0, postedAt: 0, by: null, source: null, what })),
  ).ledger;
}

const onEmber = (date: string) => ({ batch: 'EF1', date: asDay(date) });

/** Width and height from a PNG's IHDR chunk (ISO/IEC 15948, 11.2.2). */
function sizeOf(png: Uint8Array): [number, number] {
  const view = new DataView(png.buffer, png.byteOffset);
  return [view.getUint32(16), view.getUint32(20)];
}

describe('the season view', () => {
  it('thins a bar by its losses and changes shade with each stage', () => {
    const ledger = ledgerOf(
      struck,
      { kind: 'check', rooted: 6, ...onEmber('2026-03-14') },
      { kind: 'loss', count: 3, ...onEmber('2026-03-20') },
      { kind: 'potOn', ...onEmber('2026-03-22') },
    );
    const [group] = seasonViewOf(ledger, asDay('2026-04-01'), asDay('2026-01-01'), nothingAhead).groups;
    expect(group?.rows[0]?.pieces).toEqual([
      { from: '2026-03-02', to: '2026-03-14', stage: 'rooting', share: 1 },
      { from: '2026-03-14', to: '2026-03-20', stage: 'rooted', share: 1 },
      { from: '2026-03-20', to: '2026-03-22', stage: 'rooted', share: 0.75 },
      { from: '2026-03-22', to: '2026-04-02', stage: 'pottedOn', share: 0.75 },
    ]);
  });

  it('ends the bar of a batch that is gone on the day it went', () => {
    const ledger = ledgerOf(struck, { kind: 'loss', count: 12, ...onEmber('2026-03-20') });
    const [group] = seasonViewOf(ledger, asDay('2026-04-01'), asDay('2026-01-01'), nothingAhead).groups;
    expect(group?.rows[0]?.pieces).toMatchObject([{ to: '2026-03-20' }]);
  });

  it('leaves out what was gone before the season began', () => {
    const ledger = ledgerOf(struck, { kind: 'loss', count: 12, ...onEmber('2026-03-20') });
    expect(seasonViewOf(ledger, asDay('2027-04-01'), asDay('2027-01-01'), nothingAhead).groups).toEqual([]);
  });
});

describe('the season picture', () => {
  it('is 1080 px wide', async () => {
    const risk = Array.from({ length: 60 }, (_, index) => ({
      day: addDays(asDay('2026-04-01'), index),
      p: 1 - index / 60,
    }));
    const ahead: SeasonAhead = {
      rooting: () => ({ p10: asDay('2026-03-12'), p50: asDay('2026-03-15'), p90: asDay('2026-03-19') }),
      frost: { risk, plantOutOn: asDay('2026-05-20') },
      targets: [{ name: 'Ember Fox', crop: 'dahlia', wanted: 10, by: asDay('2026-06-01'), chance: 0.8 }],
    };
    const png = await seasonPicture(
      seasonViewOf(ledgerOf(struck), asDay('2026-03-10'), asDay('2026-01-01'), ahead),
    );
    expect(sizeOf(png)[0]).toBe(1080);
  });

  it('stays within what a chat takes with 200 batches, width and height together 10,000 px', async () => {
    const many = Array.from({ length: 200 }, (_, index) => ({ ...struck, label: `EF${index + 1}` }));
    const png = await seasonPicture(
      seasonViewOf(ledgerOf(...many), asDay('2026-04-10'), asDay('2026-01-01'), nothingAhead),
    );
    const [width, height] = sizeOf(png);
    expect(width + height).toBeLessThanOrEqual(10_000);
  });

  it('says so kindly when there is nothing to draw', async () => {
    const png = await seasonPicture(
      seasonViewOf(ledgerOf(), asDay('2026-04-10'), asDay('2026-01-01'), nothingAhead),
    );
    expect(sizeOf(png)[0]).toBe(1080);
  });
});

describe('the palette', () => {
  const channels = (hex: string) => [1, 3, 5].map((at) => linear(parseInt(hex.slice(at, at + 2), 16) / 255));
  const linear = (c: number) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);

  /** CIE 1976 lightness of an sRGB colour (IEC 61966-2-1). */
  const lightness = (hex: string) => {
    const [r = 0, g = 0, b = 0] = channels(hex);
    return 116 * Math.cbrt(0.2126 * r + 0.7152 * g + 0.0722 * b) - 16;
  };

  it('darkens from stage to stage by at least 12 of 100 in lightness, so that greyscale tells them apart', () => {
    const steps = stages.slice(1).map((stage, index) => {
      const before = stages[index] ?? stage;
      return lightness(stageColour[before]) - lightness(stageColour[stage]);
    });
    for (const step of steps) expect(step).toBeGreaterThan(12);
  });
});
