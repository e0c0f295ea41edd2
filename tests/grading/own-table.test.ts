import { describe, expect, it } from 'vitest'
import { readOwnTable } from '../../src/grading/chart/own-table.ts'
import { createEnvironment, type FileBeside, readFits, toFit } from '../../src/grading/index.ts'
import { printRange, textForAll } from '../../src/measure/index.ts'
import { calculated, nowhere, written } from '../formula/workbench.ts'

const table = `# our own fit models, measured in spring
measure,   unit, Small, Medium, Large

Bust,      cm,   81-86, 91.5–96.5, 101 to 106
Upper arm, cm,   26,    28,     30.5
Head,      in,   21,    21 1/2,
"Waist, high", cm, 70, none, -
`

/** Columns on which sizes are drawn, for a table beside the draft. */
function fits(text: string, columns: readonly (string | null)[]) {
  const drawn = columns.map((column) => (column === null ? null : written(column)))
  return readFits({ table: written('./measures.csv'), columns: drawn, at: nowhere }, columns.length, () => ({
    kind: 'text',
    text,
  }))
}

function measure(name: string, text = table, columns: readonly (string | null)[] = ['Small', 'Medium', 'Large']) {
  const found = fits(text, columns)
  expect(found.diagnostics.map(({ message }) => message)).toEqual([])
  const sizes = columns.map((_, index) => `Size ${index}`)
  const facts = createEnvironment({ sizes, swatches: [], body: found.value, skein: null })
  return calculated(`body("${name}") / (1 cm)`, '', facts)
}

/** Findings as `line:column what`. */
function slips(text: string) {
  return readOwnTable(text).slips.map(({ line, column, says }) => `${line}:${column} ${says}`)
}

describe('a body table of the designer’s own', () => {
  it.each([
    ['Bust', [83.5, 94, 103.5]],
    ['chest', [83.5, 94, 103.5]],
    ['upper arm', [26, 28, 30.5]],
    ['head', [53.34, 54.61, null]],
    ['Waist, high', [70, null, null]],
  ])('has %s', (name, centimetres) => {
    expect(measure(name)).toEqual(centimetres)
  })

  it.each([
    ['semicolons and decimal commas', 'measure;unit;S;M\nBust;cm;81,5;86,25', [81.5, 86.25]],
    ['semicolons and decimal points', 'measure;unit;S;M\nBust;cm;81.5;86.25', [81.5, 86.25]],
    ['tabs', 'measure\tunit\tS\tM\nBust\tcm\t81,5\t86.25', [81.5, 86.25]],
    ['a unit with each number', 'measure,S,M\nBust,81.5 cm,35in', [81.5, 88.9]],
    ['a unit of its own beside the column', 'measure,unit,S,M\nBust,cm,81.5,35 in', [81.5, 88.9]],
    ['a byte order mark and carriage returns', '\uFEFFMeasure,Unit,S,M\r\nBust,mm,815,860\r\n', [81.5, 86]],
    ['quotes everywhere', '"measure","unit","S","M"\n"Bust","cm","81.5","86"', [81.5, 86]],
    ['empty cells at the ends of rows', 'measure,unit,S,M,,\nBust,cm,81.5,86,,\n,,,,,', [81.5, 86]],
    ['a comment with separators in it', '# a; b; c\nmeasure,unit,S,M\nBust,cm,81.5,86', [81.5, 86]],
  ])('is read with %s', (_, text, centimetres) => {
    expect(measure('bust', text, ['S', 'M'])).toEqual(centimetres)
  })

  it('gives several sizes one column, and a size none', () => {
    expect(measure('bust', table, ['Medium', 'M', null])).toEqual([94, 94, null])
  })

  it('is what the reader chooses a size by', () => {
    const body = fits(table, ['Small', 'Large']).value
    const row = body === null ? null : toFit(body)
    expect(row?.label).toBe('Bust')
    expect(row && textForAll(printRange(row.low, row.high, 'cm'))).toBe('81–86 (101–106) cm [32–33¾ (39¾–41¾) in]')
  })
})

describe('slips in a table of one’s own, each at its line and column', () => {
  it.each([
    ['', ['1:1 The table is empty']],
    ['# nothing yet\n\n', ['1:1 The table is empty']],
    ['size,bust,waist\nS,81,60', ['1:1 The first row must start with `measure` and go on with the names of the sizes']],
    ['Bust,cm,81', ['1:1 The first row must start with `measure` and go on with the names of the sizes']],
    ['measure,unit\nBust,cm', ['1:1 The first row names no sizes']],
    ['measure,unit,S,S\nBust,cm,1,2', ['1:16 The size `S` stands twice']],
    ['measure,unit,S,,L\nBust,cm,1,2,3', ['1:16 This size has no name']],
    ['measure,unit,S\n', ['1:1 The table has sizes and no measures']],
    ['measure,unit,S\nBust,cm,81\n\nbust,cm,82', ['4:1 The measure `bust` stands twice']],
    ['measure,unit,S\n,cm,81', ['2:1 This line has no measure’s name']],
    ['measure,unit,S\nBust,cm,86,5', ['2:12 `Bust` has more values than there are sizes']],
    ['measure,unit,S\nBust,cubit,86', ['2:6 `cubit` is not a unit of length']],
    ['measure,unit,S\nBust,g,86', ['2:6 `g` is not a unit of length']],
    ['measure,unit,S,M\nBust,cm,wide,90', ['2:9 `wide` is not a measure']],
    ['measure,unit,S,M\nBust,cm,80,  90 ells', ['2:14 `ells` is not a unit of length']],
    ['measure,S,M\nBust,80 cm,90', ['2:12 `90` has no unit']],
    ['measure,unit,S\nBust,cm,0', ['2:9 `0` must be above zero']],
    ['measure,unit,S\nBust,cm,-5', ['2:9 `-5` is not a measure']],
    ['measure,unit,S\nBust,cm,86-81', ['2:9 `86-81` goes from the larger to the smaller']],
    ['measure,unit,S\n"Bust,cm,86', ['2:1 A quote is opened here and never closed']],
    ['measure,unit,S,M\nBust,cm,x,90\nHip,cm,95,y', ['2:9 `x` is not a measure', '3:11 `y` is not a measure']],
  ])('%j', (text, found) => {
    expect(slips(text)).toEqual(found)
    expect(readOwnTable(text).chart).toBeNull()
  })

  it('stop being told of after twenty', () => {
    const lines = Array.from({ length: 30 }, (_, index) => `Measure ${index},cm,wide`)
    expect(slips(['measure,unit,S', ...lines].join('\n'))).toHaveLength(20)
  })

  it.each([
    ['lines', `measure,unit,S\n${Array.from({ length: 600 }, (_, index) => `M${index},cm,1`).join('\n')}`],
    ['sizes', `measure,unit,${Array.from({ length: 200 }, (_, index) => `S${index}`).join(',')}`],
  ])('are not looked for where it has too many %s', (_, text) => {
    expect(slips(text)).toEqual(['1:1 The table is too large for a body table'])
  })
})

describe('the file of a table of one’s own', () => {
  function codes(name: string, file: FileBeside = { kind: 'text', text: table }) {
    const asked: string[] = []
    const { diagnostics } = readFits({ table: written(name), columns: [written('Small')], at: nowhere }, 1, (path) => {
      asked.push(path)
      return file
    })
    return { codes: diagnostics.map(({ code }) => code), asked }
  }

  it.each([
    ['./measures.csv', 'measures.csv'],
    ['measures.csv', 'measures.csv'],
    ['tables/Girth.CSV', 'tables/Girth.CSV'],
    ['./my measures.csv', 'my measures.csv'],
  ])('is asked for: %s', (name, path) => {
    expect(codes(name)).toEqual({ codes: [], asked: [path] })
  })

  it.each(['../measures.csv', './a/../../m.csv', '/etc/m.csv', 'C:\\m.csv', '..\\m.csv', 'measures.xlsx', './.csv'])(
    'is refused unread: %s',
    (name) => {
      expect(codes(name)).toEqual({ codes: ['table-file-path'], asked: [] })
    },
  )

  it.each(['missing', 'not-text', 'too-long', 'nowhere'] as const)('%s', (kind) => {
    expect(codes('m.csv', { kind }).codes).toEqual(['table-file-unreadable'])
  })

  it('is not looked for under the name of a published table, nor for a name that is none', () => {
    expect(codes('women')).toEqual({ codes: [], asked: [] })
    expect(codes('woomen')).toEqual({ codes: ['body-table-unknown'], asked: [] })
  })
})
