import { describe, expect, it } from 'vitest'
import { row, totals, work } from './draft.ts'

const start = `## A
Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across. (20 sc)
Row 2: Ch 1, 2 sc in first st, sc in each st to end, turn.
Row 3: Ch 1, sc in each st across, turn. (21 sc)
`

/** Findings, how many rows the words stand for, and what the last of them makes. */
function again(text: string) {
  const draft = work(`${start}${text}`)
  const rows = draft.ledger.rows.slice(4)
  return [...draft.codes, rows.length, rows.at(-1)?.total[0]]
}

describe('rows worked as others', () => {
  it.each([
    ['Rows 4–9: Rep Row 3. Do not fasten off.', 6, 21],
    ['Rows 4-9: Repeat Row 3. Sew the short ends together to make a tube.', 6, 21],
    ['Rows 4–9: Rep Row 3. 21 sts. Fasten off.', 6, 21],
    ['Rows 4–9: Rep Rows 2 and 3. At end of Row 9: 24 sc', 6, 24],
    ['Rows 4–9: Rep Rows 2 and 3, three times.', 6, 24],
    ['Rows 4–9: Rep [Rows 2–3] 3 times.', 6, 24],
    ['Rows 4–9: Rep Rows 2 and 3 alternately.', 6, 24],
    ['Rows 4–9: Rep Rows 2 and 3, alternating colours A and B.', 6, 24],
    ['Rows 4–7: Rep Row 3 (4 more times).', 4, 21],
    ['4th and 5th rows: Rep 2nd and 3rd rows.', 2, 22],
    ['Row 4: As Row 2.', 1, 22],
    ['Row 4: Same as row 2.', 1, 22],
    ['Row 4: Like 2', 1, 22],
    ['Row 4: Row 4 as for Row 2.', 'row-unread', 1, null],
    ['Row 4: Work Row 2.', 1, 22],
    ['Row 4: The same.', 1, 21],
    ['Rep Rows 2 and 3 twice more, then Row 2 once more.', 5, 24],
    ['Repeat Rows 2–3 another 2 times, ending with Row 3.', 4, 23],
    ['Rep last 2 rows 3 times.', 6, 24],
    ['Rep the last 2 rows another 3 times. 9 rows worked.', 6, 24],
    ['Rep Row 3 for pattern.', 1, 21],
    ['Rep Rows 2 and 3 until there are 24 sc.', 6, 24],
    ['Rep Rows 2 and 3 through Row 9.', 6, 24],
    ['Rep Rows 2 and 3 until you have 9 rows.', 6, 24],
    ['Repeat Row 3 until cuff fits around wrist.', 1, 21],
    ['Rep Row 3 to desired length.', 1, 21],
    // 10 rows in 10 cm, three are there: 9 cm are six more.
    ['Rep Row 3 until piece measures 9 cm, ending with a WS row.', 6, 21],
    ['Keeping continuity of pattern, rep last 2 rows 3 times.', 6, 24],
    ['Cont in patt until piece measures 9 cm.', 6, 21],
    ['Row 4: Rep Row 3 but with B.', 1, 21],
    ['Rows 4–6: Rep Row 2, increasing 1 st in each row.', 3, 24],
    ['Rep Row 3 for 6 more rows or until it is long enough.', 6, 21],
  ])('%s', (...args) => {
    const [text, ...expected] = args
    expect(again(String(text))).toEqual(expected)
  })

  it.each([
    ['Rows 4–9: Rep Rows 2 and 3 five times.', 'repeated-rows-differ'],
    ['Row 4: Rep Row 1.', 'repeats-foundation-row'],
    ['Row 4: Rep Row 7.', 'unknown-row-reference'],
    ['Row 4: Rep dec row.', 'unknown-row-name'],
    ['Row 4: As Row 2, but working in every other st.', 'row-unread'],
    ['Row 4: Rep Row 3, increasing 1 st at each end.', 'row-unread'],
  ])('not in silence: %s', (text, code) => {
    expect(work(`${start}${text}`).codes).toContain(code)
  })

  it.each(['Repeat Rows 1–3 for the second sleeve.', 'Repeat for other side.', 'Make another piece in the same way.'])(
    'but not for another piece: %s',
    (text) => {
      expect(again(text)).toEqual([0, undefined])
    },
  )

  it('may begin in the middle of a paragraph', () => {
    expect(again('Row 4: Sc in each st across, turn. Rep Row 4 twice more.')).toEqual([3, 21])
  })
})

describe('rows by name', () => {
  const named = `## A
Ch 31.
Row 1: Sc in 2nd ch from hook and in each ch across. (30 sc)
`

  it.each([
    ['Dec row: Ch 1, sc2tog, sc to last 2 sts, sc2tog, turn.\nRep dec row twice more.', 24],
    ['Row 2 (dec row): Ch 1, sc2tog, sc to last 2 sts, sc2tog, turn.\nRow 3: Sc across.\nRow 4: Rep dec row.', 26],
    ['Decrease Row (RS): Ch 1, sc2tog, sc to last 2 sts, sc2tog, turn.\nRep Dec Row every 4th row 3 more times.', 22],
    ['Row 2 – Increase Row: Ch 1, 2 sc in first st, sc to end.\nRow 3: Work inc row.', 'row-unread'],
  ])('%s', (text, expected) => {
    const draft = work(`${named}${text}`)
    const made = draft.ledger.rows.at(-1)?.total[0]
    expect(draft.codes[0] ?? made).toBe(expected)
  })

  it.each(['Rib row', 'Edging row', 'Buttonhole Row'])('a row needs no number: %s', (label) => {
    const draft = work(`${named}${label}: Ch 1, sc in each st across.\nRow 3: Sc across.`)
    expect(draft.codes).toEqual([])
    expect(totals(draft).slice(-2)).toEqual([`${label.replace(/Row/, 'row')}: 30`, 'Row 3: 30'])
  })
})

describe('plain rows and shaping in words', () => {
  const panel = '## A\nCh 41.\nRow 1: Sc in 2nd ch from hook and in each ch across. (40 sc)\n'

  it.each([
    ['Work 3 rows even.', [40, 40, 40]],
    ['Work even for 3 rows.', [40, 40, 40]],
    ['Work 3 rows straight in hdc.', [40, 40, 40]],
    ['Work 3 rows without shaping.', [40, 40, 40]],
    ['3 rows of dc.', [40, 40, 40]],
    ['Work in sc for 3 rows.', [40, 40, 40]],
    ['Rows 2–4: Ch 1, turn, work even in sc.', [40, 40, 40]],
    ['Cont in sc, dec 1 st at each end of next 3 rows.', [38, 36, 34]],
    ['Dec 1 st at neck edge on next 3 rows.', [39, 38, 37]],
    ['Dec 1 st at each end of next and every other row 3 times in all.', [38, 38, 36, 36, 34]],
    ['Dec 1 st at each end of next row and every other row twice more.', [38, 38, 36, 36, 34]],
    ['Inc 1 st each side of every 3rd row twice.', [40, 40, 42, 42, 42, 44]],
    ['Inc 1 sc at each end of every other row until there are 44 sc.', [40, 42, 42, 44]],
    ['On every other row, dec 1 st at each end twice.', [40, 38, 38, 36]],
    ['Rows 2–5: Dec 2 sts every other row.', [40, 38, 38, 36]],
    [
      'Dec 1 st at neck edge of every row 3 times, at the same time dec 1 st at armhole edge of every other row twice.',
      [39, 37, 36, 35],
    ],
    ['Row 2: Ch 1, turn; work in sc across, decreasing 1 st at each end of row.', [38]],
  ])('%s', (text, expected) => {
    const draft = work(`${panel}${text}`)
    expect(draft.codes).toEqual([])
    expect(draft.ledger.rows.slice(2).map(({ total }) => total[0])).toEqual(expected)
  })

  it('never comes to a number between its steps', () => {
    expect(work(`${panel}Dec 1 st at each end of every row until 33 sts rem.`).codes).toEqual(['shaping-never-there'])
  })

  it('goes on in pattern with the rows that were worked', () => {
    const draft = work(
      `${panel}Row 2: Ch 1, sc in first 2 sts, *ch 1, sk 1, sc in next st; rep from * across.\nRow 3: Ch 1, sc in each st and ch-1 sp across.\nRows 4 and 5: Rep Rows 2 and 3.\nWork even in pattern for 2 rows.`,
    )
    expect(row(draft, 'Row 4').counts['ch-1 sp']).toEqual([19])
    expect(draft.ledger.rows.slice(-2).map(({ counts }) => counts['ch-1 sp']?.[0] ?? 0)).toEqual([19, 0])
  })
})
