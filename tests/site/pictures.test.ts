import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp, { type Sharp } from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { build, copyProject } from './project-copy.ts'

const folder = 'content/patterns/mat'
const draft = `---
title: Mat
sizes: [S, M]
kind: mat
cover: {src: ./cover.jpg, alt: "The mat on a table"}
---

![The first row](./step.jpg)

A small one ![The hook, from close by](hook.png) in a line.

![The corner, drawn](./corner.svg)

![A photo of a phone held upright](./upright.jpg)

## Mat

Rnd 1: 6 sc in ring. (6 sc)
`

/** A photo as a camera gives it: not as flat as a colour, so that its bytes mean something. */
function photo(width: number, height: number): Sharp {
  const noise = { type: 'gaussian', mean: 128, sigma: 20 } as const
  return sharp({ create: { width, height, channels: 3, background: '#888', noise } })
}

interface Picture {
  readonly attributes: Readonly<Record<string, string>>
  /** Widths that it is there in. */
  readonly widths: readonly number[]
}

describe('pictures of a pattern', () => {
  let root: string
  let pictures: ReadonlyMap<string, Picture>
  const file = (address: string): string => join(root, 'site', address)

  beforeAll(async () => {
    root = copyProject('pictures', ['content/studio.yaml'])
    const at = (name: string): string => join(root, folder, name)
    mkdirSync(join(root, folder), { recursive: true })
    writeFileSync(at('index.md'), draft)
    await photo(2400, 1600).jpeg().toFile(at('cover.jpg'))
    await photo(2000, 1500).jpeg().toFile(at('step.jpg'))
    await photo(200, 100).png().toFile(at('hook.png'))
    await photo(1600, 1200).jpeg().withMetadata({ orientation: 6 }).toFile(at('upright.jpg'))
    writeFileSync(
      at('corner.svg'),
      '<svg xmlns="http://www.w3.org/2000/svg" width="90" height="60" viewBox="0 0 90 60"/>',
    )
    const { status, stderr } = build(root)
    if (status !== 0) throw new Error(stderr)
    pictures = picturesOf(readFileSync(file('patterns/mat/index.html'), 'utf8'))
  })
  afterAll(() => rmSync(root, { recursive: true, force: true }))

  it('are all there, with their words', () => {
    expect([...pictures.keys()]).toEqual([
      'The mat on a table',
      'The first row',
      'The hook, from close by',
      'The corner, drawn',
      'A photo of a phone held upright',
    ])
  })

  it.each([
    [
      'The mat on a table',
      [360, 720, 1080, 1440],
      { width: '1440', height: '960', loading: 'eager', fetchpriority: 'high' },
    ],
    ['The first row', [360, 720, 1080, 1440], { width: '1440', height: '1080', loading: 'lazy', decoding: 'async' }],
    ['The hook, from close by', [200], { width: '200', height: '100', loading: 'lazy' }],
    ['The corner, drawn', [], { width: '90', height: '60', loading: 'lazy' }],
    ['A photo of a phone held upright', [360, 720, 1080, 1200], { width: '1200', height: '1600', loading: 'lazy' }],
  ])('“%s” comes in widths %j', async (alt, widths, attributes) => {
    const picture = pictures.get(alt)
    expect(picture?.widths).toEqual(widths)
    expect(picture?.attributes).toMatchObject(attributes)
    const src = file(picture?.attributes.src ?? '')
    const { width, height } = await sharp(src).metadata()
    expect({ width: String(width), height: String(height) }).toMatchObject({
      width: attributes.width,
      height: attributes.height,
    })
  })

  it('weigh as much as a screen needs', () => {
    const sources = (pictures.get('The first row')?.attributes.srcset ?? '')
      .split(', ')
      .map((each) => each.split(' ')[0] ?? '')
    const sizes = sources.map((source) => readFileSync(file(source)).length)
    expect(sizes).toEqual(sizes.toSorted((one, other) => one - other))
    expect(sources.every((source) => source.endsWith('.webp') && existsSync(file(source)))).toBe(true)
  })
})

function picturesOf(page: string): ReadonlyMap<string, Picture> {
  const tags = [...page.matchAll(/<img ([^>]*)>/g)].map(([, text]) => text ?? '')
  return new Map(
    tags.map((text) => {
      const attributes = Object.fromEntries(
        [...text.matchAll(/(\w+)="([^"]*)"/g)].map(([, name, value]) => [name, value ?? '']),
      )
      const widths = [...(attributes.srcset ?? '').matchAll(/ (\d+)w/g)].map(([, width]) => Number(width))
      return [attributes.alt ?? '', { attributes, widths }]
    }),
  )
}
