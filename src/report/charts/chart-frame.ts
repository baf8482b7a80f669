import type { ChartSpec } from './chart.ts';
import { INK } from './palette.ts';

/** What all pictures share, and how large this one is. */
export interface Frame {
  /** All of it, margins included. [px] */
  readonly width: number;
  readonly height: number;
  readonly description: string;
  readonly layer: readonly object[];
}

/** A whole Vega-Lite specification around the layers of a picture. */
export function chartFrame({ width, height, description, layer }: Frame): ChartSpec {
  return {
    $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
    description,
    width,
    height,
    padding: { left: 2, top: ABOVE, right: 6, bottom: 2 },
    autosize: { type: 'fit', contains: 'padding' },
    background: 'transparent',
    layer,
    config: CONFIG,
  };
}

/** Whether a picture is for a phone. */
export const isNarrow = (width: number): boolean => width < 500;

/**
 * The upright axis, its title lying above it, where it costs no width.
 *
 * @param labels  widest of its labels, about [px]
 */
export const uprightAxis = (title: string, labels: number, more: object = {}): object => ({
  title,
  titleAngle: 0,
  titleAlign: 'left',
  titleAnchor: 'start',
  titleBaseline: 'bottom',
  titleX: -labels - 7,
  titleY: -8,
  tickCount: 5,
  ...more,
});

/** Labels of an axis of money, in groups of digits as in the text, see `sumText`. */
export const moneyLabels = (format: string): object => ({
  labelExpr: `format(datum.value, abs(datum.value) < 10000 ? '${format}' : ',${format}')`,
});

/** The axis of local time. Times in the data are [ms], the wall clock's reading taken as UTC. */
export const timeAxis = (format: string, tickCount: string | object): object => ({
  title: null,
  format,
  tickCount,
  grid: false,
});

/**
 * Ends of such an axis. Written as dates, because a number alone is read as a year where expressions
 * are interpreted.
 *
 * @param from, to  reading of the wall clock [s local]
 */
export const timeDomain = (from: number, to: number): string[] =>
  [from, to].map((local) => new Date(local * 1000).toISOString());

const ABOVE = 4; // px

const CONFIG = {
  font: 'system-ui, sans-serif',
  numberFormat: '.6~f',
  locale: { number: { decimal: '.', thousands: '\u202f', grouping: [3], currency: ['', ''] } },
  view: { stroke: null },
  title: { fontSize: 13, lineHeight: 16 },
  axis: {
    labelColor: INK,
    titleColor: INK,
    titleFontWeight: 'normal',
    labelFontSize: 11,
    titleFontSize: 11,
    domainColor: INK,
    domainOpacity: 0.5,
    tickColor: INK,
    tickOpacity: 0.5,
    gridColor: INK,
    gridOpacity: 0.14,
  },
  legend: { labelColor: INK, titleColor: INK, labelFontSize: 11, labelLimit: 240 },
  text: { color: INK, fontSize: 11, align: 'left', baseline: 'middle' },
  rule: { color: INK },
};
