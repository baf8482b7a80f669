import { expect, test } from 'vitest';
import { noteFelt } from '../../../src/engine/heat/thermostat-solve.ts';
import { layOutModel } from '../../../src/engine/layout/model.ts';
import { ROOM } from '../../../src/engine/layout/state-layout.ts';
import type { Home } from '../../../src/home/home.ts';
import { noAutomation } from '../../control/no-automation.ts';
import { bareHome, bareRoom, ideallyHeated, quietHousehold } from '../homes.ts';
import { recordRun, runInput } from '../record-run.ts';
import { lastDays } from '../short-weather.ts';
import { element } from '../worked-house.ts';

const walled: Home = bareHome([bareRoom('room', 40)], {
  elements: [element('wall', 0, 'wall', 30, 1)],
});

test('surfaces are felt where half a step takes them on from their mean', () => {
  const { rooms } = layOutModel(walled, 101_325, 600);
  rooms[ROOM.sensorRadiant] = 0.4;
  rooms[ROOM.temperature] = 20; // air at the end
  rooms[ROOM.radiantMean] = 17; // mean of the step before
  noteFelt(rooms, 0, 18);
  // 18 + half of what it rose: 18.5; 0.6 of 20 and 0.4 of 18.5.
  expect(rooms[ROOM.feltNow]).toBeCloseTo(19.4, 12);
});

test('a setpoint is held on what is felt while warm emitters and coolers work at once', () => {
  // Emitters that cool down slowly radiate as nothing that cools does.
  const plain = ideallyHeated(
    {
      ...walled,
      cooling: [
        {
          ...{ name: 'unit', room: 0, source: 'ideal', power: 1e6, coil: null, exhaust: 0 },
          eer: { outdoor: [0], value: [3] },
          radiantShare: 0,
        },
      ],
    },
    4000,
  );
  const emitters = plain.emitters.map((e) => ({ ...e, lag: 7200, radiantShare: 0.6 }));
  const home: Home = { ...plain, emitters };
  const noon = { days: 127, from: 720, to: 1440 };
  const household = quietHousehold(home, {
    setpoints: [{ base: 26, spells: [{ ...noon, value: 15 }] }],
    cooling: [{ base: Number.POSITIVE_INFINITY, spells: [{ ...noon, value: 18 }] }],
  });
  const thermostats = [{ ...noAutomation(1).thermostats[0]!, radiantShare: 1 }];
  const automation = { ...noAutomation(1), thermostats };
  const weather = lastDays({ temperature: () => 8 }, 3);
  const { room } = recordRun(runInput({ home, weather }, { household, automation, hours: 48 }));
  const surfaces = room.radiantTemperature[0]!;
  let both = 0;
  for (let s = 1; s < surfaces.length; s++) {
    if (room.heating[0]![s]! < 1 || room.cooling[0]![s]! < 1) continue;
    both++;
    expect(1.5 * surfaces[s]! - 0.5 * surfaces[s - 1]!).toBeCloseTo(18, 6);
  }
  expect(both).toBeGreaterThan(5);
});
