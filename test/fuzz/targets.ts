import type { Chooser } from './chooser.ts';
import { legalExtremes } from './legal-extremes.ts';
import {
  planPatches,
  scenarioText,
  scenarioTree,
  setPointers,
  tariffs,
} from './scenario-targets.ts';
import { weatherTexts } from './weather-target.ts';

/** A part of the program that is given cases nobody would write by hand. */
export interface Target {
  /** A case as one text, which is all that is needed to judge it again. */
  readonly make: (choose: Chooser) => string;
  /** What the program did wrong with it, null for nothing. */
  readonly judge: (text: string) => string | null;
}

export const TARGETS: Readonly<Record<string, Target>> = {
  'scenario-text': scenarioText,
  'scenario-tree': scenarioTree,
  'set-pointers': setPointers,
  'plan-patches': planPatches,
  weather: weatherTexts,
  tariffs,
  'legal-extremes': legalExtremes,
};
