import { BaseSequencer, type TestSpecification } from 'vitest/node';

/**
 * Begins with the files that take longest, so that none of them is left to one processor at the end.
 * All others follow in the order of vitest.
 */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const others = await super.sort(files);
    const rank = ({ moduleId }: TestSpecification): number => {
      const place = LONGEST.findIndex((part) => moduleId.includes(`/test/${part}`));
      return place === -1 ? LONGEST.length : place;
    };
    return others.toSorted((a, b) => rank(a) - rank(b));
  }
}

/**
 * What takes more than a second or two a file, the longest first, by the beginnings of paths: browsers,
 * whole years, fits of whole logs, studies of many runs, processes of the program. Everyday work leaves
 * it out (`npm run test:quick`).
 */
export const LONGEST: readonly string[] = [
  ...['browser/report-page', 'browser/serve', 'fuzz/', 'browser/', 'engine/reference'],
  ...['cli/start-command', 'cli/serve/serve-command', 'cli/report', 'fit/twins', 'fit/logged-flat'],
  ...['cli/sweep', 'cli/compare-workers', 'report/page/report-page', 'years/', 'cli/package'],
  ...['report/page/purchase-section', 'studies/report-study', 'report/charts/every-chart'],
  ...['cli/bin', 'network', 'cli/speak-visibly', 'cli/doubt', 'cli/fit', 'cli/plans'],
  ...['fit/gas-meter', 'scenario/schema-', 'studies/doubts/', 'studies/plan-study'],
  ...['studies/real-study', 'gallery/', 'living/', 'laws/', 'engine/allocation'],
  ...['cli/library', 'cli/start.', 'cli/serve/', 'engine/balances', 'weather/make/make-weather'],
];
