import type { PdfValue } from './objects.ts'
import { textOf } from './objects.ts'
import type { OpenedFile, OpenedPage } from './opened.ts'
import type { Element } from './structure.ts'

/**
 * What a program can check of ISO 14289-1 (PDF/UA-1), by the PDF Association's Matterhorn Protocol 1.1 (2021), each
 * failure condition under its number, the wording ours; two go by the standard's own clauses. Conditions about what our
 * files never have (forms, films, notes, formulas, optional content, other kinds of fonts) are checked by its absence.
 */

/** Says what is wrong, a line for each fault. */
type Rule = (opened: OpenedFile) => readonly string[]

const when = (faulty: boolean, fault: string): readonly string[] => (faulty ? [fault] : [])

const isArtifact = (tag: string): boolean => tag === '/Artifact'

const onPages =
  (rule: (page: OpenedPage, opened: OpenedFile) => readonly string[]): Rule =>
  (opened) =>
    opened.pages.flatMap((page, index) => rule(page, opened).map((fault) => `page ${index + 1}: ${fault}`))

const onElements =
  (rule: (element: Element) => readonly string[]): Rule =>
  ({ elements }) =>
    elements.flatMap(rule)

/** No dictionary anywhere in the file has such an entry. */
const absent =
  (key: string, value?: PdfValue): Rule =>
  ({ file }) =>
    file.objects.flatMap((object) => {
      const there = file.dictionary(object)[key]
      return when(there !== undefined && (value === undefined || there === value), `${key} ${String(there)}`)
    })

const standardRoles = new Set(
  'Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby Warichu Figure Formula Form'.split(
    ' ',
  ),
)

/** What may stand directly in an element of a list or table (ISO 32000-1, tables 336 and 337). */
const contents: Readonly<Record<string, readonly string[]>> = {
  L: ['LI', 'L', 'Caption'],
  LI: ['Lbl', 'LBody'],
  Table: ['TR', 'THead', 'TBody', 'TFoot', 'Caption'],
  TR: ['TH', 'TD'],
}

/** What such an element must stand in. */
const parents: Readonly<Record<string, readonly string[]>> = {
  LI: ['L'],
  LBody: ['LI'],
  TR: ['Table', 'THead', 'TBody', 'TFoot'],
  TH: ['TR'],
  TD: ['TR'],
}

const misplaced =
  (roles: readonly string[]): Rule =>
  ({ elements }) =>
    elements.flatMap(({ role, parent, children }) => {
      if (!roles.includes(role)) return []
      const inside = children.filter((child) => !(contents[role] ?? [child.role]).includes(child.role))
      const outside = parents[role] !== undefined && !parents[role]?.includes(parent?.role ?? '')
      return [...inside.map((child) => `${child.role} in ${role}`), ...when(outside, `${role} in ${parent?.role}`)]
    })

const headings = (elements: readonly Element[]): readonly number[] =>
  elements.flatMap(({ role }) => (/^H[1-6]$/.test(role) ? [Number(role.slice(1))] : []))

export const rules: readonly (readonly [number: string, condition: string, rule: Rule])[] = [
  [
    '01-003',
    'an artifact stands in tagged content',
    onPages(({ begun }) =>
      begun.flatMap(({ mark, around }) => when(isArtifact(mark.tag) && around.length > 0, around.join())),
    ),
  ],
  [
    '01-004',
    'tagged content stands in an artifact',
    onPages(({ begun }) =>
      begun.flatMap(({ mark, around }) =>
        when(mark.id !== null && around.some(({ tag }) => isArtifact(tag)), String(mark.id)),
      ),
    ),
  ],
  [
    '01-005',
    'content is neither an artifact nor tagged',
    onPages(({ drawn }) =>
      drawn.flatMap(({ kind, marks }) => when(!marks.some(({ tag, id }) => isArtifact(tag) || id !== null), kind)),
    ),
  ],
  [
    '01-005',
    'marked content is not in the structure, or twice',
    onPages(({ entries, begun }, { file }) => {
      const numbers = file.array(
        file.dictionary(file.dictionary(file.catalog['/StructTreeRoot'])['/ParentTree'])['/Nums'],
      )
      const owners = file.array(numbers[numbers.indexOf(entries['/StructParents'] ?? null, 0) + 1])
      const ids = begun.flatMap(({ mark }) => (mark.id === null ? [] : [mark.id]))
      const orphans = ids.filter((id) => file.dictionary(owners[id])['/S'] === undefined)
      return [...orphans.map(String), ...when(new Set(ids).size !== ids.length, 'a number twice')]
    }),
  ],
  ['01-005', 'marks are not closed as often as they are opened', onPages(({ balance }) => when(balance !== 0, 'open'))],
  [
    '02-001',
    'an element’s role is none of ISO 32000-1',
    onElements(({ role }) => when(!standardRoles.has(role), role)),
  ],
  ['01-007', 'the structure is marked as suspect', absent('/Suspects', true)],
  ['02-001', 'roles are mapped to others (02-001, 02-003)', absent('/RoleMap')],
  ['06-001', 'there is no metadata', ({ file }) => when(file.stream(file.catalog['/Metadata']).length === 0, 'none')],
  [
    '06-002',
    'the metadata do not say PDF/UA-1',
    (opened) => when(!/<pdfuaid:part>1</.test(metadata(opened)), 'no part'),
  ],
  [
    '06-003',
    'the metadata have no title',
    (opened) => when(!/<dc:title>\s*<rdf:Alt>\s*<rdf:li[^>]*>[^<]/.test(metadata(opened)), 'none'),
  ],
  [
    '07-001',
    'a reader need not show the title (07-001, 07-002)',
    ({ file }) => when(file.dictionary(file.catalog['/ViewerPreferences'])['/DisplayDocTitle'] !== true, 'not told to'),
  ],
  ['09-004', 'parts of a table stand elsewhere', misplaced(['Table', 'TR', 'TH', 'TD'])],
  ['09-005', 'parts of a list stand elsewhere', misplaced(['L', 'LI', 'LBody'])],
  ['09-006', 'there is a table of contents', onElements(({ role }) => when(/^TOC/.test(role), role))],
  [
    '09-007',
    'there are small letters beside others (09-007, 09-008)',
    onElements(({ role }) => when(/^(Ruby|Warichu)/.test(role), role)),
  ],
  [
    '10-001',
    'a letter has no character',
    ({ fonts }) =>
      fonts.flatMap(({ characters, shown }) => [...shown].filter((code) => !characters.get(code)).map(String)),
  ],
  [
    '11-001',
    'the language is not known (11-001 to 11-006)',
    ({ file }) => when(textOf(file.catalog['/Lang']) !== 'en', 'none'),
  ],
  [
    '13-004',
    'a figure has no words',
    onElements(({ role, entries }) => when(role === 'Figure' && !textOf(entries['/Alt']), role)),
  ],
  ['14-002', 'the first heading is not of the first level', ({ elements }) => when(headings(elements)[0] !== 1, 'H1')],
  [
    '14-003',
    'a level of heading is left out',
    ({ elements }) => {
      const levels = headings(elements)
      return levels.flatMap((level, index) => when(level > (levels[index - 1] ?? 0) + 1, `H${level}`))
    },
  ],
  ['14-006', 'there are headings without a level (14-006, 14-007)', onElements(({ role }) => when(role === 'H', role))],
  [
    '15-003',
    'a header cell does not say what it heads',
    onElements(({ role, entries }) => when(role === 'TH' && !/Scope/.test(JSON.stringify(entries['/A'] ?? '')), role)),
  ],
  [
    'clause 7.5',
    'rows of a table have not the same number of cells',
    onElements(({ role, children }) =>
      when(role === 'Table' && new Set(children.map((row) => row.children.length)).size !== 1, role),
    ),
  ],
  [
    'clause 7.6',
    'a list with labels does not say what they are',
    onElements(({ role, entries, children }) =>
      when(
        role === 'L' &&
          children.some((item) => item.children.some(({ role }) => role === 'Lbl')) &&
          !/ListNumbering/.test(JSON.stringify(entries['/A'] ?? '')),
        role,
      ),
    ),
  ],
  ['17-002', 'there are formulas (17-002, 17-003)', onElements(({ role }) => when(role === 'Formula', role))],
  ['19-003', 'there are notes (19-003, 19-004)', onElements(({ role }) => when(role === 'Note', role))],
  ['20-001', 'there is optional content (20-001 to 20-003)', absent('/OCProperties')],
  ['21-001', 'there are files in the file', absent('/EmbeddedFiles')],
  ['25-001', 'there are forms (25-001, 28-005, 28-010)', absent('/AcroForm')],
  [
    '26-001',
    'the file is encrypted (26-001, 26-002)',
    ({ file }) => when(file.trailer['/Encrypt'] !== undefined, 'encrypted'),
  ],
  [
    '28-002',
    'there are notes on the page that are no links (28-002, 28-004, 28-006, 28-007, 28-014 to 28-018)',
    onPages(({ annotations }) =>
      annotations.flatMap((note) => when(note['/Subtype'] !== '/Link', String(note['/Subtype']))),
    ),
  ],
  [
    '28-008',
    'the order of links is not that of the structure (28-008, 28-009)',
    onPages(({ entries }) => when(entries['/Tabs'] !== '/S', String(entries['/Tabs']))),
  ],
  [
    '28-011',
    'a link is not in the structure as one',
    (opened) => {
      const { file, elements, pages } = opened
      const held = elements
        .filter(({ role }) => role === 'Link')
        .flatMap(({ annotations }) => annotations.map(file.dictionary))
      return pages.flatMap(({ annotations }) => annotations.filter((link) => !held.includes(link)).map(() => 'a link'))
    },
  ],
  [
    '28-012',
    'a link does not say where it leads',
    onPages(({ annotations }) => annotations.flatMap((note) => when(!textOf(note['/Contents']), 'a link'))),
  ],
  ['30-001', 'pages show parts of other files or of themselves (30-001, 30-002)', absent('/Subtype', '/Form')],
  [
    '31-001',
    'a font’s characters are counted otherwise than its codes (31-001 to 31-003, 31-006 to 31-008)',
    ({ fonts }) =>
      fonts.flatMap(({ entries }) => when(entries['/Encoding'] !== '/Identity-H', String(entries['/Encoding']))),
  ],
  [
    '31-004',
    'codes of a font do not lead to its glyphs (31-004, 31-005)',
    ({ fonts }) => fonts.flatMap(({ descendant }) => when(descendant['/CIDToGIDMap'] !== '/Identity', 'no map')),
  ],
  [
    '31-009',
    'a font is not in the file',
    ({ file, fonts }) =>
      fonts.flatMap(({ descriptor }) => when(file.stream(descriptor['/FontFile2']).length === 0, 'no program')),
  ],
  ['31-011', 'a font lacks a letter that it shows (31-011, 31-030)', ({ fonts }) => fonts.flatMap(lackedLetters)],
  ['31-012', 'a font lists its letters apart (31-012, 31-013)', absent('/CharSet')],
  ['31-014', 'a font lists its glyphs apart (31-014, 31-015)', absent('/CIDSet')],
  [
    '31-016',
    'the width of a letter is not that of its font',
    ({ fonts }) =>
      fonts.flatMap(({ program, widths, shown }) =>
        [...shown]
          .filter((code) => {
            const own = (program.getGlyph(code).advanceWidth * 1000) / program.unitsPerEm
            return Math.abs(own - (widths.get(code) ?? 1000)) > 1
          })
          .map(String),
      ),
  ],
  ['31-017', 'there are fonts of one byte a letter (31-017 to 31-026)', absent('/Subtype', '/TrueType')],
  [
    '31-027',
    'a font does not say which characters it shows',
    ({ file, fonts }) => fonts.flatMap(({ entries }) => when(file.stream(entries['/ToUnicode']).length === 0, 'none')),
  ],
  [
    '31-028',
    'a letter stands for no character at all (31-028, 31-029)',
    ({ fonts }) =>
      fonts.flatMap(({ characters }) => [...characters.values()].filter((text) => /[\0\ufffe\ufeff]/.test(text))),
  ],
]

function metadata({ file }: OpenedFile): string {
  return new TextDecoder().decode(file.stream(file.catalog['/Metadata']))
}

/** Codes without an outline, but those of spaces. */
function lackedLetters({ program, characters, shown }: OpenedFile['fonts'][number]): readonly string[] {
  return [...shown]
    .filter(
      (code) =>
        code === 0 || (program.getGlyph(code).path.commands.length === 0 && characters.get(code)?.trim() !== ''),
    )
    .map(String)
}
