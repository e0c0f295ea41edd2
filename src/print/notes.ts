import type { Composer } from './composer.ts'
import { breakLines } from './line.ts'
import type { Strip } from './strip.ts'
import { drawLine } from './strip.ts'

/** Fewer lines are no room to write in. */
const fewest = 3
/** Between written lines, as a multiple of the leading. */
const lineSpace = 1.5

/** Lines to write on, as many as the page has room for; where that is too little, on a page of their own. */
export function setNotes(composer: Composer): Strip {
  const { frame, look } = composer
  const style = look.section.style
  const [words] = breakLines(composer, [{ text: 'Your notes', style }], frame.end - frame.start)
  const heading = look.section.leading
  const pitch = look.leading.text * lineSpace
  return {
    height: heading + fewest * pitch,
    gap: look.section.gap * 1.5,
    keep: false,
    draw: () => {},
    fills: (pen, top, height) =>
      pen.artifact('Layout', () => {
        const setting = { tag: composer.parent, x: frame.start, width: 0, leading: heading }
        if (words !== undefined) drawLine(pen, words, setting, top)
        for (let y = top + heading + pitch; y <= top + height + 0.01; y += pitch)
          pen.rule(frame.start, y, frame.end, y, look.colours.hairline, 0.5)
      }),
  }
}
