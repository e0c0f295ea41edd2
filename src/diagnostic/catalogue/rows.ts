/** Findings about rows. */
export const rowFindings = {} as const
