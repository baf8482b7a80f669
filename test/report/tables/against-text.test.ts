import { expect, test } from 'vitest';
import { againstText } from '../../../src/report/tables/against-text.ts';
import type { AgainstLog } from '../../../src/studies/against/against-log.ts';

test('a run far worse than guessing is that, however far, and its table stays one', () => {
  const misfit = {
    ...{ room: 'bedroom', quantity: 'relative humidity', unit: '%', hours: 1151 },
    ...{ mean_logged: 20.7, mean_simulated: 84.8, bias: 64.1, rmse: 64.4 },
    skill: { mean: -99.5, same_hour_of_week: -8929.3, last_day_repeated: null },
  };
  const against = {
    ...{ scenario: 'Home', plan: 'now', misfits: [misfit], rooms: {}, typical_weather: false },
    period: { from: '2023-10-08T00:00Z', to: '2023-11-24T23:00Z', hours: 1151 },
  } as unknown as AgainstLog;
  const lines = againstText(against, 80).split('\n');
  expect(lines.find((line) => line.startsWith('bedroom RH [%]'))).toMatch(
    /^bedroom RH \[%\] +1151 +20\.7 +84\.8 +\+64\.1 +64\.4 -99\.50 <-100 +-$/,
  );
});
