import { writtenReport } from './written-report.ts';

/** Path of the report of the flat over eight weeks of winter, in steps of an hour. */
export const writtenFlat = (): Promise<string> =>
  writtenReport(
    'scenarios/flat.yaml',
    '--doubt',
    '0',
    ...FLAT_SET.flatMap((one) => ['--set', one]),
  );

/** What is set for it. */
export const FLAT_SET = ['/step=60', '/period={ from: "12-01", to: "01-25" }'];
