import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function last(row: string): string {
  const draft = work(`## A\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around.\nRnd 3: ${row}`)
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

describe('words of colour make no stitch', () => {
  it.each([
    ['Sc 5 in black, change to red, sc 7 in red. (12)', 12],
    ['(C1) inc, (C2) 11 sc. (13)', 13],
    ['*inc, sc 1* x 6, all in dark blue. (18)', 18],
    ['(black) sc in each st around.', 12],
    ['Sc in each st around in colour 2.', 12],
    ['With yellow, sc in each st around.', 12],
  ])('%s', (row, made) => {
    expect(last(row)).toBe(`Rnd 3: ${made}`)
  })

  it('but places are not taken for them', () => {
    expect(last('Sc in next st in blorp, 11 sc.')).toContain('row-unread')
  })
})

function handbook(row: string, begun = 'Make a chain of 30; unite.'): string {
  const draft = work(`## A\n${begun}\n\n1st round.—1 dc in each ch.\n\n2nd round.—${row}`, { terms: 'uk' })
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

describe('colours and shades that a row or its stitches are worked in', () => {
  it.each([
    ['Crimson. 2 dc in each.', 60],
    ['Next shade. 1 dc in each dc.', 30],
    ['Same shade; 1 dc in each dc.', 30],
    ['Darkest blue, * 2 tr in one stitch, miss 1; repeat from * all round.', 30],
    ['All white, dc.', 30],
    ['* 4 dc grey, 1 scarlet; repeat.', 30],
    ['2 black, 3 amber; repeat.', 30],
    ['2 black, 3 amber, in dc; repeat.', 30],
  ])('%s', (row, made) => {
    expect(handbook(row)).toBe(`Round 2: ${made}`)
  })

  it('but a number with a word that is no colour is not read', () => {
    expect(handbook('2 blorp, 3 amber; repeat.')).toContain('row-unread')
  })
})

describe('beginnings with words that make nothing', () => {
  it.each([
    'With brown silk cast on a chain of 30; unite.',
    'Commence with 30 ch, in violet; unite.',
    'Make a chain of 30, or the length required, and unite.',
    'Make a chain of 30 and unite, for the cuff.',
    'Begin with 30 chain, which unite.',
    'Make 30 ch, join. Work in dc throughout.',
  ])('%s', (begun) => {
    expect(handbook('1 dc in each dc.', begun)).toBe('Round 2: 30')
  })

  it('but not with a stitch that nobody knows', () => {
    expect(handbook('1 dc in each dc.', 'Make a chain of 30, 3 blorp in the next.')).toContain('row-unread')
  })
})
