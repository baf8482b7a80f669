import { preset } from '../units/preset.ts';
import type { SpeciesFacts } from './species-facts.ts';

const BREATH = 'Persily and de Jonge 2017, table 4: mean of men and women from 21 to 60 years';

/** Breathed out by people: harmless as it is in homes, and a sign of how stale the air is. */
export const CARBON_DIOXIDE = {
  name: 'co2',
  symbol: 'CO2',
  words: 'Carbon dioxide',
  plainName: 'CO2',
  alsoCalled: ['carbon dioxide'],
  unit: 'ppm',
  role: 'indicator',
  // Below what air outdoors has held since measurements began.
  leastInAir: 300,
  outdoors: preset(420, 400, 480, 'NOAA, world mean of 2023: 419.3 ppm'),
  band: {
    high: 1000,
    hours: 0,
    reason: 'German environment agency scale: under 1000 ppm unobjectionable',
    counted: 'occupied',
  },
  limits: {
    level: 5000,
    band: 50_000,
    weather: [200, 5000],
    weatherHint: 'outdoors it is about 420',
  },
  sensor: {
    bias: preset(0, -50, 50),
    noise: preset(15, 5, 40),
    step: preset(1, 1, 10),
    lag: preset(3, 1, 10),
    every: preset(5, 1, 15),
  },
  // Methane, 54.9 g a net MJ at 20 °C; 1.108 is gross over net. Closed form.
  perGas: 97.4,
  sources: {
    activity: {
      key: 'co2',
      description: 'Carbon dioxide that the activity gives off each time, besides that of gas',
      max: 10_000,
      usual: {
        candles: preset(17, 8, 48, 'paraffin of 5 g/h burnt whole, 8.5 L/h each, over two hours'),
      },
    },
    body: {
      key: 'co2',
      description: 'Carbon dioxide breathed out',
      max: 1,
      awake: preset(0.0186, 0.014, 0.024, `${BREATH}, at 1.4 met`),
      asleep: preset(0.0126, 0.011, 0.0142, `${BREATH}, at 0.95 met`),
      breathed: true,
    },
  },
} as const satisfies SpeciesFacts;
