import type { Assumed, Notice } from '../../home/notices.ts';
import { cautionsOfAll } from '../../report/cautions-of-all.ts';
import type { FittedValue } from '../../scenario/read-scenario.ts';
import { visibleProse } from '../../units/visible-text.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { type LoadedPlans, loadPlans } from '../load/load-plans.ts';

/** What may be said beside the scenario's name. */
export interface CheckOptions {
  readonly set: readonly string[];
  readonly weather?: string;
  readonly json?: true;
}

/** Read a scenario, its files and all its plans, and print what was found. */
export async function check(io: Io, path: string, options: CheckOptions): Promise<void> {
  const loaded = await loadPlans(io, path, { ...options, plans: 'all', check: 'all' });
  const findings = await findingsOf(loaded);
  io.out(
    options.json
      ? jsonText(findings)
      : await findingsText(findings, loaded.scenario.yaml.value, io.width),
  );
}

/** What a check found, as `--json` prints it. */
interface Findings {
  readonly scenario: string;
  readonly rooms: readonly string[];
  readonly weather: {
    readonly file: string;
    readonly title: string;
    readonly notes: readonly Notice[];
  };
  readonly plans: readonly {
    readonly plan: string;
    readonly description: string;
    readonly hours: number;
  }[];
  /** Values that were fitted to a log. */
  readonly fitted: readonly FittedValue[];
  /** Values assumed in the first plan. */
  readonly assumed: readonly Assumed[];
  /** Cautions of all plans, each once; one that is not of all begins with the names of its plans. */
  readonly cautions: readonly Notice[];
}

async function findingsOf(loaded: LoadedPlans): Promise<Findings> {
  const { needlessHeating, needlessMonths } = await import(
    '../../scenario/notices/needless-heating.ts'
  );
  const { tariffDates } = await import('../../scenario/notices/tariff-dates.ts');
  const { scenario, weather, weatherFile, plans } = loaded;
  return {
    scenario: scenario.title,
    rooms: plans[0]!.plan.home.rooms.map((room) => room.name),
    weather: { file: weatherFile, title: weather.title, notes: weather.notes },
    plans: plans.map(({ plan, period }) => ({
      plan: plan.plan,
      description: plan.description,
      hours: period.hours,
    })),
    fitted: scenario.fitted,
    assumed: plans[0]!.plan.assumed,
    cautions: cautionsOfAll(
      plans.map(({ plan, weather: outdoors, period }) => ({
        plan: plan.plan,
        cautions: [
          ...tariffDates(plan.prices, outdoors, period),
          ...needlessHeating(plan, needlessMonths(plan, outdoors, period)),
          ...plan.cautions,
          ...(plan.remarks ?? []),
        ],
      })),
    ),
  };
}

async function findingsText(found: Findings, raw: unknown, width: number): Promise<string> {
  const { assumedTable } = await import('../../report/tables/assumed-table.ts');
  const { inputInWords } = await import('../../report/page/input-in-words.ts');
  const { fittedTable } = await import('../../report/tables/fitted-table.ts');
  const { remarkList } = await import('../../report/tables/remark-list.ts');
  const { wrapText } = await import('../../report/tables/wrap-text.ts');
  const named = (pointer: string) => visibleProse(inputInWords(pointer, raw).name);
  const hours = [...new Set(found.plans.map((p) => p.hours))];
  const names = found.plans.map(({ plan }) => visibleProse(plan));
  const longest = Math.min(width / 3, Math.max(...names.map((name) => name.length)));
  const plans = [
    ...found.plans.map((p, k) => {
      const own = hours.length === 1 ? '' : ` (${p.hours} h)`;
      return wrapText(
        `${visibleProse(p.description)}${own}`,
        `${names[k]!.padEnd(longest)}  `,
        width,
      );
    }),
    ...(hours.length === 1 ? [`${hours[0]} hours each`] : []),
  ].join('\n');
  const parts: readonly (readonly [string, string])[] = [
    [
      visibleProse(found.scenario),
      `${wrapText(found.rooms.join(', '), 'Rooms: ', width)}\nNothing is wrong.`,
    ],
    [
      'Weather',
      [visibleProse(found.weather.title), remarkList(found.weather.notes, width)].join('\n').trim(),
    ],
    ['Plans', plans],
    ['Measured: fitted to a log of this home', fittedTable(found.fitted, named, width)],
    ['Assumed, because the scenario does not say', assumedTable(found.assumed, width)],
    ['Cautions', remarkList(found.cautions, width)],
  ];
  const told = parts.filter(([, body]) => body !== '');
  return `${told.map(([title, body]) => `${title}\n${body}`).join('\n\n')}\n`;
}
