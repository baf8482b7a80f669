import { type Coordinates, coordinatesText } from '../../units/coordinates.ts';
import { readWeather } from '../../weather/read/read-weather.ts';
import { readArchive } from '../../weather/services/read-archive.ts';
import { readPvgisSun } from '../../weather/services/read-pvgis-sun.ts';
import {
  ARCHIVE,
  hoursOfYearAt,
  PVGIS,
  rounded,
  sunOfYearAt,
  typicalYearAt,
  type WeatherService,
} from '../../weather/services/weather-service.ts';
import type { Weather } from '../../weather/weather.ts';
import { writeOwnCsv } from '../../weather/write-own-csv.ts';
import type { Io } from '../io.ts';
import { UsageError } from '../usage-error.ts';
import { cachedGet } from './cached-get.ts';

/** Which weather is wanted, and how. */
export interface WeatherWish {
  readonly place: Coordinates;
  /** A year; null for a typical one. */
  readonly year: number | null;
  /** Whose irradiances: the archive's own, or those that PVGIS has from satellites. */
  readonly satelliteSun: boolean;
  /** Whether to go out without asking. */
  readonly yes: boolean;
  readonly cache: boolean;
  /** Addresses in place of the services' own. */
  readonly addresses: {
    readonly pvgis?: string | undefined;
    readonly archive?: string | undefined;
  };
  /** Name of the place, in front of the service's own title. */
  readonly title?: string | undefined;
}

/**
 * Weather of a place from public services, as roombalance CSV with source, licence and attribution.
 *
 * @throws InputProblems where they do not answer as they should, or not for this place
 * @throws UsageError where nobody says that the network may be used
 */
export async function fetchWeather(io: Io, wish: WeatherWish): Promise<string> {
  const place = rounded(wish.place);
  const requests = requestsOf(wish, place);
  const answers = await cachedGet(
    io,
    requests.map(({ url }) => url),
    wish.cache,
    () => allow(io, wish, requests, place),
  );
  const texts = answers.map(({ text }) => text);
  const weather = read(wish, place, requests, texts);
  await Promise.all(answers.map(({ keep }) => keep()));
  const title = wish.title === undefined ? weather.title : `${wish.title}: ${weather.title}`;
  return writeOwnCsv(
    { ...weather, title },
    head(
      requests,
      answers.map(({ fetched }) => fetched),
    ),
  );
}

interface Request {
  readonly service: WeatherService;
  readonly url: string;
}

function requestsOf({ year, satelliteSun, addresses }: WeatherWish, place: Coordinates): Request[] {
  const pvgis = addresses.pvgis ?? PVGIS.address;
  if (year === null) return [{ service: PVGIS, url: typicalYearAt(pvgis, place) }];
  const url = hoursOfYearAt(addresses.archive ?? ARCHIVE.address, place, year);
  const hours = { service: ARCHIVE, url };
  if (!satelliteSun) return [hours];
  return [hours, { service: PVGIS, url: sunOfYearAt(pvgis, place, year) }];
}

function read(
  { year }: WeatherWish,
  place: Coordinates,
  requests: readonly Request[],
  [first, second]: readonly string[],
): Weather {
  const [origin, other] = requests.map(({ url }) => `answer of ${new URL(url).host}`);
  if (year === null) return readWeather(first!, origin!, { kind: 'pvgis', ...place });
  const sun = second === undefined ? null : readPvgisSun(second, other!, year);
  return readArchive(first!, origin!, { place, year }, sun);
}

/** Ask before anything leaves the machine. */
async function allow(
  io: Io,
  { yes }: WeatherWish,
  requests: readonly Request[],
  place: Coordinates,
): Promise<void> {
  const hosts = requests.map(({ service, url }) => `${service.name} (${new URL(url).host})`);
  const what = `${hosts.join(' and ')} will be told the place ${coordinatesText(place)}`;
  if (yes) return io.err(`note: ${what}\n`);
  const asking = await io.asking();
  if (asking === null) {
    throw new UsageError(
      `error: nobody is at the keyboard to ask: ${what}.\nGive --yes to let it; nothing was sent.`,
    );
  }
  const terms = requests.flatMap(({ service }) =>
    service.terms === '' ? [] : [`${service.name} is ${service.terms}`],
  );
  const question = [`Use the network? ${what}.`, ...terms].join(' ');
  if (!(await asking.confirm(question, true))) throw new UsageError('Nothing was fetched.');
}

/** Lines for the head of the file: what licences ask to be said. */
function head(requests: readonly Request[], fetched: readonly string[]) {
  return requests.flatMap(({ service, url }, k) => [
    ['source', `${service.name}, ${url}, fetched ${fetched[k]}`] as const,
    ['licence', service.licence] as const,
    ['attribution', service.attribution] as const,
    ['changes', 'rounded; irradiance made a mean of the hour that begins at the time'] as const,
  ]);
}
