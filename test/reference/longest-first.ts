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

/** Beginnings of paths. */
const LONGEST = [
  ...['browser/report-page', 'browser/serve', 'fuzz/fuzz', 'browser/report', 'engine/reference'],
  ...['cli/start-command', 'cli/serve/serve-command', 'cli/report-workers', 'fit/twins'],
  ...['fit/logged-flat', 'cli/sweep-workers', 'cli/compare-workers', 'report/page', 'years'],
  ...['cli/package', 'studies/report-study', 'report/charts/every-chart', 'cli/bin', 'network'],
];
