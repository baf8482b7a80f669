import {
  type Automation,
  type Condition,
  type DeviceControl,
  OPEN_GATE,
  PLAIN_THERMOSTAT,
  type Quantity,
  type Rule,
} from '../../src/control/automation.ts';
import type { DeviceAction } from '../../src/home/devices.ts';
import type { Home } from '../../src/home/home.ts';
import { noAutomation } from '../control/no-automation.ts';
import { always } from '../engine/homes.ts';
import { typicalHome } from './typical-home.ts';

/** A typical home with everything on: four species, six kinds of device, sensors, gates and rules. */
export function busyHome(rooms: number): { home: Home; automation: Automation; ruled: Automation } {
  const plain = typicalHome(rooms);
  const does: DeviceAction[] = [
    {
      kind: 'dehumidifier',
      type: 'compressor',
      ratedWater: 12 / 86_400,
      ratedPower: 250,
      ratedTemperature: 27,
      ratedHumidity: 60,
      standby: 1,
      tank: 3,
    },
    { kind: 'extract fan', flow: 0.015, power: 15 },
    { kind: 'purifier', cleanAir: [0, 0.02, 0.05, 0.05], power: 30 },
    { kind: 'heater', power: 500, radiantShare: 0.3 },
  ];
  const home: Home = {
    ...plain,
    species: [
      { name: 'co2', unit: 'ppm', outdoor: 420, penetration: 1 },
      { name: 'tvoc', unit: 'µg/m3', outdoor: 30, penetration: 1 },
      { name: 'pm25', unit: 'µg/m3', outdoor: 8, penetration: 0.8 },
      { name: 'pm10', unit: 'µg/m3', outdoor: 15, penetration: 0.6 },
    ],
    devices: does.map((d, k) => ({ name: `device ${k}`, room: k % rooms, does: d })),
  };
  const presence = { holdOn: 1200, delay: 0, missesAwake: 0.02, missesAsleep: 0.2 };
  const automation: Automation = {
    ...noAutomation(rooms),
    presenceSensors: home.rooms.map(() => presence),
    thermostats: home.rooms.map(() => ({
      ...PLAIN_THERMOSTAT,
      gate: { present: 'in the room', windowsShut: true },
      otherwise: 16,
      holdOff: 1200,
      lead: { by: 'learned', most: 7200 },
      windowDelay: 120,
      frostGuard: 7,
      proportionalBand: 1,
    })),
    deviceControls: does.map((_, device) => deviceControl(device, rooms)),
  };
  return { home, automation, ruled: { ...automation, rules: rulesOf(rooms) } };
}

function deviceControl(device: number, rooms: number): DeviceControl {
  return {
    device,
    by: { kind: 'reading', on: reading('relative humidity', device % rooms, 60, 55) },
    gate: OPEN_GATE,
    permitted: always(1),
    leastRun: 1200,
    leastRest: 600,
    drierBy: null,
    mostRun: Number.POSITIVE_INFINITY,
    emptiedByPeople: true,
  };
}

function rulesOf(rooms: number): Rule[] {
  const gate = { present: 'at home', windowsShut: false } as const;
  return Array.from({ length: rooms }, (_, room) => [
    {
      name: `stuffy ${room}`,
      all: [reading('co2', room, 1000, 800), reading('window', room, 0.5, 0.5, 'below')],
      onDelay: 600,
      gate,
      actions: [{ do: 'tell', what: 'air the room' } as const],
    },
    {
      name: `damp ${room}`,
      all: [
        reading('relative humidity', room, 60, 55),
        reading('humidity above outdoors', room, 1.5, 1),
      ],
      onDelay: 900,
      gate,
      actions: [
        {
          do: 'window',
          openings: [room],
          openShare: 1,
          lasts: 600,
          probability: 0.5,
          delay: 300,
        } as const,
      ],
    },
  ]).flat();
}

function reading(
  quantity: Quantity,
  room: number,
  value: number,
  clear: number,
  is: 'above' | 'below' = 'above',
): Condition {
  const sensor = { bias: 0, noise: 0.5, step: 0.1, lag: 300, every: 600 };
  return { quantity, room, is, value, clear, sensor };
}
