import type { Finding, FindSetup } from '../../studies/find/finding.ts';
import type { PlanVariant } from '../../studies/plan-variant.ts';
import { InputProblems } from '../../units/problem.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { type LoadedPlans, loadPlans } from '../load/load-plans.ts';
import { requireName } from '../load/require-name.ts';
import { ownCheck } from '../runs/own-check.ts';
import { startRunCount } from '../runs/run-count.ts';

/** What can be looked for. */
export type Searched = 'setpoint' | 'heat-or-dry' | 'dehumidifier' | 'airing' | 'outdoor-air';

/** What may be said beside that and the scenario's name. */
export interface FindOptions {
  readonly plan?: string;
  readonly room?: string;
  readonly hours: number;
  readonly target: number;
  readonly money: number;
  readonly set: readonly string[];
  readonly weather?: string;
  readonly json?: true;
}

/** Look for the value that just does what is asked, and tell it with the runs that led there. */
export async function find(
  io: Io,
  what: Searched,
  path: string,
  options: FindOptions,
): Promise<void> {
  const { set, weather } = options;
  const loaded = await loadPlans(io, path, {
    ...{ set, weather, check: 'named' },
    plans: options.plan === undefined ? 'first' : [options.plan],
  });
  const { prepared, variant, raw } = await homeOf(loaded, set);
  const rooms = prepared.home.rooms.map(({ name }) => name);
  if (options.room !== undefined) requireName(options.room, rooms, 'room');
  const { prepareVariant } = await import('../../studies/plan-variant.ts');
  const { memoizedRuns } = await import('../../studies/memoized-runs.ts');
  const { startSimulations } = await import('../runs/simulations.ts');
  const { scenario, files } = loaded;
  const workers = await io.startWorkers(AT_ONCE);
  const count = await startRunCount(io);
  try {
    const told = { file: scenario.file, weather: loaded.weather };
    const { run, watch } = await startSimulations(workers, told, count);
    const finding = await findingOf(what, options, {
      ...{ prepared, variant, raw },
      run: memoizedRuns(async (changed) => {
        const measures = await run(prepareVariant(scenario, files, changed));
        ownCheck([measures]);
        return measures;
      }),
      watch: async (changed) => watch(prepareVariant(scenario, files, changed)),
    });
    count.stop();
    await tell(io, finding, prepared.prices.currency, options);
  } finally {
    count.stop();
    await workers?.close();
  }
}

async function homeOf({ scenario, plans }: LoadedPlans, set: readonly string[]) {
  const { variantScenario } = await import('../../studies/plan-variant.ts');
  const prepared = plans[0]!.plan;
  const variant: PlanVariant = { plan: prepared.plan, set };
  return { prepared, variant, raw: variantScenario(scenario, variant) };
}

async function findingOf(
  what: Searched,
  { room, hours, target, money }: FindOptions,
  setup: FindSetup,
): Promise<Finding> {
  if (what === 'setpoint') {
    const { findSetpoint } = await import('../../studies/find/find-setpoint.ts');
    return (
      (await findSetpoint(setup, hours, room)) ?? refuse(setup, 'a home that is heated', 'none')
    );
  }
  if (what === 'airing') {
    const { findAiring } = await import('../../studies/find/find-airing.ts');
    return findAiring(setup, hours, room);
  }
  if (what === 'outdoor-air') {
    const { findOutdoorAir } = await import('../../studies/find/find-outdoor-air.ts');
    const { stalestRoom } = await import('../../studies/find/stale-air.ts');
    const stalest = stalestRoom(await setup.run(setup.variant));
    return findOutdoorAir(setup, room ?? stalest, { hours, money });
  }
  const { dampestRoom } = await import('../../studies/proposals/dampest-room.ts');
  const dampest = dampestRoom(await setup.run(setup.variant));
  const where = room ?? dampest ?? setup.prepared.home.rooms[0]!.name;
  if (what === 'dehumidifier') {
    const { findDehumidifier } = await import('../../studies/find/find-dehumidifier.ts');
    return findDehumidifier(setup, where, target);
  }
  const { findHeatOrDry } = await import('../../studies/find/find-heat-or-dry.ts');
  const wanted = 'a heated home without a dehumidifier yet';
  return (await findHeatOrDry(setup, where)) ?? refuse(setup, wanted, 'another');
}

function refuse({ prepared }: FindSetup, expected: string, got: string): never {
  const place = { file: prepared.scenario, line: 0, column: 0, hint: '' };
  throw new InputProblems([{ ...place, where: `plan ${prepared.plan}`, expected, got }]);
}

async function tell(
  io: Io,
  finding: Finding,
  currency: string,
  { json }: FindOptions,
): Promise<void> {
  if (json) {
    io.out(jsonText(finding));
    return;
  }
  const { findingText } = await import('../../report/tables/finding-text.ts');
  io.out(`${findingText(finding, currency, io.width)}\n`);
}

/** Runs that a search asks for at once: the two ends. */
const AT_ONCE = 2;
