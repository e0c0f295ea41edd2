import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, resolve, sep } from 'node:path'
import { describe, expect, it } from 'vitest'

const src = resolve(import.meta.dirname, '../src')

/** What each module of the core may import, beside itself. Faces may import everything. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  diagnostic: [],
  measure: ['diagnostic'],
  standards: [],
  formula: ['measure', 'diagnostic'],
  grading: ['formula', 'measure', 'diagnostic', 'standards'],
  rows: ['measure', 'diagnostic', 'standards'],
  safety: ['diagnostic', 'standards'],
  yarn: ['rows', 'grading', 'measure', 'diagnostic'],
  drawing: ['rows', 'measure', 'diagnostic'],
  pattern: ['drawing', 'yarn', 'safety', 'rows', 'grading', 'formula', 'measure', 'diagnostic'],
  proof: ['pattern', 'rows', 'measure', 'diagnostic', 'standards'],
}

/** Packages that the core may use: small, pure, and at home in a browser. */
const packages = [
  'fraction.js',
  'github-slugger',
  'hast',
  'hast-util-to-html',
  'hastscript',
  'mdast',
  'mdast-util-directive',
  'mdast-util-to-string',
  'string-width',
  'wrap-ansi',
  'yaml',
  'zod',
]

interface Import {
  readonly from: string
  readonly module: string
  readonly target: string
}

function importsOf(module: string): Import[] {
  return readdirSync(join(src, module), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) => {
      const path = join(src, module, file)
      const specifiers = [...readFileSync(path, 'utf8').matchAll(/(?:from|import) '([^']+)'/g)].map(
        (match) => match[1] ?? '',
      )
      return specifiers.map((target) => ({ from: relative(src, path), module, target }))
    })
}

function moduleOf({ from, target }: Import): string | null {
  if (!target.startsWith('.')) return null
  return relative(src, resolve(src, dirname(from), target)).split(sep)[0] ?? null
}

describe('imports point one way', () => {
  it.each(Object.entries(allowed))('%s', (module, others) => {
    const wrong = importsOf(module).filter((entry) => {
      const target = moduleOf(entry)
      return target === null ? !packages.includes(entry.target) : target !== module && !others.includes(target)
    })
    expect(wrong.map((entry) => `${entry.from} imports ${entry.target}`)).toEqual([])
  })
})

describe('the core touches nothing outside itself', () => {
  it.each(Object.keys(allowed))('%s', (module) => {
    const files = readdirSync(join(src, module), { recursive: true, encoding: 'utf8' }).filter((file) =>
      file.endsWith('.ts'),
    )
    const wrong = files.filter((file) =>
      /\b(?:Date\.now|new Date\(\)|Math\.random|process\.|console\.|globalThis|fetch\()/.test(
        readFileSync(join(src, module, file), 'utf8'),
      ),
    )
    expect(wrong).toEqual([])
  })
})
