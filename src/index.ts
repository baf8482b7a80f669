/*
 * The public names of the library, each once. What is not listed here or in charts.ts may change
 * without notice. docs/library.md shows how they go together.
 */

// Runs: one plan to its figures, and who may watch it hour by hour
export type { HeldSeries, HeldStart, ImposedSeries } from './engine/imposed/imposed.ts';
export type { Preparation } from './engine/preparation.ts';
export { prepareRuns } from './engine/prepare-runs.ts';
export type { Observer, TraceView } from './engine/record/trace.ts';
export type { Run, RunInput } from './engine/run.ts';
export { simulate } from './engine/simulate.ts';
// A log: what sensors and meters of a home said
export { type Log, type LoggedQuantity, type LoggedSeries, seriesOf } from './log/log.ts';
export { type EvenSteps, meansOverSteps, valuesAtInstants } from './log/onto-steps.ts';
export { createMeasures } from './measures/create-measures.ts';
export type { PlanMeasures, RoomMeasures } from './measures/plan-measures.ts';
export { createPlanSeries, type PlanSeries } from './measures/series/plan-series.ts';
export { createTraceCsv } from './report/trace-csv.ts';
// A scenario: text to checked data, one plan of it with every gap filled
export { type PlanChoice, preparePlan } from './scenario/prepare-plan.ts';
export type { PreparedPlan } from './scenario/prepared.ts';
export { readScenario, type Scenario } from './scenario/read-scenario.ts';
// Several plans side by side, and the answer in words
export { type Answer, answerInWords } from './studies/compare/answer-in-words.ts';
export { type Comparison, compareMeasures } from './studies/compare/compare.ts';
export { type PlanOutcome, type PlanRequest, runPlan } from './studies/run-plan.ts';
// What is wrong with an input
export { InputProblems, type Problem, problemText } from './units/problem.ts';
// Weather: read, describe, invent, write
export { describeWeather } from './weather/describe/describe-weather.ts';
export type { WeatherDescription } from './weather/describe/weather-description.ts';
export { makeWeather } from './weather/make/make-weather.ts';
export type { WeatherRecipe } from './weather/make/recipe.ts';
export { type Period, periodOf } from './weather/period-of.ts';
export { readWeather } from './weather/read/read-weather.ts';
export type { Weather } from './weather/weather.ts';
export type { WeatherOptions } from './weather/weather-options.ts';
export { writeOwnCsv } from './weather/write-own-csv.ts';
