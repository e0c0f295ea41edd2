/** A place as an editor counts it: line and column both start at 1. */
export interface Place {
  readonly line: number
  readonly column: number
}

/** A draft's text with its line starts, found once, so that offsets can be shown as lines. */
export interface Source {
  readonly name: string
  readonly text: string
  readonly lineStarts: readonly number[]
}

export function createSource(name: string, text: string): Source {
  const lineStarts = [0]
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) lineStarts.push(at + 1)
  return { name, text, lineStarts }
}

/** Line and column of an offset; an offset past the end counts as the end. */
export function placeOf(source: Source, offset: number): Place {
  const at = Math.min(Math.max(offset, 0), source.text.length)
  let low = 0
  let high = source.lineStarts.length - 1
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if ((source.lineStarts[middle] ?? 0) <= at) low = middle
    else high = middle - 1
  }
  return { line: low + 1, column: at - (source.lineStarts[low] ?? 0) + 1 }
}
