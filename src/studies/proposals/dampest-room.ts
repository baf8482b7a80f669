import type { PlanMeasures, RoomMeasures } from '../../measures/plan-measures.ts';

/**
 * The dampest of the rooms that people use: the one with most hours of a cold spot above 80 %, among
 * equals with most hours above its humidity band, then with the highest mean humidity.
 *
 * @returns its name; null where nobody is ever in any room
 */
export function dampestRoom({ rooms }: PlanMeasures): string | null {
  const used = Object.entries(rooms).filter(([, room]) => room.occupied_hours > 0);
  const [dampest] = used.sort(([, a], [, b]) => moreDamp(b, a));
  return dampest?.[0] ?? null;
}

function moreDamp(a: RoomMeasures, b: RoomMeasures): number {
  return (
    a.cold_spot_hours_above_80_pct - b.cold_spot_hours_above_80_pct ||
    a.outside_band_hours.humidity_high - b.outside_band_hours.humidity_high ||
    a.mean_relative_humidity_pct - b.mean_relative_humidity_pct
  );
}
