/**
 * Lets a reader point at a picture, or walk along it with the arrow keys, and reads out the row of
 * its table that lies there. Pictures without places of rows stay as they are.
 */
export function letReadersPoint(figure: HTMLElement): void {
  const reading = figure.querySelector<HTMLElement>('.reading')!;
  for (const drawing of figure.querySelectorAll<HTMLElement>('.drawing[data-row]')) {
    let at = -1;
    drawing.tabIndex = 0;
    drawing.setAttribute('role', 'slider');
    drawing.setAttribute('aria-label', 'Read the picture along its axis');
    drawing.setAttribute('aria-valuemin', '0');
    const line = document.createElement('div');
    line.className = 'pointer';
    line.hidden = true;
    drawing.append(line);
    describe(0);

    drawing.addEventListener('pointermove', ({ clientX }) => {
      const { from, step, scale } = places(drawing);
      const left = drawing.getBoundingClientRect().left;
      show(Math.round(((clientX - left) / scale - from) / step));
    });
    drawing.addEventListener('keydown', (event) => {
      const move = MOVES[event.key];
      if (move === undefined) return;
      event.preventDefault();
      show(move(Math.max(at, 0), rows().length));
    });
    drawing.addEventListener('focus', () => show(Math.max(at, 0)));

    function show(row: number): void {
      at = Math.max(0, Math.min(rows().length - 1, row));
      const { from, step, scale } = places(drawing);
      line.hidden = false;
      line.style.left = `${(from + at * step) * scale}px`;
      reading.hidden = false;
      reading.textContent = describe(at);
    }

    /** The row in words, for eyes and for screen readers alike. */
    function describe(row: number): string {
      const cells = Array.from(rows()[row]?.cells ?? [], (cell) => cell.textContent ?? '');
      const heads = Array.from(figure.querySelectorAll('thead th'), (head) => head.textContent);
      const words = cells.slice(1).map((cell, k) => `${heads[k + 1]} ${cell}`);
      const text = `${cells[0]}: ${words.join(', ')}`;
      drawing.setAttribute('aria-valuemax', String(rows().length - 1));
      drawing.setAttribute('aria-valuenow', String(row));
      drawing.setAttribute('aria-valuetext', text);
      return text;
    }

    function rows(): HTMLTableRowElement[] {
      const all = figure.querySelectorAll<HTMLTableRowElement>('tbody tr');
      return Array.from(all).slice(Number(drawing.dataset['row']));
    }
  }
}

/** Where rows lie, and how much the picture is shrunk to its place. */
function places(drawing: HTMLElement): { from: number; step: number; scale: number } {
  const svg = drawing.querySelector('svg')!;
  const drawn = Number(svg.getAttribute('width'));
  const { from, step } = drawing.dataset;
  return {
    from: Number(from),
    step: Number(step),
    scale: svg.getBoundingClientRect().width / drawn,
  };
}

const MOVES: Readonly<Record<string, (at: number, rows: number) => number>> = {
  ArrowRight: (at) => at + 1,
  ArrowUp: (at) => at + 1,
  ArrowLeft: (at) => at - 1,
  ArrowDown: (at) => at - 1,
  PageUp: (at) => at + 24,
  PageDown: (at) => at - 24,
  Home: () => 0,
  End: (_, rows) => rows - 1,
};
