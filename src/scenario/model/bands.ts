import { quantity, section } from './fields.ts';

/** The range that counts as fine; either end may be left out. */
const band = (unit: string, min: number, max: number, says: string) =>
  section(
    {
      low: quantity(unit, { min, max }, 'Lower edge').optional(),
      high: quantity(unit, { min, max }, 'Upper edge').optional(),
    },
    says,
  );

export const bandsModel = section(
  {
    temperature: band('°C', -20, 50, 'Operative temperature').optional(),
    humidity: band('%', 0, 100, 'Relative humidity of the room air').optional(),
    co2: band('ppm', 0, 50_000, 'Carbon dioxide').optional(),
    tvoc: band('µg/m3', 0, 1e6, 'Volatile organic compounds').optional(),
    pm25: band('µg/m3', 0, 1e5, 'Fine particles, mean of 24 hours').optional(),
  },
  'Ranges that count as fine, instead of the usual ones',
);
