/**
 * Relative humidity at a surface above which mould can grow, given time. [%]
 *
 * Not cut at 100, which it reaches at 0 °C: colder surfaces never allow growth. For the time loop:
 * numbers only.
 *
 * @param temperature  of the surface [°C]
 * @param lowest  for warm surfaces: 80, or 85 on the less sensitive materials [%]
 * Source: Hukka and Viitanen 1999, Wood Science and Technology 33, 475-485, equation for RHcrit.
 */
export function criticalHumidity(temperature: number, lowest = 80): number {
  if (temperature > 20) return lowest;
  const t = temperature;
  return Math.max(lowest, ((-0.00267 * t + 0.16) * t - 3.13) * t + 100);
}
