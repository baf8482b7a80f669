import { saturationPressure } from '../physics/moist-air/saturation-pressure.ts';
import type { HeatState } from './heat.ts';
import type { Model } from './model.ts';
import type { RunInput } from './run.ts';
import type { Season } from './season.ts';
import type { SpeciesState } from './species.ts';
import type { WaterState } from './water.ts';

/**
 * A first guess for every store, which the lead-in then forgets: rooms at their usual setting (or
 * at the year's mean where nothing heats them), walls halfway to outdoors, air at half saturation.
 */
export function settleStart(
  m: Model,
  heat: HeatState,
  water: WaterState,
  species: readonly SpeciesState[],
  { household, home }: RunInput,
  season: Season,
): void {
  for (let i = 0; i < m.rooms; i++) {
    const setting = household.setpoints[i]!.base;
    const heated = m.emitters.present[i] === 1 && Number.isFinite(setting);
    const t = heated ? setting : season.mean;
    heat.temperature[i] = t;
    heat.before[i] = t;
    heat.mean[i] = t;
    const p = 0.5 * saturationPressure(t);
    water.humidity[i] = (MOLAR_MASS_RATIO * p) / (m.pressure - p);
    water.before[i] = water.humidity[i]!;
    water.buffer[i] = 0.5;
  }
  const { chains } = m;
  for (let c = 0; c < chains.count; c++) {
    const near = heat.temperature[chains.room[c]!]!;
    const j = chains.farRoom[c]!;
    const far = j >= 0 ? heat.temperature[j]! : chains.boundary[c]! >= 0 ? season.mean : near;
    const first = chains.start[c]!;
    const n = chains.start[c + 1]! - first;
    for (let k = 0; k < n; k++) {
      chains.temperature[first + k] = near + ((far - near) * (k + 0.5)) / n;
    }
  }
  species.forEach((s, q) => {
    s.level.fill(home.species[q]!.outdoor);
  });
}

const MOLAR_MASS_RATIO = 0.621945;
