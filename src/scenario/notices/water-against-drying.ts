import type { Notice } from '../../home/notices.ts';
import type { CautionContext } from './caution-context.ts';
import { inTenths } from './in-tenths.ts';

/**
 * A humidifier and what takes water out of the same room by its humidity, where one brings the air to the
 * level at which the other starts: both run, and both cost.
 */
export function waterAgainstDrying({
  home,
  automation,
}: Pick<CautionContext, 'home' | 'automation'>): Notice[] {
  const levels = automation.deviceControls.flatMap(({ device, by }) => {
    const { name, room, does } = home.devices[device]!;
    if (by.kind !== 'reading' || by.on.quantity !== 'relative humidity') return [];
    return [
      { name, room, adds: does.kind === 'humidifier', starts: by.on.value, ends: by.on.clear },
    ];
  });
  const pairs = levels
    .filter(({ adds }) => adds)
    .flatMap((wet) =>
      levels
        .filter((dry) => !dry.adds && dry.room === wet.room)
        .filter((dry) => wet.ends >= dry.starts || dry.ends <= wet.starts)
        .map(
          (dry) =>
            `${wet.name} (up to ${inTenths(wet.ends)} %) and ${dry.name} (down to ${inTenths(dry.ends)} %)`,
        ),
    );
  if (pairs.length === 0) return [];
  return [
    {
      id: 'against-each-other',
      text: `Work against each other in one room: ${pairs.join('; ')}. One adds the water that the other takes out, and both are paid for: leave a gap of ten points between them.`,
    },
  ];
}
