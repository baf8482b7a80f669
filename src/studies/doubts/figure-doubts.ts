import type { FigureDoubt } from './figure-doubt.ts';

/** Figures whose ranges are told. */
export type Figure = 'money' | 'damp' | 'cold';

/**
 * Figures of one plan: money a year; damp as hours of cold spots above 80 % relative humidity, and
 * cold as hours below the temperature band with somebody in, both added up over the rooms.
 */
export interface PlanDoubt extends Readonly<Record<Figure, FigureDoubt>> {
  readonly plan: string;
}

/** A plan minus the baseline, sample by sample. */
export interface DifferenceDoubt extends Readonly<Record<Figure, BeatDoubt>> {
  readonly plan: string;
  /** Single inputs whose value turns round which of the two costs less. */
  readonly flips: readonly DoubtFlip[];
}

/** What is doubtful of a difference between two plans. */
export interface BeatDoubt extends FigureDoubt {
  /** Share of the samples in which the plan has less than the baseline, and as much. */
  readonly less: number;
  readonly equal: number;
}

/** A value of one input at which two plans cost the same, all else as it is. */
export interface DoubtFlip {
  readonly path: string;
  /** What it is taken to be. */
  readonly today: number;
  readonly value: number;
}
