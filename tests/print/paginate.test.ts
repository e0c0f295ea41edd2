import { describe, expect, it } from 'vitest'
import { paginate } from '../../src/print/paginate.ts'
import type { Strip } from '../../src/print/strip.ts'

interface Sample {
  readonly name: string
  readonly height: number
  readonly gap?: number
  readonly keep?: boolean
  readonly repeats?: readonly Strip[]
  readonly opens?: string
}

const drawn = new WeakMap<Strip, string>()

function strip({ name, height, gap = 0, keep = false, ...more }: Sample): Strip {
  const strip: Strip = { height, gap, keep, draw: () => {}, ...more }
  drawn.set(strip, name)
  return strip
}

/** `a@0 b@40` for each page of 100 points; what is repeated in brackets. */
function pagesOf(...parts: readonly (readonly Sample[])[]): readonly string[] {
  const pages = paginate(
    parts.map((part) => part.map(strip)),
    100,
  )
  return pages.map(({ placed }) =>
    placed
      .map(({ strip, top, repeated }) => {
        const place = `${drawn.get(strip)}@${top}`
        return repeated ? `(${place})` : place
      })
      .join(' '),
  )
}

describe('sharing strips out over pages', () => {
  it.each<[string, readonly Sample[], readonly string[]]>([
    ['nothing is one empty page', [], ['']],
    [
      'what fits stays',
      [
        { name: 'a', height: 60 },
        { name: 'b', height: 40 },
      ],
      ['a@0 b@60'],
    ],
    [
      'what does not goes on',
      [
        { name: 'a', height: 60 },
        { name: 'b', height: 41 },
      ],
      ['a@0', 'b@0'],
    ],
    [
      'a gap counts between, and not at the top of a page',
      [
        { name: 'a', height: 50, gap: 30 },
        { name: 'b', height: 30, gap: 10 },
        { name: 'c', height: 90, gap: 10 },
      ],
      ['a@0 b@60', 'c@0'],
    ],
    [
      'what is kept together moves together',
      [
        { name: 'a', height: 60 },
        { name: 'heading', height: 20, keep: true },
        { name: 'b', height: 30 },
      ],
      ['a@0', 'heading@0 b@20'],
    ],
    [
      'a group longer than a page is cut between its strips',
      [
        { name: 'a', height: 60, keep: true },
        { name: 'b', height: 30, keep: true },
        { name: 'c', height: 30 },
      ],
      ['a@0 b@60', 'c@0'],
    ],
    [
      'a strip taller than a page has one to itself',
      [
        { name: 'a', height: 10 },
        { name: 'b', height: 150 },
      ],
      ['a@0', 'b@0'],
    ],
  ])('%s', (_, strips, pages) => {
    expect(pagesOf(strips)).toEqual(pages)
  })

  it('repeats the header of a table at the top of a page, and only there', () => {
    const header = strip({ name: 'head', height: 10, keep: true })
    const rows = ['a', 'b', 'c'].map((name): Sample => ({ name, height: 40, repeats: [header] }))
    expect(pagesOf([{ name: 'head', height: 10, keep: true }, ...rows])).toEqual(['head@0 a@10 b@50', '(head@0) c@10'])
  })

  it.each([
    ['starts a page where the part before fills most of one', 60, ['a@0', 'b@0']],
    ['goes on where it does not', 50, ['a@0 b@50']],
  ])('a part %s', (_, height, pages) => {
    expect(pagesOf([{ name: 'a', height }], [{ name: 'b', height: 10 }])).toEqual(pages)
  })

  it('knows the piece that each page begins in', () => {
    const strips = [
      { name: 'facts', height: 90 },
      { name: 'a', height: 50, opens: 'Front' },
      { name: 'b', height: 90 },
      { name: 'c', height: 90, opens: 'Back' },
      { name: 'd', height: 90 },
    ].map(strip)
    expect(paginate([strips], 100).map((page) => page.piece)).toEqual([null, 'Front', 'Front', 'Back', 'Back'])
  })
})
