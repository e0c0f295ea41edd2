import { describe, expect, it } from 'vitest'
import { work } from './draft.ts'

function last(text: string): string {
  const draft = work(text, { terms: 'uk' })
  const row = draft.ledger.rows.at(-1)
  const errors = draft.found.filter((each) => each.severity !== 'note').map((each) => each.code)
  if (row?.status !== 'worked' || errors.length > 0) return `${row?.status ?? 'no row'} ${errors.join(' ')}`.trim()
  return Object.entries(row.counts)
    .filter(([kind]) => kind !== 'ss')
    .map(([kind, counts]) => `${counts[0]} ${kind}`)
    .join(', ')
}

/** Works a round on 24 double crochet in a ring. */
function on24(row: string): string {
  return last(`## A\nMake a chain of 8, unite.\n\n1st round.—24 double in the circle.\n\n2nd round.—${row}`)
}

/** Works a round on 8 loops of 3 chain with a double crochet between them. */
function onLoops(row: string): string {
  return last(
    `## A\nMake a chain of 8, unite.\n\n1st round.—24 double in the circle.\n\n2nd round.—1 double, 3 chain, miss 2; repeat.\n\n3rd round.—${row}`,
  )
}

/** Works a row on 20 double crochet, flat. */
function flat(row: string): string {
  return last(
    `## A\nMake a chain of 21.\n\n1st row: 1 double in the 2nd chain, and 1 double in each of the others.\n\n2nd row: ${row}`,
  )
}

describe('handbook beginnings', () => {
  it.each([
    [
      'Commence with 8 chain, unite. 1st round.',
      '## A\nCommence with 8 chain, unite.\n\n1st round: 12 long in the circle.',
      '12 tr',
    ],
    ['under the chain', '## A\nMake a chain of 6 and join it.\n\n1st round: Under this chain work 12 double.', '12 dc'],
    [
      'a ring wound on the finger',
      '## A\n1st round: Wind the thread 12 times round the finger, and into this ring work 20 double.',
      '20 dc',
    ],
    ['chains missed first', '## A\nMake 23 chain.\n\n1st row: Miss 3 chain, 1 treble in each of the next 20.', '21 tr'],
    [
      'chains missed first, wide',
      '## A\nMake 22 chain.\n\n1st row: Miss 5, 1 treble in the next, * 1 chain, miss 1, 1 treble in the next; repeat from * to the end.',
      '10 tr, 9 ch-1 sp',
    ],
    ['the turn left unsaid', '## A\n1st row: Make 9 chain, turn, 1 double in each of 8.', '8 dc'],
    ['not one short', '## A\n1st row: Make 9 chain, turn, 1 double in each of 6.', 'worked stitches-left'],
  ])('%s', (_, text, expected) => {
    expect(last(text)).toBe(expected)
  })
})

describe('repeats without a mark', () => {
  it.each([
    ['1 treble, 2 chain, miss 2; repeat.', '8 tr, 8 ch-2 sp'],
    ['1 double in the first, 2 in the next; repeat all round.', '36 dc'],
    ['5 double, 2 in the next, and repeat to the end of the round.', '28 dc'],
    ['4 chain, miss 2, 1 double in the next; repeat.', '8 ch-4 sp, 8 dc'],
    ['1 double in each of 2, 2 in the third, and so on.', '32 dc'],
    ['1 double in one stitch and 2 in the next alternately.', '36 dc'],
    ['10 double, take 2 together; repeat.', '22 dc'],
    ['1 treble, 1 chain, miss 1, repeat 11 times more.', '12 tr, 12 ch-1 sp'],
    ['8 times 1 double, 3 chain, miss 2.', '8 dc, 8 ch-3 sp'],
    // A repeat that does not come out is one all the same.
    ['4 double, 2 in the next; repeat.', 'worked bare-repeat-left'],
  ])('%s', (row, expected) => {
    expect(on24(row)).toBe(expected)
  })
})

describe('numbers and nouns left out', () => {
  it.each([
    ['2 in each.', '48 dc'],
    ['Plain.', '24 dc'],
    ['Treble all round.', '24 tr'],
    ['1 treble in every other stitch.', '12 tr'],
    ['2 double in every fourth stitch, and 1 in each of the rest.', '30 dc'],
    ['3 chain, 1 double in every 4th stitch.', '6 ch-3 sp, 6 dc'],
    ['* 4 chain, 1 double in the 3rd stitch; repeat from * all round.', '8 ch-4 sp, 8 dc'],
    ['1 double in each of 8, 3 in the next, 1 in each of the others.', '26 dc'],
    ['1 treble in each, with 1 chain between.', '24 tr, 24 ch-1 sp'],
    ['Increase in every 4th stitch.', '30 dc'],
    ['1 double in each, missing every 6th.', '20 dc'],
    ['Decrease by missing every 5th stitch.', '20 dc'],
    ['Miss every other stitch.', '12 dc'],
    ['Work round without increasing.', '24 dc'],
    ['4 double on the first 4, 2 in the next, 1 in each of the rest.', '25 dc'],
  ])('%s', (row, expected) => {
    expect(on24(row)).toBe(expected)
  })
})

describe('loops by their chains', () => {
  it.each([
    ['5 double under each loop of 3 chain.', '40 dc'],
    ['4 double in every 3 chain.', '32 dc'],
    ['1 double, 5 treble, 1 double in every loop.', '16 dc, 40 tr'],
    ['In each loop work 1 double, 3 long and 1 double.', '16 dc, 24 tr'],
    ['2 treble, 2 chain, 2 treble, all in the same loop; repeat.', '32 tr, 8 ch-2 sp'],
    ['1 double in the centre of the next loop, 5 chain; repeat.', '8 dc, 8 ch-5 sp'],
    ['1 double in the 2nd of each 3 ch., 4 ch. between.', '8 dc, 8 ch-4 sp'],
    ['5 treble in the first loop, 1 double in the next; repeat.', '20 tr, 4 dc'],
    ['Slip stitch to the middle of the loop, 6 chain, 1 double in the next loop; repeat.', '8 ch-6 sp, 8 dc'],
    ['3 double under each loop, miss the double.', '24 dc'],
    ['1 double on each double, 2 double under each loop.', '24 dc'],
    ['9 treble under each loop, and 1 double on the double between.', '8 dc, 72 tr'],
    ['2 single up the loop, * 6 chain, 1 double in the next loop; repeat from *.', '8 ch-6 sp, 8 dc'],
    ['5 double under each loop of 4 chain.', 'not-worked no-such-place'],
  ])('%s', (row, expected) => {
    expect(onLoops(row)).toBe(expected)
  })

  it('finds the middle of a group', () => {
    const text =
      '## A\nMake a chain of 8, unite.\n\n1st round.—24 double in the circle.\n\n2nd round.—* 5 treble in the next, miss 2, 1 double, miss 2; repeat from *.\n\n'
    expect(last(`${text}3rd round.—1 double in the middle one of the 5 treble, 5 chain; repeat.`)).toBe(
      '4 dc, 4 ch-5 sp',
    )
    expect(last(`${text}3rd round.—* 1 double in the centre of the next scallop, 5 chain; repeat from *.`)).toBe(
      '4 dc, 4 ch-5 sp',
    )
  })
})

describe('flat rows', () => {
  it.each([
    ['Turn, 3 chain, miss 1, 1 treble in each to the end.', '20 tr'],
    [
      'Turn, 4 chain, miss 1, 1 treble in the next, * 1 chain, miss 1, 1 treble in the next; repeat from * to the last, 1 treble.',
      '11 tr, 9 ch-1 sp',
    ],
    [
      '3 chain (to stand for the first treble), 1 treble in the next, * 2 chain, miss 2, 1 treble in each of 2; repeat from * to the last 2, 2 chain, miss 1, 1 treble.',
      '11 tr, 5 ch-2 sp',
    ],
    ['1 double in each of 6; leave the rest.', '6 dc'],
    ['9 double, 2 in the next, 1 in each of 10.', '21 dc'],
    ['9 double, 2 in the next, 1 in each of 11.', 'not-worked too-few-stitches'],
  ])('%s', (row, expected) => {
    expect(flat(row)).toBe(expected)
  })
})

describe('a repeat that ends with stitches of its own', () => {
  it.each([
    ['1 double, 3 chain, miss 2; repeat to the end, finishing with 1 double.', '7 dc, 6 ch-3 sp', 19],
    ['1 long, 1 chain, miss 1; repeat, ending with 1 long.', '10 tr, 9 ch-1 sp', 19],
  ])('%s', (row, made, stitches) => {
    expect(last(`## A\nMake a chain of ${stitches}.\n\n1 row.—1 double in each chain.\n\n2 row.—${row}`)).toBe(made)
  })
})

describe('lists without brackets', () => {
  const ring = '## A\nMake a chain of 6, unite.\n\n1 round.—'
  it.each([
    ['1 double, 5 chain, 8 times in the ring.', '8 dc, 8 ch-5 sp'],
    [
      '1 double, 5 chain, 8 times in the ring.\n\n2 round.—1 double, 6 long, 1 double, all in each loop.',
      '16 dc, 48 tr',
    ],
    [
      '1 double, 5 chain, 8 times in the ring.\n\n2 round.—2 double, 4 chain, 2 double, in each loop.',
      '32 dc, 8 ch-4 sp',
    ],
    ['16 double in the round.', '16 dc'],
    ['16 double in the round.\n\n2 round.—1 long, 2 chain, on every stitch.', '16 tr, 16 ch-2 sp'],
    ['16 double in the round.\n\n2 round.—2 long in each, 1 chain after each.', '32 tr, 16 ch-1 sp'],
    ['16 double in the round.\n\n2 round.—Increase 8 in the round.', '24 dc'],
    [
      '16 double in the round.\n\n2 round.—2 long in one stitch, miss 1; repeat.\n\n3 round.—2 long between each pair of long.',
      '16 tr',
    ],
  ])('%s', (rounds, made) => {
    expect(last(ring + rounds)).toBe(made)
  })

  it('but not with a place that does not exist', () => {
    expect(last(`${ring}1 double, 5 chain, 8 times in the blorp.`)).toContain('row-unread')
  })
})

describe('the centre stitch and rows like others', () => {
  it.each([
    ['1 double in each of 9, 3 double in the centre, 1 double in each of 10.', '22 dc'],
    ['1 double in each of 10, 3 double in the centre.', 'worked stitches-left'],
  ])('%s', (row, made) => {
    expect(flat(row)).toBe(made)
  })

  it('takes up an earlier row that it is like', () => {
    expect(flat('1 chain, 1 double in each.\n\n3rd row: Like the second row.')).toBe('20 dc')
  })
})

describe('endings of a repeat', () => {
  const groups =
    '## A\nMake a chain of 8, unite.\n\n1st round.—3 chain, 23 treble in the circle, unite.\n\n2nd round.—3 chain, 1 treble in each of next 2, * 2 chain, 1 treble in each of next 3; repeat from *, ending with 2 chain; unite.\n\n'
  const mesh =
    '## A\nMake a chain of 38.\n\n1st row.—1 treble in the 8th chain from the needle, * 2 chain, miss 2, 1 treble in the next; repeat from * to the end, turn.\n\n'

  it.each([
    ['its last chain', groups, '24 tr, 8 ch-2 sp'],
    [
      'in place of the last stitches, where a space is left',
      `${groups}3rd round.—3 chain, 1 treble in each of next 2 treble, * 1 chain, 1 treble in the next space, 1 chain, 1 treble in each of next 3 treble; repeat from * all round, ending with 1 chain; unite.`,
      '32 tr, 16 ch-1 sp',
    ],
    [
      'into the turning chain',
      `${mesh}2nd row.—5 chain, miss the first treble, 1 treble in the next treble, * 2 chain, 1 treble in the next treble; repeat from *, ending with 2 chain, miss 2 chain, 1 treble in the next chain.`,
      '12 tr, 11 ch-2 sp',
    ],
    [
      'the last one told by its place',
      `${mesh}2nd row.—5 chain, 1 treble on the next treble, * 2 chain, 1 treble on the next treble; repeat from *, the last one on the 3rd of the turning chain.`,
      '12 tr, 11 ch-2 sp',
    ],
  ])('%s', (_, text, expected) => {
    expect(last(text)).toBe(expected)
  })
})
