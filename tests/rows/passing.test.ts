import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function last(text: string): string {
  const draft = work(text)
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

const twenty = '## A\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20)\n'
const corners = `${twenty}Row 2: Ch 1, sc in next 5 sts, (sc, ch 1, sc) in next st, sc in next 8 sts, (sc, ch 1, sc) in next st, sc in last 5 sts. (22)\n`

describe('places passed over', () => {
  it.each([
    [`${twenty}Row 2: Ch 1, sc in next 5 sts, ch 3, skip next 8 sts for armhole, sc in last 7 sts. (12)`, 12],
    [`${twenty}Row 2: Ch 1, sc in next 5 sts, ch 3, sk 8 sts for the left sleeve, sc in each st to end. (12)`, 12],
    [
      `${twenty}Row 2: Ch 1, sc in next 5 sts, ch 3, leave next 8 sts unworked for sleeve, sc in each st to end. (12)`,
      12,
    ],
    [`${twenty}Row 2: Ch 1, sc in next 5 sts, ch 3, place next 8 sts on hold, sc in each st to end. (12)`, 12],
    [
      `${corners}Row 3: Ch 1, sc in next 6 sts, ch 3, skip ch-1 sp, next 10 sts and next ch-1 sp, sc in last 6 sts. (12)`,
      12,
    ],
    [
      `${corners}Row 3: Ch 1, sc in next 6 sts, sc in ch-1 sp, skip all sts to next ch-1 sp, sc in ch-1 sp, sc in last 6 sts. (14)`,
      14,
    ],
    [`${twenty}Row 2: Ch 1, sc in each of the 20 neck sts. (20)`, 20],
    [`${twenty}Row 2: Ch 1, sc in next 10 sts, STOP and turn.`, 10],
  ])('%s', (text, made) => {
    expect(last(text)).toMatch(new RegExp(`^(?:stitches-left )?Row \\d: ${made}$`))
  })

  it('are not more than there are', () => {
    expect(last(`${twenty}Row 2: Ch 1, sc in next 15 sts, skip next 8 sts for armhole.`)).toContain('too-few-stitches')
  })
})

describe('spaces whose chains differ by size', () => {
  it('are told by the space', () => {
    const draft = work(
      '## A\nCh 21 (25).\nRow 1: Sc in 2nd ch from hook and in each ch across. (20, 24)\nRow 2: Ch 1, sc in next 6 (8) sts, ch 6 (8), sk 6 (8) sts, sc in last 8 sts. (14, 16)\nRow 3: Ch 1, sc in each sc to ch-6 (8) sp, 6 (8) sc in ch-6 (8) sp, sc in each sc to end. (20, 24)',
      { sizes: ['S', 'M'] },
    )
    expect(draft.codes).toEqual([])
    expect(totals(draft).at(-1)).toBe('Row 3: 20 24')
  })
})
