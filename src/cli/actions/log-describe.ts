import type { LogDescription, SeriesDescription } from '../../log/describe/describe-log.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { loadLogAlone } from '../load/load-log.ts';
import type { BesideLog } from '../options.ts';

/** What may be said beside the files' names. */
export interface LogDescribeOptions extends BesideLog {
  readonly json?: true;
}

/** Print how log files are understood and what they hold. */
export async function describeLogFiles(
  io: Io,
  paths: readonly string[],
  { json, ...beside }: LogDescribeOptions,
): Promise<void> {
  const { describeLog } = await import('../../log/describe/describe-log.ts');
  const description = describeLog(await loadLogAlone(io, paths, beside));
  if (json) {
    io.out(jsonText(description));
    return;
  }
  const { wrapText } = await import('../../report/tables/wrap-text.ts');
  const { words, warnings } = description;
  const parts = [
    words.map((sentence) => wrapText(sentence, '', io.width)).join('\n'),
    await seriesTable(description, io.width),
    ...warnings.map(({ text }) => wrapText(text, 'note: ', io.width)),
  ];
  io.out(`${parts.join('\n\n')}\n`);
}

async function seriesTable({ series, from, to }: LogDescription, width: number): Promise<string> {
  const { textTable } = await import('../../report/tables/text-table.ts');
  const { figureText } = await import('../../units/figure-text.ts');
  const column = (head: string, figure: (one: SeriesDescription) => number, decimals?: number) => ({
    head,
    cells: series.map((one) => figureText(figure(one), decimals)),
  });
  const text = (head: string, cell: (one: SeriesDescription) => string) => ({
    ...{ head, cells: series.map(cell), align: 'left' as const },
  });
  const table = textTable(
    [
      text('where', (one) => one.device ?? one.room ?? (one.place === 'home' ? 'home' : one.place)),
      text('what', ({ quantity }) => SHORT[quantity] ?? quantity),
      column('readings', (one) => one.readings, 0),
      text('every', (one) => (one.on_change ? 'change' : minutes(one.every_minutes))),
      column('longest\ngap [h]', (one) => one.longest_gap_hours, 1),
      column('lowest', (one) => one.lowest),
      column('mean', (one) => one.mean),
      column('highest', (one) => one.highest),
    ],
    width,
  );
  return `${from} to ${to}\n\n${table}`;
}

const minutes = (every: number): string =>
  every >= 60 ? `${Math.round(every / 6) / 10} h` : `${Math.round(every * 10) / 10} min`;

const SHORT: Readonly<Record<string, string>> = {
  temperature: 'temp [°C]',
  'relative humidity': 'RH [%]',
  'dew point': 'dew point [°C]',
  'heating power': 'heating [W]',
  'heating electricity': 'el. heating [W]',
  electricity: 'electricity [W]',
  gas: 'gas [W]',
  'device power': 'power [W]',
};
