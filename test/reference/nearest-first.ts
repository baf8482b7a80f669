import { statSync } from 'node:fs';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/**
 * While mutants are tried, runs first the tests that lie nearest to the changed source, small files
 * before large ones: they are quick and notice most, and the first failure ends a trial.
 */
export class NearestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const places = (process.env['MUTANT_PLACES'] ?? '').split(',').map((place) => place.split('/'));
    const ranked = files.map((file) => ({
      file,
      shared: Math.max(...places.map((place) => sharedFolders(file.moduleId, place))),
      size: statSync(file.moduleId).size,
    }));
    return ranked.sort((a, b) => b.shared - a.shared || a.size - b.size).map(({ file }) => file);
  }
}

/** How many folders below test/ a file shares with a folder or file below src/. */
function sharedFolders(file: string, place: readonly string[]): number {
  const path = file.slice(file.lastIndexOf('/test/') + '/test/'.length).split(/[/.]/);
  const apart = place.findIndex((name, k) => name.replace(/\.ts$/, '') !== path[k]);
  return apart === -1 ? place.length : apart;
}
