import type { ComparisonAnswers } from '../../studies/answers/comparison-answers.ts';
import type { Comparison } from '../../studies/compare/compare.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import { andList } from '../../units/word-list.ts';
import { cautionsOfAll, comparedCautions } from '../cautions-of-all.ts';
import { cautionLine } from './caution-line.ts';
import { compareSummary } from './compare-summary.ts';
import { compareTables, compareTitle, roomTables } from './compare-tables.ts';
import { remarkList } from './remark-list.ts';
import { rulesByPlan } from './rules-by-plan.ts';
import { wrapText } from './wrap-text.ts';

/** What of a comparison is printed. */
type ComparePart = 'answer' | 'rooms' | 'rules' | 'all';

/** How a comparison is printed. */
export interface ComparePrint {
  readonly part: ComparePart;
  /** Of a line. [characters] */
  readonly width: number;
  /** The household's wall clock. */
  readonly clock: LocalClock;
  /** Plans that a report would try besides. */
  readonly proposals: number;
  /** Options that a report must be given for these, because they are made from what those say. */
  readonly alike: readonly string[];
}

/** A comparison as plain text: its answer on a screen, or one of the parts that stand behind it. */
export function compareText(
  comparison: Comparison,
  answers: ComparisonAnswers,
  { part, width, clock, proposals, alike }: ComparePrint,
): string {
  const { plans } = comparison;
  return [compareTitle(comparison, clock), ...bodyOf()].join('\n\n');

  function bodyOf(): string[] {
    if (part === 'rooms') return [roomTables(comparison, width)];
    if (part === 'rules') return [rulesByPlan(plans, width)];
    if (part === 'all') {
      const cautions = remarkList(cautionsOfAll(plans.map(comparedCautions)), width);
      return [
        compareSummary(answers, width, Number.POSITIVE_INFINITY),
        compareTables(comparison, width),
        ...(plans.some(({ alerts }) => alerts.fired > 0) ? [rulesByPlan(plans, width)] : []),
        ...(cautions === '' ? [] : [`Cautions\n${cautions}`]),
        ...(proposals === 0
          ? []
          : [wrapText(`More: roombalance report${furtherWays(proposals, alike)}`, '', width)]),
      ];
    }
    const closing = [cautionLine(plans.map(comparedCautions)), MORE + furtherWays(proposals, alike)]
      .filter((line) => line !== '')
      .map((line) => wrapText(line, '', width))
      .join('\n');
    const more = Math.max(0, plans.length - DOZEN) * LINES_OF_PLAN;
    const left = MOST_LINES + more - TITLE_LINES - closing.split('\n').length - 1;
    return [compareSummary(answers, width, left), closing];
  }
}

/** Whatever does as much for less among these plans, there may be more that does. */
function furtherWays(proposals: number, alike: readonly string[]): string {
  if (proposals === 0) return '.';
  const same = alike.length === 0 ? '' : ` with the same ${andList(alike)}`;
  return `${same}, which also tries ${proposals === 1 ? 'a plan' : `${proposals} plans`} of its own.`;
}

const MORE =
  'More: --rooms, --rules (by hour), --all (every figure, cautions in full); roombalance report';
/** A screen of a terminal for up to a dozen plans; each plan more has lines of its own. */
const MOST_LINES = 60;
const DOZEN = 12;
const LINES_OF_PLAN = 2;
const TITLE_LINES = 3;
