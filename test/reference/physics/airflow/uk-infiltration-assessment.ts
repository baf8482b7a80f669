import { requireWithin } from '../../../../src/units/require-within.ts';

/** What the assessment asks of a naturally ventilated dwelling. */
export interface UkDwelling {
  /** [m3] */
  readonly volume: number;
  /** How many of each there are; those left out are none. */
  readonly openings: Partial<Record<UkOpening, number>>;
  /** Sides with other buildings or trees near, 0 to 4. */
  readonly shelteredSides: number;
  /** A pressure test: flow at 50 Pa over envelope area; or what stands in for one. */
  readonly tightness:
    | { readonly by: 'test' /** [m3/(h m2)] */; readonly q50: number }
    | {
        readonly by: 'build';
        readonly storeys: number;
        readonly structure: 'timber or steel' | 'masonry';
        readonly floor: 'solid' | 'suspended timber, sealed' | 'suspended timber, unsealed';
        readonly lobby: boolean;
        /** Share of windows and doors with draught strips. [-] */
        readonly draughtStripped: number;
      };
}

export interface UkInfiltration {
  /** Before shelter. [1/h] */
  readonly unsheltered: number;
  readonly sheltered: number;
  /** Effective air change rate in each month, windows included. [1/h] */
  readonly effective: readonly number[];
}

/**
 * Air change rate of a naturally ventilated dwelling as the United Kingdom's government assesses it.
 *
 * Openings and cracks add up, shelter takes some away, each month's wind scales the rest against
 * 4 m/s; and people are taken to open windows when that leaves too little.
 *
 * @throws RangeError for a number outside its range, or NaN
 *
 * Source: The Government's Standard Assessment Procedure (SAP) version 10.2, section 2 and table U2,
 * from memory.
 */
export function ukInfiltrationAssessment(dwelling: UkDwelling): UkInfiltration {
  const { volume, shelteredSides } = dwelling;
  requireWithin(volume, [1, 1e5], 'ukInfiltrationAssessment: volume', 'm3');
  requireWithin(shelteredSides, [0, 4], 'ukInfiltrationAssessment: sheltered sides', '');
  const unsheltered = throughOpenings(dwelling) + throughCracks(dwelling.tightness);
  const sheltered = unsheltered * (1 - 0.075 * shelteredSides);
  const effective = MONTHLY_WIND.map((wind) => withWindows((sheltered * wind) / 4));
  return { unsheltered, sheltered, effective };
}

/** [1/h] */
function throughOpenings({ openings, volume }: UkDwelling): number {
  let flow = 0;
  for (const kind of Object.keys(OPENING_FLOW) as UkOpening[]) {
    const count = openings[kind] ?? 0;
    requireWithin(count, [0, 100], `ukInfiltrationAssessment: number of ${kind}`, '');
    flow += count * OPENING_FLOW[kind];
  }
  return flow / volume;
}

/** [1/h] */
function throughCracks(tightness: UkDwelling['tightness']): number {
  if (tightness.by === 'test') {
    requireWithin(tightness.q50, [0, 100], 'ukInfiltrationAssessment: q50', 'm3/(h m2)');
    return tightness.q50 / 20;
  }
  const { storeys, structure, floor, lobby, draughtStripped } = tightness;
  requireWithin(storeys, [1, 20], 'ukInfiltrationAssessment: storeys', '');
  requireWithin(draughtStripped, [0, 1], 'ukInfiltrationAssessment: draught-stripped share', '');
  return (
    0.1 * (storeys - 1) +
    (structure === 'masonry' ? 0.35 : 0.25) +
    FLOOR[floor] +
    (lobby ? 0 : 0.05) +
    (0.25 - 0.2 * draughtStripped)
  );
}

/** People open windows until at least half an air change an hour is there. [1/h] */
const withWindows = (n: number): number => (n >= 1 ? n : 0.5 + 0.5 * n * n);

/** Air through each kind of opening. [m3/h] */
const OPENING_FLOW = {
  'open chimneys': 80,
  'open flues': 20,
  'chimneys on closed fires': 10,
  'flues of solid-fuel boilers': 20,
  'flues of other heaters': 35,
  'blocked chimneys': 20,
  'intermittent fans': 10,
  'passive vents': 10,
  'flueless gas fires': 40,
} as const;

type UkOpening = keyof typeof OPENING_FLOW;

const FLOOR = {
  solid: 0,
  'suspended timber, sealed': 0.1,
  'suspended timber, unsealed': 0.2,
} as const;

const MONTHLY_WIND = [5.1, 5.0, 4.9, 4.4, 4.3, 3.8, 3.8, 3.7, 4.0, 4.3, 4.5, 4.7]; // m/s
