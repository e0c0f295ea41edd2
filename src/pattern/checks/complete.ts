import { toString as plainText } from 'mdast-util-to-string'
import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import { bodyNodes, type Draft } from '../draft.ts'
import type { Facts } from '../facts.ts'

interface Needed {
  readonly what: string
  /** The key of the front matter that says it. */
  readonly key: string
  readonly isSaid: (facts: Facts) => boolean
  /** A heading of the draft's own under which it may be said instead. */
  readonly heading: RegExp
}

/** What a reader needs before the first stitch (common practice, no source). */
const needed: readonly Needed[] = [
  {
    what: 'yarn',
    key: 'yarn',
    isSaid: ({ yarn }) => yarn.length > 0,
    heading: /\b(?:yarn|materials?|supplies|you(?: wi|’|')ll need|what you need)\b/i,
  },
  {
    what: 'hook',
    key: 'hooks',
    isSaid: ({ hooks, swatch }) => hooks.length > 0 || Object.values(swatch).some(({ hook }) => hook !== undefined),
    heading: /\b(?:hooks?|materials?|supplies|you(?: wi|’|')ll need|what you need)\b/i,
  },
  {
    what: 'gauge',
    key: 'swatch',
    isSaid: ({ swatch }) => Object.keys(swatch).length > 0,
    heading: /\b(?:gauge|tension)\b/i,
  },
  {
    what: 'finished measures',
    key: 'finished',
    isSaid: ({ finished }) => Object.keys(finished).length > 0,
    heading: /\b(?:finished|measure(?:ment)?s?|sizes?|dimensions?)\b/i,
  },
]

/** What a pattern that is published, with a date, must say and does not. An unpublished draft may still lack anything. */
export function* completenessFindings(draft: Draft): Generator<Diagnostic> {
  const { facts, locate } = draft.facts
  if (facts.published === undefined) return
  const headings = bodyNodes(draft).flatMap((node) => (node.type === 'heading' ? plainText(node) : []))
  for (const { what, key, isSaid, heading } of needed) {
    if (isSaid(facts) || headings.some((text) => heading.test(text))) continue
    yield diagnose('section-missing', locate('published'), { what, key })
  }
}
