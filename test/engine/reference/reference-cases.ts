import type { Household } from '../../../src/control/household.ts';
import type { Home } from '../../../src/home/home.ts';
import { compare } from '../../reference/compare.ts';
import type { Integrated } from '../../reference/integrate-home.ts';
import { randomHome } from '../random-home.ts';
import type { Recording } from '../record-run.ts';

/** What runs that are judged by a general-purpose integrator have in common. */
export const ABOUT = {
  topic: 'Against a general-purpose integrator',
  source: 'the same equations by the package odex 2.0.4 at tolerance 1e-5',
  mark: 'library',
} as const;

export const ROOMS = 4;
/** Stretches of the reference. [s] */
export const STEP = 600;
/** Values of the first day, while rooms find their places, are left out. */
const FIRST = 86_400 / STEP;

/** A home drawn at random, without what this reference does not know: lag, shared limits, wet panes. */
export function drawn(seed: number): Home {
  const home = randomHome(ROOMS, seed);
  return {
    ...home,
    panes: home.panes.map((p) => ({ ...p, uValue: Math.min(p.uValue, 1.6) })),
    emitters: home.emitters.map((e) => ({ ...e, lag: 0 })),
    sources: home.sources.map((s) => ({ ...s, power: Number.POSITIVE_INFINITY })),
  };
}

/**
 * The reference household with activities on the breaks of the reference and too little steam to wet a
 * pane; everybody gives the heat of five, so that it matters where that heat goes.
 */
export function evenly(household: Household): Household {
  return {
    ...household,
    people: household.people.map((p) => ({
      ...p,
      awake: { ...p.awake, sensible: 5 * p.awake.sensible },
      asleep: { ...p.asleep, sensible: 5 * p.asleep.sensible },
    })),
    activities: household.activities.map((a) => ({
      ...a,
      when: a.when.map((spell) => ({ ...spell, from: 420, to: 450 })),
      vapour: a.vapour / 20,
    })),
  };
}

/** Root mean square of the difference over all rooms, by ten-minute means. */
export function apart(got: readonly Float64Array[], exact: readonly Float64Array[]): number {
  let sum = 0;
  let count = 0;
  got.forEach((series, i) => {
    const parts = series.length / exact[i]!.length;
    for (let s = FIRST; s < exact[i]!.length; s++) {
      let mean = 0;
      for (let k = 0; k < parts; k++) mean += series[s * parts + k]! / parts;
      sum += (mean - exact[i]![s]!) ** 2;
      count++;
    }
  });
  return Math.sqrt(sum / count);
}

/** What means of steps, ten minutes unless told, come to over all rooms. [kWh] */
export const kWhOf = (heat: readonly Float64Array[], step = STEP): number =>
  (heat.reduce((sum, series) => sum + series.reduce((a, b) => a + b, 0), 0) * step) / 3.6e6;

/** Judge the air and the humidity of all rooms by what a run promises. */
export function compareClimate(where: string, got: Recording, exact: Integrated): void {
  compare({
    ...ABOUT,
    what: `air temperature, RMS of all rooms: ${where}`,
    unit: 'K',
    expected: 0,
    got: apart(got.room.airTemperature, exact.air),
    tolerance: { absolute: 0.02 },
    because: 'what a run promises',
  });
  compare({
    ...ABOUT,
    what: `humidity ratio, RMS of all rooms: ${where}`,
    unit: 'g/kg',
    expected: 0,
    got: 1000 * apart(got.room.humidityRatio, exact.humidity),
    tolerance: { absolute: 0.044 },
    because: '0.3 points of relative humidity at 20 °C, what a run promises',
  });
}
