import type { ScenarioData } from '../model/scenario-model.ts';
import type { Finding } from '../unplaced-problem.ts';

/** Files of outdoor levels that were not handed in, for example because a setting named them. */
export function levelFileFindings(
  { air }: Pick<ScenarioData, 'air'>,
  files: ReadonlyMap<string, string>,
): Finding[] {
  return Object.entries(air?.['own species'] ?? {}).flatMap(([name, { outdoors }]): Finding[] => {
    if (typeof outdoors === 'number' || Array.isArray(outdoors) || files.has(outdoors.file)) {
      return [];
    }
    const path = ['air', 'own species', name, 'outdoors', 'file'];
    return [{ path, expected: 'a file of levels that the scenario file names' }];
  });
}
