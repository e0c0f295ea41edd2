import { textForAll } from '../measure/segment.ts'
import type { Block, Inline } from '../pattern/node.ts'
import type { Pattern } from '../pattern/pattern.ts'
import { setAbbreviations } from './abbreviations.ts'
import type { Composer, SetBlocks, Strips } from './composer.ts'
import type { PageAddress } from './corrections.ts'
import { setCorrections } from './corrections.ts'
import { sideHeading } from './side-heading.ts'
import { setSizes } from './sizes.ts'
import { setYarn } from './yarn.ts'

/** What a maker needs before the first row: sizes, materials, gauge, abbreviations and where corrections are found. */
export function setOverview(
  pattern: Pattern,
  page: PageAddress | null,
  composer: Composer,
  setBlocks: SetBlocks,
): Strips {
  const within = { ...composer, level: 2 }
  const lines = (texts: readonly string[]): Strips => setBlocks(texts.map(paragraphOf), within)
  const sizes = setSizes(pattern, within)
  const sections: readonly (readonly [title: string, strips: Strips, acrossPage?: boolean])[] = [
    ['Sizes', sizes.strips, sizes.acrossPage],
    ['Materials', [...setBlocks([listOf(materialLines(pattern))], within), ...setYarn(pattern, within)]],
    ['Safety', setBlocks(pattern.cautions.flatMap(cautionBlocks), beside(within))],
    [pattern.terms === 'us' ? 'Gauge' : 'Tension', lines(pattern.gauge.map(gaugeWords))],
    ['Film', pattern.film === null ? [] : setBlocks(filmBlocks(pattern.film), within)],
    ['Abbreviations', setAbbreviations(pattern.abbreviations, within)],
    [page === null ? 'Changes' : 'Corrections', setCorrections(pattern.changes, page, within, setBlocks)],
  ]
  return sections.flatMap(([title, strips, acrossPage = false]) =>
    strips.length === 0 ? [] : sideHeading(title, strips, acrossPage, within),
  )
}

const text = (text: string): Inline => ({ type: 'text', text })

const paragraphOf = (words: string): Block => ({ type: 'paragraph', children: [text(words)] })

function listOf(items: readonly (readonly Inline[])[]): Block {
  const blocks = items.map((children): readonly Block[] => [{ type: 'paragraph', children }])
  return { type: 'list', ordered: false, start: 1, items: blocks }
}

function materialLines({ materials, sizes, yarn }: Pattern): readonly (readonly Inline[])[] {
  const several = materials.yarn.length > 1
  return [
    ...materials.yarn.map(({ as, description, amount }): readonly Inline[] => [
      text(`${several ? `Yarn (${as})` : 'Yarn'}: ${textForAll(description)}`),
      // Of several sizes the amounts stand in a table.
      ...(amount === null || (sizes.length > 1 && yarn[as] !== undefined) ? [] : [text('; about '), amount]),
    ]),
    ...(materials.yarnNote === null ? [] : [[text(materials.yarnNote)]]),
    ...(materials.hooks.length === 0 ? [] : [[text(`Hook: ${materials.hooks.join(', ')}`)]]),
    ...materials.notions.map((notion) => [text(notion)]),
  ]
}

/** Bars and labels of the section stand with its text, for its heading has the gutter. */
function beside(composer: Composer): Composer {
  return { ...composer, frame: { ...composer.frame, start: composer.frame.text } }
}

function cautionBlocks({ text: words, source, sizes }: Pattern['cautions'][number]): readonly Block[] {
  const said = paragraphOf(words)
  const rests: Block = { type: 'paragraph', children: [{ type: 'emphasis', children: [text(`Source: ${source}`)] }] }
  return sizes === null ? [said, rests] : [{ type: 'only', sizes, children: [said, rests] }]
}

function gaugeWords({ name, text }: Pattern['gauge'][number]): string {
  return name === null ? textForAll(text) : `${name}: ${textForAll(text)}`
}

function filmBlocks({ url, moments }: NonNullable<Pattern['film']>): readonly Block[] {
  const link: Inline = { type: 'link', href: url, children: [text(url)] }
  const places = moments.map(({ place, time }) => `${place} at ${time}`)
  const rest = places.length === 0 ? [] : [text(`. ${places.join(', ')}.`)]
  return [{ type: 'paragraph', children: [link, ...rest] }]
}
