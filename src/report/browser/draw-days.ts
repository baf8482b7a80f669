import type { LivingFigures } from '../../living/messages.ts';

/** Draws daily means as plain lines, because they follow a finger: as it is dashed, as tried solid. */
export function drawDays(into: HTMLElement, was: LivingFigures, is: LivingFigures): void {
  into.replaceChildren(
    lines('coldest surface', '%', [was.coldSpot, is.coldSpot], 80),
    lines('temperature', '°C', [was.temperature, is.temperature], null),
  );
}

function lines(
  name: string,
  unit: string,
  series: readonly (readonly number[])[],
  mark: number | null,
): SVGElement {
  const all = [...series.flat(), ...(mark === null ? [] : [mark])];
  const low = Math.floor(Math.min(...all) / STEP) * STEP;
  const high = Math.ceil(Math.max(...all) / STEP) * STEP;
  const svg = make('svg', { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, class: 'days', role: 'img' });
  svg.setAttribute('aria-label', `${name}, daily means from ${low} to ${high} ${unit}`);
  const y = (value: number): number =>
    HEIGHT - 4 - ((value - low) / Math.max(1, high - low)) * (HEIGHT - 8);
  const label = (value: number): SVGElement => {
    const text = make('text', { x: '0', y: String(y(value) + (value === high ? 10 : -2)) });
    text.textContent = `${value} ${unit}`;
    return text;
  };
  svg.append(label(low), label(high));
  if (mark !== null) svg.append(make('path', { class: 'mark', d: `M${LEFT} ${y(mark)}H${WIDTH}` }));
  series.forEach((values, k) => {
    const step = (WIDTH - LEFT) / Math.max(1, values.length - 1);
    const d = values.map(
      (value, day) =>
        `${day === 0 ? 'M' : 'L'}${(LEFT + day * step).toFixed(1)} ${y(value).toFixed(1)}`,
    );
    svg.append(make('path', { class: k === 0 ? 'was' : 'is', d: d.join('') }));
  });
  return svg;
}

function make(name: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const made = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}

const WIDTH = 576;
const HEIGHT = 130;
const LEFT = 46;
const STEP = 5;
