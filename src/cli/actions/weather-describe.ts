import type { WeatherDescription } from '../../weather/describe/weather-description.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { readOutdoors } from '../load/read-outdoors.ts';
import type { BesideFile } from '../weather-options.ts';

/** What may be said beside the file's name. */
export interface DescribeOptions extends BesideFile {
  readonly json?: true;
}

/** Print what an outdoor file holds. */
export async function describe(
  io: Io,
  path: string,
  { json, ...beside }: DescribeOptions,
): Promise<void> {
  const { describeWeather } = await import('../../weather/describe/describe-weather.ts');
  const description = describeWeather(await readOutdoors(io, path, beside));
  if (json) {
    io.out(jsonText(description));
    return;
  }
  const { wrapText } = await import('../../report/tables/wrap-text.ts');
  const parts = [
    description.words.map((sentence) => wrapText(sentence, '', io.width)).join('\n'),
    await monthTable(description, io.width),
    ...description.notes.map(({ text }) => wrapText(text, 'note: ', io.width)),
  ];
  io.out(`${parts.join('\n\n')}\n`);
}

async function monthTable({ months }: WeatherDescription, width: number): Promise<string> {
  const { textTable } = await import('../../report/tables/text-table.ts');
  const { figureText } = await import('../../units/figure-text.ts');
  type Month = (typeof months)[number];
  const column = (head: string, figure: (month: Month) => number, decimals: number) => ({
    head,
    cells: months.map((month) => figureText(figure(month), decimals)),
  });
  return textTable(
    [
      { head: 'month', cells: months.map((month) => month.month), align: 'left' },
      column('mean\n[°C]', (m) => m.mean_c, 1),
      column('lowest\n[°C]', (m) => m.lowest_c, 1),
      column('highest\n[°C]', (m) => m.highest_c, 1),
      column('humidity\n[%]', (m) => m.mean_relative_humidity_pct, 0),
      column('vapour\n[g/m3]', (m) => m.mean_vapour_density_g_per_m3, 1),
      column('wind\n[m/s]', (m) => m.mean_wind_m_per_s, 1),
      column('sun\n[kWh/m2 d]', (m) => m.global_kwh_per_m2_day, 2),
      column('heating\n[K d]', (m) => m.heating_degree_days, 0),
    ],
    width,
  );
}
