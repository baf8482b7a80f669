import type { SunOrigin } from '../weather.ts';
import type { WeatherDescription } from './weather-description.ts';

/** A description's figures as sentences for a householder. */
export function describeInWords(d: Omit<WeatherDescription, 'words'>): string[] {
  const { temperature: t, wind, sun } = d;
  const words = [
    `${d.title || 'A place without a name'}: ${d.hours} hours in steps of ${d.step_minutes} minutes from ` +
      `${d.from}${d.typical ? ', a typical year that closes on itself' : ''}.`,
    `Mean ${t.mean_c.toFixed(1)} °C; lowest ${t.lowest_c.toFixed(1)} °C at ${t.lowest_at}, highest ` +
      `${t.highest_c.toFixed(1)} °C at ${t.highest_at}; ${Math.round(t.hours_below_0_c)} hours below 0 °C.`,
  ];
  const british = d.degree_days[0];
  if (british !== undefined) {
    const { by_daily_mean, by_max_min, by_hour } = british.heating;
    words.push(
      `${Math.round(by_daily_mean)} K d of heating below ${british.base_c} °C by daily means ` +
        `(${Math.round(by_max_min)} by highest and lowest, ${Math.round(by_hour)} by the hour).`,
    );
  }
  words.push(humidityWords(d));
  const from = wind.prevailing === null ? '' : `, mostly from the ${wind.prevailing}`;
  words.push(
    `Wind ${wind.mean_m_per_s.toFixed(1)} m/s on average${from}; at most ${wind.highest_m_per_s.toFixed(1)}.`,
  );
  words.push(
    sun.origin === 'none'
      ? 'No sun in the file: rooms will get none.'
      : `Sun ${Math.round(sun.global_kwh_per_m2)} kWh/m2 on the horizontal, ` +
          `${Math.round(100 * sun.direct_share)} % of it direct (${ORIGINS[sun.origin]}).`,
  );
  return words;
}

/** The driest month is the one in which airing dries most. */
function humidityWords(d: Omit<WeatherDescription, 'words'>): string {
  const all = d.humidity;
  const relative = `Mean relative humidity ${Math.round(all.mean_relative_humidity_pct)} %`;
  const density = (g: number) => `${g.toFixed(1)} g of water in a cubic metre`;
  if (d.months.length < 2) return `${relative}, ${density(all.mean_vapour_density_g_per_m3)}.`;
  const grams = d.months.map((month) => month.mean_vapour_density_g_per_m3);
  const least = Math.min(...grams);
  const most = Math.max(...grams);
  const name = (g: number) => d.months[grams.indexOf(g)]!.month;
  return (
    `${relative}; least water in month ${name(least)}, ${density(least)}, ` +
    `most in month ${name(most)}, ${most.toFixed(1)} g.`
  );
}

const ORIGINS: Readonly<Record<SunOrigin, string>> = {
  measured: 'direct and diffuse as in the file',
  'split from global': 'split from global',
  'made from cloud': 'made from cloud, roughly',
  invented: 'invented',
  none: '',
};
