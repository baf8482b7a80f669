import { describe, expect, test } from 'vitest';
import type { Chain, Element, Home } from '../../../src/home/home.ts';
import { compare } from '../../reference/compare.ts';
import { bareHome, bareRoom } from '../homes.ts';
import { recordRun, runInput } from '../record-run.ts';
import { AIR_HEAT } from '../reference-air.ts';
import { steady } from '../short-weather.ts';
import { type Complex, lagBehind, over, size, waveIn } from '../wave.ts';

const BOOK = {
  topic: 'Dynamics, through the simulator',
  source: 'D. MacKay, Sustainable Energy: without the hot air (2008), box E.19',
  mark: 'published arithmetic',
} as const;
const DAY = 86_400;
const YEAR = 365 * DAY;
const NODES_A_DEPTH = 12;
const AREA = 100;

interface Solid {
  readonly conductivity: number;
  readonly capacity: number;
}

const GRANITE: Solid = { conductivity: 2.1, capacity: 2.3e6 };

/** 1/e depth of a swing. [m] */
const depthOf = ({ conductivity, capacity }: Solid, period: number): number =>
  Math.sqrt((conductivity * period) / (Math.PI * capacity));

/**
 * Solid under a surface: a room of hardly any air that follows the weather is the surface, one more
 * such room after every so many 1/e depths is a place to read the temperature inside, and seven
 * depths below the last reading nothing follows.
 */
function solid(stuff: Solid, period: number, readings: readonly number[]): Home {
  const z0 = depthOf(stuff, period);
  const chain = (depths: number): Chain => {
    const n = Math.ceil(depths * NODES_A_DEPTH);
    const slice = (depths * z0) / n;
    const r = slice / stuff.conductivity;
    return {
      resistance: [r / 2, ...Array.from({ length: n - 1 }, () => r), r / 2],
      capacity: Array.from({ length: n }, () => slice * stuff.capacity),
    };
  };
  const stops = [0, ...readings];
  const slab = (room: number, depths: number, far: Element['far']): Element => ({
    ...{ name: `from ${room}`, room, kind: 'partition', area: AREA, chain: chain(depths), far },
  });
  const elements = stops.map((stop, k) => {
    const next = stops[k + 1];
    return next === undefined
      ? slab(k, 7, { to: 'nothing' })
      : slab(k, next - stop, { to: 'room', room: k + 1 });
  });
  const flow = (FILM * AREA) / AIR_HEAT;
  return bareHome(
    stops.map((_, k) => bareRoom(`at ${k}`, 0.001)),
    {
      longWave: 0, // the surface has one temperature
      elements,
      leakage: {
        how: { by: 'rate', flow },
        share: stops.map((_, k) => (k === 0 ? 1 : 0)),
        ach50: null,
      },
    },
  );
}

/** Between weather and surface. [W/(m2 K)] */
const FILM = 50;

interface Waves {
  readonly surface: Complex;
  readonly inside: readonly Complex[];
  /** Into the surface, per square metre. */
  readonly flux: Complex;
}

function waves(stuff: Solid, period: number, readings: readonly number[]): Waves {
  const home = solid(stuff, period, readings);
  const course = { temperature: (t: number) => 10 + 8 * Math.cos((2 * Math.PI * t) / period) };
  const weather = steady(course, period, period / 4320);
  const dt = period === DAY ? 60 : 3600;
  const spinUpDays = (10 * period) / DAY;
  const input = runInput({ home, weather }, { dt, hours: period / 3600, spinUpDays: spinUpDays });
  const { room, outdoorTemperature } = recordRun(input);
  const [surface = [0, 0], ...inside] = room.airTemperature.map((t) => waveIn(t, dt, period));
  const drive = waveIn(outdoorTemperature, dt, period);
  const flux: Complex = [FILM * (drive[0] - surface[0]), FILM * (drive[1] - surface[1])];
  return { surface, inside, flux };
}

describe('a daily swing in granite', () => {
  const { surface, inside, flux } = waves(GRANITE, DAY, [1, 2, 3]);
  const [one = surface, two = surface, three = surface] = inside.map((wave) => over(wave, surface));

  test('falls to 1/e over 0.16 m', () => {
    compare({
      ...BOOK,
      what: '1/e depth of a daily swing in granite',
      unit: 'm',
      expected: 0.16,
      got: -depthOf(GRANITE, DAY) / Math.log(size(one)),
      tolerance: { absolute: 0.005 },
      because: 'print rounding',
    });
  });

  test.each([
    {
      ...{ depth: 'two', wave: two, fall: 7, late: 1 / 3 },
      exact: 'a third in words; exactly 1/pi',
    },
    {
      ...{ depth: 'three', wave: three, fall: 20, late: 0.5 },
      exact: 'half a cycle in words; exactly 3/(2 pi)',
    },
  ])('falls by $fall and is late by $late of a cycle at $depth such depths', (print) => {
    compare({
      ...BOOK,
      what: `swing at the surface over swing at ${print.depth} 1/e depths`,
      unit: '-',
      expected: print.fall,
      got: 1 / size(print.wave),
      tolerance: { absolute: 0.5 },
      because: 'rounded to a whole number in print',
    });
    compare({
      ...BOOK,
      what: `lag at ${print.depth} 1/e depths, in cycles`,
      unit: '-',
      expected: print.late,
      got: lagBehind(print.wave, [1, 0], 1),
      tolerance: { absolute: 0.03 },
      because: print.exact,
    });
  });

  test('is the exact wave all the way down', () => {
    [one, two, three].forEach((wave, k) => {
      compare({
        topic: BOOK.topic,
        what: `swing ${k + 1} 1/e depths down over swing at the surface`,
        unit: '-',
        source: 'Carslaw and Jaeger 1959, section 2.6',
        mark: 'closed form',
        expected: Math.exp(-(k + 1)),
        got: size(wave),
        tolerance: { relative: 0.001 * (k + 1) },
        because: '12 nodes a 1/e depth and one-minute steps: 0.06 and 0.03 % a depth',
      });
      expect(2 * Math.PI * lagBehind(wave, [1, 0], 1)).toBeCloseTo(k + 1, 2);
    });
  });

  test('draws its heat an eighth of a cycle ahead of the surface', () => {
    const ahead = 1 - lagBehind(flux, surface, 1);
    compare({
      topic: BOOK.topic,
      what: 'lead of heat into a thick solid over its surface temperature, in cycles',
      unit: '-',
      source: 'Carslaw and Jaeger 1959, section 2.6',
      mark: 'closed form',
      expected: 1 / 8,
      got: ahead,
      tolerance: { absolute: 0.001 },
      because: '12 nodes a 1/e depth',
    });
  });
});

describe('an annual swing of 8.3 K', () => {
  test.each([
    { name: 'granite', conductivity: 2.1, capacity: 2.3e6, depth: 3, flux: 8.1 },
    { name: 'concrete', conductivity: 1.28, capacity: 1.94e6, depth: 2.6, flux: 5.8 },
    { name: 'still water', conductivity: 0.57, capacity: 4.18e6, depth: 1.2, flux: 5.7 },
    { name: 'dry sand', conductivity: 0.3, capacity: 1.28e6, depth: 1.5, flux: 2.3 },
  ])('in $name reaches $depth m and draws $flux W/m2', ({ name, depth, flux, ...stuff }) => {
    const got = waves(stuff, YEAR, [1]);
    compare({
      ...BOOK,
      what: `1/e depth of the year in ${name}`,
      unit: 'm',
      expected: depth,
      got: -depthOf(stuff, YEAR) / Math.log(size(over(got.inside[0]!, got.surface))),
      tolerance: { absolute: 0.05 },
      because: 'print rounding',
    });
    compare({
      ...BOOK,
      what: `peak heat into ${name} for 8.3 K of annual swing at its surface`,
      unit: 'W/m2',
      expected: flux,
      got: (8.3 * size(got.flux)) / size(got.surface),
      tolerance: { relative: 0.03 },
      because: 'two digits in print, of inputs with two digits',
    });
  });
});
