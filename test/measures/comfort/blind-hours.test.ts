import { expect, test } from 'vitest';
import type { Home } from '../../../src/home/home.ts';
import { home, measure, room, setup } from '../hand-made.ts';

const pane = (index: number): Home['panes'][number] => ({
  ...{ name: `window ${index}`, room: index, area: 1, uValue: 2, gValue: 0.6, frameShare: 0.2 },
  ...{ unshaded: 1, azimuth: 180, tilt: 90 },
});

const blind = (index: number) => ({
  ...{ name: `window ${index} curtain`, pane: index, inside: true, gShare: 0.8, uShare: 0.8 },
});

const SHADED = setup({
  home: home({
    rooms: [room('den'), room('bed')],
    panes: [pane(0), pane(1)],
    blinds: [blind(1), blind(0)],
  }),
});

test('hours closed count by the share of each step, and by the pane', () => {
  // Ten minutes a step: 12 steps wholly closed and one by half are 2 h 5 min.
  const { blinds, notices } = measure(SHADED, (s) => ({
    blinds: [s < 12 ? 1 : s === 12 ? 0.5 : 0, s === 20 ? 1 : 0],
  }));
  expect(Object.keys(blinds)).toEqual(['window 1 curtain', 'window 0 curtain']);
  expect(blinds['window 1 curtain']?.room).toBe('bed');
  expect(blinds['window 1 curtain']?.closed_hours).toBeCloseTo(2 + 1 / 12, 12);
  expect(blinds['window 0 curtain']?.closed_hours).toBeCloseTo(1 / 6, 12);
  expect(notices.map(({ id }) => id)).not.toContain('blind-never-closed');
});

test('one that is open throughout has a notice', () => {
  const { notices } = measure(SHADED, () => ({ blinds: [0, 1] }));
  expect(notices.filter(({ id }) => id === 'blind-never-closed')).toEqual([
    {
      id: 'blind-never-closed',
      text: '"window 1 curtain" was never closed: look at its hours and at its levels of sun and temperature.',
    },
  ]);
});

test('a home without blinds has none', () => {
  expect(measure(setup({ home: home({ rooms: [room('den')] }) }), () => ({})).blinds).toEqual({});
});
