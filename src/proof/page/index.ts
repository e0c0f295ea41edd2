import type { Element, ElementContent } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import { coverageText } from '../report/coverage.ts'
import type { Proofed } from '../text.ts'
import { lastLine } from '../text.ts'
import { findingsSection } from './findings.ts'
import { measuresSection } from './measures.ts'
import type { Links } from './place.ts'
import { rowsSection } from './rows.ts'
import { proofStyle } from './style.ts'

export { proofStyle } from './style.ts'

const alone: Links = { editor: () => null, manual: () => null }

function coverage({ source, pattern, unknown = [] }: Proofed): readonly ElementContent[] {
  const text = coverageText(source, pattern?.rows ?? [], unknown)
  return text === '' ? [] : [h('section', { id: 'coverage' }, [h('h2', 'What could not be checked'), h('pre', text)])]
}

function main(proofed: Proofed, links: Links): Element {
  const { source, pattern } = proofed
  return h('main', { id: 'main' }, [
    h('h1', `Proof of ${pattern?.title ?? source.name}`),
    h('p', { className: ['verdict-line'] }, lastLine(proofed)),
    h('nav', { ariaLabel: 'Parts of this page' }, [
      h('ul', [
        h('li', h('a', { href: '#findings' }, 'Findings')),
        ...(pattern === null
          ? []
          : [
              h('li', h('a', { href: '#rows' }, 'Rows')),
              h('li', h('a', { href: '#measures' }, 'Measures, numbers and yarn')),
            ]),
      ]),
    ]),
    findingsSection(proofed, links),
    ...coverage(proofed),
    ...(pattern === null ? [] : [rowsSection(proofed, links), measuresSection(pattern)]),
  ])
}

/** The proof as the content of a page, for the preview. */
export function proofContent(proofed: Proofed, links: Links): string {
  return toHtml(main(proofed, links))
}

/** The proof as one HTML file that needs nothing else: to be sent to a checker, or kept. */
export function proofFile(proofed: Proofed): string {
  const title = `Proof of ${proofed.pattern?.title ?? proofed.source.name}`
  const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"
  const head = h('head', [
    h('meta', { charSet: 'utf-8' }),
    h('meta', { httpEquiv: 'Content-Security-Policy', content: policy }),
    h('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    h('title', title),
    h('style', proofStyle),
  ])
  const page = h('html', { lang: 'en' }, [head, h('body', main(proofed, alone))])
  return `<!doctype html>\n${toHtml(page)}\n`
}
