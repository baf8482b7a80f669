import type { LivingReport } from '../../living/living-report.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import type { Html } from './html.ts';

/** What a report is made from. Nothing else goes into it: same input, same bytes. */
export interface ReportInput {
  readonly study: ReportStudy;
  /** The scenario as it was written. */
  readonly text: string;
  readonly weather: ReportWeather;
  /** Date printed on the page, "YYYY-MM-DD". */
  readonly date: string;
  /** Version of the program. */
  readonly version: string;
  /** The page's script, as the build made it. */
  readonly script: string;
  /** What lets readers run the home again; null for a page whose figures stand still. */
  readonly living: LivingReport | null;
  /** SHA-256 of a text in UTF-8, base64. */
  readonly sha256: (text: string) => string;
  /** Where the page is served and follows its files; not given for a file that stands alone. */
  readonly served?: ServedPart;
}

/** What a served page has that a file has not. */
interface ServedPart {
  /** The script that hears of changes, as the build made it, and how what it shows looks. */
  readonly script: string;
  readonly styles: string;
  /** How the page stands to its files. */
  readonly standing: Html;
  /** What it is made of, and what makes a fuller one; the last words of the page. */
  readonly fuller: string;
  /** Whether the pictures are drawn, which takes as long as some runs. */
  readonly drawn: boolean;
}

interface ReportWeather {
  readonly title: string;
  readonly periodic: boolean;
  readonly notes: PlanMeasures['notices'];
}
