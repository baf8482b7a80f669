import { decayingSource } from '../../physics/air-quality/decaying-source.ts';
import { localDay, toLocal, toUtc } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { DayInputs } from '../day-inputs.ts';
import type { DecayingSource } from '../household.ts';
import type { StepRange } from './step-range.ts';

/** Lay out what a thing that dries out gives off, counted from its last local date. */
export function fillDecaying(day: DayInputs, source: DecayingSource, range: StepRange): void {
  const { start, dt, steps } = range;
  const { room, species, timeConstant } = source;
  const first = lastStart(source, range, start);
  const anew = lastStart(source, range, start + (steps - 1) * dt);
  for (let s = 0; s < steps; s++) {
    const from = start + s * dt;
    const since = from - (from < anew ? first : anew);
    for (let q = 0; q < day.speciesCount; q++) {
      const amount = (species[q] ?? 0) * timeConstant;
      if (amount === 0) continue;
      day.applianceSpecies[(s * day.rooms + room) * day.speciesCount + q]! += decayingSource(
        amount,
        timeConstant,
        since,
        since + dt,
      );
    }
  }
}

/** The latest local midnight of the source's date that is not after an instant. [s UTC] */
function lastStart({ from }: DecayingSource, { clock }: StepRange, utc: number): number {
  const today = localDay(toLocal(clock, utc));
  const year = new Date(today * SECONDS_PER_DAY * 1000).getUTCFullYear();
  const startOf = (y: number): number =>
    toUtc(clock, Date.UTC(y, Math.floor(from / 100) - 1, from % 100) / 1000);
  const thisYear = startOf(year);
  return thisYear <= utc ? thisYear : startOf(year - 1);
}
