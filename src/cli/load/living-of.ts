import type { LivingReport } from '../../living/living-report.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import type { Io } from '../io.ts';
import type { LoadedPlans } from './load-plans.ts';

/** What lets readers of a page run the home again. @param set  what the call laid on all plans */
export async function livingOf(
  io: Io,
  { scenario, text, files, weather }: LoadedPlans,
  { options: [baseline], room }: ReportStudy,
  set: readonly string[],
): Promise<LivingReport> {
  const { livingReport } = await import('../../living/living-report.ts');
  const source = { scenario, text, files, weather, set, room, baseline: baseline! };
  return livingReport(source, await io.readAsset('report/page-engine.js'));
}
