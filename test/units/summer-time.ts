// One hour ahead of UTC in winter, two in summer; jumps at 01:00 UTC. Invented dates.
export const SPRING = Date.UTC(2023, 2, 26, 1) / 1000;
export const AUTUMN = Date.UTC(2023, 9, 29, 1) / 1000;
export const AHEAD = { from: [0, SPRING, AUTUMN], offset: [3600, 7200, 3600] };
