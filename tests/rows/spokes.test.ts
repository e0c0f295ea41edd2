import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function last(text: string): string {
  const draft = work(text)
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

const ring = '## Star\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around. (12)\n'

describe('chains just made and worked down again', () => {
  it.each([
    [
      '*Ch 4, sl st in 2nd ch from hook, sc in next ch, hdc in next ch, sk 1 st, sl st in next st; rep from * 5 more times.',
      12,
    ],
    ['*Ch 16, 2 sc in 2nd ch from hook, 2 sc in each of next 14 ch, sl st in next sc; rep from * 11 more times.', 360],
    ['(Ch 6, starting in 2nd ch from hook, 5 sc, sl st in next 2 sts) 6 times.', 30],
    ['(Ch 5, sc in 2nd ch from hook and in each ch, sl st in next st) 12 times.', 48],
    ['(Ch 4, sc in 2nd ch from hook, hdc in next, dc in last ch, sk 1, sl st in next st) 6 times.', 18],
    // A picot closes; its chains are not worked down.
    ['(Sc in next 2 sts, ch 3, sl st in 3rd ch from hook) 6 times. (12)', 12],
    ['(Sc in next 2 sts, ch 4, sl st in 3rd ch from hook) 6 times. (12)', 12],
  ])('%s', (row, made) => {
    expect(last(`${ring}Rnd 3: ${row}`)).toBe(`Rnd 3: ${made}`)
  })

  it.each([['(Ch 4, sc in 2nd ch from hook, sc in next 3 ch, sl st in next st) 12 times.', 'too-few-stitches']])(
    'no more than there are: %s',
    (row, code) => {
      expect(work(`${ring}Rnd 3: ${row}`).codes).toContain(code)
    },
  )

  it.each([
    ['Ch 9.\nRow 1: Starting in 2nd ch from hook, sc across. (8)', 8],
    [
      'Ch 9.\nRnd 1: Starting in 2nd ch from hook 7 sc, 3 sc in last ch, on the other side 6 sc, 2 sc in last. (18)',
      18,
    ],
  ])('a foundation: %s', (text, made) => {
    expect(last(`## A\n${text}`)).toMatch(new RegExp(`^R(?:ow|nd) 1: ${made}$`))
  })
})
