/** Findings about proof. */
export const proofFindings = {} as const
