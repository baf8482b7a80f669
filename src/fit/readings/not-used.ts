import type { Home } from '../../home/home.ts';
import type { Log, LoggedSeries } from '../../log/log.ts';
import { factsOf } from '../../log/quantities.ts';
import { CARBON_DIOXIDE } from '../../species/carbon-dioxide.ts';
import { andList } from '../../units/word-list.ts';
import { GASES } from './gases.ts';
import { isElectric, roomSource } from './heat-of-electricity.ts';

/**
 * What of a log a fit makes nothing of, a sentence for each reason.
 *
 * @param used  the series it goes by
 */
export function notUsed(log: Log, home: Home, used: ReadonlySet<LoggedSeries>): string[] {
  const byReason = new Map<string, string[]>();
  for (const series of log.series) {
    if (used.has(series)) continue;
    const reason = reasonOf(series, log, home);
    byReason.set(reason, [...(byReason.get(reason) ?? []), seriesName(series)]);
  }
  return [...byReason].map(([reason, names]) => `Not used: ${andList(names)}. ${reason}`);
}

function reasonOf(series: LoggedSeries, log: Log, home: Home): string {
  const { quantity, place, room, device } = series;
  if (place === 'outdoors') return 'Outdoor air is that of the weather file.';
  if (room !== null && home.rooms.every(({ name }) => name !== room)) {
    return 'The plan has no such room.';
  }
  if (quantity === 'device power') return deviceReason(device, home);
  if (quantity === 'electricity') return WHOLE_HOME;
  if (quantity === 'heating electricity') return electricityReason(room, log, home);
  if (quantity === 'heating power' && room === null) {
    return log.series.some(isHeatOfRoom) ? 'Rooms have heat of their own logged.' : NO_MEAN;
  }
  if (quantity === 'gas') return gasReason(log, home);
  if (series.reading === 'state' && room !== null && FOLLOWED.includes(quantity)) return NO_STATE;
  if (FOLLOWED.includes(quantity)) return room === null ? NO_ROOM : NO_HOUR;
  return `A fit goes by temperature, relative humidity and ${CARBON_DIOXIDE.symbol}, and follows windows, people, heat and the power of devices.`;
}

function deviceReason(device: string | null, home: Home): string {
  const found = home.devices.find(({ name }) => name === device);
  if (found === undefined) {
    return 'No device of the scenario is called that; its heat is among what the household gives off.';
  }
  return found.does.kind === 'stove' ? 'A stove burns wood and no electricity.' : NO_HOUR;
}

function electricityReason(room: string | null, log: Log, home: Home): string {
  if (room !== null) {
    const electric = roomSource(home, room) !== undefined;
    return electric
      ? NO_HOUR
      : 'Other heating warms that room: give the scenario a device of kind heater there, and name its power `device power`.';
  }
  if (!home.sources.some(isElectric)) return 'No electricity heats the home.';
  if (home.sources.length > 1) return SEVERAL;
  return heatOfRooms(log) ? HEAT_FIRST : NO_MEAN;
}

function gasReason(log: Log, home: Home): string {
  if (heatOfRooms(log)) return HEAT_FIRST;
  if (home.sources.length > 1) return SEVERAL;
  return home.sources[0]?.fuel === 'gas' ? NO_MEAN : 'No gas heats the home.';
}

const heatOfRooms = (log: Log): boolean =>
  log.series.some((one) => one.quantity === 'heating power' || isHeatOfRoom(one));

const isHeatOfRoom = ({ quantity, room }: LoggedSeries): boolean =>
  room !== null && (quantity === 'heating power' || quantity === 'heating electricity');

function seriesName({ quantity, place, room, device, from }: LoggedSeries): string {
  const what = device ?? factsOf(quantity)?.words ?? quantity;
  const where =
    device !== null
      ? ''
      : room !== null
        ? ` of ${room}`
        : place === 'outdoors'
          ? ' outdoors'
          : ' of the home';
  return `${what}${where} (${from})`;
}

/** What runs are compared with or follow, room by room. */
const FOLLOWED: readonly string[] = [
  ...['temperature', 'relative humidity', ...GASES, 'window', 'presence', 'heating power'],
];
const WHOLE_HOME =
  'It counts everything in the home: what heats takes a meter or plug of its own (`heating electricity`, or `device power` with its `device`).';
const SEVERAL = 'Several sources heat the home, and it is not known which gave how much.';
const HEAT_FIRST = 'Heat that was logged in itself comes first.';
const NO_ROOM = 'It does not say its room.';
const NO_HOUR = 'It has no reading in the hours that log and weather share.';
const NO_MEAN =
  'No two readings in a row of it, at most five weeks apart, are both in the fitted hours.';
const NO_STATE =
  'It tells nothing of the hours that log and weather share: what was last told counts for two weeks at most.';
