import type { Home } from '../../home/home.ts';
import type { Log } from '../../log/log.ts';
import { andList } from '../../units/word-list.ts';
import type { Weather } from '../../weather/weather.ts';
import type { Division } from './span.ts';
import { weatherOfHours } from './weather-of-hours.ts';

/**
 * What warms or cools rooms much and of which a fit looks for no error, in a sentence; none where there is
 * no such thing. Cooling counts where it was warm outdoors in the hours of the log; stoves and plug-in
 * heaters where no power of theirs was logged.
 *
 * @param setpoint  whether what rooms are cooled to is looked for
 */
export function takenAsSaid(
  home: Home,
  log: Log,
  weather: Weather,
  division: Division,
  setpoint: boolean,
): string[] {
  const logged = (name: string) =>
    log.series.some(({ quantity, device }) => quantity === 'device power' && device === name);
  const fires = home.devices
    .filter(({ name, does: { kind } }) => HEATS.includes(kind) && !logged(name))
    .map(({ name }) => name);
  const cools = isWarm(weather, division) && (home.cooling ?? []).length > 0;
  const cooling = setpoint ? 'the hours and power of cooling' : 'cooling, its settings and hours';
  const all = [...(cools ? [cooling] : []), ...fires];
  if (all.length === 0) return [];
  return [
    `Taken as the scenario says, since a fit looks for no error there: ${andList(all)}. Where that was otherwise, other values make up for it, above all steady heat, sun, heat capacity and water.`,
  ];
}

/** Whether it was warm outdoors in the hours of a log, so that rooms that can be cooled may have been. */
export const isWarm = (weather: Weather, division: Division): boolean =>
  weatherOfHours(weather, division, 0, division.hours).some((t) => t > WARM);

const HEATS: readonly string[] = ['stove', 'heater'];
/** Outdoors, below which hardly any home is cooled. [°C] */
const WARM = 20;
