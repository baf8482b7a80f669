import type { PlanFigures } from '../studies/effects/plan-figures.ts';
import type { Trial } from '../studies/trial/knobs.ts';

/** A run to make in the page. */
export interface LivingRequest {
  readonly trial: Trial;
  /** Part of the period for a first look; null for all of it. */
  readonly span: LivingSpan | null;
}

/** Hours of the weather. */
export interface LivingSpan {
  /** Instant at which the first hour begins. [s UTC] */
  readonly start: number;
  readonly hours: number;
}

/** What came of it. */
export type LivingAnswer = LivingFigures | { readonly problems: readonly string[] };

export interface LivingFigures {
  readonly figures: PlanFigures;
  /** Heat to rooms, and electricity for everything, over the span. [kWh] */
  readonly heat: number;
  readonly electricity: number;
  /** Daily means in the room that the page is about: surface of the coldest spot [%], room [°C]. */
  readonly coldSpot: readonly number[];
  readonly temperature: readonly number[];
  /** What was laid on the baseline, as words of `--set`, and as a plan of a scenario file. */
  readonly settings: readonly string[];
  readonly plan: string;
}
