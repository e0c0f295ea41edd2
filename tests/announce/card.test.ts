import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { type Card, cardImage } from '../../src/announce/card/card.ts'
import { outlined } from '../../src/announce/card/outline.ts'
import { cardSize } from '../../src/announce/card/size.ts'
import { patternPages, siteFolder } from '../browser/site.ts'

const card: Card = {
  studio: 'Low Water Studio',
  title: 'Tide Line Cowl',
  summary: 'A deep cowl in shells that rise and fall like the edge of the tide.',
  facts: 'Easy · S, M, L',
  picture: null,
}
const drawing = Buffer.from(
  '<svg xmlns="http://www.w3.org/2000/svg" width="80" height="60"><rect width="80" height="60" fill="#c00"/></svg>',
)

/** The colour at a place of a picture. */
async function colourAt(image: Uint8Array, left: number, top: number): Promise<readonly number[]> {
  return [...(await sharp(image).extract({ left, top, width: 1, height: 1 }).raw().toBuffer())]
}

describe('a card', () => {
  it.each([
    ['plain', {}],
    ['with a drawing', { picture: drawing }],
    [
      'with a title that fills it',
      { title: 'A very long title of a pattern '.repeat(12), summary: 'Words. '.repeat(200) },
    ],
    ['with nothing to say', { title: '', summary: '', facts: '', studio: '' }],
    ['in letters that no face has', { title: '編み物 🧶' }],
  ])('%s has its size and the same bytes twice', async (_, other) => {
    const [one, two] = [await cardImage({ ...card, ...other }), await cardImage({ ...card, ...other })]
    expect(Buffer.compare(one, two)).toBe(0)
    expect(await sharp(one).metadata()).toMatchObject({ ...cardSize, format: 'jpeg' })
  })

  it('has the picture at its right end and paper elsewhere', async () => {
    const image = await cardImage({ ...card, picture: drawing })
    const [red = 0, green = 0] = await colourAt(image, 1190, 300)
    expect(red).toBeGreaterThan(180)
    expect(green).toBeLessThan(30)
    expect((await colourAt(image, 10, 300)).every((part) => part > 220)).toBe(true)
  })

  it('ends a text that is too long in an ellipsis', () => {
    const setting = {
      style: { face: 'text', size: 20, colour: '#000' },
      x: 0,
      top: 0,
      width: 200,
      leading: 30,
    } as const
    const long = outlined('word '.repeat(80), { ...setting, lines: 2 })
    expect(long.bottom).toBe(60)
    expect(outlined('word', { ...setting, lines: 2 }).bottom).toBe(30)
    expect(long.paths.match(/<path/g)?.length).toBeLessThan(40)
  })

  it.each(patternPages)('%s has one', async (path) => {
    const { width, height, size } = await sharp(join(siteFolder, path, 'card.jpg')).metadata()
    expect({ width, height }).toEqual(cardSize)
    expect(size ?? readFileSync(join(siteFolder, path, 'card.jpg')).length).toBeLessThan(300_000)
  })
})
