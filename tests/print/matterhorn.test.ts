import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { deflate } from '../../src/print/deflate.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import type { Form } from '../../src/print/index.ts'
import { renderPdf } from '../../src/print/index.ts'
import { longBody, manySizes, studio, threeSizes, tideLine } from './fixture.ts'
import { png } from './png.ts'
import type { OpenedFile } from './reading/opened.ts'
import { openFile } from './reading/opened.ts'
import { rules } from './reading/rules.ts'

const folder = mkdtempSync(join(tmpdir(), 'matterhorn-'))
afterAll(() => rmSync(folder, { recursive: true }))

const patterns = {
  'three sizes': tideLine(threeSizes, { cover: { src: 'cover.png', alt: 'The cowl on sand' } }),
  'fifteen sizes': tideLine(manySizes(15)),
  '400 rows': tideLine(threeSizes, { body: longBody(400, 3) }),
} as const

const names = ['three sizes', 'fifteen sizes', '400 rows'] as const

async function write(name: (typeof names)[number], form: Form): Promise<string> {
  const page = { address: 'https://lowwater.example/patterns/tide-line/', code: true }
  const images = { 'cover.png': png(30, 40) }
  const options = { paper: 'a4', form, page, fonts: loadFonts(), deflate, studio, images } as const
  const path = join(folder, `${name}.pdf`)
  writeFileSync(path, (await renderPdf(patterns[name], options)).bytes)
  return path
}

const printed = names.flatMap((name) => (['usual', 'large', 'counts'] as const).map((form) => [name, form] as const))

describe.each(printed)('PDF/UA-1, as far as a program can tell: %s, %s', (name, form) => {
  let opened: OpenedFile
  beforeAll(async () => {
    opened = openFile(await write(name, form))
  })

  it('there is something to check', () => {
    expect(opened.elements.length).toBeGreaterThan(30)
    expect(opened.fonts.length).toBeGreaterThan(1)
    expect(opened.pages.flatMap(({ drawn }) => drawn).length).toBeGreaterThan(50)
  })

  it.each(rules)('%s: %s', (_number, _condition, rule) => expect(rule(opened)).toEqual([]))
})

/** Faults put into a sound file, each with the rule that must find it. */
const faults: readonly (readonly [number: string, sound: RegExp, faulty: string])[] = [
  ['01-003', /\/Span <</, '/Artifact <<'],
  ['01-004', /(?<=\/Artifact <<.*>> BDC\n)/, '/P <</MCID 0>> BDC\nEMC\n'],
  ['01-005', /\/Artifact(?= <<)/, '/Span'],
  ['01-005', /(?<=\/MCID )1\b/, '0'],
  ['01-007', /\/Marked true/, '/Suspects true'],
  ['02-001', /\/S \/BlockQuote/, '/S /Aside'],
  ['02-001', /\/ParentTreeNextKey/, '/RoleMap'],
  ['06-001', /\/Metadata/, '/Data'],
  ['06-002', /<pdfuaid:part>1/, '<pdfuaid:part>2'],
  ['06-003', /<dc:title>/, '<dc:name>'],
  ['07-001', /\/DisplayDocTitle true/, '/DisplayDocTitle null'],
  ['09-004', /\/S \/TR/, '/S /P'],
  ['09-005', /\/S \/LBody/, '/S /TD'],
  ['10-001', /> <0061>/, '> <>'],
  ['11-001', /\/Lang \(en\)/, '/Lang ()'],
  ['13-004', /\/Alt /, '/Al '],
  ['14-002', /\/S \/H1/, '/S /P'],
  ['14-003', /\/S \/H2/, '/S /H3'],
  ['14-006', /\/S \/H3/, '/S /H'],
  ['15-003', /\/Scope/, '/Side'],
  ['clause 7.5', /(?<=\/K \[\n) *\d+ 0 R\n(?=(?: *\d+ 0 R\n){3} *\]\n *\/P \d+ 0 R\n *\/S \/TR)/, ''],
  ['clause 7.6', /\/ListNumbering/, '/Numbering'],
  ['17-002', /\/S \/Figure/, '/S /Formula'],
  ['19-003', /\/S \/Code/, '/S /Note'],
  ['20-001', /\/PageMode/, '/OCProperties'],
  ['25-001', /\/PageMode/, '/AcroForm'],
  ['28-002', /\/Subtype \/Link/, '/Subtype /Text'],
  ['28-008', /\/Tabs \/S/, '/Tabs /R'],
  ['28-011', /\/S \/Link/, '/S /Span'],
  ['28-012', /\/Contents \(/, '/Words ('],
  ['30-001', /\/Subtype \/Image/, '/Subtype /Form'],
  ['31-001', /\/Identity-H/, '/Identity-V'],
  ['31-004', /\/CIDToGIDMap \/Identity/, '/CIDToGIDMap null'],
  ['31-016', /(?<=\/W \[\s*\d+\s*\[\s*)\d+/, '1'],
  ['31-027', /\/ToUnicode/, '/Characters'],
  ['31-028', /> <0061>/, '> <feff>'],
]

describe('a fault is found by its rule', () => {
  let sound: string
  beforeAll(async () => {
    const words = ['--qdf', '--object-streams=disable', await write('three sizes', 'usual'), '-']
    sound = execFileSync('qpdf', words, { encoding: 'latin1', maxBuffer: 1e9 })
  })

  it.each(faults)('%s: %s', (number, good, bad) => {
    const path = join(folder, 'faulty.pdf')
    expect(sound).toMatch(good)
    const faulty = Buffer.from(sound.replace(good, bad), 'latin1')
    writeFileSync(path, execFileSync('fix-qdf', { input: faulty, maxBuffer: 1e9 }))
    const finding = rules.filter(([name, , rule]) => name === number && rule(openFile(path)).length > 0)
    expect(finding).not.toEqual([])
  })
})
