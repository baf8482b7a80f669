import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Writes a home of two rooms, with its weather beside it, into a folder: four weeks around the night
 * on which the clocks go forward. It has its dehumidifier already, so that there is no purchase to
 * ask about.
 *
 * @returns path of the scenario
 */
export function writeSmallHome(folder: string): string {
  writeFileSync(join(folder, 'weather.csv'), SPRING);
  const scenario = join(folder, 'small.yaml');
  writeFileSync(scenario, SMALL_HOME);
  return scenario;
}

/** The invented year from March to May, in its own layout: sooner read than all of it. */
export const SPRING = readFileSync('weather/saltmere-typical.csv', 'utf8')
  .replace('# typical: true\n', '')
  .replace(/^2023-01-01.*(?=^2023-03-01T00:00)/ms, '')
  .replace(/^2023-06-01.*/ms, '');

/** The text of the scenario. */
export const SMALL_HOME = `title: Small home
weather: weather.csv
site: { timezone: Europe/London }
period: { from: "03-10", to: "04-08" }
step: 60
home:
  rooms:
    den: { floor area: 14, use: living }
    nook: { floor area: 9, use: bedroom }
household: { people: [{ who: adult, pattern: at home }] }
devices: { drier: { kind: dehumidifier, room: nook, label: 12 L/day } }
plans:
  now: { description: as it is, change: {} }
  cooler: { description: two kelvin less, change: { heating: { setpoint: 17 } } }
`;
