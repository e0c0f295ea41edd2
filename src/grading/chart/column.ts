/** Size names of the trade that mean the same; both sides of a comparison go through this. */
const sameAs: ReadonlyMap<string, string> = new Map([
  ['xs', 'xsmall'],
  ['extrasmall', 'xsmall'],
  ['s', 'small'],
  ['m', 'medium'],
  ['l', 'large'],
  ['xl', 'xlarge'],
  ['extralarge', 'xlarge'],
  ['1x', 'xlarge'],
  ['1xl', 'xlarge'],
  ['xxl', '2x'],
  ['2xl', '2x'],
  ['2xlarge', '2x'],
  ['3xl', '3x'],
  ['4xl', '4x'],
  ['5xl', '5x'],
  ['women', 'woman'],
  ['men', 'man'],
  ['children', 'child'],
])

/**
 * Position of a table's size by its name, or by another name of the trade for it (`XS`, `1X`, `3 mo`), or by
 * a beginning that only one size has (`Toddler`); -1 when there is none.
 */
export function columnOf(sizes: readonly string[], name: string): number {
  const wanted = canonical(name)
  const names = sizes.map(canonical)
  const exact = names.indexOf(wanted)
  if (exact !== -1 || wanted === '') return exact
  const beginning = names.flatMap((size, position) => (size.startsWith(wanted) ? [position] : []))
  return beginning.length === 1 ? (beginning[0] ?? -1) : -1
}

function canonical(name: string): string {
  const bare = name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '')
  const months = /^(\d+)(?:m|mo|mos|mth|mths|month|months)$/.exec(bare)
  return months === null ? (sameAs.get(bare) ?? bare) : `${months[1]}months`
}
