/** The shape that is shown whole nearly everywhere (common practice, no source); pixels. */
export const cardSize = { width: 1200, height: 630 } as const
