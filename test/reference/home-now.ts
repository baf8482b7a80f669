import type { Household, Spell, WeekSchedule } from '../../src/control/household.ts';
import type { Element, Home } from '../../src/home/home.ts';
import { relativeAirMass } from '../../src/physics/sun/air-mass.ts';
import { dayOfYear } from '../../src/physics/sun/day-of-year.ts';
import { extraterrestrialNormal } from '../../src/physics/sun/extraterrestrial.ts';
import { incidenceCosine } from '../../src/physics/sun/incidence-cosine.ts';
import {
  DIFFUSE_INCIDENCE_MODIFIER,
  incidenceModifier,
} from '../../src/physics/sun/incidence-modifier.ts';
import { perezSky } from '../../src/physics/sun/perez-sky.ts';
import { sunPosition } from '../../src/physics/sun/sun-position.ts';
import { diffuseOnPlane } from '../../src/physics/sun/tilted-irradiance.ts';
import type { Weather } from '../../src/weather/weather.ts';

/** All that acts on a home and holds over a stretch without a break: people, settings, sun. */
export interface Now {
  /** Per room. [W], [kg/s], [species unit m3/s] */
  readonly peopleHeat: readonly number[];
  readonly applianceHeat: readonly number[];
  readonly vapour: readonly number[];
  readonly drying: readonly number[];
  readonly species: readonly (readonly number[])[];
  /** [°C] */
  readonly settings: readonly number[];
  readonly coolSettings: readonly number[];
  readonly openings: readonly number[];
  readonly doorways: readonly number[];
  /** Per element: sun on its outer face [W/m2]; per room: sun through its panes [W]. */
  readonly onElements: readonly number[];
  readonly throughPanes: readonly number[];
}

/**
 * What acts at an instant, read straight off household and weather. The wall clock is taken to be
 * UTC, and spells to begin and end on the breaks at which the stretches are cut.
 */
export function homeNow(home: Home, household: Household, weather: Weather, utc: number): Now {
  const zero = () => home.rooms.map(() => 0);
  const now = {
    peopleHeat: zero(),
    applianceHeat: zero(),
    vapour: zero(),
    drying: zero(),
    species: home.species.map(zero),
  };
  for (const { schedule: stays, awake, asleep } of household.people) {
    for (const stay of stays.filter((spell) => isOn(spell, utc))) {
      const body = stay.asleep ? asleep : awake;
      now.peopleHeat[stay.room]! += body.sensible;
      now.vapour[stay.room]! += body.vapour;
      body.species.forEach((rate, q) => {
        now.species[q]![stay.room]! += rate;
      });
    }
  }
  for (const activity of household.activities) {
    if (!activity.when.some((spell) => isOn(spell, utc))) continue;
    now.applianceHeat[activity.room]! += activity.heat;
    now.vapour[activity.room]! += activity.vapour;
    now.drying[activity.room]! += activity.drying;
    activity.species.forEach((rate, q) => {
      now.species[q]![activity.room]! += rate;
    });
  }
  const at = (schedule: WeekSchedule): number =>
    schedule.spells.findLast((spell) => isOn(spell, utc))?.value ?? schedule.base;
  return {
    ...now,
    settings: household.setpoints.map(at),
    coolSettings: home.rooms.map((_, i) => {
      const schedule = household.cooling?.[i];
      return schedule === undefined ? Infinity : at(schedule);
    }),
    openings: household.openings.map(at),
    doorways: household.doorways.map(at),
    ...sunNow(home, weather, utc),
  };
}

function isOn({ days, from, to }: Spell, utc: number): boolean {
  const today = Math.floor(utc / 86_400);
  const minute = (utc - today * 86_400) / 60;
  return [0, 1].some((ago) => {
    const weekday = (today - ago + 3) % 7; // 1970-01-01 was a Thursday
    const m = minute + 1440 * ago;
    return (days & (1 << weekday)) !== 0 && m >= from && m < to;
  });
}

function sunNow(home: Home, weather: Weather, utc: number) {
  const { latitude, longitude, albedo } = home.site;
  const k = Math.floor((utc - weather.start) / weather.step);
  const middle = weather.start + (k + 0.5) * weather.step;
  const { elevation, azimuth } = sunPosition(middle, latitude, longitude);
  const direct = weather.directNormal[k]!;
  const diffuse = weather.diffuseHorizontal[k]!;
  const global = diffuse + direct * Math.max(0, Math.sin((elevation * Math.PI) / 180));
  const parts = perezSky(
    diffuse,
    direct,
    elevation,
    relativeAirMass(elevation),
    extraterrestrialNormal(dayOfYear(middle)),
  );
  const fromSun = direct + parts.circumsolar;
  const plane = (facing: number, tilt: number) => {
    const cosine = incidenceCosine(elevation, azimuth, tilt, facing);
    const beam = elevation > 0 && cosine > 0 ? fromSun * cosine : 0;
    const all = beam + diffuseOnPlane(parts.dome, global, tilt, albedo, parts.horizon);
    const glazed = beam * incidenceModifier(cosine) + (all - beam) * DIFFUSE_INCIDENCE_MODIFIER;
    return { all, glazed };
  };
  const onElement = ({ far }: Element): number =>
    far.to === 'outdoors' ? plane(far.azimuth, far.tilt).all : 0;
  const throughPanes = home.rooms.map((_, room) =>
    home.panes
      .filter((p) => p.room === room)
      .reduce(
        (sum, p) =>
          sum +
          p.area * (1 - p.frameShare) * p.gValue * p.unshaded * plane(p.azimuth, p.tilt).glazed,
        0,
      ),
  );
  return { onElements: home.elements.map(onElement), throughPanes };
}
