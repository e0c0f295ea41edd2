import type { Pattern, YarnUse } from '../pattern/pattern.ts'
import type { Composer, Strips } from './composer.ts'
import type { Grid } from './grid.ts'
import { setGrid } from './grid.ts'
import { cell, inRoom } from './sizes.ts'

/** Yarn by size as a table, one for each yarn; nothing where there is one size, whose amount stands with the yarn. */
export function setYarn({ sizes, materials, yarn }: Pattern, composer: Composer): Strips {
  if (sizes.length < 2) return []
  const frame = { ...composer.frame, start: composer.frame.text }
  return materials.yarn.flatMap(({ as }) => {
    const use = yarn[as]
    const name = materials.yarn.length > 1 ? `Yarn (${as})` : 'Yarn'
    return use === undefined
      ? []
      : setGrid(inRoom(yarnGrid(name, sizes, use, composer), frame.end - frame.text, composer), { ...composer, frame })
  })
}

function yarnGrid(name: string, sizes: readonly string[], use: YarnUse, composer: Composer): Grid {
  const { metres, yards, grams, skeins, margin } = use
  const lines: readonly (readonly [label: string, bySize: readonly number[] | null])[] = [
    ['Metres', metres],
    ['Yards', yards],
    ['Grams', grams],
    [`Skeins, with ${margin} % to spare`, skeins],
  ]
  const header = [name, ...sizes].map((words) => cell(words, 'Column', composer))
  const rows = lines.flatMap(([label, bySize]) => {
    if (bySize === null) return []
    return [[cell(label, 'Row', composer), ...bySize.map((amount) => cell(String(amount), null, composer))]]
  })
  return [header, ...rows]
}
