/**
 * What a double pane lets through at an angle, as a share of what it lets through head-on. [-]
 *
 * Reflection and absorption in two sheets of clear float glass. Used for the g-value of any glazing:
 * single panes keep up to 0.04 more at 60°, triple and coated ones up to 0.05 less.
 * For the time loop: a number in, a number out.
 *
 * @param cosine  of the angle of incidence; 0 or less gives 0
 * Source: Fresnel's and Snell's laws; two sheets as in Duffie and Beckman, equations 5.1.1 to 5.3.1.
 */
export function incidenceModifier(cosine: number): number {
  return cosine > 0 ? transmittance(Math.min(1, cosine)) / HEAD_ON : 0;
}

function transmittance(cosine: number): number {
  const refracted = Math.sqrt(1 - (1 - cosine * cosine) / (INDEX * INDEX));
  const across = (cosine - INDEX * refracted) / (cosine + INDEX * refracted);
  const along = (INDEX * cosine - refracted) / (INDEX * cosine + refracted);
  const passed = throughSheets(across * across) + throughSheets(along * along);
  return (passed / 2) * Math.exp(-ABSORPTION / refracted);
}

/** Share of one polarisation that gets through, from the reflectance of one surface. */
function throughSheets(reflectance: number): number {
  return (1 - reflectance) / (1 + (2 * SHEETS - 1) * reflectance);
}

/** Mean over an even sky: 2 times the integral of modifier, cosine and sine over the quarter turn. */
function evenSkyMean(): number {
  const n = 400;
  let sum = 0;
  for (let k = 0; k < n; k++) {
    const square = (k + 0.5) / n; // of the cosine: even steps of it are even steps of the integral
    sum += incidenceModifier(Math.sqrt(square));
  }
  return sum / n;
}

const INDEX = 1.526; // of refraction, soda-lime glass
const SHEETS = 2;
const ABSORPTION = 0.064; // half of what two 4 mm sheets absorb (16 per metre); the other half warms the room
const HEAD_ON = transmittance(1);

/** Transmittance for diffuse light, from an isotropic sky or ground, over that at normal incidence. [-] */
export const DIFFUSE_INCIDENCE_MODIFIER = evenSkyMean();
