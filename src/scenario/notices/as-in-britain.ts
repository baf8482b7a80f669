import type { Home } from '../../home/home.ts';
import type { Assumed, Notice } from '../../home/notices.ts';
import { capital } from '../../units/capital.ts';
import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { isBritishOrIrish } from '../presets/heating-season.ts';

/**
 * One line where outer walls, windows or leaks of a home elsewhere are taken for British ones of their age
 * or kind, because nobody gave theirs and no other country's are known.
 *
 * @param assumed  what nobody gave
 * @param panes    of the home as it was made
 */
export function asInBritain(
  { site, home }: Pick<ScenarioData, 'site' | 'home'>,
  assumed: readonly Pick<Assumed, 'path' | 'value'>[],
  panes: Home['panes'],
): Notice[] {
  const zone = site?.timezone;
  if (zone === undefined || isBritishOrIrish(zone)) return [];
  const rooms = Object.values(home.rooms);
  const walled = rooms.some(({ elements }) => elements === undefined);
  const glazed = rooms.some(({ panes: given }, k) =>
    given === undefined
      ? panes.some(({ room }) => room === k)
      : given.some((pane) => pane['u-value'] === undefined),
  );
  const counts = { walls: walled, windows: glazed, leakage: true };
  const taken = PARTS.flatMap(({ name, path, unit, key }) => {
    const value = assumed.find((one) => one.path === path)?.value;
    if (typeof value !== 'number' || !counts[name]) return [];
    return [{ words: `${name} (${figureText(value)} ${unit})`, key }];
  });
  if (taken.length === 0) return [];
  const what = capital(andList(taken.map(({ words }) => words)));
  const is = what.startsWith('Leakage') ? 'is' : 'are';
  const keys = andList(taken.map(({ key }) => key));
  const text = `${what} ${is} taken as in Britain for a home of such an age and kind, because tables of other countries are not known: put in your own (${keys}).`;
  return [{ id: 'as-in-britain', text }];
}

/** Leakage last, so that a list begins with it only where it is all there is. */
const PARTS = [
  {
    ...{ name: 'walls' as const, unit: 'W/m2K' },
    ...{ path: '/home/build/wall u-value', key: 'wall u-value of home.build' },
  },
  {
    ...{ name: 'windows' as const, unit: 'W/m2K' },
    ...{ path: '/home/build/window u-value', key: 'window u-value of home.build' },
  },
  {
    ...{ name: 'leakage' as const, unit: 'air changes an hour at 50 Pa' },
    ...{ path: '/home/leakage/ach50', key: 'ach50 of home.leakage' },
  },
];
