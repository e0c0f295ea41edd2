/** How sizes are called besides by their own names. */
const alike: readonly (readonly string[])[] = [
  ['xxs', '2xs', 'extra extra small', 'xx-small'],
  ['xs', 'x-small', 'xsmall', 'extra small', 'extra-small'],
  ['s', 'small', 'sm'],
  ['m', 'medium', 'med'],
  ['l', 'large', 'lg'],
  ['xl', 'x-large', 'xlarge', 'extra large', 'extra-large', '1x', '1xl'],
  ['2x', '2xl', 'xxl', 'xx-large', '2x-large', 'extra extra large'],
  ['3x', '3xl', 'xxxl', '3x-large'],
  ['4x', '4xl', '4x-large'],
  ['5x', '5xl', '5x-large'],
  ['6x', '6xl'],
]

/** Every way to name a size, longest first: `Adult S` must not be found inside `Adult S Tall`. */
export type SizeNames = readonly { readonly name: string; readonly size: number }[]

/** The draft's own names, and those that mean the same where no other size is called so. */
export function namesOf(sizes: readonly string[]): SizeNames {
  const own = sizes.map((name) => name.trim().toLowerCase())
  const found = new Map<string, number>()
  own.forEach((name, size) => {
    if (name !== '' && !found.has(name)) found.set(name, size)
  })
  own.forEach((name, size) => {
    const others = alike.find((group) => group.includes(name)) ?? []
    for (const other of others) if (!found.has(other)) found.set(other, size)
  })
  return [...found].map(([name, size]) => ({ name, size })).sort((a, b) => b.name.length - a.name.length)
}

/** The size whose name stands at a place, as a whole word. */
export function sizeAt(
  text: string,
  at: number,
  names: SizeNames,
): { readonly size: number; readonly end: number } | null {
  for (const { name, size } of names) {
    const end = at + name.length
    if (text.slice(at, end).toLowerCase() !== name) continue
    if (/[\p{L}\d]/u.test(text[end] ?? '')) continue
    return { size, end }
  }
  return null
}
