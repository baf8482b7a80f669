import type { Assumed, Notice } from '../../home/notices.ts';
import { figureText } from '../../units/figure-text.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { isBritishOrIrish } from '../presets/heating-season.ts';

/**
 * One line where outer walls of a home elsewhere are taken for British ones of their age, because nobody
 * gave a U-value and no other country's are known.
 *
 * @param assumed  what nobody gave
 */
export function wallsAsInBritain(
  { site, home }: Pick<ScenarioData, 'site' | 'home'>,
  assumed: readonly Pick<Assumed, 'path' | 'value'>[],
): Notice[] {
  const zone = site?.timezone;
  if (zone === undefined || isBritishOrIrish(zone)) return [];
  const wall = assumed.find(({ path }) => path === WALLS);
  const drawn = Object.values(home.rooms).some(({ elements }) => elements === undefined);
  if (typeof wall?.value !== 'number' || !drawn) return [];
  const text = `Walls are taken as in Britain for their age (${figureText(wall.value)} W/m2K), because tables of other countries are not known: put in your own U-values (home.build, wall u-value and window u-value).`;
  return [{ id: 'as-in-britain', text }];
}

const WALLS = '/home/build/wall u-value';
