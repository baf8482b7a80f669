import type { LivingSpan } from '../../living/messages.ts';
import { yearsIn } from '../../measures/years-in.ts';
import type { TrialOffer } from '../../studies/trial/knobs.ts';
import { toLocal } from '../../units/local-clock.ts';
import type { PictureData, WeekWord } from './picture-data.ts';
import type { ReportInput } from './report-input.ts';

/** What the page's script needs to run the home again. */
export interface HeldTrial {
  /** The worker's script, and what it runs, packed. */
  readonly engine: string;
  readonly setup: string;
  readonly offer: TrialOffer;
  /** Name of the scenario's file, and what the call laid on all plans. */
  readonly file: string;
  readonly set: readonly string[];
  readonly currency: string;
  /** First day of the whole period, at midnight. [s local] */
  readonly begins: number;
  /** Length of the whole period. [years] */
  readonly years: number;
  /** Parts of the period that are run before the whole. */
  readonly spans: readonly { readonly name: string; readonly span: LivingSpan }[];
}

/** Null where the page does not carry the engine. */
export function heldTrial({ living, study }: ReportInput, data: PictureData): HeldTrial | null {
  if (living === null) return null;
  const { money, period } = study.options[0]!.measures;
  return {
    ...living,
    ...{ currency: money.currency, years: yearsIn(period.hours) },
    begins: 86400 * Math.floor(toLocal(data.clock, data.start) / 86400),
    spans: (['coldest', 'dampest'] as const).flatMap((word) => spanOf(data, word)),
  };
}

/** Thirty days around the week that a word stands for; none where the period is hardly longer. */
function spanOf({ start, hours, weeks }: PictureData, word: WeekWord) {
  const found = weeks.find((week) => week.word === word);
  if (found === undefined || hours < 2 * SPAN) return [];
  const from = Math.min(Math.max(0, found.hour - BEFORE), hours - SPAN);
  return [{ name: `${word} 30 days`, span: { start: start + from * 3600, hours: SPAN } }];
}

const SPAN = 720; // h
const BEFORE = 276; // h, that the week lies in the middle
