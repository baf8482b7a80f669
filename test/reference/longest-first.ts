import { BaseSequencer, type TestSpecification } from 'vitest/node';

/**
 * Begins with the files that take longest, so that none of them is left to one processor at the end.
 * All others follow in the order of vitest, last those with a process of their own: any process whose
 * place one of them takes would have to load all modules again.
 */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const others = await super.sort(files);
    const rank = ({ moduleId, project }: TestSpecification): number => {
      if (project.config.isolate) return LONGEST.length + 1;
      const place = LONGEST.findIndex((part) => moduleId.includes(`/test/${part}`));
      return place === -1 ? LONGEST.length : place;
    };
    return others.toSorted((a, b) => rank(a) - rank(b));
  }
}

/**
 * What takes more than a second or two a file, the longest first, by the beginnings of paths: whole
 * years, fits of whole logs, studies of many runs, browsers, processes of the program. Everyday work
 * leaves all of it out (`npm run test:quick`).
 */
export const LONGEST: readonly string[] = [
  ...['fuzz/fuzz', 'fit/logged-flat', 'fit/twins', 'report/page/report-page'],
  ...['studies/report-study', 'years/presence-savings', 'engine/reference/reference'],
  ...['browser/serve', 'browser/report-page', 'browser/report-living', 'browser/report-small'],
  ...['cli/start/start-command', 'browser/', 'cli/actions/report-workers'],
  ...['cli/sweep/sweep-workers', 'cli/package', 'cli/serve/serve-command'],
  ...['cli/actions/compare-workers', 'cli/bin', 'network', 'cli/actions/report'],
  ...['gallery/', 'report/page/purchase-section', 'fuzz/', 'years/', 'report/charts/every-chart'],
  ...['scenario/model/schema-', 'cli/actions/plans', 'fit/gas-meter', 'fit/electric-meters'],
  ...['cli/actions/fit', 'cli/sweep/', 'engine/allocation', 'cli/library', 'cli/doubt', 'laws/'],
  ...['cli/start.', 'engine/balances', 'studies/real-study', 'studies/plan-study', 'living/'],
  ...['cli/serve/', 'weather/make/make-weather', 'studies/doubts/', 'cli/speak-visibly'],
];
