import { logChecks } from '../../log/describe/log-checks.ts';
import { seriesFacts } from '../../log/describe/series-facts.ts';
import type { Log } from '../../log/log.ts';
import type { Weather } from '../../weather/weather.ts';
import { beyondFitted } from './beyond-fitted.ts';
import type { Division } from './span.ts';

/** What the readings say against themselves, and whether the withheld weather was like the fitted one. */
export function logCautions(
  log: Log,
  rooms: readonly string[],
  weather: Weather,
  division: Division,
): string[] {
  const own = log.series.filter(({ room }) => room === null || rooms.includes(room));
  const facts = new Map(own.map((series) => [series, seriesFacts(series)]));
  const said = logChecks({ ...log, series: own }, facts).filter(({ id }) => id !== 'short');
  return [
    ...said.map(({ text }) => text),
    ...filledWeather(weather),
    ...strangeWeather(weather, division),
  ];
}

/** Gaps of the weather that were closed when it was read. */
function filledWeather({ notes }: Weather): string[] {
  const filled = notes.filter(({ id }) => id === 'gap-filled');
  if (filled.length === 0) return [];
  const more = filled.length === 1 ? '' : `, and ${filled.length - 1} more`;
  return [`The weather has gaps that were filled: ${filled[0]!.text}${more}. "check" lists all.`];
}

/** Withheld weather that is colder or warmer than all that was fitted. */
function strangeWeather(weather: Weather, division: Division): string[] {
  const beyond = beyondFitted(weather, division);
  if (beyond < BEYOND) return [];
  return [
    `In ${(100 * beyond).toFixed(0)} % of the withheld hours it was colder or warmer outdoors than ever in the ` +
      'fitted part: stated bands are that much wider.',
  ];
}

const BEYOND = 0.1;
