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
  const keysAt = (path: Path) => {
    const found = valueAt(raw, path);
    return Object.keys(isMapping(found) ? found : {});
  };
  const layers: Path[] = [[], ...keysAt(['plans']).map((name) => ['plans', name, 'change'])];
  const ways = layers.flatMap((layer): Path[] => {
    const own = [...layer, 'air', 'own species'];
    return [
      ...FUELS.map((fuel) => [...layer, 'money', fuel, 'prices']),
      ...keysAt(own).map((name) => [...own, name, 'outdoors', 'file']),
    ];
  });
  const path = [['weather'], ...ways].find((way) => valueAt(raw, way) === file);
  return sectionAt(scenario, path ?? []);
}

/** Where a part of a scenario begins; the nearest that is there where the part is not. */
export function sectionAt({ yaml }: Scenario, path: Path): NamedPlace {
  return { ...placeOf(yaml, path).place, where: pathWords(path) };
}
