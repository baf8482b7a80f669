import type { HeatingSeason, HolidaySetback } from '../../../control/automation.ts';
import type { Emitter } from '../../../home/home.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { ALL_YEAR, monthWords } from '../../month-words.ts';
import {
  COLD_BY,
  COLD_FOR,
  SEASON_DAYS,
  type UsualSeason,
  usualSeason,
} from '../../presets/heating-season.ts';
import type { Defaults } from '../defaults.ts';

/** The season that is usual for the home; null where nothing heats it. */
export function usualSeasonOf(
  { site, heating }: Pick<ScenarioData, 'site' | 'heating'>,
  latitude: number,
  emitters: readonly Emitter[],
): UsualSeason | null {
  const source = heating?.source ?? 'boiler';
  if (source === 'none' || emitters.length === 0) return null;
  return usualSeason(site?.timezone, latitude, source);
}

/**
 * Days on which the home is heated. Months alone hold whatever the weather; what a mapping leaves out,
 * or everything where nothing is said, is as usual.
 */
export function heatingSeason(
  { heating }: Pick<ScenarioData, 'heating'>,
  usual: UsualSeason | null,
  defaults: Defaults,
): { readonly heatingSeason?: HeatingSeason } {
  if (usual === null) return {};
  const given = heating?.season ?? {};
  if (typeof given === 'number') {
    return given === ALL_YEAR ? {} : { heatingSeason: byMonths(given) };
  }
  const at = (key: string) => ['heating', 'season', key];
  const { months: own, 'mean below': limit, over, 'cold by': coldBy } = given;
  const months = own ?? usual.months;
  const word = monthWords(months);
  defaults.word(at('months'), own === undefined ? undefined : word, word, usual.meanBelow.source);
  return {
    heatingSeason: {
      months,
      outdoorBelow: defaults.number(at('mean below'), limit, usual.meanBelow),
      days: defaults.number(at('over'), over, SEASON_DAYS),
      ...(coldBy !== 'never' && {
        ifCold: { under: defaults.number(at('cold by'), coldBy, COLD_BY), after: COLD_FOR },
      }),
    },
  };
}

const byMonths = (months: number): HeatingSeason => ({
  months,
  outdoorBelow: Number.POSITIVE_INFINITY,
  days: 1,
});

/** What is kept on holidays. */
export function holidaySetback({ heating }: Pick<ScenarioData, 'heating'>): {
  readonly holidaySetback?: HolidaySetback;
} {
  const given = heating?.['holiday setback'];
  if (given === undefined) return {};
  if (typeof given === 'number') return { holidaySetback: { setpoint: given, dates: null } };
  return { holidaySetback: { setpoint: given.setpoint, dates: given.dates ?? null } };
}
