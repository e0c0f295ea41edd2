import { describe, expect, it } from 'vitest'
import { catalogue } from '../../src/diagnostic/index.ts'
import { manualParts } from '../../src/manual/entries.ts'
import type { Excerpt } from '../../src/manual/excerpt.ts'
import { excerptOf } from '../../src/manual/excerpt.ts'
import { groups } from '../../src/manual/groups.ts'
import { loadSolver } from '../../src/solver/index.ts'

const parts = manualParts(await loadSolver())
const entries = parts.flatMap((part) => part.entries)

/** An excerpt with its marks: `Row 2: Ch 1. ‹(20 sc)›` */
function shown({ parts: own }: Excerpt): string {
  return own.map(({ text, marked }) => (marked ? `‹${text}›` : text)).join('')
}

describe('the manual of findings', () => {
  it('has every kind once', () => {
    expect(groups.flatMap(({ codes }) => codes).sort()).toEqual(Object.keys(catalogue).sort())
  })

  it('says of each what the proof says', () => {
    expect(entries.find(({ code }) => code === 'count-mismatch')).toMatchObject({
      severity: 'error',
      message: 'Row 2 states 20 sc, but its steps make 21.',
    })
  })

  it('shows few lines of each draft, with the words that are meant', () => {
    const long = entries.filter(({ faulty, sound }) =>
      [faulty, sound].some((excerpt) => shown(excerpt).length > 500 || shown(excerpt).split('\n').length > 8),
    )
    expect(long.map(({ code }) => code)).toEqual([])
    const unmarked = entries.filter(({ faulty }) => !faulty.parts.some(({ marked }) => marked))
    expect(unmarked.map(({ code }) => code)).toEqual(['draft-empty', 'draft-too-long', 'draft-not-text'])
  })
})

describe('an excerpt', () => {
  const body = (rows: readonly string[]) => ({ body: rows.join('\n\n') })
  const plain = (row: number) => `Row ${row}: Ch 1, sc in each st across.`

  it('is the lines that the other draft has not, with what is marked', () => {
    const faulty = body(['Row 1: Ch 9.', plain(2), plain(4), plain(5)])
    const sound = body(['Row 1: Ch 9.', plain(2), plain(3), plain(5)])
    const start = `---\ntitle: Mat\nsizes: [S, M]\n---\n\nRow 1: Ch 9.\n\n${plain(2)}\n\n`.length
    expect(shown(excerptOf(faulty, sound, { start, end: start + 5 }))).toBe(`‹Row 4›${plain(4).slice(5)}`)
    expect(shown(excerptOf(sound, faulty, null))).toBe(plain(3))
  })

  it('says where lines are left out', () => {
    expect(shown(excerptOf(body([plain(1), plain(2), plain(3)]), body([plain(2)]), null))).toBe(
      `${plain(1)}\n…\n${plain(3)}`,
    )
  })

  it('cuts a long line around the mark', () => {
    const faulty = { file: `${'a '.repeat(300)}wrong${' b'.repeat(300)}` }
    const text = shown(excerptOf(faulty, { file: '' }, { start: 600, end: 605 }))
    expect(text).toMatch(/^…[a ]+‹wrong›[b ]+…$/)
    expect(text.length).toBeLessThan(170)
  })

  it('tells of files beside the draft', () => {
    const beside = (table: string) => ({ body: '', beside: { 'bodies.csv': table } })
    expect(shown(excerptOf(beside('measure,S\nBust,wide'), beside('measure,S\nBust,84'), null))).toBe(
      'bodies.csv: Bust,wide',
    )
  })
})
