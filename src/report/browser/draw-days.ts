import type { LivingFigures } from '../../living/messages.ts';
import { MONTHS } from '../charts/in-words.ts';
import { DAYS_BOX, DAYS_HEIGHT, DAYS_WIDTH } from '../page/try-days.ts';

/**
 * Draws daily means as plain lines, because they follow a finger: as it is dashed, as tried solid.
 *
 * @param begins  first day, at midnight [s local]
 */
export function drawDays(
  into: HTMLElement,
  begins: number,
  was: LivingFigures,
  is: LivingFigures,
): void {
  into.replaceChildren(
    lines('coldest surface', '%', [was.coldSpot, is.coldSpot], { begins, mark: 80 }),
    lines('temperature', '°C', [was.temperature, is.temperature], { begins, mark: null }),
  );
}

function lines(
  name: string,
  unit: string,
  series: readonly (readonly number[])[],
  { begins, mark }: { readonly begins: number; readonly mark: number | null },
): SVGElement {
  const all = [...series.flat(), ...(mark === null ? [] : [mark])];
  const low = Math.floor(Math.min(...all) / STEP) * STEP;
  const high = Math.ceil(Math.max(...all) / STEP) * STEP;
  const svg = make('svg', { viewBox: DAYS_BOX, class: 'days', role: 'img' });
  svg.setAttribute('aria-label', `${name}, daily means from ${low} to ${high} ${unit}`);
  const y = (value: number): number =>
    PLOT - 4 - ((value - low) / Math.max(1, high - low)) * (PLOT - 8);
  const label = (value: number): SVGElement => {
    const text = make('text', { x: '0', y: String(y(value) + (value === high ? 10 : -2)) });
    text.textContent = `${value} ${unit}`;
    return text;
  };
  svg.append(label(low), label(high));
  const days = series[0]?.length ?? 0;
  const x = (day: number): number => LEFT + (day * (WIDTH - LEFT)) / Math.max(1, days - 1);
  for (const { day, text } of daysNamed(begins, days)) {
    const named = make('text', { x: x(day).toFixed(1), y: String(HEIGHT - 3) });
    named.textContent = text;
    svg.append(make('path', { class: 'tick', d: `M${x(day).toFixed(1)} ${PLOT}v4` }), named);
  }
  if (mark !== null) svg.append(make('path', { class: 'mark', d: `M${LEFT} ${y(mark)}H${WIDTH}` }));
  series.forEach((values, k) => {
    const d = values.map(
      (value, day) => `${day === 0 ? 'M' : 'L'}${x(day).toFixed(1)} ${y(value).toFixed(1)}`,
    );
    svg.append(make('path', { class: k === 0 ? 'was' : 'is', d: d.join('') }));
  });
  return svg;
}

/** Days that the level axis names: the first of each month, or the first day of a period without two of them. */
function daysNamed(begins: number, days: number): { day: number; text: string }[] {
  const at = (day: number): Date => new Date((begins + day * 86400) * 1000);
  const all = Array.from({ length: days }, (_, day) => day);
  const firsts = all.filter((day) => at(day).getUTCDate() === 1);
  const month = (day: number): string => MONTHS[at(day).getUTCMonth()]!.slice(0, 3);
  if (firsts.length > 1) {
    const apart = Math.ceil(firsts.length / MOST_NAMED);
    return firsts.filter((_, k) => k % apart === 0).map((day) => ({ day, text: month(day) }));
  }
  return all.slice(0, 1).map((day) => ({ day, text: `${at(day).getUTCDate()} ${month(day)}` }));
}

function make(name: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const made = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}

const [WIDTH, HEIGHT] = [DAYS_WIDTH, DAYS_HEIGHT];
/** Lower edge of the lines, below which days are named. [px] */
const PLOT = HEIGHT - 24;
const LEFT = 58;
const MOST_NAMED = 12;
const STEP = 5;
