import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { raiseSetpoints, wholeHomeSetpoint } from '../../scenario/edits/raise-setpoints.ts';
import type { Option } from '../options.ts';
import { type RunVariant, withEdit } from '../plan-variant.ts';
import { ifPossible } from '../run-failures.ts';
import { type Bargain, bargainOf, frontier, type Knee, knee } from './frontier.ts';

/** Money against hours outside the bands: all that could be done, and thermostats otherwise. */
export interface SetpointBargain {
  /** Plans whose thermostats were set otherwise, each from the coolest setting to the warmest. */
  readonly curves: readonly { readonly plan: string; readonly points: readonly NamedBargain[] }[];
  /** Those of all options and settings that no other beats, the cheapest first. */
  readonly front: readonly NamedBargain[];
  readonly bend: Knee<NamedBargain> | null;
  /** How many were set against each other. */
  readonly tried: number;
}

export interface NamedBargain extends Bargain {
  readonly plan: string;
  /** How much warmer than in the plan as it stands. [K] */
  readonly kelvin: number;
  /** What its thermostat is set to; null where it is no single number. [°C] */
  readonly setpoint: number | null;
  /** Where settings below 18 °C leave somebody in the cold for hours; null for nowhere. */
  readonly cold: ColdRoom | null;
}

/** The room that is too cold for people longest. */
interface ColdRoom {
  readonly room: string;
  /** With somebody in, more than half a kelvin below the room's band, in the winter half of the year. [h/day] */
  readonly hours: number;
  /** What stands beside the figures of every plan with such settings. */
  readonly caution: string;
}

/**
 * Runs some options again with all thermostats kelvins lower and higher, and sets that against every
 * option as it stands. Settings that make no home are left out.
 *
 * @param options  everything that could be done
 * @param varied   those of them to run again
 * @returns null where nothing is heated
 */
export async function setpointBargain(
  options: readonly Option[],
  varied: readonly Option[],
  run: RunVariant,
): Promise<SetpointBargain | null> {
  if (varied.some(({ raw }) => raiseSetpoints(raw, 0) === null)) return null;
  const asked = varied.flatMap((option) => STEPS.map((kelvin) => atSetting(option, kelvin, run)));
  const found = (await Promise.all(asked)).flat();
  const all = [...options.map((option) => bargain(option, 0)), ...found].map((one, k) => ({
    ...{ ...one, run: k },
  }));
  const front = frontier(all);
  return {
    curves: varied.map(({ name }) => ({
      plan: name,
      points: all.filter(({ plan }) => plan === name).sort((a, b) => a.kelvin - b.kelvin),
    })),
    ...{ front, bend: knee(front), tried: all.length },
  };
}

async function atSetting(
  option: Option,
  kelvin: number,
  run: RunVariant,
): Promise<Omit<NamedBargain, 'run'>[]> {
  const edit = raiseSetpoints(option.raw, kelvin) ?? {};
  const measures = await ifPossible(() => run(withEdit(option.variant, edit)));
  return measures === null ? [] : [bargain(option, kelvin, measures)];
}

function bargain(
  { name, raw, measures: own }: Option,
  kelvin: number,
  measures = own,
): Omit<NamedBargain, 'run'> {
  const today = wholeHomeSetpoint(raw);
  return {
    ...{ ...bargainOf(measures), plan: name, kelvin },
    setpoint: today === null ? null : today + kelvin,
    cold: coldRoom(measures),
  };
}

function coldRoom({ cautions, rooms }: PlanMeasures): ColdRoom | null {
  const caution = cautions.find(({ id }) => id === 'low-setpoint')?.text;
  const [coldest] = Object.entries(rooms)
    .map(([room, figures]) => ({ room, hours: figures.winter_cold_hours_per_day ?? 0 }))
    .sort((a, b) => b.hours - a.hours);
  if (caution === undefined || coldest === undefined || coldest.hours < FEWEST) return null;
  return { ...coldest, caution };
}

/** Of a day in the cold that are worth a word. [h] */
const FEWEST = 1;
/** [K] */
const STEPS = [-3, -2, -1, 1, 2];
