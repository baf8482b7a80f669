import { type Axis, countOf, readAxes } from '../../studies/sweep/axis.ts';
import { checkAxes } from '../../studies/sweep/check-axes.ts';
import { checkHomes } from '../../studies/sweep/check-homes.ts';
import { runsOf, type StockHome, type SweepLayout } from '../../studies/sweep/sweep-layout.ts';
import { gridPoints, type SweepPoints, sampledPoints } from '../../studies/sweep/sweep-points.ts';
import type { Io } from '../io.ts';
import type { LoadedPlans } from '../load/load-plans.ts';
import { MOST_DATA } from '../load/load-scenario.ts';
import { readHomes } from '../load/read-homes.ts';
import { UsageError } from '../usage-error.ts';
import type { SweepPart } from './sweep-book.ts';

/** What the words of the call say of the runs. */
export interface SweepChoices {
  readonly vary: readonly string[];
  readonly homes?: string;
  readonly plans?: string[];
  readonly set: readonly string[];
  readonly sample?: number;
  readonly seed: number;
  readonly shard?: readonly [part: number, parts: number];
}

/** A sweep that was checked: what it runs, and which part of it this call does. */
export interface LaidOutSweep {
  readonly layout: SweepLayout;
  readonly part: SweepPart;
}

/**
 * Work out what a sweep runs and refuse what cannot be meant, before anything is simulated.
 *
 * @throws InputProblems, UsageError
 */
export async function layOutSweep(
  io: Io,
  loaded: LoadedPlans,
  options: SweepChoices,
): Promise<LaidOutSweep> {
  const { scenario, files } = loaded;
  const { set } = options;
  const plans = loaded.plans.map(({ plan }) => plan.plan);
  const axes = readAxes(options.vary);
  const homesText =
    options.homes === undefined ? null : await io.readText(options.homes, MOST_DATA);
  const homes = homesText === null ? null : readHomes(homesText, options.homes!);
  requireFew(countAll(axes, homes, plans, options.sample));
  const layout = { homes, axes, points: pointsOf(axes, options), plans, set };
  if (homes !== null) {
    checkHomes({ scenario, files, plan: plans[0]!, set }, homes, options.homes!);
  }
  const own = [...set, ...(homes?.[0]?.set ?? [])];
  checkAxes(
    scenario,
    files,
    plans.map((plan) => ({ plan, set: own })),
    axes,
  );
  const shard = options.shard ?? [1, 1];
  const of = runsOf(layout);
  if (shard[1] > of) {
    throw new UsageError(`error: option '--shard <i/n>': more parts than the ${of} runs there are`);
  }
  const sweep = await fingerprint(io, loaded, options, homesText);
  return { layout, part: { sweep, of, shard } };
}

function pointsOf(axes: readonly Axis[], { sample, seed }: SweepChoices): SweepPoints {
  if (sample !== undefined) return sampledPoints(axes, sample, seed);
  return gridPoints(axes);
}

function countAll(
  axes: readonly Axis[],
  homes: readonly StockHome[] | null,
  plans: readonly string[],
  sample: number | undefined,
): number {
  const range = axes.find(({ values }) => values.kind === 'range');
  if (sample === undefined && range !== undefined) {
    throw new UsageError(
      `error: --vary ${range.pointer}: a range without steps needs --sample NUMBER, or a step, such as "17 to 21 by 1"`,
    );
  }
  const points = sample ?? axes.reduce((product, axis) => product * countOf(axis), 1);
  return points * (homes?.length ?? 1) * plans.length;
}

function requireFew(count: number): void {
  if (count <= MOST_RUNS) return;
  throw new UsageError(
    `error: that would be ${inThousands(count)} runs, and at most ${inThousands(MOST_RUNS)} are made at once; ` +
      'take fewer values or plans, or --sample NUMBER',
  );
}

const inThousands = (count: number): string => String(count).replaceAll(/\B(?=(\d{3})+$)/g, ',');

/** Changes with whatever could change a figure: texts, choices, program. */
async function fingerprint(
  io: Io,
  { text, files }: LoadedPlans,
  options: SweepChoices,
  homes: string | null,
): Promise<string> {
  const sha256 = await io.loadSha256();
  const { vary, plans = null, set, sample = null, seed } = options;
  const choices = [io.version, vary, plans, set, sample, sample === null ? null : seed];
  const hash = sha256(JSON.stringify([text, [...files], homes, choices]));
  return Buffer.from(hash, 'base64').toString('hex').slice(0, 16);
}

/** Two weeks of one machine, if a run takes a second. */
const MOST_RUNS = 1_000_000;
