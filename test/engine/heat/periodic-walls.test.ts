import { describe, expect, test } from 'vitest';
import { chainFromLayers } from '../../../src/home/chain.ts';
import type { Chain, Element } from '../../../src/home/home.ts';
import type { Layer } from '../../../src/physics/heat/layer.ts';
import {
  periodicTransfer,
  periodicTransferOfChain,
} from '../../../src/physics/heat/periodic-transfer.ts';
import { compare } from '../../reference/compare.ts';
import { always, bareHome, bareRoom, ideallyHeated, quietHousehold } from '../homes.ts';
import { recordRun, runInput } from '../record-run.ts';
import { AIR_HEAT } from '../reference-air.ts';
import { steadyDay } from '../short-weather.ts';
import { type Complex, distance, over, plus, size, times, waveIn } from '../wave.ts';

const DAY = 86_400;
const DT = 60;
const AREA = 20;
const FLOW = 0.02; // m3/s
const VOLUME = 1;
const FILMS = { inner: 0.13, outer: 0.04 };

const brick = { conductivity: 0.7, density: 1700, specificHeat: 850 };
const plaster = { thickness: 0.013, conductivity: 0.5, density: 1300, specificHeat: 1000 };
const WALLS: readonly { name: string; layers: readonly Layer[] }[] = [
  { name: 'solid brick', layers: [{ thickness: 0.22, ...brick }, plaster].reverse() },
  {
    name: 'brick, insulated outside',
    layers: [plaster, { thickness: 0.1, ...brick }, { resistance: 2.5 }],
  },
  {
    name: 'brick, insulated inside',
    layers: [plaster, { resistance: 2.5 }, { thickness: 0.22, ...brick }],
  },
];

/** A wall that no sky draws on and no sun falls on, its surfaces of one temperature. */
const wallTo = (chain: Chain, far: Element['far']) => ({
  longWave: 0,
  elements: [{ ...({ name: 'wall', room: 0, kind: 'wall', area: AREA, chain, far } as const) }],
});

/** Heat into a room at a steady 20 °C for each kelvin of swing outdoors. [W/(m2 K)] */
function transmittanceOf(chain: Chain): Complex {
  const facing = { to: 'outdoors', azimuth: 0, tilt: 180, absorptance: 0 } as const;
  const home = ideallyHeated(bareHome([bareRoom('room', VOLUME)], wallTo(chain, facing)));
  const swing = 5;
  const weather = steadyDay({ temperature: (t) => swing * Math.cos((2 * Math.PI * t) / DAY) });
  const household = quietHousehold(home, { setpoints: [always(20)] });
  const { room } = recordRun(runInput({ home, weather }, { household, dt: DT, spinUpDays: 12 }));
  expect(Math.min(...room.heating[0]!)).toBeGreaterThan(0);
  return over(waveIn(room.heating[0]!, DT, DAY), [-swing * AREA, 0]);
}

/** Heat into the wall for each kelvin of swing of the room, whose air leaks in. [W/(m2 K)] */
function admittanceOf(chain: Chain): Complex {
  const home = bareHome([bareRoom('room', VOLUME)], {
    ...wallTo(chain, { to: 'neighbour', temperature: 10 }),
    leakage: { how: { by: 'rate', flow: FLOW }, share: [1], ach50: null },
  });
  const weather = steadyDay({ temperature: (t) => 10 + 5 * Math.cos((2 * Math.PI * t) / DAY) });
  const { room } = recordRun(runInput({ home, weather }, { dt: DT, spinUpDays: 12 }));
  const air = waveIn(room.airTemperature[0]!, DT, DAY);
  const brought = times([FLOW * AIR_HEAT, 0], plus([5, 0], times([-1, 0], air)));
  const stored = times([0, (2 * Math.PI * VOLUME * AIR_HEAT) / DAY], air);
  return over(plus(brought, times([-1, 0], stored)), times([AREA, 0], air));
}

describe.each(WALLS)('a daily swing at a wall of $name', ({ name, layers }) => {
  const chain = chainFromLayers(layers, FILMS);
  const exact = periodicTransfer(layers, DAY, FILMS);
  const steady = size(exact.transmittance) / exact.decrement;
  const lumped = periodicTransferOfChain(chain.resistance, chain.capacity, DAY);
  test.each([
    { what: 'transmittance', by: transmittanceOf },
    { what: 'innerAdmittance', by: admittanceOf },
  ] as const)('$what', ({ what, by }) => {
    const got = by(chain);
    const row = { topic: 'Dynamics, through the simulator', unit: 'W/(m2 K)' } as const;
    const words = what === 'transmittance' ? 'periodic transmittance' : 'thermal admittance';
    compare({
      ...row,
      what: `${words} of ${name}, daily, from layers`,
      source: 'heat transfer matrix of ISO 13786:2017 (from memory)',
      mark: 'closed form',
      expected: size(exact[what]),
      got: size(got),
      tolerance: { absolute: what === 'transmittance' ? 0.05 * steady : 0.05 * size(exact[what]) },
      because: 'nodes are chosen for 5 % of admittance, and of the U-value for transmittance',
    });
    compare({
      ...row,
      what: `${words} of ${name}, daily, of its nodes, as a complex number off by`,
      source: 'product of the matrices of resistances and capacities',
      mark: 'closed form',
      expected: 0,
      got: distance(got, lumped[what]) / size(lumped[what]),
      tolerance: { absolute: 0.002 },
      because: 'half a step of a minute is 0.2 % of a turn',
    });
  });
});

test('a wall alone in its room sees itself alone: its film is convection', () => {
  const chain = chainFromLayers(WALLS[0]!.layers, FILMS);
  const convective = 1 / (1 / FILMS.inner - 5.13);
  const resistance = [convective, ...chain.resistance.slice(1)];
  const home = ideallyHeated(
    bareHome([bareRoom('room', VOLUME)], {
      ...wallTo(chain, { to: 'neighbour', temperature: 0 }),
      longWave: 5.13,
    }),
  );
  const household = quietHousehold(home, { setpoints: [always(20)] });
  const weather = steadyDay({ temperature: () => 0 });
  const { room } = recordRun(runInput({ home, weather }, { household, dt: 600, spinUpDays: 20 }));
  const through = (20 * AREA) / resistance.reduce((sum, r) => sum + r, 0);
  expect(room.heating[0]!.at(-1)! / through).toBeCloseTo(1, 6);
});
