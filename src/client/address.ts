/**
 * Choices in the address of a page: `?size=adult-s&terms=uk`. What is not a choice of ours stays as it is.
 */

/** A name as it stands in an address: `Adult S` is `adult-s`. */
function inAddress(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
}

/** Names as they stand in addresses, each its own: of `S` and `S+` the second is `s-2`. */
export function inAddresses(names: readonly string[]): readonly string[] {
  const taken = new Set<string>()
  return names.map((name) => {
    const plain = inAddress(name)
    let own = plain
    for (let next = 2; own === '' || taken.has(own); next += 1) own = `${plain}-${next}`
    taken.add(own)
    return own
  })
}

/** The part of an address after the path, with a choice set or, with null, taken out; other parts keep their order. */
export function withChoice(search: string, name: string, value: string | null): string {
  const found = new URLSearchParams(search)
  if (value === null) found.delete(name)
  else found.set(name, value)
  const text = found.toString()
  return text === '' ? '' : `?${text}`
}

/** The value that an address asks for, of those there are: `?size=Adult+S` means `adult-s` too. Null when it asks for none. */
export function choiceIn(search: string, name: string, values: readonly string[]): string | null {
  const asked = new URLSearchParams(search).get(name)
  return asked === null ? null : (values.find((value) => value === inAddress(asked)) ?? null)
}
