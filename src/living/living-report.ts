import type { Scenario } from '../scenario/read-scenario.ts';
import type { Option } from '../studies/options.ts';
import { prepareVariant } from '../studies/plan-variant.ts';
import { meanFuelPrice } from '../studies/purchase/mean-prices.ts';
import type { TrialOffer } from '../studies/trial/knobs.ts';
import { trialOffer } from '../studies/trial/trial.ts';
import { InputProblems } from '../units/problem.ts';
import type { Weather } from '../weather/weather.ts';
import { type LivingSetup, packSetup, packText } from './living-setup.ts';

/** What a page carries so that its readers can run the home again. */
export interface LivingReport {
  /** The engine's script, and the home it runs, packed. */
  readonly engine: string;
  readonly setup: string;
  readonly offer: TrialOffer;
  /** Name of the scenario's file, without folders, for the command that does the same. */
  readonly file: string;
  /** What the call laid on all plans. */
  readonly set: readonly string[];
}

/** What a report was made from, as far as a home is run from it. */
export interface LivingSource {
  readonly scenario: Scenario;
  readonly text: string;
  /** Texts by the path that the scenario wrote. */
  readonly files: ReadonlyMap<string, string>;
  readonly weather: Weather;
  readonly set: readonly string[];
  readonly baseline: Option;
  readonly room: string;
}

/** Whether a scenario says itself where it lies, so that the text of its weather is not asked for that. */
function standsWithout(
  scenario: Scenario,
  files: ReadonlyMap<string, string>,
  { variant }: Option,
): boolean {
  try {
    prepareVariant(scenario, files, variant);
    return true;
  } catch (error) {
    if (error instanceof InputProblems) return false;
    throw error;
  }
}

/** @param engine  the worker's script, as the build made it */
export function livingReport(source: LivingSource, engine: string): LivingReport {
  const { scenario, text, files, weather, set, baseline, room } = source;
  const { raw, prepared, measures } = baseline;
  const price = meanFuelPrice(measures, 'electricity', prepared.prices) ?? 0;
  const offer = trialOffer(raw, prepared, room, price);
  const file = scenario.file.split(/[\\/]/).at(-1) ?? scenario.file;
  const { plan } = baseline.variant;
  const others = [...files].filter(([path]) => path !== scenario.weather);
  const setup: LivingSetup = {
    ...{ text, file, weather, set, offer, room, plan },
    files: standsWithout(scenario, new Map(others), baseline) ? others : [...files],
  };
  return { engine: packText(engine), setup: packSetup(setup), offer, file, set };
}
