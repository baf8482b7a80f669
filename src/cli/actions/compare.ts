import { cautionsOfAll } from '../../report/cautions-of-all.ts';
import type { PlanRequest } from '../../studies/run-plan.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { loadPlans } from '../load-plans.ts';
import { ownCheck } from '../own-check.ts';
import { startProgress } from '../progress.ts';
import { withinFormulas } from '../within-formulas.ts';

/** What may be said beside the scenario's name. */
export interface CompareOptions {
  readonly plans?: string[];
  readonly set: readonly string[];
  readonly weather?: string;
  readonly json?: true;
  readonly csv?: true;
}

/** Simulate plans and print them side by side. */
export async function compare(io: Io, path: string, options: CompareOptions): Promise<void> {
  const { plans } = await loadPlans(io, path, {
    ...options,
    plans: options.plans ?? 'all',
    check: 'named',
  });
  const comparison = await compareAll(io, path, plans);
  if (options.json) {
    io.out(jsonText(comparison));
  } else if (options.csv) {
    const { compareCsv } = await import('../../report/compare-csv.ts');
    io.out(compareCsv(comparison));
  } else {
    const { compareTables, compareTitle } = await import('../../report/tables/compare-tables.ts');
    const { answerInWords } = await import('../../studies/compare/answer-in-words.ts');
    const { remarkList } = await import('../../report/tables/remark-list.ts');
    const { answerText } = await import('../../report/tables/answer-text.ts');
    const cautions = remarkList(cautionsOfAll(comparison.plans), io.width);
    const parts = [
      compareTitle(comparison),
      answerText(answerInWords(comparison), io.width),
      compareTables(comparison, io.width),
      ...(cautions === '' ? [] : [`Cautions\n${cautions}`]),
    ];
    io.out(`${parts.join('\n\n')}\n`);
  }
  ownCheck(comparison.plans);
}

async function compareAll(io: Io, path: string, plans: readonly PlanRequest[]) {
  const { comparePlans } = await import('../../studies/compare/compare-plans.ts');
  const { runPlan } = await import('../../studies/run-plan.ts');
  const byName = new Map(plans.map((request) => [request.plan.plan, request]));
  const progress = await startProgress(
    io,
    plans.map((p) => p.period.hours),
    'plans',
  );
  try {
    return await comparePlans([...byName.keys()], async (name) => {
      const request = byName.get(name)!;
      const { measures } = withinFormulas(path, () => runPlan(request, [progress.observe]));
      progress.next();
      return {
        measures,
        purchases: request.plan.purchases,
        discountRate: request.plan.discountRate,
      };
    });
  } finally {
    progress.stop();
  }
}
