import type { TraceView } from '../../engine/record/trace.ts';
import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { figureText } from '../../units/figure-text.ts';

/** Watches for rooms that leave what the model can speak of, and says so in notices. */
export interface OddRooms {
  readonly observe: (trace: TraceView) => void;
  readonly notices: () => Notice[];
}

/**
 * Two things a person should hear of: air that was saturated, because there is fog then and water on
 * more than panes and corners; and rooms hotter than anybody would bear, because something in the
 * scenario is likely wrong.
 */
export function createOddRooms({ rooms }: Home): OddRooms {
  const soaked = new Float64Array(rooms.length); // s
  const hottest = new Float64Array(rooms.length).fill(Number.NEGATIVE_INFINITY); // °C

  function observe({ steps, dt, room }: TraceView): void {
    const { relativeHumidity, airTemperature } = room;
    for (let k = 0, i = 0; k < steps * rooms.length; k++) {
      if (relativeHumidity[k]! >= SATURATED) soaked[i] = soaked[i]! + dt;
      if (airTemperature[k]! > hottest[i]!) hottest[i] = airTemperature[k]!;
      i = i + 1 === rooms.length ? 0 : i + 1;
    }
  }

  function notices(): Notice[] {
    return rooms.flatMap(({ name }, i) => [
      ...(soaked[i]! >= LEAST_SOAKED ? [soakedNotice(name, soaked[i]! / 3600)] : []),
      ...(hottest[i]! > UNBEARABLE ? [hotNotice(name, hottest[i]!)] : []),
    ]);
  }

  return { observe, notices };
}

function soakedNotice(name: string, hours: number): Notice {
  return {
    id: 'fog',
    text:
      `The air of ${name} was saturated for ${hoursText(hours)}: fog, and water on walls and furniture. ` +
      'Look at its water, its exchange of air and its temperature.',
  };
}

function hoursText(hours: number): string {
  const text = figureText(hours, 0);
  return `${text} ${text === '1' ? 'hour' : 'hours'}`;
}

function hotNotice(name: string, temperature: number): Notice {
  return {
    id: 'beyond-belief',
    text:
      `${name} reached ${figureText(temperature, 0)} °C: look at its heaters, panes and walls for ` +
      'a value that cannot be meant.',
  };
}

/** All but rounding. [%] */
const SATURATED = 100 - 1e-6;
/** Told from here on, however long the run. [s] */
const LEAST_SOAKED = 3600;
/** Warmer than any room that people live in. [°C] */
const UNBEARABLE = 45;
