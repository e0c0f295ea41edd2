export type { FaceName, FontFile, Fonts } from './face.ts'
export type { Studio } from './furniture.ts'
export type { Printed, PrintOptions } from './render.ts'
export { renderPdf } from './render.ts'
