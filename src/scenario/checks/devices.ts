import { SPECIES } from '../../species/species-table.ts';
import { supplyFilterOf } from '../../species/supply-filter.ts';
import { purifierReads } from '../model/purifier-reads.ts';
import { FLOW_BALANCE } from '../presets/devices.ts';
import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';
import { conditionFindings, missingSensors } from './conditions.ts';
import { unknownRoom, unknownRoomKey } from './room-names.ts';
import {
  everyAt,
  mapping,
  readTolerantly,
  roomNames,
  textOf,
  type UncheckedMapping,
} from './tolerant-readers.ts';

/** Devices stand in rooms, paint is in rooms, and what goes by a reading has a sensor to read. */
export function deviceFindings(raw: UncheckedMapping): Finding[] {
  const names = roomNames(raw);
  return [
    // Where a name is empty the model says so.
    ...everyAt(raw, ...ROOMS).flatMap((one) => (one.value === '' ? [] : unknownRoom(one, names))),
    ...everyAt(raw, ...ROOM_KEYS).flatMap(({ path }) =>
      path.at(-1) === '' || isOutdoorSensor(path) ? [] : unknownRoomKey(path, names),
    ),
    ...everyAt(raw, 'devices/*').flatMap(({ path, value }) =>
      findingsOf(raw, mapping(value), path),
    ),
    ...everyAt(raw, ...CONDITIONS).flatMap(({ path, value }) =>
      conditionFindings(raw, value, path),
    ),
  ];
}

/** Where devices and paint are, and who wakes up where. */
const ROOMS = ['devices/*/room', 'household/paint/#/room', 'household/airing/#/on waking'];
const ROOM_KEYS = ['devices/*/supplies/*', 'devices/*/extracts/*', 'sensors/rooms/*'];
const isOutdoorSensor = ([section, , name]: Path): boolean =>
  section === 'sensors' && name === 'outdoors';
const CONDITIONS = ['household/airing/#/when', 'household/airing/#/until'];

function findingsOf(raw: UncheckedMapping, device: UncheckedMapping, path: Path): Finding[] {
  const { kind, room, runs } = device;
  const roomless = ['supplies', 'extracts']
    .filter((side) => side in device && Object.keys(mapping(device[side])).length === 0)
    .map((side) => ({ path: [...path, side], expected: 'at least one room' }));
  const found = [...roomless, ...balanceFindings(device, path), ...heldByNothing(device, path)];
  const reads = kind === 'purifier' ? purifierReads(runs)?.name : READS[textOf(kind)];
  const by = textOf(runs ?? (kind === 'extract fan' ? 'always' : 'by'));
  if (reads === undefined || !by.startsWith('by') || by === 'by rules') return found;
  const asked = typeof room === 'string' ? room : '';
  const at = [...path, 'runs' in device ? 'runs' : 'room'];
  return [...found, ...missingSensors(raw, asked, [reads], at)];
}

/** What a filter is said to hold where there is none. */
const heldByNothing = (device: UncheckedMapping, path: Path): Finding[] =>
  supplyFilterOf(textOf(device['filter']))?.group !== 'none'
    ? []
    : HELD_KEYS.filter((key) => readTolerantly(device[key], '-') > 0).map((key) => ({
        path: [...path, key],
        expected: 'nothing beside "filter: none"',
        key: true,
      }));

const HELD_KEYS = SPECIES.flatMap(({ supplyFilter }) =>
  supplyFilter === undefined ? [] : [supplyFilter.key],
);

/** Balanced ventilation blows in as much as it takes out. */
function balanceFindings(device: UncheckedMapping, path: Path): Finding[] {
  if (!('supplies' in device) || !('extracts' in device)) return [];
  const sum = (side: string) =>
    Object.values(mapping(device[side])).reduce<number>(
      (all, flow) => all + readTolerantly(flow, 'm3/h'),
      0,
    );
  const [supplied, extracted] = [sum('supplies'), sum('extracts')];
  if (!(Math.abs(supplied - extracted) > FLOW_BALANCE * Math.max(supplied, extracted))) return [];
  const got = `${extracted} m3/h`;
  return [
    { path: [...path, 'extracts'], expected: `as much as is supplied (${supplied} m3/h)`, got },
  ];
}

/** What each kind goes by where it goes by a reading. */
const READS: Readonly<Record<string, string>> = {
  dehumidifier: 'humidity',
  humidifier: 'humidity',
  'extract fan': 'humidity',
  heater: 'temperature',
};
