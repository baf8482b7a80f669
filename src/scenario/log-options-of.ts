import { factsOfSpecies } from '../log/quantities.ts';
import type { LogOptions, NamedReading } from '../log/read/log-options.ts';
import type { LocalClock } from '../units/local-clock.ts';
import { countedSpecies } from './assemble/carried-species.ts';
import { logClockOf } from './checks/log.ts';
import type { ScenarioData } from './model/scenario-model.ts';

/**
 * How a scenario wants logs to be read: its `log` section, its rooms and devices, and the clock of its site where
 * nobody speaks of the logger's.
 *
 * @param clock  the household's wall clock
 */
export function logOptionsOf(
  {
    log = {},
    home,
    site,
    air,
    devices = {},
  }: Pick<ScenarioData, 'log' | 'home' | 'site' | 'air' | 'devices'>,
  clock: LocalClock,
): LogOptions {
  const { zone, dates, readings = {} } = log;
  return {
    clock: zone === undefined ? clock : logClockOf(zone),
    zone: zone ?? site?.timezone ?? "the home's clock",
    zoneIsLoggers: zone !== undefined,
    ...(dates !== undefined && { dates }),
    readings: Object.fromEntries(
      Object.entries(readings).map(([name, said]) => [
        name,
        said === 'leave out' ? said : readingOf(said),
      ]),
    ),
    own: countedSpecies({ air })
      .filter(({ own }) => own !== undefined)
      .map(factsOfSpecies),
    devices: Object.entries(devices).flatMap(([name, device]) =>
      device.kind === 'stove'
        ? []
        : [{ name, kind: device.kind, room: 'room' in device ? device.room : null }],
    ),
    rooms: Object.keys(home.rooms),
  };
}

type SaidReading = Exclude<
  NonNullable<NonNullable<ScenarioData['log']>['readings']>[string],
  string
>;

function readingOf({ quantity, room, place, device, unit }: SaidReading): NamedReading {
  return {
    quantity,
    place: room === undefined ? (place ?? 'home') : 'room',
    room: room ?? null,
    device: device ?? null,
    unit: unit ?? null,
  };
}
