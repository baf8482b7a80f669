import { dailyRanges } from '../measures/series/daily-ranges.ts';
import { createPlanSeries } from '../measures/series/plan-series.ts';
import type { PreparedPlan } from '../scenario/prepared.ts';
import { readScenario } from '../scenario/read-scenario.ts';
import { planText } from '../scenario/yaml/plan-text.ts';
import { planFigures } from '../studies/effects/plan-figures.ts';
import { prepareVariant, variantScenario } from '../studies/plan-variant.ts';
import { runPlan } from '../studies/run-plan.ts';
import type { Trial } from '../studies/trial/knobs.ts';
import { trialChange, trialSettings } from '../studies/trial/trial.ts';
import { InputProblems } from '../units/problem.ts';
import { periodOf } from '../weather/period-of.ts';
import type { LivingSetup } from './living-setup.ts';
import type { LivingAnswer, LivingRequest } from './messages.ts';

/** A home that is run again with other settings, as the command line would run it. */
export interface LivingHome {
  /** @returns figures, or in words what is wrong with the settings */
  readonly answer: (request: LivingRequest) => LivingAnswer;
}

/** Reads the scenario once; a plan is prepared once for all spans that are asked of it. */
export function createLivingHome(setup: LivingSetup): LivingHome {
  const { weather, offer, room, plan, set } = setup;
  const scenario = readScenario(setup.text, setup.file, { plans: [plan], doubts: false });
  const files = new Map(setup.files);
  const prepare = (more: readonly string[]): PreparedPlan =>
    prepareVariant(scenario, files, { plan, set: [...set, ...more] });
  const raw = variantScenario(scenario, { plan, set });
  const baseline = prepare([]);
  let last: { key: string; settings: string[]; prepared: PreparedPlan } | null = null;

  const prepared = (trial: Trial) => {
    const settings = trialSettings(raw, baseline, offer, trial);
    const key = JSON.stringify(settings);
    if (last?.key !== key) last = { key, settings, prepared: prepare(settings) };
    return last;
  };

  const answer = ({ trial, span }: LivingRequest): LivingAnswer => {
    try {
      const { settings, prepared: tried } = prepared(trial);
      const { from, to } = tried.period;
      const { clock } = tried.household;
      const period = span ?? periodOf(weather, from, to, clock);
      const series = createPlanSeries({ ...tried, period, clock });
      const days = span === null ? undefined : SPIN_UP_OF_A_SPAN;
      const { measures } = runPlan({ plan: tried, weather, period }, [series.observe], days);
      const { start, rooms } = series.result();
      const own = rooms.find(({ name }) => name === room) ?? rooms[0]!;
      const { mean } = dailyRanges(own.coldSpotHumidity, start, clock);
      return {
        figures: planFigures(measures),
        heat: measures.heating.useful_kwh,
        electricity: electricityOf(measures),
        coldSpot: Array.from(mean),
        temperature: Array.from(dailyRanges(own.operativeTemperature, start, clock).mean),
        settings,
        plan: planText('tried', 'as tried on the page', trialChange(settings)),
      };
    } catch (error) {
      if (!(error instanceof InputProblems)) throw error;
      return { problems: error.problems.map(({ expected, got }) => `${expected}; got ${got}`) };
    }
  };
  return { answer };
}

/** [kWh] */
const electricityOf = (measures: ReturnType<typeof runPlan>['measures']): number =>
  measures.devices.electricity_kwh +
  (measures.heating.delivered_kwh['electricity'] ?? 0) +
  (measures.cooling.delivered_kwh['electricity'] ?? 0);

/** A month is a first look: the whole period follows it. [day] */
const SPIN_UP_OF_A_SPAN = 10;
