import { extraterrestrialNormal } from '../../../src/physics/sun/extraterrestrial.ts';
import { globalFromCloud } from '../../../src/physics/sun/global-from-cloud.ts';
import { diffuseShareErbs, splitGlobalErbs } from '../../../src/physics/sun/split-global-erbs.ts';
import { sunPosition } from '../../../src/physics/sun/sun-position.ts';
import { declinationOfDay } from '../../reference/physics/sun/declination-of-day.ts';
import { extraterrestrialDaily } from '../../reference/physics/sun/extraterrestrial-daily.ts';
import { refraction } from '../../reference/physics/sun/refraction.ts';
import { testRanges } from '../test-ranges.ts';

/** Begin of 1950 and of 2101. [s UTC] */
const YEARS = [Date.UTC(1950, 0, 1) / 1000, Date.UTC(2101, 0, 1) / 1000] as const;

testRanges([
  ['extraterrestrialNormal: day of year', [1, 367], '', (x) => extraterrestrialNormal(x)],
  ['extraterrestrialDaily: latitude', [-90, 90], '°', (x) => extraterrestrialDaily(80, x, 0)],
  ['declinationOfDay: day of year', [1, 367], '', (x) => declinationOfDay(x)],
  ['globalFromCloud: cloud', [0, 1], 'of the sky', (x) => globalFromCloud(x, 30)],
  ['globalFromCloud: elevation', [-90, 90], '°', (x) => globalFromCloud(0.5, x)],
  ['refraction: elevation', [-90, 90], '°', (x) => refraction(x)],
  ['splitGlobalErbs: global irradiance', [0, 1600], 'W/m2', (x) => splitGlobalErbs(x, 0.5, 80)],
  ['splitGlobalErbs: cosine of zenith', [-1, 1], '', (x) => splitGlobalErbs(300, x, 80)],
  ['diffuseShareErbs: clearness index', [0, 1], '', (x) => diffuseShareErbs(x)],
  ['sunPosition: time', YEARS, 's', (x) => sunPosition(x, 54, 0)],
  ['sunPosition: latitude', [-90, 90], '°', (x) => sunPosition(0, x, 0)],
  ['sunPosition: longitude', [-180, 180], '°', (x) => sunPosition(0, 54, x)],
]);
