import type { TraceView } from '../../engine/record/trace.ts';
import { saturationTable } from '../../physics/moist-air/saturation-table.ts';
import { vapourDensity } from '../../physics/moist-air/vapour-density.ts';
import type { Hour } from '../hourly-means.ts';

/** Whether open windows let drier air in, and how often relative humidities would mislead. */
export interface AiringHours {
  /** Room-hours with a window open while the air outdoors held less water, about as much, and more. */
  readonly drier: number;
  readonly noDifference: number;
  readonly wetter: number;
  /** Room-hours of all, in which "open when it is less humid outdoors in %" says the wrong thing. */
  readonly ruleWrong: number;
}

/**
 * Air is drier or wetter outdoors where the absolute humidities are more than 0.5 g/m3 apart. The
 * rule is judged on the means of each hour, windows open or not: it is wrong where it would let
 * wetter air in, and where it would keep drier air out.
 */
export function createAiringHours(rooms: number): {
  observe(trace: TraceView): void;
  observeHour(hour: Hour): void;
  result(): AiringHours;
} {
  const saturation = saturationTable();
  let drier = 0; // s
  let same = 0; // s
  let wetter = 0; // s
  let ruleWrong = 0; // h

  function observe({ steps, dt, room, home }: TraceView): void {
    const { windowOpen, vapourPressure, airTemperature } = room;
    for (let at = 0; at < steps * rooms; at++) {
      const open = windowOpen[at]!;
      if (open === 0) continue;
      const s = (at / rooms) | 0;
      const gap =
        vapourDensity(vapourPressure[at]!, airTemperature[at]!) -
        vapourDensity(home.outdoorVapourPressure[s]!, home.outdoorTemperature[s]!);
      if (gap > TELLING) drier += open * dt;
      else if (gap < -TELLING) wetter += open * dt;
      else same += open * dt;
    }
  }

  function observeHour(hour: Hour): void {
    const { outdoorTemperature, outdoorVapourPressure, airTemperature, vapourPressure } = hour;
    const outdoors = vapourDensity(outdoorVapourPressure, outdoorTemperature);
    const humidityOutdoors = outdoorVapourPressure / saturation(outdoorTemperature);
    for (let i = 0; i < rooms; i++) {
      const t = airTemperature[i]!;
      const vapour = vapourPressure[i]!;
      const gap = vapourDensity(vapour, t) - outdoors;
      const saysOpen = humidityOutdoors < vapour / saturation(t);
      if (saysOpen ? gap < -TELLING : gap > TELLING) ruleWrong++;
    }
  }

  const result = (): AiringHours => ({
    drier: drier / 3600,
    noDifference: same / 3600,
    wetter: wetter / 3600,
    ruleWrong,
  });

  return { observe, observeHour, result };
}

const TELLING = 0.5; // g/m3
