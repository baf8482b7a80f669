import { figureText } from '../../units/figure-text.ts';
import { mapping, roomNames } from '../checks/tolerant-readers.ts';
import { pointerOf } from '../yaml/json-pointer.ts';
import type { Doubt } from './adjustables.ts';
import {
  CAPACITIES,
  type FitKind,
  type FitPlace,
  PLACES,
  steadyHeat,
  steadyMoisture,
  U_VALUES,
} from './fit-places.ts';
import { givenNumber } from './scenario-facts.ts';

/** A number that a scenario states without doubt. */
export interface Stated {
  readonly kind: FitKind;
  readonly name: string;
  /** With its value, such as "air leakage at 50 Pa (4.00/h)". */
  readonly words: string;
}

/**
 * Numbers that a log might tell, but that the scenario states without doubt: a fit leaves them alone, and
 * what it finds beside one that is not as it is in the home makes up for that.
 */
export function statedForCertain(raw: unknown, doubts: readonly Doubt[]): Stated[] {
  const rooms = roomNames(mapping(raw));
  const all: readonly FitPlace[] = [
    ...Object.values(PLACES),
    ...U_VALUES,
    ...CAPACITIES,
    ...rooms.map(steadyMoisture),
    ...rooms.map(steadyHeat),
  ];
  return all.flatMap(({ kind, name, unit, steps }) => {
    const path = pointerOf(steps);
    const given = givenNumber(raw, path);
    if (given === undefined || doubts.some((doubt) => doubt.path === path)) return [];
    const behind = unit === '' || unit.startsWith('/') ? unit : ` ${unit}`;
    return [{ kind, name, words: `${name} (${figureText(given)}${behind})` }];
  });
}
