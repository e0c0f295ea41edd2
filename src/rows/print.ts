import type { PlaceKind } from './fabric.ts'
import type { Dictionary } from './terms/dictionary.ts'
import { printStitch } from './terms/dictionary.ts'
import type { BaseStitch, Stitch, StitchStyle } from './terms/stitch.ts'

const stylesByName: Readonly<Record<string, StitchStyle>> = {
  frontPost: 'frontPost',
  backPost: 'backPost',
  extended: 'extended',
  foundation: 'foundation',
}

function baseOf(name: string, dictionary: Dictionary): BaseStitch | null {
  for (const base of dictionary.byBase.keys()) if (base === name) return base
  return null
}

/** The stitch that a tally key stands for; null for spaces, specials and the like. */
function stitchOfKey(key: string, dictionary: Dictionary): Stitch | null {
  const [first = '', second] = key.split(':')
  const style = second === undefined ? 'plain' : stylesByName[first]
  const base = baseOf(second ?? first, dictionary)
  return style === undefined || base === null ? null : { base, style }
}

/** The ledger's key for a tally: `dc`, `ch-2 sp`, `shell`, `sc2tog`, `ch`. */
export function printTally(key: string, dictionary: Dictionary): string {
  const stitch = stitchOfKey(key, dictionary)
  if (stitch !== null) return printStitch(dictionary, stitch)
  if (key === 'chain') return 'ch'
  const [first = '', ...rest] = key.split(':')
  return first === 'space' ? `ch-${rest.join(':')} sp` : rest.join(':')
}

/** A place of a row by the name of what it is: `dc`, `ch-2 sp`, `shell`; null for what no phrase names. */
export function printPlace(kind: PlaceKind, dictionary: Dictionary): string | null {
  switch (kind.what) {
    case 'stitch':
      return kind.stitch === null ? kind.name : printStitch(dictionary, kind.stitch)
    case 'space':
      return `ch-${kind.chains} sp`
    case 'chain':
      return 'ch'
    case 'rowEnd':
      return 'row end'
    case 'turning':
      return null
  }
}
