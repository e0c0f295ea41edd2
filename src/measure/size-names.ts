/** Names of the sizes at the positions given, as they stand in a sentence: `Child, Adult S and Adult L`. */
export function sizeNames(names: readonly string[], positions: readonly number[]): string {
  const chosen = positions.flatMap((position) => names[position] ?? [])
  const last = chosen.at(-1) ?? ''
  return chosen.length < 2 ? last : `${chosen.slice(0, -1).join(', ')} and ${last}`
}

/** `Size Child only`, `Sizes Child and Adult S only`: said beside words that are not for every size. */
export function onlyWords(names: readonly string[], positions: readonly number[]): string {
  return `${positions.length === 1 ? 'Size' : 'Sizes'} ${sizeNames(names, positions)} only`
}
