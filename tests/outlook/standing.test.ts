/** What the name of a place says. */
import { describe, expect, it } from 'vitest';
import { isHeated, shelterOf } from '../../src/outlook/standing.js';

describe('warmth from below', () => {
  it.each([
    'propagator',
    'heated propagator',
    'heat mat',
    'mist bench',
    'heated greenhouse',
    'propagator on the windowsill',
    null,
  ])('is taken for granted of %s', (place) => expect(isHeated(place)).toBe(true));

  it.each([
    'windowsill',
    'kitchen windowsill',
    'cold frame',
    'greenhouse',
    'unheated propagator',
    'spare room',
    'polytunnel',
  ])('is not of %s', (place) => expect(isHeated(place)).toBe(false));
});

describe('shelter', () => {
  it.each([
    ['patio', 'outside'],
    ['long border', 'outside'],
    ['nursery bed', 'outside'],
    ['cold frame', 'frame'],
    ['greenhouse', 'inside'],
    ['kitchen windowsill', 'inside'],
    ['Aunt Freda’s', 'inside'],
    [null, 'inside'],
  ] as const)('of %s is %s', (place, shelter) => expect(shelterOf(place)).toBe(shelter));
});
