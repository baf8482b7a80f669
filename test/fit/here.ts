import { simulateLogged } from '../../src/fit/simulate/logged-run.ts';
import type { RunLogged } from '../../src/fit/simulate/run-logged.ts';
import type { Weather } from '../../src/weather/weather.ts';

/** Makes runs one after the other, in this thread. */
export const runHere =
  async (weather: Weather): Promise<RunLogged> =>
  async ({ plan, logged }) =>
    simulateLogged(plan, weather, logged);
