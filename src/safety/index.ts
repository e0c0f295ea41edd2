export type { FoundCaution } from './cautions.ts'
export { cautionsFor } from './cautions.ts'
export type { Piece, Said } from './piece.ts'
