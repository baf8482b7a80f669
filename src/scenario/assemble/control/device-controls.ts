import { type Condition, type DeviceControl, OPEN_GATE } from '../../../control/automation.ts';
import type { Activity, WeekSchedule } from '../../../control/household.ts';
import { FILTER_RATED } from '../../../species/species-lists.ts';
import { COMMON, type Preset } from '../../../units/preset.ts';
import { hours } from '../../model/clock-fields.ts';
import type { DeviceData } from '../../model/device.ts';
import { purifierReads } from '../../model/purifier-reads.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import {
  DEHUMIDIFIER,
  EXTRACT_FAN,
  HEATER,
  HUMIDIFIER,
  PURIFIER,
  purifierLevels,
  STOVE,
} from '../../presets/devices.ts';
import type { Defaults } from '../defaults.ts';
import { filling, type NumberOf } from '../devices/device-context.ts';
import { fanRuns } from '../devices/devices.ts';
import { during, level } from '../level-schedule.ts';
import { activitiesNamed } from '../people/named-activities.ts';
import type { ConditionMaker } from './conditions.ts';

export interface ControlContext {
  readonly activities: readonly Activity[];
  readonly kinds: readonly string[];
  readonly condition: ConditionMaker;
  /** Whether the home stands south of the equator. */
  readonly south: boolean;
  readonly defaults: Defaults;
}

/** When each device runs, in the order of the file. */
export function deviceControls(data: ScenarioData, context: ControlContext): DeviceControl[] {
  return Object.entries(data.devices ?? {}).map(([name, given], device) => {
    const number = filling(name, context.defaults);
    const timers = timersOf(given, number);
    return {
      device,
      by: whatRuns(name, given, number, context),
      gate: given.gate ?? OPEN_GATE,
      permitted: permitted('hours' in given ? given.hours : undefined),
      leastRun: 60 * timers.leastRun,
      leastRest: 60 * timers.leastRest,
      mostRun: 60 * timers.mostRun,
      drierBy: given.kind === 'extract fan' ? (given['drier by'] ?? null) : null,
      emptiedByPeople: given.kind === 'dehumidifier' && given.tank !== 'drained',
    };
  });
}

/** A least run and rest are known of dehumidifiers; others switch as they please. [min] */
function timersOf(given: DeviceData, number: NumberOf) {
  if (given.kind === 'stove')
    return { leastRun: 0, leastRest: 0, mostRun: Number.POSITIVE_INFINITY };
  const mostRun = given['longest run'] ?? Number.POSITIVE_INFINITY;
  const [run, rest] = [given['least run'], given['least rest']];
  if (given.kind !== 'dehumidifier') return { leastRun: run ?? 0, leastRest: rest ?? 0, mostRun };
  return {
    leastRun: number('least run', run, DEHUMIDIFIER.leastRun),
    leastRest: number('least rest', rest, DEHUMIDIFIER.leastRest[given.type ?? 'compressor']),
    mostRun,
  };
}

function whatRuns(
  name: string,
  given: DeviceData,
  number: NumberOf,
  context: ControlContext,
): DeviceControl['by'] {
  const { condition } = context;
  const between = (
    quantity: Condition['quantity'],
    is: Condition['is'],
    room: string,
    [target, deadband]: readonly [number, number],
  ): DeviceControl['by'] => {
    const away = is === 'above' ? deadband / 2 : -deadband / 2;
    const levels = { value: target + away, clear: target - away };
    return { kind: 'reading', on: condition({ quantity, room, is, ...levels }) };
  };
  const levels = (
    own: { target?: number | undefined; deadband?: number | undefined },
    preset: { readonly target: Preset; readonly deadband: Preset },
  ) =>
    [
      number('target', own.target, preset.target),
      number('deadband', own.deadband, preset.deadband),
    ] as const;
  if (given.kind === 'stove') return { kind: 'clock', schedule: fires(name, given.burns, context) };
  const runs = given.kind === 'extract fan' ? fanRuns(given) : given.runs;
  if (runs === 'by rules') return { kind: 'rule' };
  if (runs === 'always') return { kind: 'always' };
  switch (given.kind) {
    case 'dehumidifier':
      return between('relative humidity', 'above', given.room, levels(given, DEHUMIDIFIER));
    case 'humidifier':
      return between('relative humidity', 'below', given.room, levels(given, HUMIDIFIER));
    case 'heater':
      return between('temperature', 'below', given.room, levels(given, HEATER));
    case 'extract fan':
      if (runs === 'by humidity') {
        return between('relative humidity', 'above', given.room, levels(given, EXTRACT_FAN));
      }
      return {
        kind: 'activity',
        activities: activitiesNamed(given.with ?? [], context.activities, context.kinds),
        runOn: 60 * number('run on', given['run on'], EXTRACT_FAN.runOn),
      };
    case 'purifier': {
      const read = purifierReads(runs);
      if (read === null) return { kind: 'always' };
      const usual = read === FILTER_RATED ? PURIFIER : purifierLevels(read.band.high);
      return between(read.name, 'above', given.room, levels(given, usual));
    }
    case 'balanced ventilation':
      return { kind: 'always' };
  }
}

type Spells = NonNullable<Extract<DeviceData, { kind: 'stove' }>['burns']>;

/** 1 while there is a fire. */
function fires(
  name: string,
  burns: Spells | undefined,
  { south, defaults }: Pick<ControlContext, 'south' | 'defaults'>,
): WeekSchedule {
  const usual = STOVE.burns(south);
  const words = `{ months: ${usual.months}, from: "${usual.from}", to: "${usual.to}" }`;
  if (burns === undefined) defaults.word(['devices', name, 'burns'], undefined, words, COMMON);
  return during(burns ?? hours('').parse(usual));
}

const permitted = (spells: Spells | undefined): WeekSchedule =>
  spells === undefined ? level(1) : during(spells);
