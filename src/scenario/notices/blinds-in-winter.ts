import type { Automation } from '../../control/automation.ts';
import type { Household } from '../../control/household.ts';
import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { MINUTES_PER_DAY } from '../../units/time-units.ts';
import { andList } from '../../units/word-list.ts';
import { monthsOf, sixMonthsLater } from '../month-words.ts';
import { weekIn } from '../week-value.ts';

/**
 * A question about blinds that close because the sun shines, on winter days too, in rooms that are heated:
 * they keep out sun that would heat, and may cost more than they spare in summer.
 *
 * @param run  months that are run, January = bit 0
 */
export function blindsInWinter(
  { home, household, automation }: Pick<BlindContext, 'home' | 'household' | 'automation'>,
  run: number,
): Notice[] {
  const { blinds = [], panes, rooms, emitters } = home;
  const winter = (home.site.latitude < 0 ? sixMonthsLater(WINTER) : WINTER) & run;
  if (winter === 0) return [];
  const heated = new Set(emitters.map(({ room }) => room));
  const shutting = blinds.flatMap(({ pane }, k) => {
    const { sunAbove, roomAbove } = automation.blinds![k]!;
    const { room } = panes[pane]!;
    if (!Number.isFinite(sunAbove) || Number.isFinite(roomAbove) || !heated.has(room)) return [];
    const noon = weekIn(winter, household.blinds![k]!).some(
      (open, minute) => minute % MINUTES_PER_DAY === MINUTES_PER_DAY / 2 && open > 0,
    );
    return noon ? [rooms[room]!.name] : [];
  });
  if (shutting.length === 0) return [];
  const text = `Blinds of ${andList([...new Set(shutting)])} close in the sun of winter too, which helps to heat. Is that meant, or "temperature over", or months in their "hours"?`;
  return [{ id: 'blinds-in-winter', text }];
}

interface BlindContext {
  readonly home: Home;
  readonly household: Household;
  readonly automation: Automation;
}

/** Three months of the least sun and the most heat, north of the equator. */
const WINTER = monthsOf('Dec-Feb');
