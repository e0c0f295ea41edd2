import type { FoundPage, FoundText } from '../read-pdf.ts'

/** Words on words: nearly on one line, and beside each other by less than nothing. */
export function overlapping(found: readonly FoundText[]): readonly (readonly [string, string])[] {
  const words = found.filter(({ text }) => text.trim() !== '')
  return words.flatMap((first, index) =>
    words.slice(index + 1).flatMap((second) => {
      const shared = Math.min(first.x + first.width, second.x + second.width) - Math.max(first.x, second.x)
      return Math.abs(first.y - second.y) < 4.5 && shared > 1 ? [[first.text, second.text] as const] : []
    }),
  )
}

/** Words in the margins, so many points from the page's edges. */
export function offPage({ found, width, height }: FoundPage, side: number, end: number): readonly FoundText[] {
  return found.filter(({ x, y, width: length }) => x < side || x + length > width - side || y < end || y > height - end)
}
