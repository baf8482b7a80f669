import type { Home } from '../../home/home.ts';
import { powerOf } from '../../units/portable-math.ts';
import { evenDraw, hashFrom } from '../../units/seeded-draw.ts';
import type { Automation, PresenceSensor } from '../automation.ts';
import type { DayInputs } from '../day-inputs.ts';
import { STREAM, stemsByName } from '../random-streams.ts';

/** Presence in a step: as the sensors report it, and in truth. */
export interface Presence {
  /** Reading of each room's presence sensor: 1 somebody, 0 nobody; 0 where there is no sensor. */
  readonly present: Uint8Array;
  /** Whether any presence sensor reports somebody. */
  readonly anyone: boolean;
  /** Whether somebody is truly at home, and whether somebody at home is awake. */
  readonly someoneHome: boolean;
  readonly awakeHome: boolean;
  /** People who are truly awake in each room; a fraction for part of the step. [-] */
  readonly awake: Float64Array;
  /** @param start  instant at which the day's first step begins [s UTC] */
  readonly beginDay: (start: number) => void;
  /** Look at step `s` of the day. To be called once a step, in order. Allocates nothing. */
  readonly step: (day: DayInputs, s: number) => void;
}

/**
 * Presence sensors, one in each room that has one.
 *
 * Somebody who is in the room at all during a step shows a sign of life in it unless the sensor
 * overlooks them, by a chance per ten minutes; several people are overlooked together by the
 * product of their chances. The sensor says "there" from `delay` after the first sign until `holdOn`
 * after the last, both to the nearest step: what it says in a step is what it says in its middle.
 *
 * @param dt  control step [s]
 */
export function createPresence(home: Home, automation: Automation, dt: number): Presence {
  const rooms = home.rooms.length;
  const { seed, presenceSensors } = automation;
  const names = home.rooms.map(({ name }) => name);
  const streams = stemsByName(seed, STREAM.presence, names);
  const sensors = presenceSensors.flatMap((sensor, room) =>
    sensor === null ? [] : [createSensorState(sensor, room, streams[room]!, dt)],
  );
  let begin = 0;

  const count = ({ occupants, awake }: DayInputs, s: number): void => {
    let people = 0;
    let up = 0;
    for (let i = 0; i < rooms; i++) {
      const at = s * rooms + i;
      people += occupants[at]!;
      up += awake[at]!;
      presence.awake[i] = awake[at]!;
    }
    presence.someoneHome = people > SOME;
    presence.awakeHome = up > SOME;
  };

  const sense = (day: DayInputs, s: number): void => {
    const { present } = presence;
    const now = begin + s * dt;
    const middle = now + 0.5 * dt;
    let anyone = false;
    for (let k = 0; k < sensors.length; k++) {
      const sensor = sensors[k]!;
      const at = s * rooms + sensor.room;
      if (showsLife(sensor, day, at, begin / dt + s)) {
        // Who comes is there in the last part of the step, who leaves in the first.
        const whole = day.occupants[at]! > 1 - SOME;
        const spent = whole ? dt : day.occupants[at]! * dt;
        const stays = sensor.last > now - SOME * dt;
        if (Number.isNaN(sensor.first)) sensor.first = now + dt - spent;
        sensor.last = stays ? now + spent : now + dt;
      } else if (!(middle - sensor.last < sensor.holdOn)) {
        sensor.first = Number.NaN;
      }
      const there = middle - sensor.first >= sensor.delay && middle - sensor.last < sensor.holdOn;
      present[sensor.room] = there ? 1 : 0;
      if (there) anyone = true;
    }
    presence.anyone = anyone;
  };

  const presence = {
    present: new Uint8Array(rooms),
    anyone: false,
    someoneHome: false,
    awakeHome: false,
    awake: new Float64Array(rooms),
    beginDay(start: number): void {
      begin = start;
    },
    step(day: DayInputs, s: number): void {
      count(day, s);
      sense(day, s);
    },
  };
  return presence;
}

/** A sensor as the time loop goes by it, with what it remembers. */
function createSensorState(sensor: PresenceSensor, room: number, stream: number, dt: number) {
  return {
    room,
    delay: sensor.delay,
    holdOn: sensor.holdOn,
    missesAwake: sensor.missesAwake,
    missesAsleep: sensor.missesAsleep,
    /** How often ten minutes go into a step, which the chances are given for. */
    tenMinutes: dt / TEN_MINUTES,
    stream,
    // Instants of the first and the last sign of life of a stay. [s UTC]
    first: Number.NaN,
    last: Number.NEGATIVE_INFINITY,
    // Chance of overlooking those who are there in a step, and for how many people of how many awake it is.
    missed: Number.NaN,
    people: Number.NaN,
    awake: Number.NaN,
  };
}

type SensorState = ReturnType<typeof createSensorState>;

/** Whether the sensor notices somebody in this step. */
function showsLife(sensor: SensorState, day: DayInputs, at: number, step: number): boolean {
  if (day.occupants[at]! <= SOME) return false;
  overlook(sensor, day.occupants[at]!, day.awake[at]!);
  return sensor.missed === 0 || evenDraw(hashFrom(sensor.stream, step)) >= sensor.missed;
}

/** Work out the chance of overlooking people, if they are not those of last time. */
function overlook(sensor: SensorState, people: number, awake: number): void {
  if (people === sensor.people && awake === sensor.awake) return;
  sensor.people = people;
  sensor.awake = awake;
  const { missesAwake, missesAsleep, tenMinutes } = sensor;
  const asleep = Math.max(0, people - awake);
  sensor.missed =
    powerOf(missesAwake, awake * tenMinutes) * powerOf(missesAsleep, asleep * tenMinutes);
}

/** [s] */
const TEN_MINUTES = 600;
/** Less of a person than this is rounding. */
const SOME = 1e-9;
