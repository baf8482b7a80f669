import type { Home } from '../home/home.ts';
import { CARBON_DIOXIDE } from '../species/carbon-dioxide.ts';
import { GASES, type Reading, type Readings } from './readings/readings.ts';
import { type Channel, meansOver } from './simulate/channel.ts';
import { meanOf } from './statistics/misfit.ts';

/** What is fitted together: people, water and air, or heat. */
export type FitGroup = 'water' | 'heat';

/**
 * What runs of a group are compared with; fitted hours alone count, so observed series reach to their end.
 *
 * @param withheld  first hour that is withheld
 */
export function channelsOf(
  group: FitGroup,
  { rooms, heating, heatingWords }: Readings,
  home: Home,
  withheld: number,
): Channel[] {
  if (group === 'water') return rooms.flatMap((room, i) => waterOf(room, i, home));
  const whole =
    heating === null ? [] : [heatingOf(heating, heatingWords === null ? null : withheld)];
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

/**
 * Heat of the whole home, whose error is some part of what it usually is. Of a meter that counts hot
 * water too only days are compared: showers and meals have their hours.
 *
 * @param withheld  first hour that is withheld; null where the meter counts nothing else
 */
function heatingOf({ hourly }: Reading, withheld: number | null): Channel {
  const floor = Math.max(LEAST_HEAT, 0.1 * meanOf(hourly));
  const at = { room: 'the home', roomIndex: -1, quantity: 'heating', name: 'heating' } as const;
  if (withheld === null) return { ...at, unit: 'W', observed: hourly, floor };
  const stretches = { over: DAILY, anewAt: withheld, known: hourly };
  return { ...at, unit: 'W', observed: meansOver(hourly, stretches), stretches, floor };
}

const DAILY = 24;
/** [W] */
const LEAST_HEAT = 20;
