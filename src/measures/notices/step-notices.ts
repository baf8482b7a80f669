import type { Run } from '../../engine/run.ts';
import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { figureText } from '../../units/figure-text.ts';
import type { PlanMeasures } from '../plan-measures.ts';

/** What of a plan a long control step may blur. */
export interface StepSensitive {
  /** Numbers of the devices that readings switch. */
  readonly devices: readonly number[];
  /** How long windows are opened at a time by the clock. [s] */
  readonly byClock: readonly number[];
  /** The same by each habit of the plan, whether it is followed or not. [s] */
  readonly byHabit: readonly number[];
}

/** How often each habit was followed. */
interface AiringsOpened {
  readonly airings: readonly { readonly opened: number }[];
}

/** What of a run its control step is too long for: devices, airing by the clock, habits that were followed. */
export function stepNotices(
  { devices, byClock, byHabit }: StepSensitive,
  home: Pick<Home, 'devices'>,
  { dt, control }: Pick<Run, 'dt'> & { readonly control: AiringsOpened | null },
  detail: PlanMeasures['devices']['detail'],
): Notice[] {
  const minutes = dt / 60;
  const finer = DIVISORS_OF_HOUR.find((divisor) => divisor <= minutes / 5);
  const short = devices.flatMap((device) => {
    const { name } = home.devices[device]!;
    const { hours, starts } = detail[name]!;
    const shortest = starts >= LEAST_STARTS && hours / starts < MOST_STEPS * (dt / 3600);
    return shortest && finer !== undefined ? [shortRuns(name, minutes, finer)] : [];
  });
  const followed = byHabit.filter(
    (_, habit) => control !== null && control.airings[habit]!.opened > 0,
  );
  return [
    ...short,
    ...[...new Set([...byClock, ...followed])]
      .filter((length) => length > 0 && length < dt)
      .sort((a, b) => a - b)
      .map((length) => shortAiring(length / 60, minutes)),
  ];
}

function shortRuns(name: string, minutes: number, finer: number): Notice {
  const text =
    `The device "${name}" runs for a step of ${minutes} minutes at a time: its hours and its energy ` +
    `depend on the step. Try step: ${finer} min.`;
  return { id: 'step-too-long-for-device', text };
}

function shortAiring(length: number, minutes: number): Notice {
  const wide = figureText((100 * length) / minutes, 0);
  const finer = DIVISORS_OF_HOUR.find((divisor) => divisor <= length);
  const text =
    `Airing of ${plainMinutes(length)} in steps of ${minutes}: windows are modelled as open by ${wide} % for the ` +
    `whole step, which overstates the heat lost.${finer === undefined ? '' : ` Try step: ${finer} min.`}`;
  return { id: 'step-too-long-for-airing', text };
}

function plainMinutes(length: number): string {
  const text = figureText(length, Number.isInteger(length) ? 0 : 1);
  return `${text} ${text === '1' ? 'minute' : 'minutes'}`;
}

/** Steps that a run lasts on the mean, and how often a device starts, for its runs to be told. */
export const MOST_STEPS = 1.5;
const LEAST_STARTS = 20;
/** Steps that a scenario may have, longest first. [min] */
const DIVISORS_OF_HOUR = [60, 30, 20, 15, 12, 10, 6, 5, 4, 3, 2, 1];
