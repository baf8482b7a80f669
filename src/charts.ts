/*
 * Pictures as Vega-Lite specifications, each from plain data and a width, and their drawing as SVG.
 * Apart from index.ts, because drawing loads a charting library.
 */

export { type AirChartData, airChart } from './report/charts/air-chart.ts';
export { type AlertsChartData, alertsChart } from './report/charts/alerts-chart.ts';
export { type CalendarData, calendarChart } from './report/charts/calendar-chart.ts';
export type { Chart } from './report/charts/chart.ts';
export { type ColdSpotData, coldSpotChart } from './report/charts/cold-spot-chart.ts';
export {
  type CumulativeMoneyData,
  cumulativeMoneyChart,
} from './report/charts/cumulative-money-chart.ts';
export { doubtChart } from './report/charts/doubt-chart.ts';
export type { DoubtData } from './report/charts/doubt-data.ts';
export { heatChart } from './report/charts/heat-chart.ts';
export { type MouldData, mouldChart } from './report/charts/mould-chart.ts';
export { chartsToSvg, drawCharts } from './report/charts/to-svg.ts';
export { type TradeOffData, tradeOffChart } from './report/charts/trade-off-chart.ts';
export { waterChart } from './report/charts/water-chart.ts';
export { type WeekData, weekChart } from './report/charts/week-chart.ts';
export { type YearData, yearChart } from './report/charts/year-chart.ts';
