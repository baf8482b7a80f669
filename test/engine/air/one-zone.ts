import { crackFlow } from '../../../src/physics/airflow/crack-flow.ts';
import { quadraticLaw } from '../../../src/physics/airflow/quadratic-law.ts';
import { densityAt, touching, type Way } from './a-network.ts';

/**
 * One well-mixed house of 250 m3, 8 air changes at 50 Pa, exponent 0.667, eaves at 5 m. Its volumes
 * balance: warmth counts in what drives the air and not in how much of it a cubic metre holds.
 */
export interface Weather {
  /** [m/s] */
  readonly wind: number;
  /** Indoors 20 °C less outdoors. [K] */
  readonly warmer: number;
  /** Blown out by a fan. [m3/h of outdoor air] */
  readonly fan?: number;
}

interface Hole {
  readonly share: number;
  readonly height: number;
  readonly coefficient: number;
}

/** Windward and leeward walls at a quarter and three quarters, and the roof, under "normal" shelter. */
export const NORMAL = holesOf(0.25, -0.5, -0.5);

export function holesOf(windward: number, leeward: number, roof: number): Hole[] {
  const wall = [windward, leeward].flatMap((coefficient) =>
    [1.25, 3.75].map((height) => ({ share: 0.175, height, coefficient })),
  );
  return [...wall, { share: 0.3, height: 5, coefficient: roof }];
}

/** Pressure across a hole for a pressure in the house. [Pa] */
function across({ height, coefficient }: Hole, { wind, warmer }: Weather, inside: number): number {
  const outdoors = densityAt(20 - warmer);
  const buoyancy = 9.80665 * (outdoors - densityAt(20));
  return 0.5 * outdoors * wind * wind * coefficient - inside - buoyancy * height;
}

/** Flow of a hole into the house, by volume. [m3/s] */
function through(hole: Hole, weather: Weather, inside: number): number {
  const dp = across(hole, weather, inside);
  return Math.sign(dp) * hole.share * WHOLE * Math.abs(dp) ** 0.667;
}

/** Pressure at which the house balances, by bisection. [Pa] */
export function pressureByBisection(holes: readonly Hole[], weather: Weather): number {
  let [low, high] = [-500, 500];
  for (let k = 0; k < 100; k++) {
    const middle = 0.5 * (low + high);
    let balance = -(weather.fan ?? 0) / 3600;
    for (const hole of holes) balance += through(hole, weather, middle);
    if (balance > 0) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}

/** Outdoor air that comes in at a pressure of the house. [m3/h] */
export function airIn(holes: readonly Hole[], weather: Weather, inside: number): number {
  return 3600 * holes.reduce((sum, hole) => sum + Math.max(0, through(hole, weather, inside)), 0);
}

/** Paths with laws that touch the power law where the house balances. */
export function waysOf(holes: readonly Hole[], weather: Weather, inside: number): Way[] {
  const outdoors = densityAt(20 - weather.warmer);
  return holes.map((hole) => {
    const dp = across(hole, weather, inside);
    return {
      to: 0,
      height: hole.height,
      wind: 0.5 * outdoors * weather.wind ** 2 * hole.coefficient,
      law: touching(hole.share * WHOLE, 0.667, dp, 1),
    };
  });
}

/** Paths with laws that meet the power law at two pressures. [Pa] */
export function lawsOf(holes: readonly Hole[], weather: Weather, low: number, high: number): Way[] {
  const outdoors = densityAt(20 - weather.warmer);
  return holes.map(({ share, height, coefficient }) => {
    const [first, second] = [low, high].map((pressure) => ({
      pressure,
      flow: crackFlow(share * WHOLE, 0.667, pressure),
    }));
    const { a, b } = quadraticLaw(first!, second!);
    const wind = 0.5 * outdoors * weather.wind ** 2 * coefficient;
    return { to: 0, height, wind, law: { friction: a, inertia: b } };
  });
}

/** Crack coefficient of the whole house. [m3/(s Pa^n)] */
const WHOLE = 147.169 / 3600;
