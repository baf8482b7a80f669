import { SPECIES } from '../../species/species-table.ts';
import { supplyFilterOf } from '../../species/supply-filter.ts';
import { purifierReads } from '../model/purifier-reads.ts';
import { FLOW_BALANCE } from '../presets/devices.ts';
import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';
import { conditionFindings, missingSensors } from './conditions.ts';
import {
  items,
  mapping,
  readTolerantly,
  textOf,
  type UncheckedMapping,
} from './tolerant-readers.ts';

/** Devices stand in rooms, paint is in rooms, and what goes by a reading has a sensor to read. */
export function deviceFindings(raw: UncheckedMapping): Finding[] {
  const names = Object.keys(mapping(mapping(raw['home'])['rooms']));
  const findings: Finding[] = [];
  const room = (value: unknown, path: Path, key = false) => {
    if (typeof value !== 'string' || value === '' || names.includes(value)) return;
    const expected = `the name of a room: ${names.join(', ')}`;
    findings.push({ path, expected, names, ...(key && { key, got: JSON.stringify(value) }) });
  };
  for (const [name, value] of Object.entries(mapping(raw['devices']))) {
    const device = mapping(value);
    const at = ['devices', name];
    room(device['room'], [...at, 'room']);
    for (const side of ['supplies', 'extracts']) {
      const flows = mapping(device[side]);
      for (const where of Object.keys(flows)) room(where, [...at, side, where], true);
      if (side in device && Object.keys(flows).length === 0) {
        findings.push({ path: [...at, side], expected: 'at least one room' });
      }
    }
    findings.push(...balanceFindings(device, at), ...heldByNothing(device, at));
    const reads =
      device['kind'] === 'purifier'
        ? purifierReads(device['runs'])?.name
        : READS[textOf(device['kind'])];
    const runs = device['runs'] ?? (device['kind'] === 'extract fan' ? 'always' : 'by');
    if (reads !== undefined && textOf(runs).startsWith('by') && runs !== 'by rules') {
      const asked = typeof device['room'] === 'string' ? device['room'] : '';
      findings.push(
        ...missingSensors(raw, asked, [reads], [...at, 'runs' in device ? 'runs' : 'room']),
      );
    }
  }
  for (const where of Object.keys(mapping(mapping(raw['sensors'])['rooms']))) {
    if (where !== 'outdoors') room(where, ['sensors', 'rooms', where], true);
  }
  const household = mapping(raw['household']);
  items(household['paint']).forEach((paint, k) => {
    room(mapping(paint)['room'], ['household', 'paint', k, 'room']);
  });
  items(household['airing']).forEach((habit, k) => {
    const at = ['household', 'airing', k];
    room(mapping(habit)['on waking'], [...at, 'on waking']);
    for (const key of ['when', 'until']) {
      findings.push(...conditionFindings(raw, mapping(habit)[key], [...at, key]));
    }
  });
  return findings;
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
