/** Size of a picture of daily means beside the knobs, which keeps its place from before it is drawn. [px] */
export const DAYS_WIDTH = 576;
export const DAYS_HEIGHT = 150;

export const DAYS_BOX = `0 0 ${DAYS_WIDTH} ${DAYS_HEIGHT}`;
