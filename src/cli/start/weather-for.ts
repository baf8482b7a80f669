import { dirname, join } from 'node:path';
import { FETCH } from '../../scenario/start/home-questions.ts';
import { placeOf } from '../../scenario/start/place-answer.ts';
import { type Answers, said } from '../../scenario/start/question.ts';
import type { StartContext } from '../../scenario/start/start-context.ts';
import { InputProblems } from '../../units/problem.ts';
import { readWeather } from '../../weather/read/read-weather.ts';
import { fetchWeather } from '../fetch/fetch-weather.ts';
import type { Io } from '../io.ts';
import { MOST_DATA } from '../load/load-scenario.ts';

/** Where services answer, where they are not to be asked at their own addresses. */
export interface ServiceChoice {
  readonly pvgis?: string;
  readonly archive?: string;
  readonly cache: boolean;
}

/**
 * What the questions may know of this machine: weather in the folder of the scenario, and what comes with the
 * program. Of two files of one name the former counts.
 *
 * @param path  of the scenario to write
 */
export async function startContext(io: Io, path: string): Promise<StartContext> {
  const own = await weatherIn(io, dirname(path));
  const ours = await weatherIn(io, await weatherFolder(io));
  const names = new Set(own.map(({ name }) => name));
  return { weather: [...own, ...ours.filter(({ name }) => !names.has(name))] };
}

/** Weather files of the program's own layout in a folder; none where there is no such folder. */
async function weatherIn(io: Io, folder: string): Promise<StartContext['weather']> {
  const listed = await io.listFolder(folder).catch(() => []);
  const names = listed.filter((name) => name.endsWith('.csv')).toSorted();
  const found = await Promise.all(names.map((name) => weatherAt(io, folder, name)));
  return found.flatMap((one) => (one === null ? [] : [one]));
}

/** A file as weather; null for one that is something else, such as prices or what sensors logged. */
async function weatherAt(
  io: Io,
  folder: string,
  name: string,
): Promise<StartContext['weather'][number] | null> {
  try {
    const text = await io.readText(join(folder, name), MOST_DATA);
    if (!text.startsWith('#')) return null;
    const { title, latitude, longitude } = readWeather(text, name);
    return { name, title, place: { latitude, longitude } };
  } catch (error) {
    if (error instanceof InputProblems) return null;
    throw error;
  }
}

/**
 * The weather that was chosen, as the text of a file: from a service, or from those at hand.
 *
 * Whoever answers that it be fetched has said yes to the network.
 *
 * @param path  of the scenario to write
 */
export async function weatherFor(
  io: Io,
  path: string,
  answers: Answers,
  services: ServiceChoice,
): Promise<string> {
  const chosen = said(answers, 'weather');
  if (chosen !== FETCH) {
    const own = join(dirname(path), chosen);
    const file = (await io.exists(own)) ? own : join(await weatherFolder(io), chosen);
    return io.readText(file, MOST_DATA);
  }
  const { pvgis, archive, cache } = services;
  const wish = { place: placeOf(answers), year: null, satelliteSun: false, yes: true, cache };
  return fetchWeather(io, { ...wish, addresses: { pvgis, archive } });
}

const weatherFolder = async (io: Io): Promise<string> => join(await io.packageFolder(), 'weather');
