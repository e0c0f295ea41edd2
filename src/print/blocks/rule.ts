import type { BlockOf } from '../../pattern/node.ts'
import type { Composer, Strips } from '../composer.ts'

/** A pause in the text: a short hairline. */
export function setRule(_: BlockOf<'rule'>, { frame, look }: Composer): Strips {
  const draw: Strips[number]['draw'] = (pen, top) => {
    pen.rule(frame.text, top + 6, frame.text + 48, top + 6, look.colours.hairline, 0.75)
  }
  return [{ height: 12, gap: 10, keep: false, draw }]
}
