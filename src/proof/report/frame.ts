import stringWidth from 'string-width'
import type { Place, Source, Span } from '../../diagnostic/index.ts'
import { placeOf } from '../../diagnostic/index.ts'
import { paperWidth } from './lines.ts'
import type { Paint } from './paint.ts'

/** A draft's line with a mark under some of its characters. */
interface Marked {
  readonly words: string
  readonly mark: string
}

const gap = '…'

/** A line without its tabs and unseen characters, each still one character long. */
function plainLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, ' ')
}

function lineText({ text, lineStarts }: Source, line: number): string {
  const start = lineStarts[line - 1] ?? 0
  return plainLine(text.slice(start, (lineStarts[line] ?? text.length + 1) - 1))
}

/** The part of a line that fits, with the marked characters in it: a third of what fits stands before them. */
function windowOf(line: string, from: number, to: number, columns: number): Marked {
  // Letters of double width: half as many of them fit.
  const room = stringWidth(line) > line.length ? Math.floor(columns / 2) : columns
  const start = line.length <= room ? 0 : Math.max(0, Math.min(from - Math.floor(room / 3), line.length - room))
  const end = Math.min(line.length, start + room)
  const cutBefore = start > 0 ? gap : ''
  const cutAfter = end < line.length ? gap : ''
  const shown = cutBefore + line.slice(start + cutBefore.length, end - cutAfter.length) + cutAfter
  const marked = shown.slice(from - start, Math.min(to, end) - start)
  const before = stringWidth(shown.slice(0, from - start))
  return { words: shown, mark: ' '.repeat(before) + '^'.repeat(Math.max(1, stringWidth(marked))) }
}

/** The characters of the first line that a stretch of the draft covers. */
function firstLine(source: Source, at: Span, { line, column }: Place): { from: number; to: number; text: string } {
  const text = lineText(source, line)
  const from = Math.min(column - 1, text.length)
  const length = Math.max(1, at.end - at.start)
  return { from, to: Math.min(text.length, from + length), text }
}

/**
 * The words of the draft at a place, with a mark under the exact characters; null for an empty line.
 *
 *     40 │ …rep from * 9 (11, 13) more times, turn. (60 (72, 84) sc)
 *        │                                          ^^^^^^^^^^^^^^^^
 */
export function frame(source: Source, at: Span, paint: Paint): string | null {
  const place = placeOf(source, at.start)
  const { from, to, text } = firstLine(source, at, place)
  if (text.trim() === '') return null
  const number = String(place.line)
  const edge = '  '
  const { words, mark } = windowOf(text, from, to, paperWidth - number.length - edge.length - 3)
  const bar = paint.faint('│')
  return [
    `${edge}${paint.faint(number)} ${bar} ${words.trimEnd()}`,
    `${edge}${' '.repeat(number.length)} ${bar} ${mark}`,
  ].join('\n')
}
