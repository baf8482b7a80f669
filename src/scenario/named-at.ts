import { FUELS } from './model/money.ts';
import type { Scenario } from './read-scenario.ts';
import { isMapping } from './yaml/merge-patch.ts';
import { pathWords, valueAt } from './yaml/path-words.ts';
import { type Path, type Place, placeOf } from './yaml/place-of.ts';

/** A place in the scenario's text and the path of what stands there, in words. */
export interface NamedPlace extends Place {
  readonly where: string;
}

/** Where a scenario, or a plan of it, first names one of its files. */
export function namedAt(scenario: Scenario, file: string): NamedPlace {
  const raw = scenario.yaml.value;
  const prices = FUELS.map((fuel) => ['money', fuel, 'prices']);
  const plans = valueAt(raw, ['plans']);
  const changes = Object.keys(isMapping(plans) ? plans : {}).flatMap((name) =>
    prices.map((path) => ['plans', name, 'change', ...path]),
  );
  const path = [['weather'], ...prices, ...changes].find((way) => valueAt(raw, way) === file);
  return sectionAt(scenario, path ?? []);
}

/** Where a part of a scenario begins; the nearest that is there where the part is not. */
export function sectionAt({ yaml }: Scenario, path: Path): NamedPlace {
  return { ...placeOf(yaml, path).place, where: pathWords(path) };
}
