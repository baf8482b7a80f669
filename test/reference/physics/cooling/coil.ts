import { requireWithin } from '../../../../src/units/require-within.ts';

/** Air as it enters a cooling coil, or leaves it: [°C] and humidity ratio [kg/kg dry air]. */
export interface CoilAir {
  readonly temperature: number;
  readonly humidityRatio: number;
}

/** What a coil takes out of each kilogram of dry air: heat [J/kg] and water [kg/kg]. */
export interface CoilDuty {
  readonly out: CoilAir;
  readonly sensible: number;
  readonly latent: number;
  readonly water: number;
}

/**
 * Cooling coil by its bypass factor: a share of the air passes untouched, the rest leaves at the
 * coil's surface, saturated there where it came in moister. Heat of the drained water is left out.
 *
 * @param entering  air before the coil
 * @param surface  apparatus dew point, and humidity ratio of saturated air there
 * @param bypassFactor  [-], 0 to 1
 *
 * Source: handbook method of apparatus dew point and bypass factor.
 */
export function coilDuty(entering: CoilAir, surface: CoilAir, bypassFactor: number): CoilDuty {
  requireWithin(bypassFactor, [0, 1], 'coilDuty: bypass factor', '');
  const leaving = (from: number, to: number): number => to + bypassFactor * (from - to);
  const dries = entering.humidityRatio > surface.humidityRatio;
  const out = {
    temperature: leaving(entering.temperature, surface.temperature),
    humidityRatio: dries
      ? leaving(entering.humidityRatio, surface.humidityRatio)
      : entering.humidityRatio,
  };
  const water = entering.humidityRatio - out.humidityRatio;
  return {
    out,
    sensible: (DRY_AIR + VAPOUR * out.humidityRatio) * (entering.temperature - out.temperature),
    latent: (EVAPORATION + VAPOUR * entering.temperature) * water,
    water,
  };
}

/** Surface temperature of a coil that cools air from one temperature to another. [°C] */
export const apparatusDewPoint = (
  entering: number,
  leaving: number,
  bypassFactor: number,
): number => (leaving - bypassFactor * entering) / (1 - bypassFactor);

const DRY_AIR = 1006; // J/(kg K)
const VAPOUR = 1860; // J/(kg K)
const EVAPORATION = 2.501e6; // J/kg, at 0 °C
