import type { Pattern } from '../pattern/pattern.ts'
import { setRuns } from './blocks/paragraph.ts'
import type { Composer, Picture, Strips } from './composer.ts'
import { dateWords } from './date.ts'
import type { Run } from './line.ts'
import { breakLines } from './line.ts'
import { fitPicture } from './picture.ts'
import type { Strip } from './strip.ts'
import { after, heightOf, lineStrips } from './strip.ts'
import type { Style } from './style.ts'
import { styles } from './style.ts'
import { tag } from './tag.ts'

const coverWidth = 168
const coverHeight = 224

/** Title, summary and edition, with the cover at their right. */
export function setMasthead(pattern: Pattern, studio: string, composer: Composer): Strips {
  const { frame } = composer
  const cover = pattern.cover === null ? null : composer.pictureOf(pattern.cover.src)
  const end = cover === null ? frame.end : frame.end - coverWidth - 24
  const words = setWords(pattern, studio, { ...composer, frame: { ...frame, text: frame.start, end } })
  return cover === null ? words : besideCover(words, cover, pattern.cover?.alt ?? '', composer)
}

function setWords(pattern: Pattern, studio: string, composer: Composer): Strips {
  const { frame, parent } = composer
  const paragraph = (text: string, style: Style): Strips => setRuns([{ text, style }], composer, tag('P', parent))
  const title = lineStrips(
    breakLines(composer, [titleRun(pattern.title)], frame.end - frame.start),
    {
      tag: tag('H1', parent),
      x: frame.start,
      width: frame.end - frame.start,
      leading: titleSize(pattern.title) * 1.18,
    },
    4,
  )
  return [
    ...(studio === '' ? [] : paragraph(studio, styles.soft)),
    ...title.map((strip, index) => (index === 0 ? bookmarked(strip, pattern.title) : strip)),
    ...(pattern.summary === null ? [] : after(8, paragraph(pattern.summary, styles.text))),
    ...after(8, paragraph(factWords(pattern), styles.soft)),
  ]
}

function bookmarked(strip: Strip, title: string): Strip {
  const draw: Strip['draw'] = (pen, top) => {
    pen.bookmark(title, 1, top)
    strip.draw(pen, top)
  }
  return { ...strip, draw }
}

/** A long title is set smaller, so that it stays a title and not a page. */
const titleSize = (title: string): number => (title.length > 90 ? 17 : title.length > 40 ? 22 : 28)

function titleRun(title: string): Run {
  return { text: title, style: { ...styles.text, face: 'title', size: titleSize(title) } }
}

const skills = { basic: 'Basic', easy: 'Easy', intermediate: 'Intermediate', complex: 'Complex' } as const

/** `Edition 1.1 · 14 March 2026 · Easy · US terms` */
function factWords({ edition, published, skill, terms }: Pattern): string {
  const facts = [
    edition === null ? null : `Edition ${edition}`,
    published === null ? null : dateWords(published),
    skill === null ? null : skills[skill],
    terms === 'us' ? 'US terms' : 'UK terms',
  ]
  return facts.filter((fact) => fact !== null).join(' · ')
}

/** The cover's upper edge is that of the first line; what follows stands clear of both. */
function besideCover(words: Strips, cover: Picture, alt: string, composer: Composer): Strips {
  const { width, height } = fitPicture(cover, coverWidth, coverHeight)
  const figure = tag('Figure', composer.parent, { alt })
  const x = composer.frame.end - width
  const kept = words.map((strip) => ({ ...strip, keep: true }))
  const rest = Math.max(0, height - heightOf(words, true))
  const filler: Strip = {
    height: rest,
    gap: 0,
    keep: false,
    draw: (pen, top) =>
      pen.picture(cover.image, figure, x, top + rest - Math.max(height, heightOf(words, true)), width, height),
  }
  return [...kept, filler]
}
