import { mildHours } from '../../measures/comfort/mild-hours.ts';
import { extremeWeek } from '../../measures/series/extreme-week.ts';
import type { RoomSeries } from '../../measures/series/plan-series.ts';
import type { PicturedOption } from '../../studies/report-study.ts';
import { monthlyHeat } from '../charts/monthly-heat.ts';
import { waterBalance } from '../charts/water-balance.ts';
import type { PictureData } from './picture-data.ts';

/**
 * The hours of a few options, the baseline first, as pictures take them: of the rooms that all of
 * them have.
 *
 * @param room  whose dampest week is looked for
 */
export function pictureDataOf(pictured: readonly PicturedOption[], room: string): PictureData {
  const [first] = pictured;
  if (first === undefined) throw new RangeError('pictureDataOf: needs at least one option');
  const { series, option } = first;
  const { bands, household } = option.prepared;
  const inAll = series.rooms
    .map(({ name, occupied }, room) => ({ name, occupied, band: bands[room]! }))
    .filter(({ name }) => pictured.every((one) => roomOf(one, name) !== undefined));
  const outdoors = series.outdoors.temperature;
  const damp = roomOf(first, room);
  const week = (values: Float32Array, end: 'lowest' | 'highest'): number =>
    extremeWeek(values, series.start, household.clock, end);
  return {
    start: series.start,
    hours: series.outdoors.temperature.length,
    clock: household.clock,
    weeks: [
      { word: 'coldest', hour: week(outdoors, 'lowest') },
      { word: 'hottest', hour: week(outdoors, 'highest') },
      ...(damp === undefined
        ? []
        : [{ word: 'dampest' as const, hour: week(damp.coldSpotHumidity, 'highest') }]),
    ],
    mild: mildHours(
      outdoors,
      inAll.find(({ band }) => band.temperature.mild !== undefined)?.band.temperature.mild,
    ),
    rooms: inAll.map(({ name, occupied, band: { temperature, humidity } }) => ({
      ...{ name, temperature, humidity },
      occupied: occupied.map((share) => (share >= 0.5 ? 1 : 0)),
    })),
    plans: pictured.map((one) => ({
      name: one.option.name,
      heat: monthlyHeat(one.ledger),
      water: waterBalance(one.ledger),
      rooms: inAll.map(({ name }) => {
        const room = roomOf(one, name)!;
        return {
          temperature: room.operativeTemperature,
          humidity: room.relativeHumidity,
          coldSpot: room.coldSpotHumidity,
          mouldIndex: room.mouldIndex,
          coldSpotHours: one.measures.rooms[name]!.cold_spot_hours_above_80_pct,
        };
      }),
    })),
  };
}

const roomOf = ({ series }: PicturedOption, name: string): RoomSeries | undefined =>
  series.rooms.find((room) => room.name === name);
