import type { LoggerInterface, View } from 'vega';
import type { TopLevelSpec } from 'vega-lite';
import { printable } from '../escaped.ts';
import type { Along, Chart } from './chart.ts';
import { tidySvg } from './tidy-svg.ts';

/** A chart and where it goes. */
export interface Drawing {
  readonly chart: Chart;
  /** Unlike any other of the document: letters, digits and hyphens, a letter first. */
  readonly id: string;
}

export interface DrawingOptions {
  /**
   * Draws a picture that is a file of its own: with its title in it, in dark ink on white. Otherwise
   * it is part of a page, which prints the title and whose text colour the ink follows.
   */
  readonly standalone?: boolean;
  /** Hears why a picture cannot be drawn, which then has no marks; where it is not given, that is thrown. */
  readonly without?: (id: string, error: unknown) => void;
  /** Hears what the drawing library finds odd about a picture; there should be nothing. */
  readonly warn?: (text: string) => void;
}

/** A drawn picture, and where on it the rows of its table lie. */
export interface Drawn {
  readonly svg: string;
  /** Null where they cannot be pointed at. [px from the left edge of the picture] */
  readonly along: Along | null;
}

/**
 * Draws all pictures of one document as SVG text, in their order, without a browser. Same pictures,
 * same bytes: text is measured by a rule, not by the fonts of the machine.
 *
 * Call it once per document, because the names inside the pictures are counted from there. What
 * people typed appears as text and never as markup. Expressions are interpreted, so that it also
 * works in a page that forbids making code of text.
 *
 * @throws RangeError for an id that is no name or is used twice
 */
export async function drawCharts(
  drawings: readonly Drawing[],
  { standalone = false, warn = () => {}, without }: DrawingOptions = {},
): Promise<Drawn[]> {
  requireIds(drawings.map(({ id }) => id));
  const [vega, { compile }, { expressionInterpreter }] = await Promise.all([
    import('vega'),
    import('vega-lite'),
    import('vega-interpreter'),
  ]);
  const { textMetrics } = vega as unknown as { textMetrics: TextMetrics };
  const logger = listener(warn);
  const drawn: Drawn[] = [];
  const draw = async (chart: Chart, id: string): Promise<Drawn> => {
    // The library writes into the data it draws.
    const own = structuredClone(chart.spec) as unknown as TopLevelSpec;
    const { spec } = compile(own, { logger });
    const runtime = vega.parse(spec, undefined, { ast: true });
    const view = new vega.View(runtime, {
      expr: expressionInterpreter,
      renderer: 'none',
      logger,
    });
    const svg = tidySvg(await view.toSVG(), { ...chart, id, standalone });
    const along = chart.along === undefined ? null : onPicture(chart.along, view);
    view.finalize();
    return { svg, along };
  };
  vega.resetSVGDefIds();
  textMetrics.width = widthByRule;
  try {
    for (const { chart, id } of drawings) {
      try {
        drawn.push(await draw(chart, id));
      } catch (error) {
        if (without === undefined) throw error;
        without(id, error);
        drawn.push({ svg: '', along: null });
      }
    }
  } finally {
    textMetrics.canvas(true);
  }
  return drawn;
}

/** Draws all pictures of one document as SVG text, without the places of their tables' rows. */
export async function chartsToSvg(
  drawings: readonly Drawing[],
  options: DrawingOptions = {},
): Promise<string[]> {
  return (await drawCharts(drawings, options)).map(({ svg }) => svg);
}

function onPicture({ row, from, step }: Along, view: View): Along {
  const scale = view.scale('x') as LevelScale;
  const left = (view.padding() as { readonly left: number }).left + view.origin()[0]!;
  // A bar has no single place on its axis but a band; its middle is meant.
  const first = left + scale(from) + (scale.bandwidth?.() ?? 0) / 2;
  const apart = scale.step === undefined ? scale(from + step) - scale(from) : step * scale.step();
  return { row, from: rounded(first), step: rounded(apart) };
}

const rounded = (px: number): number => Math.round(px * 1e4) / 1e4;

/** Scale of the drawing library, missing from its typings: from a value on the axis to [px]. */
interface LevelScale {
  (value: number): number;
  readonly bandwidth?: () => number;
  readonly step?: () => number;
}

function requireIds(ids: readonly string[]): void {
  for (const [k, id] of ids.entries()) {
    if (!/^[A-Za-z][A-Za-z0-9-]*$/.test(id)) {
      throw new RangeError(`chartsToSvg: an id is letters, digits and hyphens, got "${id}"`);
    }
    if (ids.indexOf(id) !== k) throw new RangeError(`chartsToSvg: the id "${id}" is used twice`);
  }
}

function listener(warn: (text: string) => void): LoggerInterface {
  const hear = (...parts: readonly unknown[]): LoggerInterface => {
    warn(parts.map(String).join(' '));
    return logger;
  };
  const ignore = (): LoggerInterface => logger;
  const level = ((value?: number) =>
    value === undefined ? 0 : logger) as LoggerInterface['level'];
  const logger: LoggerInterface = { level, error: hear, warn: hear, info: ignore, debug: ignore };
  return logger;
}

/** Text measurement of the drawing library, missing from its typings. */
interface TextMetrics {
  width: (item: { readonly fontSize?: number }, text: unknown) => number;
  canvas(use: boolean): void;
}

/** A little more than what common sans-serif fonts take on average. [px] */
const widthByRule: TextMetrics['width'] = (item, text) =>
  Math.ceil(0.58 * (item.fontSize ?? 11) * printable(String(text ?? '')).length);
