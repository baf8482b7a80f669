/**
 * The two curves under everything in this folder, as logarithms, and their slopes.
 *
 * Absolute temperature in [K], pressure in [Pa]; no range check: callers have made it.
 *
 * Source: R. W. Hyland and A. Wexler, "Formulations for the thermodynamic properties of the
 * saturated phases of H2O from 173.15 K to 473.15 K", ASHRAE Trans. 89(2A), 1983, pp. 500-519,
 * as printed in ASHRAE Fundamentals (2017) ch. 1 eqs. 5 (ice) and 6 (water).
 */

/** Natural logarithm of the saturation pressure over ice. [ln Pa] */
export function lnPressureOverIce(kelvin: number): number {
  const polynomial = I1 + kelvin * (I2 + kelvin * (I3 + kelvin * (I4 + kelvin * I5)));
  return I0 / kelvin + polynomial + I6 * Math.log(kelvin); // eq. 5
}

/** Natural logarithm of the saturation pressure over liquid water. [ln Pa] */
export function lnPressureOverWater(kelvin: number): number {
  const polynomial = W1 + kelvin * (W2 + kelvin * (W3 + kelvin * W4));
  return W0 / kelvin + polynomial + W5 * Math.log(kelvin); // eq. 6
}

/** Derivative of lnPressureOverIce. [1/K] */
export function lnSlopeOverIce(kelvin: number): number {
  const polynomial = I2 + kelvin * (2 * I3 + kelvin * (3 * I4 + kelvin * 4 * I5));
  return (I6 - I0 / kelvin) / kelvin + polynomial;
}

/** Derivative of lnPressureOverWater. [1/K] */
export function lnSlopeOverWater(kelvin: number): number {
  const polynomial = W2 + kelvin * (2 * W3 + kelvin * 3 * W4);
  return (W5 - W0 / kelvin) / kelvin + polynomial;
}

const I0 = -5.6745359e3;
const I1 = 6.3925247;
const I2 = -9.677843e-3;
const I3 = 6.2215701e-7;
const I4 = 2.0747825e-9;
const I5 = -9.484024e-13;
const I6 = 4.1635019;

const W0 = -5.8002206e3;
const W1 = 1.3914993;
const W2 = -4.8640239e-2;
const W3 = 4.1764768e-5;
const W4 = -1.4452093e-8;
const W5 = 6.5459673;
