import { frontierChart } from '../charts/frontier-chart.ts';
import { chartsToSvg } from '../charts/to-svg.ts';
import { valueText } from './sweep-text.ts';

/** A run as the picture needs it. */
interface PicturedRun {
  readonly plan: string;
  readonly values: Readonly<Record<string, number>>;
  readonly money: number;
  readonly hours: number;
}

/** Runs of a sweep, those that no other beats, and where these bend. */
interface PicturedSweep {
  readonly currency: string;
  readonly bargains: readonly PicturedRun[];
  readonly front: readonly PicturedRun[];
  readonly bend: PicturedRun | null;
}

/** Money against hours outside the bands, drawn as an SVG file of its own. */
export async function frontierPicture(sweep: PicturedSweep): Promise<string> {
  const { currency, bargains, front, bend } = sweep;
  const frontier = front.map(named);
  const data = { currency, runs: bargains, frontier, bend: bend === null ? null : named(bend) };
  const drawing = { id: 'frontier', chart: frontierChart(data, WIDTH) };
  const [svg] = await chartsToSvg([drawing], { standalone: true });
  return svg!;
}

/** A run by its plan and its values, each called by the end of its pointer. */
const named = ({ plan, values, money, hours }: PicturedRun) => {
  const words = Object.entries(values).map(([pointer, value]) => {
    const end = pointer.split('/').at(-1)!.replaceAll('~1', '/').replaceAll('~0', '~');
    return `${end} ${valueText(value)}`;
  });
  return { name: [plan, ...words].join(', '), money, hours };
};

const WIDTH = 720; // px
