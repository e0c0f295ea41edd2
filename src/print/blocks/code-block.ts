import type { BlockOf } from '../../pattern/node.ts'
import type { Composer, Strips } from '../composer.ts'
import { breakLines } from '../line.ts'
import { lineStrips } from '../strip.ts'
import { tag } from '../tag.ts'

/** Text line by line as it was typed, its spaces kept. */
export function setCodeBlock(block: BlockOf<'codeBlock'>, composer: Composer): Strips {
  const { text, end } = composer.frame
  const { styles, leading } = composer.look
  const kept = block.text.replace(/\n$/, '').replace(/ {2,}|^ /gm, (spaces) => '\u00a0'.repeat(spaces.length))
  const lines = breakLines(composer, [{ text: kept, style: styles.code }], end - text)
  const code = tag('Code', tag('P', composer.parent))
  return lineStrips(lines, { tag: code, x: text, width: end - text, leading: leading.text }, 8)
}
