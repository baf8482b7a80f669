import { readFileSync } from 'node:fs';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { readOnce } from '../scenario/read-once.ts';

const WEATHER_TEXT = readFileSync('weather/saltmere-typical.csv', 'utf8');
export const FILES = new Map([['w.csv', WEATHER_TEXT]]);
export const WEATHER = readWeather(WEATHER_TEXT, 'w.csv');

/** A room whose windows stay shut, and somebody who works in it. @param more  further lines of the file */
export const oneWarmRoom = (more: string) =>
  readOnce(
    `title: One warm room
weather: w.csv
site: { latitude: 54.2, longitude: -1.9, timezone: Europe/London, storeys: 1 }
step: 60
home:
  build: { age: 1967-1975, shape: flat, walls: cavity, glazing: double, front: south }
  rooms: { living: { use: living, floor area: 30 } }
household: { people: [{ who: adult, pattern: works at home }], airing: [] }
${more}`,
    'home.yaml',
  );

/** A quarter more heat lost than is assumed. */
export const TRUTH = ['/home/build/wall u-value=2.0', '/home/build/window u-value=3.625'];
