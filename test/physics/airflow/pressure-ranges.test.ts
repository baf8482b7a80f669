import { crackFlow } from '../../../src/physics/airflow/crack-flow.ts';
import { localWindRatio } from '../../../src/physics/airflow/local-wind.ts';
import { orificeFlow } from '../../../src/physics/airflow/orifice-flow.ts';
import { quadraticFlow, quadraticLaw } from '../../../src/physics/airflow/quadratic-law.ts';
import { roofPressureCoefficient } from '../../../src/physics/airflow/roof-pressure-coefficient.ts';
import { wallPressureCoefficient } from '../../../src/physics/airflow/wall-pressure-coefficient.ts';
import { testRanges } from '../test-ranges.ts';

const LAW = { a: 20, b: 100 };

const law = (low: number, flow: number, high: number, more: number) =>
  quadraticLaw({ pressure: low, flow }, { pressure: high, flow: more });

testRanges([
  ['crackFlow: coefficient', [0, 1000], 'm3/(s Pa^n)', (x) => crackFlow(x, 0.65, 4)],
  ['crackFlow: exponent', [0.5, 1], '', (x) => crackFlow(1, x, 4)],
  ['crackFlow: pressure', [-10_000, 10_000], 'Pa', (x) => crackFlow(1, 0.65, x)],
  ['quadraticLaw: flow at the lower pressure', [1e-12, 1000], 'm3/s', (x) => law(4, x, 50, 5 * x)],
  ['quadraticLaw: lower pressure', [1e-3, 1e4], 'Pa', (x) => law(x, 1, 10 * x, 5)],
  ['quadraticLaw: higher over lower pressure', [1.1, 1000], '', (x) => law(1, 1, x, x)],
  ['quadraticFlow: pressure', [-10_000, 10_000], 'Pa', (x) => quadraticFlow(LAW, x)],
  ['orificeFlow: area', [0, 100], 'm2', (x) => orificeFlow(x, 4, 1.2)],
  ['orificeFlow: pressure', [-10_000, 10_000], 'Pa', (x) => orificeFlow(1, x, 1.2)],
  ['orificeFlow: density', [0.5, 2], 'kg/m3', (x) => orificeFlow(1, 4, x)],
  ['orificeFlow: discharge coefficient', [0, 1], '', (x) => orificeFlow(1, 4, 1.2, x)],
  ['localWindRatio: height', [1, 400], 'm', (x) => localWindRatio('open', x, 'open', 10)],
  ['localWindRatio: station height', [1, 200], 'm', (x) => localWindRatio('open', 10, 'open', x)],
  ['wallPressureCoefficient: angle', [-720, 720], 'deg', (x) => wallPressureCoefficient(x)],
  ['wallPressureCoefficient: side ratio', [0.25, 4], '', (x) => wallPressureCoefficient(45, x)],
  ['roofPressureCoefficient: tilt', [0, 90], 'deg', (x) => roofPressureCoefficient(x)],
]);
