/** `Sizes Child and Adult S only:` for positions in the list of sizes. */
export function onlyWords(sizes: readonly string[], only: readonly number[]): string {
  const names = only.flatMap((position) => sizes[position] ?? [])
  return `${names.length === 1 ? 'Size' : 'Sizes'} ${joinNames(names)} only:`
}

function joinNames(names: readonly string[]): string {
  const last = names.at(-1) ?? ''
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`
}
