import type { Cooler } from '../../src/home/home.ts';
import { humidityRatioFromRelativeHumidity } from '../../src/physics/moist-air/humidity-ratio.ts';

/** What all coolers of a room can do together with air as it is now. */
export interface Coils {
  /** Most sensible heat that they remove. [W] */
  readonly most: number;
  /** Share of it that surfaces radiate to them. [-] */
  readonly radiantShare: number;
  /** Water that leaves by their drains for each joule of sensible heat. [kg/J] */
  readonly water: number;
}

/**
 * Coolers of a room, which share its load in proportion to what each can do. A coil that air is blown
 * over brings the share that does not bypass it to its own temperature, and to saturation there if
 * that is drier; sensible and latent heat together are at most the unit's power.
 */
export function coilsOf(
  coolers: readonly Cooler[],
  temperature: number,
  humidity: number,
  air: { density: number; heatOfAir: number; evaporation: number; pressure: number },
): Coils {
  const each = coolers.map(({ power, coil, radiantShare }) => {
    if (coil === null) return { most: power, water: 0, radiant: radiantShare * power };
    const flow = air.density * coil.airflow * (1 - coil.bypassFactor);
    const leaving = humidityRatioFromRelativeHumidity(coil.temperature, 100, air.pressure);
    const sensible = flow * air.heatOfAir * Math.max(0, temperature - coil.temperature);
    const water = flow * Math.max(0, humidity - leaving);
    const part = Math.min(1, power / (sensible + air.evaporation * water));
    return { most: part * sensible, water: part * water, radiant: radiantShare * part * sensible };
  });
  const sum = (what: 'most' | 'water' | 'radiant'): number =>
    each.reduce((total, one) => total + one[what], 0);
  const most = sum('most');
  const per = most > 0 ? 1 / most : 0;
  return { most, radiantShare: sum('radiant') * per, water: sum('water') * per };
}
