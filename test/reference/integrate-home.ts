import odex from 'odex';
import type { Household } from '../../src/control/household.ts';
import type { Home } from '../../src/home/home.ts';
import { saturationPressure } from '../../src/physics/moist-air/saturation-pressure.ts';
import type { Weather } from '../../src/weather/weather.ts';
import { homeNow, type Now } from './home-now.ts';
import { homeRates, type Outside, type Valve } from './home-rates.ts';

/** Means over stretches of the same length, one array per room. */
export interface Integrated {
  /** [°C] */
  readonly air: readonly Float64Array[];
  /** [kg/kg] */
  readonly humidity: readonly Float64Array[];
  /** `[species][room]` */
  readonly species: readonly (readonly Float64Array[])[];
  /** [W] */
  readonly heat: readonly Float64Array[];
  /** Sensible heat that coolers remove. [W] */
  readonly cooling: readonly Float64Array[];
}

/**
 * A home's equations integrated by a general-purpose method of high order, restarted at every break,
 * with the moments at which a thermostat acts found by bisection. Weather is straight between its
 * hours, and its mean stands for the ground.
 *
 * At 1e-5 six days of homes of four rooms come out as at 1e-8 within 1e-4 K, 1e-7 kg/kg and 0.01 ppm
 * (RMS) and 1e-6 of the heat: far less than is asked of a run.
 *
 * Starts as a run without spin-up does: rooms at their usual setting or else the weather's mean,
 * chains straight between room and far side, air and buffers half saturated.
 *
 * @param stretch  between breaks; spells begin and end on them [s]
 * @param tolerance  relative error of a step of its own, and a tenth of the absolute one
 */
export function integrateHome(
  home: Home,
  household: Household,
  weather: Weather,
  {
    start,
    hours,
    stretch,
    tolerance = 1e-5,
  }: { start: number; hours: number; stretch: number; tolerance?: number },
): Integrated {
  const { places, rates, most, mostCooling, chains, heated, cooled } = homeRates(home);
  const mean = weather.temperature.reduce((sum, t) => sum + t, 0) / weather.count;
  const rooms = home.rooms.length;
  const count = Math.round((hours * 3600) / stretch);
  const perRoom = () => Array.from({ length: rooms }, () => new Float64Array(count));
  const result = {
    air: perRoom(),
    humidity: perRoom(),
    heat: perRoom(),
    cooling: perRoom(),
    species: home.species.map(perRoom),
  };
  const solver = new odex.Solver(places.size);
  solver.absoluteTolerance = 10 * tolerance;
  solver.relativeTolerance = tolerance;
  solver.maxSteps = 100_000;

  let y = firstGuess();
  let valves: Valve[] = [];
  for (let s = 0; s < count; s++) {
    const from = start + s * stretch;
    const now = homeNow(home, household, weather, from);
    for (let k = places.heat(0); k < places.species(0, 0); k++) y[k] = 0;
    for (let q = 0; q < home.species.length; q++) {
      for (let i = 0; i < rooms; i++) y[places.speciesTime(q, i)] = 0;
    }
    walk(now, from, from + stretch);
    for (let i = 0; i < rooms; i++) {
      result.air[i]![s] = y[places.airTime(i)]! / stretch;
      result.humidity[i]![s] = y[places.humidityTime(i)]! / stretch;
      result.heat[i]![s] = y[places.heat(i)]! / stretch;
      result.cooling[i]![s] = y[places.cooling(i)]! / stretch;
      result.species.forEach((of, q) => {
        of[i]![s] = y[places.speciesTime(q, i)]! / stretch;
      });
    }
  }
  return result;

  /** Through one stretch, from one act of a thermostat to the next. */
  function walk(now: Now, from: number, to: number): void {
    valves = valvesFor(now, from);
    for (let at = from, acts = 0; at < to; acts++) {
      if (acts > 50) throw new Error('integrateHome: a thermostat chatters');
      const end = integrate(now, at, to, y);
      if (!breaks(now, to, end)) {
        y = end;
        return;
      }
      // From the last moment that is known to be too early, not from the start again and again.
      let early = at;
      let late = to;
      while (late - early > 1e-3) {
        const middle = (early + late) / 2;
        const state = integrate(now, early, middle, y);
        if (breaks(now, middle, state)) {
          late = middle;
        } else {
          early = middle;
          y = state;
        }
      }
      y = integrate(now, early, late, y);
      at = late;
      // Whoever has just crossed its setting is at it.
      for (const [i, valve] of valves.entries()) {
        if (valve === 'holding' || valve === 'cooling') continue;
        for (const setting of [now.settings[i]!, now.coolSettings[i]!]) {
          const gap = y[places.air(i)]! - setting;
          if (Math.abs(gap) < CROSSED) y[places.air(i)]! -= gap;
        }
      }
      valves = valvesFor(now, at);
    }
  }

  function integrate(now: Now, from: number, to: number, begin: readonly number[]): number[] {
    solver.initialStepSize = Math.min(30, to - from);
    const rate = (t: number, state: number[]) => rates(state, now, outside(from + t), valves).dy;
    const { y: end, outcome } = solver.solve(rate, 0, [...begin], to - from);
    if (outcome !== 0) throw new Error(`integrateHome: no convergence at ${from}`);
    return end;
  }

  /** Whether some room has left what its valve stands for. */
  function breaks(now: Now, utc: number, state: readonly number[]): boolean {
    const { heat } = rates(state, now, outside(utc), valves);
    return valves.some((valve, i) => {
      const t = state[places.air(i)]!;
      const { least, greatest } = settingsOf(now, i);
      if (valve === 'shut') return t < least - CLOSE || t > greatest + CLOSE;
      if (valve === 'open') return t > least + CLOSE;
      if (valve === 'cooling most') return t < greatest - CLOSE;
      if (valve === 'cooling') return heat[i]! > 0.001 || -heat[i]! > mostCooling(state, i) + 0.001;
      return heat[i]! < -0.001 || heat[i]! > most(i, t) + 0.001;
    });
  }

  function valvesFor(now: Now, utc: number): Valve[] {
    const wish = home.rooms.map((_, i): Valve => {
      const { least, greatest } = settingsOf(now, i);
      const [above, below] = [y[places.air(i)]! - greatest, least - y[places.air(i)]!];
      if (above >= -2 * CLOSE) return above > 2 * CLOSE ? 'cooling most' : 'cooling';
      if (below < -2 * CLOSE) return 'shut';
      return below > 2 * CLOSE ? 'open' : 'holding';
    });
    const { heat } = rates(y, now, outside(utc), wish);
    return wish.map((valve, i) => {
      if (valve === 'cooling') {
        if (heat[i]! > 0) return 'shut';
        return -heat[i]! > mostCooling(y, i) ? 'cooling most' : 'cooling';
      }
      if (valve !== 'holding') return valve;
      if (heat[i]! < 0) return 'shut';
      return heat[i]! > most(i, y[places.air(i)]!) ? 'open' : 'holding';
    });
  }

  /** Between what a room's thermostat keeps it, as far as anything heats or cools it. */
  function settingsOf(now: Now, i: number): { least: number; greatest: number } {
    return {
      least: heated[i] ? now.settings[i]! : -Infinity,
      greatest: cooled[i] ? now.coolSettings[i]! : Infinity,
    };
  }

  function outside(utc: number): Outside {
    const place = (utc - weather.start) / weather.step;
    const k = Math.min(weather.count - 2, Math.floor(place));
    const straight = (column: Float64Array): number =>
      column[k]! + (place - k) * (column[k + 1]! - column[k]!);
    return {
      temperature: straight(weather.temperature),
      humidityRatio: straight(weather.humidityRatio),
      wind: straight(weather.windSpeed),
      ground: mean,
    };
  }

  function firstGuess(): number[] {
    const state = new Array<number>(places.size).fill(0);
    home.rooms.forEach((_, i) => {
      const setting = household.setpoints[i]!.base;
      const t = heated[i] && setting !== -Infinity ? setting : mean;
      const p = 0.5 * saturationPressure(t);
      state[places.air(i)] = t;
      state[places.humidity(i)] = (0.621945 * p) / (101_325 - p);
      state[places.buffer(i)] = 0.5;
      state[places.deep(i)] = 0.5;
      home.species.forEach(({ outdoor }, q) => {
        state[places.species(q, i)] = outdoor;
      });
    });
    chains.forEach(({ room, far, capacity }, k) => {
      const near = state[places.air(room)]!;
      const end =
        far.to === 'room' ? state[places.air(far.room)]! : far.to === 'nothing' ? near : mean;
      capacity.forEach((_, node) => {
        state[places.chain(k) + node] = near + ((end - near) * (node + 0.5)) / capacity.length;
      });
    });
    return state;
  }
}

/** A thermostat acts when the air is this far beyond its setting. [K] */
const CLOSE = 1e-7;
/** What a room can change within the millisecond to which that moment is found. [K] */
const CROSSED = 1e-4;
