/** An instant as text to the minute, such as 2023-01-31T05:00Z. @param utc instant [s UTC] */
export const isoTime = (utc: number): string => `${toMinute(utc)}Z`;

/** What a wall clock shows, to the minute: "2023-01-31 05:00". @param local  counted like UTC seconds [s] */
export const isoMinute = (local: number): string => toMinute(local).replace('T', ' ');

/** The day that a wall clock is in: "2023-01-31". @param local  counted like UTC seconds [s] */
export const isoDay = (local: number): string => toMinute(local).slice(0, 10);

const toMinute = (seconds: number): string => new Date(seconds * 1000).toISOString().slice(0, 16);
