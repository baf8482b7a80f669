import { basename, extname, join } from 'node:path';
import { Command } from 'commander';
import type { ReportStudy } from '../../studies/report-study.ts';
import { nearestName } from '../../units/nearest-name.ts';
import type { Io } from '../io.ts';
import { keepInputs } from '../keep-inputs.ts';
import { type LoadedPlans, loadPlans } from '../load-plans.ts';
import { date, names, setOption, weatherOption, wholeNumber } from '../options.ts';
import { ownCheck } from '../own-check.ts';
import { startRunCount } from '../run-count.ts';
import { type Simulations, startSimulations } from '../simulations.ts';
import { WrongCall } from '../wrong-call.ts';

interface Options {
  readonly output?: string;
  readonly plans?: string[];
  readonly about?: string;
  readonly doubts: number;
  readonly set: readonly string[];
  readonly weather?: string;
  readonly charts?: string;
  readonly date?: string;
  readonly open?: true;
}

/** `report <scenario>`: the comparison as one HTML file that can be sent on. */
export function reportCommand(io: Io): Command {
  return new Command('report')
    .summary('write the comparison as one HTML page')
    .description(
      'Compare the plans of a scenario and what the program proposes beside them, ask whether a ' +
        'dehumidifier (or another purchase) is worth its money, try doubtful inputs low and high, ' +
        'and write it all as one page that needs no network.',
    )
    .argument('<scenario>', 'scenario file (YAML)')
    .option('-o, --output <file.html>', 'page to write; reports/NAME.html where not given')
    .option('--plans <a,b>', 'plans to compare, the baseline first; all where not given', names)
    .option('--about <name>', 'plan or proposal to ask about; the first that dries the air if any')
    .option('--doubts <number>', 'how many doubtful inputs to try low and high', wholeNumber, 16)
    .option('--charts <folder>', 'also write every picture as an SVG file into this folder')
    .option('--date <YYYY-MM-DD>', 'date on the page; today where not given', date)
    .option('--open', 'show the page when it is written')
    .addOption(setOption())
    .addOption(weatherOption())
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance report scenarios/terrace.yaml\n' +
        '  $ roombalance report scenarios/flat.yaml -o flat.html --open',
    )
    .action((path: string, options: Options) => report(io, path, options));
}

async function report(io: Io, path: string, options: Options): Promise<void> {
  const loaded = await loadPlans(io, path, { ...options, plans: options.plans ?? 'all' });
  const output = await placeOf(io, path, options);
  keepInputs('-o, --output <file.html>', output, loaded.read);
  if (options.charts !== undefined) await io.makeFolder(options.charts);
  await io.requireWritable(output);
  const study = await studyOf(io, loaded, options);
  const { reportPage } = await import('../../report/page/report-page.ts');
  const { page, pictures } = await reportPage({
    study,
    text: loaded.text,
    weather: loaded.weather,
    date: options.date ?? io.today(),
    version: io.version,
    script: await io.readAsset('report/page-script.js'),
    sha256: io.sha256,
  });
  await io.writeWhole(output, page);
  if (options.charts !== undefined) {
    for (const { name, svg } of await pictures()) {
      await io.writeWhole(join(options.charts, `${name}.svg`), svg);
    }
  }
  io.err(`${output} written, from ${study.runs} runs\n`);
  if (options.open) await io.show(output);
}

/** Where the page goes; the usual folder is made where it is missing, another one is not. */
async function placeOf(io: Io, path: string, { output }: Options): Promise<string> {
  if (output !== undefined) return output;
  await io.makeFolder('reports');
  return join('reports', `${basename(path, extname(path))}.html`);
}

function refuseAbout(name: string, known: readonly string[]): never {
  const near = nearestName(name, known);
  const which = known.length === 0 ? 'none does here' : `those that do are ${known.join(', ')}`;
  throw new WrongCall(
    `error: --about ${name}: no plan or proposal of that name brings a new device; ${which}` +
      (near === null ? '' : `\n(Did you mean ${near}?)`),
  );
}

async function studyOf(io: Io, loaded: LoadedPlans, options: Options): Promise<ReportStudy> {
  const { reportStudy } = await import('../../studies/report-study.ts');
  const { scenario, text, files, weatherFile, weatherText } = loaded;
  const setup = { file: scenario.file, text, files, weatherFile, weatherText };
  const count = await startRunCount(io);
  let simulations: Simulations | null = null;
  try {
    simulations = await startSimulations(io, setup, count);
    const { run, watch } = simulations;
    return await reportStudy({
      ...{ scenario, files, set: options.set },
      plans: loaded.plans.map(({ plan }) => plan.plan),
      about: options.about ?? null,
      refuseAbout: (known) => refuseAbout(options.about ?? '', known),
      mostDoubts: options.doubts,
      run: async (variant) => {
        const measures = await run(variant);
        ownCheck([measures]);
        return measures;
      },
      watch,
    });
  } finally {
    count.stop();
    await simulations?.close();
  }
}
