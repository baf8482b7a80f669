import type { Home } from '../home/home.ts';
import { CARBON_DIOXIDE } from '../species/carbon-dioxide.ts';
import { GASES } from './readings/gases.ts';
import type { HomeHeat } from './readings/home-heat.ts';
import type { Readings } from './readings/readings.ts';
import type { Channel } from './simulate/channel.ts';

/** What is fitted together: people, water and air, or heat. */
export type FitGroup = 'water' | 'heat';

/** What runs of a group are compared with; fitted hours alone count, so observed series reach to their end. */
export function channelsOf(group: FitGroup, { rooms, heating }: Readings, home: Home): Channel[] {
  if (group === 'water') return rooms.flatMap((room, i) => waterOf(room, i, home));
  const whole = heating === null ? [] : [heatingOf(heating)];
  return [...rooms.flatMap(temperatureOf), ...whole];
}

type RoomReadings = Readings['rooms'][number];

function temperatureOf({ name: room, temperature }: RoomReadings, roomIndex: number): Channel[] {
  if (temperature === null) return [];
  const quantity = 'temperature';
  return [
    {
      ...{ room, roomIndex, quantity, name: quantity, unit: 'K' },
      ...{ observed: temperature.hourly, floor: 0.1 },
    },
  ];
}

/** Humidity and gases of a room. */
function waterOf(
  { name: room, humidity, species }: RoomReadings,
  roomIndex: number,
  home: Home,
): Channel[] {
  const at = { room, roomIndex };
  const gases = home.species.flatMap(({ name, unit }, q): Channel[] => {
    const reading = species[name];
    if (reading === undefined || !GASES.includes(name)) return [];
    return [
      {
        ...{ ...at, quantity: { species: q }, name: CARBON_DIOXIDE.symbol, unit },
        ...{ observed: reading.hourly, floor: 20 },
      },
    ];
  });
  if (humidity === null) return gases;
  return [
    {
      ...{ ...at, quantity: 'humidity', name: 'relative humidity', unit: '%' },
      ...{ observed: humidity.hourly, floor: 0.5 },
    },
    ...gases,
  ];
}

/** Heat of the whole home, whose error is some part of what it usually is. */
function heatingOf({ observed, stretches, mean }: HomeHeat): Channel {
  const floor = Math.max(LEAST_HEAT, 0.1 * mean);
  const at = { room: 'the home', roomIndex: -1, quantity: 'heating', name: 'heating' } as const;
  return { ...at, unit: 'W', observed, ...(stretches !== null && { stretches }), floor };
}

/** [W] */
const LEAST_HEAT = 20;
