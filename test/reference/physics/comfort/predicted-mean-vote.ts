import { requireWithin } from '../../../../src/units/require-within.ts';

/** What a person feels besides their own work and clothes. */
export interface ComfortClimate {
  /** [°C] */
  readonly airTemperature: number;
  /** [°C] */
  readonly radiantTemperature: number;
  /** Air speed past the person. [m/s] */
  readonly airSpeed: number;
  /** [%] */
  readonly relativeHumidity: number;
}

/**
 * How a large group would vote on the climate: -3 cold, 0 neither, +3 hot.
 *
 * @param climate  air 10 to 30 °C, radiant 10 to 40 °C, 0 to 1 m/s, 0 to 100 %
 * @param metabolism  0.8 to 4 met (1 met is 58.15 W/m2)
 * @param clothing  0 to 2 clo (1 clo is 0.155 m2 K/W)
 * @throws RangeError outside these ranges; the standard promises votes only between -2 and 2
 * Source: ISO 7730:2005, equations 1 to 4 and the program of annex D; Fanger 1970.
 */
export function predictedMeanVote(
  climate: ComfortClimate,
  metabolism: number,
  clothing: number,
): number {
  requireClimate(climate, metabolism, clothing);
  const { airTemperature: ta, radiantTemperature: tr, airSpeed, relativeHumidity } = climate;
  const vapour = relativeHumidity * 10 * Math.exp(16.6536 - 4030.183 / (ta + 235)); // [Pa]
  const heat = metabolism * MET;
  const insulation = clothing * CLO;
  const areaFactor = insulation <= 0.078 ? 1 + 1.29 * insulation : 1.05 + 0.645 * insulation;
  const forced = 12.1 * Math.sqrt(airSpeed);
  const surface = clothingTemperature(ta, tr, heat, insulation, areaFactor, forced);
  const convection = Math.max(2.38 * Math.abs(surface - ta) ** 0.25, forced);
  const losses =
    3.05e-3 * (5733 - 6.99 * heat - vapour) +
    Math.max(0, 0.42 * (heat - MET)) +
    1.7e-5 * heat * (5867 - vapour) +
    0.0014 * heat * (34 - ta) +
    3.96e-8 * areaFactor * ((surface + KELVIN) ** 4 - (tr + KELVIN) ** 4) +
    areaFactor * convection * (surface - ta);
  return (0.303 * Math.exp(-0.036 * heat) + 0.028) * (heat - losses);
}

/**
 * Percentage of a large group that would call the climate too warm or too cold; never under 5. [%]
 * Source: ISO 7730:2005, equation 5.
 */
export function predictedPercentageDissatisfied(vote: number): number {
  requireWithin(vote, [-10, 10], 'predictedPercentageDissatisfied: vote', '');
  return 100 - 95 * Math.exp(-0.03353 * vote ** 4 - 0.2179 * vote ** 2);
}

/** Outer temperature of the clothes, where what comes through them leaves again. [°C] */
function clothingTemperature(
  ta: number,
  tr: number,
  heat: number,
  insulation: number,
  areaFactor: number,
  forced: number,
): number {
  const surplus = (t: number): number => {
    const convection = Math.max(2.38 * Math.abs(t - ta) ** 0.25, forced);
    const radiation = 3.96e-8 * ((t + KELVIN) ** 4 - (tr + KELVIN) ** 4);
    const skin = 35.7 - 0.028 * heat;
    return t - skin + insulation * areaFactor * (radiation + convection * (t - ta));
  };
  let low = -50;
  let high = 100;
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (low + high) / 2;
    if (surplus(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function requireClimate(c: ComfortClimate, metabolism: number, clothing: number): void {
  const who = 'predictedMeanVote:';
  requireWithin(c.airTemperature, [10, 30], `${who} air temperature`, '°C');
  requireWithin(c.radiantTemperature, [10, 40], `${who} radiant temperature`, '°C');
  requireWithin(c.airSpeed, [0, 1], `${who} air speed`, 'm/s');
  requireWithin(c.relativeHumidity, [0, 100], `${who} relative humidity`, '%');
  requireWithin(metabolism, [0.8, 4], `${who} metabolism`, 'met');
  requireWithin(clothing, [0, 2], `${who} clothing`, 'clo');
}

const MET = 58.15; // [W/m2]
const CLO = 0.155; // [m2 K/W]
const KELVIN = 273; // as the standard's program has it
const HALVINGS = 50; // of 150 K: to 1e-13 K
