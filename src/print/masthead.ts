import { textForAll } from '../measure/segment.ts'
import type { Pattern } from '../pattern/pattern.ts'
import { alone, beside, pictureArtwork } from './artwork.ts'
import { setRuns } from './blocks/paragraph.ts'
import type { Composer, Strips } from './composer.ts'
import { dateWords } from './date.ts'
import { breakLines } from './line.ts'
import type { Look } from './look.ts'
import type { Strip } from './strip.ts'
import { after, lineStrips } from './strip.ts'
import type { Style } from './style.ts'
import { tag } from './tag.ts'

const coverSpace = 24
/** Tallest that a cover is below the title. */
const tallest = 320

/** Title, summary and edition, with the cover at their right, or below them where letters are large. */
export function setMasthead(pattern: Pattern, studio: string, composer: Composer): Strips {
  const { frame, look } = composer
  const cover = pattern.cover === null ? null : composer.pictureOf(pattern.cover.src)
  const alt = pattern.cover?.alt ?? ''
  if (cover === null || look.coverBeside === null) {
    const words = setWords(pattern, studio, { ...composer, frame: { ...frame, text: frame.start } })
    if (cover === null) return words
    return [...words, alone(pictureArtwork(cover, alt, frame.end - frame.start, tallest), frame.start, 16, composer)]
  }
  const artwork = pictureArtwork(cover, alt, look.coverBeside.width, look.coverBeside.height)
  const end = frame.end - artwork.width - coverSpace
  const words = setWords(pattern, studio, { ...composer, frame: { ...frame, text: frame.start, end } })
  return beside(words, artwork, composer)
}

function setWords(pattern: Pattern, studio: string, composer: Composer): Strips {
  const { frame, parent, look } = composer
  const paragraph = (text: string, style: Style): Strips => setRuns([{ text, style }], composer, tag('P', parent))
  const style = { ...look.styles.text, face: 'title', size: titleSize(pattern.title, look) } as const
  const width = frame.end - frame.start
  const setting = { tag: tag('H1', parent), x: frame.start, width, leading: style.size * 1.18 }
  const title = lineStrips(breakLines(composer, [{ text: pattern.title, style }], width), setting, 4)
  return [
    ...(studio === '' ? [] : paragraph(studio, look.styles.soft)),
    ...title.map((strip, index) => (index === 0 ? bookmarked(strip, pattern.title) : strip)),
    ...(pattern.summary === null ? [] : after(8, paragraph(pattern.summary, look.styles.text))),
    ...after(8, paragraph(factWords(pattern), look.styles.soft)),
    ...pattern.own.flatMap((own) => after(4, paragraph(ownWords(own), look.styles.text))),
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
function titleSize(title: string, { titles }: Look): number {
  const [short, longer, longest] = titles
  return title.length > 90 ? longest : title.length > 40 ? longer : short
}

const skills = { basic: 'Basic', easy: 'Easy', intermediate: 'Intermediate', complex: 'Complex' } as const

/** `Your own depth: 33 cm (13 in) instead of 26 cm (10¼ in)` */
function ownWords({ label, own, published }: Pattern['own'][number]): string {
  return `Your own ${label.toLowerCase()}: ${textForAll(own)} instead of ${textForAll(published)}`
}

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
