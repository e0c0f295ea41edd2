import type { Diagnostic, Span } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import { bodyNodes, type Draft, spanOf, textAt, walk } from '../draft.ts'

/** What lies at a path that a draft gives for a picture. */
export type PictureBeside = 'picture' | 'other' | 'missing'

/** Looks at a path in a draft's folder. */
export type LookBeside = (path: string) => PictureBeside

/** A path as the file system knows it; one with a stray percent sign stays as it is. */
function decoded(path: string): string {
  try {
    return decodeURI(path)
  } catch {
    return path
  }
}

/** Whether a picture lies beside the draft, and not on the site or elsewhere on the web. */
function isBeside(src: string): boolean {
  return !URL.canParse(src) && !/^[/#]/.test(src)
}

/** Whether another site would have to be asked for a picture. */
function isElsewhere(src: string): boolean {
  return /^(?:https?:)?\/\//i.test(src)
}

function* stateFinding(
  src: string,
  at: Span,
  look: LookBeside | null,
  missing: 'cover-missing' | 'picture-missing',
): Generator<Diagnostic> {
  if (look === null) return
  const state = isBeside(src) ? look(decoded(src)) : 'picture'
  if (state === 'missing') yield diagnose(missing, at, { src })
  if (state === 'other') yield diagnose('picture-unreadable', at, { src })
}

/** The address within the Markdown of a picture; all of it where it is written in another way than it reads. */
function placeOf(draft: Draft, whole: Span, src: string): Span {
  const from = textAt(draft, whole).lastIndexOf(src)
  return from < 0 ? whole : { start: whole.start + from, end: whole.start + from + src.length }
}

/** Pictures that aren't there, lie elsewhere, aren't pictures, or have no words. `look` is null where the draft lies in no folder. */
export function* pictureFindings(draft: Draft, look: LookBeside | null): Generator<Diagnostic> {
  const { facts, locate } = draft.facts
  if (facts.cover !== undefined) {
    const { src } = facts.cover
    const at = locate('cover', 'src')
    if (isElsewhere(src)) yield diagnose('cover-missing', at, { src })
    else yield* stateFinding(src, at, look, 'cover-missing')
  }
  for (const node of walk(bodyNodes(draft))) {
    if (node.type !== 'image') continue
    const at = spanOf(draft, node)
    const place = placeOf(draft, at, node.url)
    if (isElsewhere(node.url)) yield diagnose('picture-elsewhere', place, { src: node.url })
    else yield* stateFinding(node.url, place, look, 'picture-missing')
    if ((node.alt ?? '').trim() === '') yield diagnose('picture-without-words', at, { src: node.url })
  }
}
