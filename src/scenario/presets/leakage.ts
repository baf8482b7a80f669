import { COMMON, type Preset } from '../../units/preset.ts';
import type { DRAUGHTS, SHAPES, SHELTERS, TERRAINS } from '../choices.ts';

/** Blower-door result by how draughty a home feels. [1/h at 50 Pa] */
export const ACH50: Readonly<Record<(typeof DRAUGHTS)[number], Preset>> = {
  'very tight': {
    value: 1.5,
    low: 0.6,
    high: 3,
    source: 'ultra-low-energy limit 0.6; common practice',
  },
  tight: { value: 4.4, low: 3, high: 6, source: 'new UK dwellings 2015-16, Crawley et al. 2019' },
  average: { value: 10, low: 5, high: 15, source: 'trade: homes between 4 and 15' },
  leaky: { value: 14, low: 10, high: 18, source: 'trade: Victorian homes 15 and more' },
  'very leaky': { value: 18, low: 14, high: 25, source: 'trade: Victorian homes 15 and more' },
};

/** Shelter class of the ASHRAE basic model. */
export const SHELTER_CLASS: Readonly<Record<(typeof SHELTERS)[number], number>> = {
  exposed: 1,
  rural: 2,
  suburban: 3,
  urban: 4,
  enclosed: 5,
};

/** Terrain that goes with it. */
export const LIKELY_TERRAIN: Readonly<
  Record<(typeof SHELTERS)[number], (typeof TERRAINS)[number]>
> = {
  exposed: 'open',
  rural: 'open',
  suburban: 'suburban',
  urban: 'suburban',
  enclosed: 'suburban',
};

/** Height of a weather station's anemometer. [m] */
export const STATION_HEIGHT: Preset = {
  ...{ value: 10, low: 2, high: 20 },
  source: 'what weather services agreed on',
};

/** Eaves of a flat, which may be on any storey. [m] */
export const FLAT_EAVES: Preset = { value: 8, low: 3, high: 25, source: COMMON };

/** Share of a blower door's flow that comes from neighbours. [-] */
export const PARTY_LEAKAGE: Readonly<Record<(typeof SHAPES)[number], Preset>> = {
  detached: { value: 0, low: 0, high: 0, source: 'no neighbours' },
  'semi-detached': partyShare(0.15, 0.05, 0.2),
  'end terrace': partyShare(0.15, 0.05, 0.2),
  terrace: partyShare(0.3, 0.1, 0.4),
  flat: partyShare(0.4, 0.1, 0.7),
};

function partyShare(value: number, low: number, high: number): Preset {
  const source =
    'by area of party walls, which leak as much as outer walls (row houses, Love 1990); some less for plaster';
  return { value, low, high, source };
}

/** Background vents. [mm2] */
export const VENTS: Preset = { value: 0, low: 0, high: 30_000, source: COMMON };

/** A doorway: [m], [m], least exchange open [m3/h], under and around the leaf when shut [m3/h]. */
export const DOORWAY: Readonly<Record<'width' | 'height' | 'mixing' | 'shut', Preset>> = {
  width: { value: 0.76, low: 0.7, high: 0.9, source: COMMON },
  height: { value: 2, low: 1.9, high: 2.1, source: COMMON },
  mixing: { value: 40, low: 10, high: 100, source: COMMON },
  shut: { value: 8, low: 2, high: 20, source: COMMON },
};
