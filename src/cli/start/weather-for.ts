import { join } from 'node:path';
import { FETCH } from '../../scenario/start/home-questions.ts';
import { placeOf } from '../../scenario/start/place-answer.ts';
import { type Answers, said } from '../../scenario/start/question.ts';
import type { StartContext } from '../../scenario/start/start-context.ts';
import { readWeather } from '../../weather/read/read-weather.ts';
import { fetchWeather } from '../fetch/fetch-weather.ts';
import type { Io } from '../io.ts';
import { MOST_DATA } from '../load-scenario.ts';

/** Where services answer, where they are not to be asked at their own addresses. */
export interface ServiceChoice {
  readonly pvgis?: string;
  readonly archive?: string;
  readonly cache: boolean;
}

/** What the questions may know of this machine: the weather that comes with the program. */
export async function startContext(io: Io): Promise<StartContext> {
  const folder = await weatherFolder(io);
  const names = (await io.listFolder(folder)).filter((name) => name.endsWith('.csv')).toSorted();
  const weather = await Promise.all(
    names.map(async (name) => {
      const text = await io.readText(join(folder, name), MOST_DATA);
      const { title, latitude, longitude } = readWeather(text, name);
      return { name, title, place: { latitude, longitude } };
    }),
  );
  return { weather };
}

/**
 * The weather that was chosen, as the text of a file: from a service, or from those at hand.
 *
 * Whoever answers that it be fetched has said yes to the network.
 */
export async function weatherFor(
  io: Io,
  answers: Answers,
  services: ServiceChoice,
): Promise<string> {
  const chosen = said(answers, 'weather');
  if (chosen !== FETCH) return io.readText(join(await weatherFolder(io), chosen), MOST_DATA);
  const { pvgis, archive, cache } = services;
  const wish = { place: placeOf(answers), year: null, satelliteSun: false, yes: true, cache };
  return fetchWeather(io, { ...wish, addresses: { pvgis, archive } });
}

const weatherFolder = async (io: Io): Promise<string> => join(await io.packageFolder(), 'weather');
