import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import { textForAll } from '../../src/measure/index.ts'
import { proofDocument } from '../../src/proof/document.ts'
import { proofContent, proofFile } from '../../src/proof/page/index.ts'
import type { Proofed } from '../../src/proof/text.ts'

function proofed(text: string): Proofed {
  const { source, outcome, ledger } = readDraft('mat.md', 'mat', text)
  const { value: pattern, diagnostics } = outcome
  return { source, pattern, diagnostics, unknown: ledger?.unknown ?? [] }
}

function draft(body: string, facts = 'title: Mat\nsizes: [Child, Adult S, Adult L]'): Proofed {
  return proofed(`---\n${facts}\n---\n${body}`)
}

const yarn =
  'swatch: {stitches: 12 per 10 cm, rows: 8 per 10 cm, size: 12 cm x 12 cm, weight: 11 g}\nyarn: [{as: main, skein: {weight: 100 g, length: 110 m}}]'
const facts = `title: Mat\nsizes: [Child, Adult S, Adult L]\n${yarn}\nfinished: {Width: made}`
const body = `
\`\`\`grading
across = [50, 60, 70] cm
sts    = stitches(across) as whole
made   = width(sts)
\`\`\`

## Mat

Foundation: Ch {{sts + 1}}.

Row 1: Sc in 2nd ch from hook and in each ch across, turn. (60 (70, 84) sc)

Rows 2–6 (8, 10): Ch 1, sc in each st across, turn. ({{sts}} sc)
`
const faulty = draft(body, facts)

/** The text of every cell of the tables in a part of the page. */
function cells(html: string, id: string): readonly string[] {
  const part = html.slice(html.indexOf(`<section id="${id}">`))
  const own = part.slice(0, part.indexOf('</section>'))
  return [...own.matchAll(/<td[^>]*>(.*?)<\/td>/gs)].map(([, inside = '']) => plain(inside))
}

function plain(html: string): string {
  return html
    .replace(/<[^>]*>/g, ' ')
    .replace(/&#x3C;/g, '<')
    .replace(/&#x26;/g, '&')
    .replace(/\s+/g, ' ')
    .trim()
}

function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(numbersIn)
}

describe('the proof as one file', () => {
  const html = proofFile(faulty)

  it('needs nothing but itself', () => {
    expect(html).not.toMatch(/<(?:script|link|img|iframe|object|embed|form|base)\b|\ssrc=|url\(|@import|https?:/i)
    expect([...html.matchAll(/href="([^"]*)"/g)].map(([, to = '']) => to).filter((to) => !to.startsWith('#'))).toEqual(
      [],
    )
  })

  it('lets nothing be loaded, even if something were in it', () => {
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1]?.replaceAll('&#x27;', "'")
    expect(policy).toBe("default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'")
    expect(html.indexOf('Content-Security-Policy')).toBeLessThan(html.indexOf('<style'))
  })

  it('is a whole page with a language, a title and one first heading', () => {
    expect(html).toMatch(/^<!doctype html>\n<html lang="en">/)
    expect(html).toContain('<title>Proof of Mat</title>')
    expect(html.match(/<h1>/g)).toHaveLength(1)
  })

  it('is the same each time', () => {
    expect(proofFile(draft(body, facts))).toBe(html)
  })
})

describe('what a draft says stays text', () => {
  const wild = '"><img src=x onerror=alert(1)>'
  const html = proofFile(
    draft(
      `\n## Mat ${wild}\n\nRow 1: Ch 5, sc in 2nd ch from hook and in each ch across. ${wild} (5 sc)\n\nRow 3: ${wild}\n\n{{${wild}}}\n`,
      `title: '${wild}'\nsizes: ['${wild}']\naccepted: [{code: row-number-gap, at: Row 3, why: '${wild}'}]`,
    ),
  )

  it('wherever it comes from', () => {
    // In the value of an attribute an angle bracket is a letter like others; a quote would be written &#x22;.
    const bare = html.replace(/="[^"]*"/g, '')
    const tags = new Set([...bare.matchAll(/<([a-z0-9!]+)/gi)].map(([, name = '']) => name.toLowerCase()))
    const known =
      '!doctype html head meta title style body main h1 h2 h3 p nav ul li a section strong span pre code mark div table caption thead tbody tr th td br'
    expect([...tags].filter((tag) => !known.split(' ').includes(tag))).toEqual([])
    expect(bare).not.toMatch(/<[^>]*onerror/)
    expect(html.match(/&#x3C;img src=x/g)?.length).toBeGreaterThan(5)
  })
})

describe('rows', () => {
  const html = proofFile(faulty)

  it('have one column a size, and say in words and by a sign where they differ', () => {
    const shown = cells(html, 'rows')
    expect(shown.slice(0, 5)).toEqual(['61', '73', '85', 'ch', ''])
    expect(shown.slice(5, 10)).toEqual(['60', 'stated 70 ≠ worked 72', '84', 'sc', 'differs'])
  })

  it('that are alike share a line, and those that only some sizes work have a line of their own', () => {
    expect(cells(html, 'rows').slice(10)).toEqual([
      ...['60', '72', '84', 'sc', 'as stated'],
      ...['–', '72', '84', 'sc', 'as stated'],
      ...['–', '–', '84', 'sc', 'as stated'],
    ])
    for (const label of ['Rows 2–6', 'Rows 7–8', 'Rows 9–10']) expect(html).toContain(`>${label}</th>`)
  })

  it('say why they could not be worked', () => {
    const text = draft(
      '\n## Mat\nRow 1: Ch 5, sc in 2nd ch from hook and in each ch across.\n\nRow 2: Wibble.\n\nRow 3: Ch 1, sc in each st across.\n',
    )
    expect(cells(proofFile(text), 'rows').slice(-1)).toEqual(['not worked: A row before it could not be worked.'])
    expect(cells(proofFile(text), 'rows')).toContain('not read: The reader stopped at “Wibble”.')
  })
})

describe('numbers', () => {
  const { source, pattern, diagnostics } = faulty
  const finished = (pattern?.finished ?? []).flatMap((line) =>
    line.cells.map((cell) => textForAll(cell).replace(/\s/g, ' ')),
  )
  const known = new Set(numbersIn(proofDocument(source, pattern, diagnostics)))

  it.each(['rows', 'measures'])('in the tables of %s are those of the JSON', (id) => {
    const printed = new Set(finished)
    const shown = cells(proofFile(faulty), id).filter((cell) => !printed.has(cell))
    const numbers = shown.flatMap((cell) => cell.match(/\d+(?:\.\d+)?/g) ?? []).map(Number)
    expect(numbers.length).toBeGreaterThan(12)
    expect(numbers.filter((number) => !known.has(number))).toEqual([])
  })

  it('of finished measures stand above what they were to be and how far they are off', () => {
    const off = draft(body.replace('[50, 60, 70]', '[50.2, 60, 70.3]'), facts)
    expect(cells(proofFile(off), 'measures').slice(3, 9)).toEqual(['50.2', '60', '70.3', '−0.2', '0', '−0.3'])
  })

  it('of finished measures are those of the page', () => {
    const shown = cells(proofFile(faulty), 'measures')
    expect(shown.slice(0, finished.length)).toEqual(finished)
  })
})

describe('links', () => {
  const text = draft(`${body}\nRow 12: Ch 1, sc in each st, turn. {{nothing}}\n\nIt is {{nowhere}} wide.\n`, facts)
  const file = proofFile(text)

  it('lead from findings to rows that are there, each once', () => {
    const ids = [...file.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id)
    expect(new Set(ids).size).toBe(ids.length)
    const targets = [...file.matchAll(/href="#([^"]*)"/g)].map(([, id]) => id)
    expect(targets.filter((id) => !ids.includes(id))).toEqual([])
    expect(targets.filter((id) => id?.startsWith('row-')).length).toBeGreaterThan(1)
  })

  it('lead from rows and findings to the editor’s line where there is an editor', () => {
    const page = proofContent(text, {
      editor: (line) => `/open?line=${line}`,
      manual: (code) => `/manual#${code}`,
    })
    const row = text.source.text.split('\n').findIndex((line) => line.startsWith('Row 1:')) + 1
    expect(page).toContain(`<a href="/open?line=${row}">Row 1</a>`)
    expect(page).toContain(`<a href="/open?line=${row}">line ${row}</a>`)
    expect(page).toContain('href="/manual#count-mismatch"')
    expect(file).not.toMatch(/\/open|\/manual/)
  })
})

describe('drafts that can’t be worked', () => {
  it('have a page all the same', () => {
    const html = proofFile(proofed('no front matter'))
    expect(html).toContain('Proof of mat.md')
    expect(html).toContain('front-matter-missing')
    expect(html).not.toContain('id="rows"')
  })

  it('with ten thousand findings have some, and the number of the rest', () => {
    const slips = Array.from({ length: 10_000 }, (_, index) => `{{nothing_${index}}}`).join('\n\n')
    const html = proofFile(draft(`\n${slips}\n`))
    expect(html.match(/<li class="error">/g)).toHaveLength(60)
    expect(html).toContain('And 9940 findings more.')
  })

  it('and those without findings say so', () => {
    expect(proofFile(draft('\nText.\n'))).toContain('<p>Nothing was found.</p>')
  })
})
