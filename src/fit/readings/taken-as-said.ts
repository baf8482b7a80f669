import type { Home } from '../../home/home.ts';
import type { Log } from '../../log/log.ts';
import { andList } from '../../units/word-list.ts';
import type { Weather } from '../../weather/weather.ts';
import type { Division } from './span-of.ts';
import { weatherOfHours } from './weather-of-hours.ts';

/**
 * What warms or cools rooms much and of which a fit looks for no error, in a sentence; none where there is
 * no such thing. Cooling counts where it was warm outdoors in the hours of the log; stoves and plug-in
 * heaters where no power of theirs was logged.
 */
export function takenAsSaid(home: Home, log: Log, weather: Weather, division: Division): string[] {
  const warm = weatherOfHours(weather, division, 0, division.hours).some((t) => t > WARM);
  const logged = (name: string) =>
    log.series.some(({ quantity, device }) => quantity === 'device power' && device === name);
  const fires = home.devices
    .filter(({ name, does: { kind } }) => HEATS.includes(kind) && !logged(name))
    .map(({ name }) => name);
  const cools = warm && (home.cooling ?? []).length > 0;
  const all = [...(cools ? ['cooling, its settings and hours'] : []), ...fires];
  if (all.length === 0) return [];
  return [
    `Taken as the scenario says, since a fit looks for no error there: ${andList(all)}. Where that was otherwise, other values make up for it, above all steady heat, sun, heat capacity and water.`,
  ];
}

const HEATS: readonly string[] = ['stove', 'heater'];
/** Outdoors, below which hardly any home is cooled. [°C] */
const WARM = 20;
