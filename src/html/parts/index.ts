import type { Element } from 'hast'
import { toHtml } from 'hast-util-to-html'
import type { Pattern } from '../../pattern/pattern.ts'
import { cautions } from './cautions.ts'
import { gauge } from './gauge.ts'
import { materials } from './materials.ts'
import { sizesTable } from './sizes-table.ts'

const parts = { sizes: sizesTable, materials, gauge, cautions } as const

/** What stands beside a pattern's text and has numbers: the page shows each in an element of its own, with `data-part`. */
export type PartName = keyof typeof parts

export const partNames: readonly PartName[] = ['sizes', 'materials', 'gauge', 'cautions']

export function partHtml(name: PartName, pattern: Pattern): string {
  return toHtml(parts[name](pattern) satisfies Element[])
}
