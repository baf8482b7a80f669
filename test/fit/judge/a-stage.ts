import type { FittedStage } from '../../../src/fit/fitted-stage.ts';

/** What runs and readings of some rooms have hour by hour. */
export interface Beside {
  readonly room: string;
  readonly quantity: 'temperature' | 'humidity' | 'heating';
  readonly logged: (hour: number) => number;
  readonly fitted: (hour: number) => number;
  /** Whether days count and not hours. */
  readonly daily?: true;
}

/** A stage of which nothing is asked but how readings stand to runs. */
export function aStage(all: readonly Beside[], hours: number): FittedStage {
  const series = (of: (hour: number) => number) =>
    Float64Array.from({ length: hours }, (_, k) => of(k));
  const channels = all.map(({ room, quantity, logged, daily }) => ({
    ...{ room, quantity, observed: series(logged) },
    ...(daily && { stretches: {} }),
  }));
  const left = all.map(({ logged, fitted }) => ({
    errors: { residuals: series((k) => logged(k) - fitted(k)) },
  }));
  return { group: 'heat', channels, fit: { left } } as unknown as FittedStage;
}
