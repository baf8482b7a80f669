import { mapping, readTolerantly } from '../checks/tolerant-readers.ts';
import type { PreparedPlan } from '../prepared.ts';

/**
 * Settings with which electricity is so many times as dear at all hours.
 *
 * @param raw    the scenario with its plan laid on, as plain values
 * @param times  [-]
 * @returns null where its prices are in a file, which settings do not reach
 */
export function scaleElectricityPrice(
  raw: unknown,
  { prices }: Pick<PreparedPlan, 'prices'>,
  times: number,
): string[] | null {
  const written = mapping(raw, 'money')['electricity'];
  const { day, night, prices: file, price, blocks } = mapping(written);
  if (file !== undefined) return null;
  const at = (where: string, price: number) => `/money/electricity${where}=${price * times}`;
  if (day !== undefined && night !== undefined) {
    return [at('/day', readTolerantly(day, '-')), at('/night', readTolerantly(night, '-'))];
  }
  if (Array.isArray(blocks) && blocks.length > 0) {
    const each = blocks.map((block, k) =>
      at(`/blocks/${k}/price`, readTolerantly(mapping(block)['price'], '-')),
    );
    return [at('/price', readTolerantly(price, '-')), ...each];
  }
  const tariff = prices.fuels.electricity?.tariff;
  if (tariff?.by !== 'flat') return null;
  return [at(typeof written === 'number' ? '' : '/price', tariff.price)];
}
