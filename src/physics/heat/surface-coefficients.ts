/**
 * Long-wave radiative coefficient of an inner surface against the other surfaces of its room. [W/(m2 K)]
 *
 * Plain surfaces (emittance 0.9) at about 20 °C. Source: ISO 13789:2017, table 8; ISO 52016-1:2017
 * (both from memory).
 */
export const INNER_RADIATIVE = 5.13;

/**
 * How much of a surface film's heat goes by convection, and how much by radiation.
 *
 * The film keeps its whole conductance, so that a U-value keeps its meaning: with the films of
 * ISO 6946 (0.13, 0.10, 0.17 m2 K/W) convection comes to 2.56, 4.87 and 0.75 W/(m2 K), against 2.5,
 * 5.0 and 0.7 of ISO 52016-1. A film that conducts less than radiation alone would carries radiation
 * only.
 *
 * @param resistance  of the film [m2 K/W]
 * @param radiative   long-wave coefficient [W/(m2 K)]
 */
export function splitFilm(
  resistance: number,
  radiative = INNER_RADIATIVE,
): { readonly convective: number; readonly radiative: number } {
  const whole = 1 / resistance;
  const byRadiation = Math.min(radiative, whole);
  return { convective: whole - byRadiation, radiative: byRadiation };
}
