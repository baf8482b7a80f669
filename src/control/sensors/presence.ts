import type { Home } from '../../home/home.ts';
import { drawFrom } from '../../units/seeded-draw.ts';
import type { Automation, PresenceSensor } from '../automation.ts';
import type { DayInputs } from '../day-inputs.ts';
import { STREAM } from '../random-streams.ts';

/** Presence in a step: as the sensors report it, and in truth. */
export interface Presence {
  /** Reading of each room's presence sensor: 1 somebody, 0 nobody; 0 where there is no sensor. */
  readonly present: Uint8Array;
  /** Whether any presence sensor reports somebody. */
  readonly anyone: boolean;
  /** Whether somebody is truly at home, and whether somebody at home is awake. */
  readonly someoneHome: boolean;
  readonly awakeHome: boolean;
  /** @param start  instant at which the day's first step begins [s UTC] */
  readonly beginDay: (start: number) => void;
  /** Look at step `s` of the day. To be called once a step, in order. Allocates nothing. */
  readonly step: (day: DayInputs, s: number) => void;
}

/**
 * Presence sensors, one in each room that has one.
 *
 * Somebody who is in the room at all during a step shows a sign of life in it unless the sensor
 * overlooks them; several people are overlooked together by the product of their chances. The
 * sensor says "there" from `delay` after the first sign until `holdOn` after the last, both up to
 * the start of a step.
 *
 * @param dt  control step [s]
 */
export function createPresence(home: Home, automation: Automation, dt: number): Presence {
  const rooms = home.rooms.length;
  const { seed, presenceSensors } = automation;
  // Instants of the first sign of life of a stay and of the end of the last step with one. [s UTC]
  const first = new Float64Array(rooms).fill(Number.NaN);
  const last = new Float64Array(rooms).fill(Number.NEGATIVE_INFINITY);
  let begin = 0;
  const presence = {
    present: new Uint8Array(rooms),
    anyone: false,
    someoneHome: false,
    awakeHome: false,
    beginDay(start: number): void {
      begin = start;
    },
    step(day: DayInputs, s: number): void {
      const now = begin + s * dt;
      let people = 0;
      let awake = 0;
      presence.anyone = false;
      for (let i = 0; i < rooms; i++) {
        const at = s * rooms + i;
        people += day.occupants[at]!;
        awake += day.awake[at]!;
        const sensor = presenceSensors[i];
        if (sensor === null || sensor === undefined) continue;
        if (showsLife(sensor, day, at, seed, i, now / dt)) {
          if (Number.isNaN(first[i]!)) first[i] = now;
          last[i] = now + dt;
        } else if (!(now - last[i]! < sensor.holdOn)) {
          first[i] = Number.NaN;
        }
        const there = now - first[i]! >= sensor.delay;
        presence.present[i] = there ? 1 : 0;
        if (there) presence.anyone = true;
      }
      presence.someoneHome = people > SOME;
      presence.awakeHome = awake > SOME;
    },
  };
  return presence;
}

/** Whether the sensor notices somebody in this step. */
function showsLife(
  { missesAwake, missesAsleep }: PresenceSensor,
  day: DayInputs,
  at: number,
  seed: number,
  room: number,
  step: number,
): boolean {
  const people = day.occupants[at]!;
  if (people <= SOME) return false;
  if (missesAwake === 0 && missesAsleep === 0) return true;
  const awake = day.awake[at]!;
  const missed = missesAwake ** awake * missesAsleep ** Math.max(0, people - awake);
  return drawFrom(seed, STREAM.presence + room, step) >= missed;
}

/** Less of a person than this is rounding. */
const SOME = 1e-9;
