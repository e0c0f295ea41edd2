/** Findings about formula. */
export const formulaFindings = {} as const
