import { isoTime } from '../../units/iso-time.ts';
import type { LoggedSeries } from '../log.ts';
import type { ReadLog, UnderstoodFile } from '../read/log-options.ts';
import { airChanges } from './air-change.ts';
import { logChecks } from './log-checks.ts';
import { airChangeWords, fileWords } from './log-in-words.ts';
import type { LogWarning } from './log-warning.ts';
import { seriesFacts } from './series-facts.ts';

/** What a log holds, in figures and words; keys as JSON prints them. */
export interface LogDescription {
  readonly files: readonly UnderstoodFile[];
  /** First and last reading, and time between. */
  readonly from: string;
  readonly to: string;
  readonly days: number;
  readonly series: readonly SeriesDescription[];
  readonly air_change: readonly AirChangeDescription[];
  readonly warnings: readonly LogWarning[];
  readonly words: readonly string[];
}

export interface SeriesDescription {
  readonly quantity: string;
  readonly place: string;
  readonly room: string | null;
  readonly device: string | null;
  readonly source: string;
  readonly readings: number;
  readonly from: string;
  readonly to: string;
  /** Usual time between two readings; on change, their median. */
  readonly every_minutes: number;
  readonly on_change: boolean;
  readonly gaps: number;
  readonly longest_gap_hours: number;
  readonly in_gaps_pct: number;
  readonly longest_same_value_hours: number;
  readonly lowest: number;
  readonly mean: number;
  readonly highest: number;
}

interface AirChangeDescription {
  readonly room: string;
  readonly by: string;
  readonly decays: number;
  readonly per_hour: number;
  readonly middle_half_per_hour: readonly [number, number];
}

export function describeLog({ log, files }: ReadLog): LogDescription {
  const facts = new Map(log.series.map((series) => [series, seriesFacts(series)]));
  const changes = airChanges(log, facts);
  return {
    files,
    from: isoTime(log.start),
    to: isoTime(log.end),
    days: (log.end - log.start) / 86_400,
    series: log.series.map((series) => seriesDescription(series, facts.get(series)!)),
    air_change: changes.map(({ room, by, decays, rate, low, high }) => ({
      ...{ room, by, decays: decays.length, per_hour: rate, middle_half_per_hour: [low, high] },
    })),
    warnings: logChecks(log, facts),
    words: [...files.flatMap(fileWords), ...airChangeWords(log, changes)],
  };
}

function seriesDescription(
  { quantity, place, room, device, from }: LoggedSeries,
  facts: ReturnType<typeof seriesFacts>,
): SeriesDescription {
  return {
    ...{ quantity, place, room, device, source: from, readings: facts.readings },
    from: isoTime(facts.start),
    to: isoTime(facts.end),
    every_minutes: facts.every / 60,
    on_change: facts.onChange,
    gaps: facts.gaps,
    longest_gap_hours: facts.longestGap / 3600,
    in_gaps_pct: 100 * facts.inGaps,
    longest_same_value_hours: facts.stuckFor / 3600,
    ...{ lowest: facts.lowest, mean: facts.mean, highest: facts.highest },
  };
}
