import type { ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Diagnostic, Severity, Source } from '../../diagnostic/index.ts'
import { placeOf } from '../../diagnostic/index.ts'
import type { Group, Told } from '../report/groups.ts'
import { groupsOf, titleOf, within } from '../report/groups.ts'
import { plural } from '../report/lines.ts'
import type { Proofed } from '../text.ts'
import type { Links } from './place.ts'
import { rowAnchor } from './place.ts'
import { sentence } from './words.ts'

const names = { error: 'Error', warning: 'Warning', note: 'Note' } satisfies Record<Severity, string>

/** The words of the draft on the line of a finding, the stretch that it is about marked. */
function quoted({ text, lineStarts }: Source, at: Diagnostic['at'], line: number): ElementContent {
  const start = lineStarts[line - 1] ?? 0
  const end = Math.max(start, (lineStarts[line] ?? text.length + 1) - 1)
  const to = Math.min(Math.max(at.end, at.start + 1), end)
  return h('pre', h('code', text.slice(start, at.start), h('mark', text.slice(at.start, to)), text.slice(to, end)))
}

function sizesText({ sizes }: Diagnostic, names: readonly string[]): string {
  if (sizes.length === 0 || names.length === 1) return ''
  const named = sizes.length === names.length ? 'every size' : sizes.flatMap((size) => names[size] ?? []).join(', ')
  return `, for ${named}`
}

function lineLink(line: number, { editor }: Links): ElementContent {
  const href = editor(line)
  const words = `line ${line}`
  return href === null ? h('span', words) : h('a', { href }, words)
}

function codeLink(code: string, { manual }: Links): ElementContent {
  const href = manual(code)
  return href === null
    ? h('span', { className: ['code'] }, code)
    : h('a', { className: ['code'], href, title: 'What this is' }, code)
}

function told({ first, further }: Told, { source, pattern }: Proofed, links: Links): ElementContent {
  const { line } = placeOf(source, first.at.start)
  const others = [...new Set(further.map(({ at }) => placeOf(source, at.start).line))]
  return h('li', { className: [first.severity] }, [
    h('p', { className: ['kind'] }, [
      h('strong', names[first.severity]),
      ' ',
      codeLink(first.code, links),
      ', ',
      lineLink(line, links),
      sizesText(first, pattern?.sizes ?? []),
    ]),
    quoted(source, first.at, line),
    h('p', [...sentence(first.message)]),
    ...(first.hint === undefined ? [] : [h('p', { className: ['hint'] }, [...sentence(first.hint)])]),
    ...first.related.map(({ at, note }) =>
      h('p', [`${note.replace(/\.$/, '')}: `, lineLink(placeOf(source, at.start).line, links), '.']),
    ),
    ...(others.length === 0
      ? []
      : [
          h('p', [
            'The same on ',
            ...others.flatMap((other, index) => [index === 0 ? '' : ', ', lineLink(other, links)]),
            '.',
          ]),
        ]),
  ])
}

function group(each: Group, proofed: Proofed, links: Links): ElementContent {
  const title = titleOf(each)
  const [first] = each.told
  const line = placeOf(proofed.source, first?.first.at.start ?? 0).line
  const heading =
    title === null || each.row === null ? `Line ${line}` : h('a', { href: `#${rowAnchor(each.row)}` }, title)
  return h('section', [
    h('h3', heading),
    h(
      'ul',
      each.told.map((one) => told(one, proofed, links)),
    ),
  ])
}

/** Findings by place, as in the terminal, each with a link to its row and to the editor. */
export function findingsSection(proofed: Proofed, links: Links): ElementContent {
  const { source, pattern, diagnostics } = proofed
  const open = diagnostics.filter(({ accepted }) => accepted === undefined)
  const { shown, leftOut } = within(groupsOf(source, pattern?.rows ?? [], open))
  const more = leftOut.length === 0 ? [] : [h('p', `And ${plural(leftOut.length, 'finding')} more.`)]
  const none = open.length === 0 ? [h('p', 'Nothing was found.')] : []
  return h('section', { id: 'findings' }, [
    h('h2', 'Findings'),
    ...none,
    ...shown.map((each) => group(each, proofed, links)),
    ...more,
    ...acceptedList(proofed, links),
  ])
}

function acceptedList({ source, diagnostics }: Proofed, links: Links): readonly ElementContent[] {
  const accepted = diagnostics.filter((each) => each.accepted !== undefined)
  if (accepted.length === 0) return []
  const lines = accepted.map(({ code, at, accepted: why = '' }) =>
    h('li', [codeLink(code, links), ', ', lineLink(placeOf(source, at.start).line, links), `: ${why}`]),
  )
  return [h('h3', 'Accepted'), h('ul', lines)]
}
