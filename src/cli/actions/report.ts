import { basename, extname, join } from 'node:path';
import type { PlanVariant } from '../../studies/plan-variant.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { nearestName } from '../../units/nearest-name.ts';
import { visibleValue } from '../../units/visible-text.ts';
import { firstYear, otherYears } from '../doubt.ts';
import type { Io } from '../io.ts';
import { keepApart, type Output } from '../keep-apart.ts';
import { livingOf } from '../load/living-of.ts';
import { type LoadedPlans, loadPlans } from '../load/load-plans.ts';
import { countedRuns } from '../runs/counted-runs.ts';
import { startRunCount } from '../runs/run-count.ts';
import { UsageError } from '../usage-error.ts';

/** What may be said beside the scenario's name. */
export interface ReportOptions {
  readonly output?: string;
  readonly plans?: string[];
  readonly about?: string;
  readonly doubt: number;
  readonly seed: number;
  readonly set: readonly string[];
  /** Files; the first is the weather of the figures as they are. */
  readonly weather?: readonly string[];
  readonly charts?: string;
  readonly date?: string;
  readonly open?: true;
}

/** Compare, ask, try doubts, and write the page. */
export async function report(io: Io, path: string, options: ReportOptions): Promise<void> {
  const loaded = await loadPlans(io, path, {
    ...{ set: options.set, weather: firstYear(options) },
    plans: options.plans ?? 'all',
    check: 'all',
  });
  const output = await placeOf(io, path, options);
  const pageTo: Output = { option: '-o, --output <file.html>', path: output };
  await keepApart(io, [pageTo], loaded.read);
  await io.requireWritable(output);
  if (options.charts !== undefined) {
    await io.makeFolder(options.charts);
    await io.requireWritable(join(options.charts, 'picture.svg'));
  }
  const study = await studyOf(io, loaded, options);
  const { reportPage } = await import('../../report/page/report-page.ts');
  const { page, pictures } = await reportPage({
    study,
    text: loaded.text,
    weather: loaded.weather,
    date: options.date ?? io.today(),
    version: io.version,
    script: await io.readAsset('report/page-script.js'),
    living: await livingOf(io, loaded, study, options.set),
    sha256: await io.loadSha256(),
  });
  const drawn = (options.charts === undefined ? [] : await pictures()).map(({ name, svg }) => ({
    ...{ option: '--charts <folder>', path: join(options.charts ?? '', `${name}.svg`), svg },
  }));
  await keepApart(io, [pageTo, ...drawn], loaded.read);
  await io.writeWhole(output, page);
  for (const { path, svg } of drawn) await io.writeWhole(path, svg);
  io.err(`${visibleValue(output)} written, from ${study.runs} runs\n`);
  if (options.open) await io.show(output);
}

/** Path of the page; makes the default folder where it is missing, but no other. */
async function placeOf(io: Io, path: string, { output }: ReportOptions): Promise<string> {
  if (output !== undefined) return output;
  await io.makeFolder('reports');
  return join('reports', `${basename(path, extname(path))}.html`);
}

function refuseAbout(name: string, known: readonly string[]): never {
  const near = nearestName(name, known);
  const which = known.length === 0 ? 'there is none here' : `they are ${known.join(', ')}`;
  throw new UsageError(
    `error: --about ${visibleValue(name)}: no plan or proposal beside the baseline has that name; ${which}` +
      (near === null ? '' : `\n(Did you mean ${near}?)`),
  );
}

async function studyOf(io: Io, loaded: LoadedPlans, options: ReportOptions): Promise<ReportStudy> {
  const { reportStudy } = await import('../../studies/report-study.ts');
  const { startSimulations } = await import('../runs/simulations.ts');
  const { prepareVariant } = await import('../../studies/plan-variant.ts');
  const { inputInWords } = await import('../../report/page/input-in-words.ts');
  const { scenario, files, weather } = loaded;
  const others = await otherYears(io, options.weather, loaded.plans[0]!);
  const prepared = (variant: PlanVariant) => prepareVariant(scenario, files, variant);
  const expected = loaded.plans.length + 2 * options.doubt + SEARCHES;
  const count = await startRunCount(io, expected);
  const workers = await io.startWorkers(Number.POSITIVE_INFINITY);
  try {
    const setup = { file: scenario.file, weather, others };
    const { run, watch } = await startSimulations(workers, setup, { done: count.done });
    const runIn = countedRuns(count, workers?.threads ?? 1, (variant, year) =>
      run(prepared(variant), year),
    );
    return await reportStudy({
      ...{ scenario, files, set: options.set },
      plans: loaded.plans.map(({ plan }) => plan.plan),
      about: options.about ?? null,
      refuseAbout: (known) => refuseAbout(options.about ?? '', known),
      inputWords: inputInWords,
      draw: { samples: options.doubt, seed: options.seed, years: 1 + others.length },
      run: (variant) => runIn(variant, 0),
      runIn,
      watch: async (variant) => {
        count.asked();
        return watch(prepared(variant));
      },
    });
  } finally {
    count.stop();
    await workers?.close();
  }
}

/**
 * Runs of a report besides plans and draws: proposals, inputs low and high, thermostats, prices and
 * habits at which the answer turns; 83 in the first demonstration home.
 */
const SEARCHES = 80;
