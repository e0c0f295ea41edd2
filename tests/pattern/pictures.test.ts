import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import type { LookBeside } from '../../src/pattern/checks/pictures.ts'

const folder: LookBeside = (path) => {
  if (['./mat.jpg', 'mat.jpg', '../all/hook.png', './on a table.jpg'].includes(path)) return 'picture'
  return path === './mat.pdf' ? 'other' : 'missing'
}

/** Codes and the words of the draft that they stand at. */
function found(body: string, facts = '', lookBeside: LookBeside | null = folder): string[] {
  const text = `---\ntitle: Mat\nsizes: [S]\n${facts}---\n\n${body}\n`
  const beside = lookBeside && { readBeside: () => ({ kind: 'missing' }) as const, lookBeside }
  const { outcome } = readDraft('mat.md', 'mat', text, null, beside)
  return outcome.diagnostics.map(({ code, at }) => `${code} ${text.slice(at.start, at.end)}`)
}

describe('pictures of a draft', () => {
  it.each([
    ['beside it', '![The mat](./mat.jpg) and ![the mat](mat.jpg)'],
    ['in another folder', '![A hook](../all/hook.png)'],
    ['with a blank in its name', '![The mat](<./on a table.jpg>) ![The mat](./on%20a%20table.jpg)'],
    ['on the site', '![The mat](/mat.jpg)'],
    ['in code', '`![](./none.jpg)`'],
  ])('%s are right', (_, body) => {
    expect(found(body)).toEqual([])
  })

  it.each([
    ['that isn’t there', '![The mat](./matt.jpg)', ['picture-missing ./matt.jpg']],
    ['in a list, with a title', '- One ![mat](./matt.jpg "A mat")', ['picture-missing ./matt.jpg']],
    ['that is none', '![The mat](./mat.pdf)', ['picture-unreadable ./mat.pdf']],
    ['elsewhere', '![The mat](https://a.example/m.jpg)', ['picture-elsewhere https://a.example/m.jpg']],
    ['without words', '![](./mat.jpg)', ['picture-without-words ![](./mat.jpg)']],
    [
      'without words that isn’t there',
      '![ ](./m.jpg)',
      ['picture-missing ./m.jpg', 'picture-without-words ![ ](./m.jpg)'],
    ],
  ])('one %s is told', (_, body, expected) => {
    expect([...found(body)].sort()).toEqual(expected)
  })

  it('on the cover is told in the facts', () => {
    expect(found('', 'cover: {src: ./matt.jpg, alt: The mat}\n')).toEqual(['cover-missing ./matt.jpg'])
    expect(found('', 'cover: {src: "./mat.jpg", alt: The mat}\n')).toEqual([])
    const elsewhere = 'https://a.example/m.jpg'
    expect(found('', `cover: {src: "${elsewhere}", alt: The mat}\n`)).toEqual([`cover-missing ${elsewhere}`])
  })

  it('is taken to be there where the draft lies in no folder', () => {
    expect(found('![The mat](./matt.jpg)', '', null)).toEqual([])
  })
})
