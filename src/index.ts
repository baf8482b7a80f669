/*
 * The public names. What is not listed here may change without notice.
 *
 *     const scenario = readScenario(text, 'home.yaml');
 *     const plan = preparePlan(scenario, { plan: null, set: [], files });
 *     const weather = readWeather(weatherText, 'weather.csv');
 *     const period = periodOf(weather, plan.period.from, plan.period.to, plan.household.clock);
 *     const { measures } = runPlan({ plan, weather, period });
 */

// A home and its people as data
export type { Household } from './control/household.ts';
// Runs and figures
export type { Ledger } from './engine/ledger.ts';
export type { Run, RunInput } from './engine/run.ts';
export { simulate } from './engine/simulate.ts';
export type { Observer, TraceView as TraceStretch } from './engine/trace.ts';
export type { RoomBands } from './home/bands.ts';
export type { Home } from './home/home.ts';
export type { Assumed, Notice as Remark } from './home/notices.ts';
export type { Prices } from './home/prices.ts';
export { createMeasures, type Measures } from './measures/create-measures.ts';
export type { MeasuresSetup } from './measures/measures-setup.ts';
export type { PlanMeasures, RoomMeasures } from './measures/plan-measures.ts';
export { coldestWeek } from './measures/series/coldest-week.ts';
export { type DailyRanges, dailyRanges } from './measures/series/daily-ranges.ts';
export {
  createPlanSeries,
  type PlanSeries,
  type RoomSeries,
} from './measures/series/plan-series.ts';
// Pictures
export { type CalendarData, calendarChart } from './report/charts/calendar-chart.ts';
export type { Along, Chart, ChartSpec, ChartTable } from './report/charts/chart.ts';
export { type ColdSpotData, coldSpotChart } from './report/charts/cold-spot-chart.ts';
export {
  type CumulativeMoneyData,
  cumulativeMoneyChart,
} from './report/charts/cumulative-money-chart.ts';
export { type DoubtData, doubtChart } from './report/charts/doubt-chart.ts';
export { heatChart } from './report/charts/heat-chart.ts';
export { hoursOutside } from './report/charts/hours-outside.ts';
export { type MonthlyHeat, monthlyHeat } from './report/charts/monthly-heat.ts';
export { type MouldData, mouldChart } from './report/charts/mould-chart.ts';
export {
  chartsToSvg,
  type Drawing,
  type DrawingOptions,
  type Drawn,
  drawCharts,
} from './report/charts/to-svg.ts';
export { type TradeOffData, tradeOffChart } from './report/charts/trade-off-chart.ts';
export { type WaterBalance, waterBalance } from './report/charts/water-balance.ts';
export { waterChart } from './report/charts/water-chart.ts';
export { type WeekData, weekChart } from './report/charts/week-chart.ts';
export { type YearData, yearChart } from './report/charts/year-chart.ts';
export { createTraceCsv, type TraceCsvSetup } from './report/trace-csv.ts';
export {
  raiseRoomSetpoint as warmerRoom,
  raiseSetpoints as warmerHeating,
} from './scenario/edits/raise-setpoints.ts';
export { type HouseholdWater, householdWater } from './scenario/edits/scale-household-water.ts';
// Scenarios
export { type PlanChoice, preparePlan } from './scenario/prepare-plan.ts';
export type { PreparedPlan } from './scenario/prepared.ts';
export { readScenario, type Scenario, type ScenarioPlan } from './scenario/read-scenario.ts';
export { settingsFromPatch as changeSettings } from './scenario/yaml/settings-from-patch.ts';
// Studies
export { type Answer, answerInWords } from './studies/compare/answer-in-words.ts';
export { type Comparison, compareMeasures } from './studies/compare/compare.ts';
export { comparePlans, type PlanFigures } from './studies/compare/compare-plans.ts';
export { atFuelPrice, atPurchasePrice, extraPerYear } from './studies/compare/other-prices.ts';
export { type BreakEven, type BreakEvenSetup, breakEven } from './studies/doubts/break-even.ts';
export { type DoubtfulInput, doubtfulInputs } from './studies/doubts/doubtful-inputs.ts';
export {
  type InputEffect,
  type OneAtATime,
  type OneAtATimeSetup,
  oneAtATime,
} from './studies/doubts/one-at-a-time.ts';
export {
  type PlanVariant as VariedPlan,
  prepareVariant as prepareVaried,
  type RunVariant as RunVaried,
  variantScenario as variedScenario,
} from './studies/plan-variant.ts';
export type {
  AssumedPurchase as AssumedBuy,
  BuiltIn,
  BuiltInContext,
} from './studies/proposals/built-in.ts';
export { builtInAlternatives } from './studies/proposals/built-in-alternatives.ts';
export { type Decision, type DecisionSetup, decision } from './studies/purchase/decision.ts';
export { type DryingFigures, labelOf } from './studies/purchase/drying-figures.ts';
export {
  type EqualSafety,
  type EqualSafetySetup,
  equalSafety,
} from './studies/purchase/equal-safety.ts';
export {
  type PurchaseSum,
  type PurchaseSumSetup,
  purchaseSum,
  type SumLine,
} from './studies/purchase/purchase-sum.ts';
export { type PlanOutcome, type PlanRequest, runPlan } from './studies/run-plan.ts';
// What is wrong with an input
export { InputProblems, type Problem, problemText } from './units/problem.ts';
// Weather
export { describeWeather, type WeatherDescription } from './weather/describe/describe-weather.ts';
export { makeWeather } from './weather/make/make-weather.ts';
export type { WeatherRecipe } from './weather/make/recipe.ts';
export { type Period, periodOf } from './weather/period-of.ts';
export { readWeather } from './weather/read/read-weather.ts';
export type { Weather } from './weather/weather.ts';
export type { WeatherOptions } from './weather/weather-options.ts';
export { writeOwnCsv as writeTidyCsv } from './weather/write-own-csv.ts';
