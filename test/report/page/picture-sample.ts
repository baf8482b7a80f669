import type { PictureData, RoomHours } from '../../../src/report/page/picture-data.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';

/** Hours of some rooms under some plans, every series the same everywhere. */
export function someHours(over: {
  readonly start?: number;
  readonly clock?: PictureData['clock'];
  readonly coldest?: number;
  readonly rooms?: readonly string[];
  readonly plans?: readonly string[];
  readonly temperature?: readonly number[];
  readonly humidity?: readonly number[];
  readonly mouldIndex?: readonly number[];
}): PictureData {
  const { rooms = ['den'], plans = ['now'], temperature = [20], coldest = 0 } = over;
  const hours = temperature.length;
  const { humidity = temperature.map(() => 50) } = over;
  const { mouldIndex = Array.from({ length: Math.ceil(hours / 24) }, () => 0) } = over;
  const own: RoomHours = {
    temperature: Float32Array.from(temperature),
    humidity: Float32Array.from(humidity),
    coldSpot: Float32Array.from(humidity),
    mouldIndex: Float32Array.from(mouldIndex),
    coldSpotHours: 12,
  };
  return {
    ...{ start: over.start ?? MONDAY, hours, clock: over.clock ?? UTC_CLOCK },
    weeks: [{ word: 'coldest', hour: coldest }],
    mild: new Uint8Array(hours),
    rooms: rooms.map((name) => ({
      name,
      temperature: { low: 18, high: 26 },
      humidity: { low: 40, high: 60 },
      occupied: Float32Array.from(temperature, (_, h) => (h % 24 < 8 ? 1 : 0)),
    })),
    plans: plans.map((name) => ({
      name,
      heat: { months: ['January'], groups: GROUPS },
      water: [{ way: 'people', kg: 3.25 }],
      rooms: rooms.map(() => own),
    })),
  };
}

/** Monday 2 January 2023, midnight. [s UTC] */
export const MONDAY = Date.UTC(2023, 0, 2) / 1000;

const GROUPS = {
  heating: [12.5],
  sun: [0],
  people: [0],
  devices: [0],
  'walls, floor, roof': [-12.5],
  panes: [0],
  air: [0],
  'drying, other': [0],
  cooling: [0],
};
