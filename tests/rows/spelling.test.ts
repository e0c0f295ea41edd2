import { describe, expect, it } from 'vitest'
import { work } from './draft.ts'

/** The stitches of a row worked on a chain of 21, and its total. */
function made(row: string, terms: 'us' | 'uk'): readonly [string, number | null] {
  const ledger = work(`## A\nCh 21.\nRow 1: ${row}`, { terms }).ledger
  const last = ledger.rows.at(-1)
  const kinds = Object.keys(last?.counts ?? {}).join(' ')
  return last?.status === 'worked' && last.left[0] === 0 ? [kinds, last.total[0] ?? null] : ['', null]
}

describe('abbreviations with full stops or blanks in them', () => {
  it.each([
    ['1 d.c. into 2nd ch. from hook, 1 d.c. into each ch. to end.', 'uk', 'dc', 20],
    ['1 D. C. in 2nd ch from hook, 1 D. C. in every ch.', 'uk', 'dc', 20],
    ['1 s c in 2d ch from hook, s c in each ch across.', 'us', 'sc', 20],
    ['H d c in 2nd ch from hook and in each ch.', 'us', 'hdc', 20],
    ['1 d. tr. in 2nd ch. from hook, 1 d. tr. in each ch.', 'uk', 'dtr', 20],
    ['S. c. in 2nd ch. from hook, * s. c. in next ch.; rep. from * to end.', 'us', 'sc', 20],
    ['1 tr c in 5th ch from hook, tr c in each ch.', 'us', 'tr', 18],
    ['Half d c in 2nd ch from hook and in each ch.', 'us', 'hdc', 20],
    ['1 double in 2nd chain from hook, 1 double in each chain.', 'uk', 'dc', 20],
    ['1 long in 4th chain from hook, 1 long in each chain.', 'uk', 'tr', 19],
    // A letter by itself is a colour, a full stop before a capital ends a sentence.
    ['With C, sc in 2nd ch from hook and in each ch. Turn.', 'us', 'sc', 20],
    ['Wibble c in 2nd ch from hook.', 'us', '', null],
  ] as const)('%s', (row, terms, kinds, total) => {
    expect(made(row, terms)).toEqual([kinds, total])
  })

  it.each([
    ['Sc in each ch. 21 sc.', 21],
    ['Sc in each ch. You should have 21 sts.', 21],
    ['Sc in each ch. (21)', 21],
  ])('the count after a full stop stays one: %s', (row, stated) => {
    const [, last] = work(`## A\nCh 21.\nRow 1: ${row}`).ledger.rows
    expect([...Object.values(last?.stated ?? {})].flat()).toEqual([stated])
  })
})
