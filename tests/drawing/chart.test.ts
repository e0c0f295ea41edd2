import { describe, expect, it } from 'vitest'
import { cornersByRow } from '../../src/drawing/chart/corners.ts'
import { chartOf } from '../../src/drawing/chart/draw.ts'
import { layRows } from '../../src/drawing/chart/lay-chart.ts'
import { chainLength } from '../../src/drawing/chart/size.ts'
import { dictionaryFor } from '../../src/rows/terms/dictionary.ts'
import { angleOf, flatChart, placesOf, roundChart, rowsOf } from './laid.ts'

const foundation = 'Foundation: Ch 13.\nRow 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (12 sc)\n'

const rounded = (value: number): number => Math.round(value * 100) / 100

describe('rows', () => {
  it('have each stitch over what it goes into, right-side rows from right to left', () => {
    const chart = flatChart(
      `${foundation}Row 2: Ch 1, sc in each st across, turn.\nRow 3: Ch 1, sc in each st across, turn.`,
    )
    const across = [0, 1, 2].map((row) =>
      placesOf(chart, row)
        .filter(({ sign }) => sign.what === 'stitch')
        .map(({ head }) => rounded(head.x)),
    )
    expect(across[0]).toEqual(across[0]?.toSorted((a, b) => b - a))
    expect(across[1]).toEqual(across[0]?.toReversed())
    expect(across[2]).toEqual(across[0])
    expect(chart.laid.rows.map(({ fromRight }) => fromRight)).toEqual([true, false, true])
  })

  it.each([
    ['Row 1 (WS)', [false, true]],
    ['Row 1', [true, false]],
  ])('begin at the side that %s says', (label, sides) => {
    const text = `${foundation.replace('Row 1 (RS)', label)}Row 2: Ch 1, sc in each st across, turn.`
    expect(flatChart(text).laid.rows.map(({ fromRight }) => fromRight)).toEqual(sides)
  })

  it('of another side begin as a later label says', () => {
    const text = `${foundation.replace('Row 1 (RS)', 'Row 1')}Row 2 (RS): Ch 1, sc in each st across, turn.`
    expect(flatChart(text).laid.rows.map(({ fromRight }) => fromRight)).toEqual([false, true])
  })

  it('are as high as their stitches: a double crochet three chains', () => {
    const chart = flatChart('Foundation: Ch 14.\nRow 1 (RS): Dc in 4th ch from hook and in each ch across, turn.')
    const [opening, first] = placesOf(chart, 0)
    expect(first?.head.y).toBeCloseTo(3 * chainLength)
    expect(opening?.sign).toEqual({ what: 'chains', count: 3, bend: null })
  })

  it('stand on the chains of their foundation, but for those that the opening chain is made of', () => {
    const grounds = (text: string): readonly (number | null)[] =>
      flatChart(text).laid.placed.flatMap(({ row, at }) => (row < 0 ? [at] : []))
    expect(grounds('Foundation: Ch 6.\nRow 1 (RS): Sc in 2nd ch from hook and in each ch across, turn.')).toEqual([
      1, 2, 3, 4, 5,
    ])
    const joined = 'Ch 24, join with sl st in first ch to form a ring.\nRnd 1: Ch 1, sc in each ch around, join.'
    expect(grounds(joined)).toHaveLength(24)
  })

  it('stay rows: a low stitch beside a tall one stands a chain lower at most', () => {
    const chart = flatChart(
      `${foundation}Row 2: Ch 1, sc in first st, *sk 2 sts, 5 tr in next st, sk 2 sts, sc in next st; rep from * to last 5 sts, sc in last 5 sts, turn.`,
    )
    const ups = placesOf(chart, 1).flatMap(({ sign, head }) => (sign.what === 'stitch' ? [head.y] : []))
    const falls = ups.slice(1).map((up, at) => rounded(Math.abs(up - (ups[at] ?? 0))))
    expect(Math.max(...falls)).toBe(chainLength)
  })

  it('spread what goes into one place, and draw together what closes several', () => {
    const chart = flatChart(
      `${foundation}Row 2: Ch 1, sk first 2 sts, 5 dc in next st, sk 2 sts, sc in next st, sc3tog, sc in next 3 sts, turn.`,
    )
    const stitches = placesOf(chart, 1).filter(({ sign }) => sign.what === 'stitch')
    const fan = stitches.slice(0, 5)
    expect(new Set(fan.map(({ feet }) => feet[0])).size).toBe(1)
    expect(fan.map(({ head }) => rounded(head.x - (fan[2]?.head.x ?? 0)))).toEqual([-1.84, -0.92, 0, 0.92, 1.84])
    expect(stitches[6]?.feet).toHaveLength(3)
  })

  it('bend chains that are longer than their way', () => {
    const chart = flatChart(
      `${foundation}Row 2: Ch 1, sc in first st, *ch 5, sk 2 sts, sc in next st; rep from * to last 2 sts, sc in last 2 sts, turn.`,
    )
    const spaces = placesOf(chart, 1).flatMap(({ sign, head, feet }) =>
      sign.what === 'chains' && sign.bend !== null
        ? [{ count: sign.count, over: sign.bend.y - Math.max(head.y, feet[0]?.y ?? 0) }]
        : [],
    )
    expect(spaces.map(({ count }) => count)).toEqual([5, 5, 5])
    expect(spaces.every(({ over }) => over > 0.5)).toBe(true)
  })

  it('are drawn out where several go into one chain space', () => {
    const lace = `${foundation}Row 2: Ch 1, sc in first st, *ch 5, sk 2 sts, sc in next st; rep from * to last 2 sts, sc in last 2 sts, turn.`
    const wide = (text: string): number => {
      const across = placesOf(flatChart(text), 0).map(({ head }) => head.x)
      return Math.max(...across) - Math.min(...across)
    }
    const filled = `${lace}\nRow 3: Ch 1, sc in first 2 sts, *5 sc in next ch-5 sp, sc in next sc; rep from * across.`
    expect(wide(filled) / wide(lace)).toBeGreaterThan(1.3)
  })

  it('show from the right side what wrong-side rows work at the other one', () => {
    const chart = flatChart(
      `${foundation}Row 2: Ch 1, sc in BLO of each st across, turn.\nRow 3: Ch 1, sc in BLO of each st across, turn.`,
    )
    const fronts = [1, 2].map((row) =>
      placesOf(chart, row).flatMap(({ sign }) => (sign.what === 'stitch' ? [sign.front] : [])),
    )
    expect(fronts.map((front) => [...new Set(front)])).toEqual([[false], [true]])
  })

  it('have picots over their stitch and slip stitches that travel over what they go into', () => {
    const text = `${foundation}Row 2: Sl st in first 3 sts, ch 1, sc in next 2 sts, ch 3, sl st in 3rd ch from hook, sc in next 7 sts, turn.`
    const extra = flatChart(text).laid.placed.filter(({ row, at }) => row === 1 && at === null)
    expect(extra.map(({ sign }) => sign.what)).toEqual(['picot', 'slip', 'slip', 'slip'])
  })
})

const circle = [
  'Rnd 1: 6 sc in magic ring.',
  'Rnd 2: 2 sc in each st around.',
  'Rnd 3: *Sc in next st, 2 sc in next st; rep from * around.',
  'Rnd 4: *Sc in next 2 sts, 2 sc in next st; rep from * around.',
].join('\n')

const square = [
  'Ch 4, join with sl st in first ch to form a ring.',
  'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times, join with sl st in top of beg ch-3.',
  'Rnd 2: Sl st in next 2 dc and in next ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, *ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, ch 1, join with sl st in top of beg ch-3.',
  'Rnd 3: Sl st in next 2 dc and in next ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, *ch 1, 3 dc in next ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, ch 1, 3 dc in next ch-1 sp, ch 1, join with sl st in top of beg ch-3.',
].join('\n')

describe('rounds', () => {
  it('lie around their middle, each stitch further on than the one before, counter-clockwise', () => {
    const chart = roundChart(circle)
    for (const round of [0, 1, 2, 3]) {
      const places = placesOf(chart, round)
      const angles = places.map(({ head }) => angleOf(head))
      const turns = angles.filter((angle, at) => at > 0 && angle < (angles[at - 1] ?? 0))
      expect(turns.length).toBeLessThan(2)
      expect(new Set(places.map(({ head }) => rounded(Math.hypot(head.x, head.y)))).size).toBe(1)
    }
    expect(placesOf(chart, 0)).toHaveLength(6)
  })

  it('go outwards by the height of their stitches', () => {
    const radius = [0, 1, 2, 3].map((round) => placesOf(roundChart(circle), round)[0]?.head ?? { x: 0, y: 0 })
    const distances = radius.map(({ x, y }) => Math.hypot(x, y))
    distances.slice(1).forEach((far, index) => {
      expect(far - (distances[index] ?? 0)).toBeGreaterThan(0.9)
    })
  })

  it('have the corners of a square in its corners', () => {
    const { ledger, rows } = rowsOf(square)
    const chart = roundChart(square, 4, 4)
    const corners = cornersByRow(rows, ledger.kinds, 4)
    corners.forEach((positions, round) => {
      const angles = (positions ?? []).map((at) => {
        const corner = placesOf(chart, round).find((each) => each.at === at)
        const [from, to] = [corner?.feet[0] ?? { x: 0, y: 0 }, corner?.head ?? { x: 0, y: 0 }]
        return Math.round(angleOf({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }) / 5) * 5
      })
      expect(angles.toSorted((a, b) => a - b)).toEqual([45, 135, 225, 315])
    })
  })

  it('show where they are closed, and how the yarn travels to the corner', () => {
    const slips = roundChart(square, 4, 4).laid.placed.filter(({ sign }) => sign.what === 'slip')
    expect(slips.map(({ row }) => row)).toEqual([0, 1, 1, 1, 1, 2, 2, 2, 2])
  })

  it('hold chains down with slip stitches', () => {
    const flower =
      'Ch 5, join with sl st in first ch to form a ring.\nRnd 1: Ch 1, 12 sc in ring, join with sl st in first sc.\nRnd 2: *Ch 3, sk 1 sc, sl st in next sc; rep from * around.'
    const { laid } = roundChart(flower, 0, 5)
    const round = laid.placed.filter(({ row }) => row === 1)
    expect(round.filter(({ sign }) => sign.what === 'chains')).toHaveLength(6)
    expect(round.filter(({ sign }) => sign.what === 'slip').length).toBeGreaterThanOrEqual(5)
  })

  it('that are picked up here and there stand on what they use, as they use it', () => {
    const body =
      'Ch 40, join with sl st in first ch to form a ring.\nRnd 1: Sc in each ch around.\nRnd 2: Sc in next 4 sts, sk next 12 sts, sc in next 4 sts, sk next 20 sts.'
    const { ledger, rows } = rowsOf(body)
    const { placed } = layRows(rows.slice(1), ledger.kinds)
    const ground = placed.flatMap(({ row, at }) => (row < 0 ? [at] : []))
    expect(ground).toEqual([0, 1, 2, 3, 16, 17, 18, 19])
    const across = placed.flatMap(({ row, feet }) => (row < 0 ? [feet[0]?.x ?? 0] : []))
    expect(Math.max(...across) - Math.min(...across)).toBeLessThan(8)
  })

  it('that begin on a long chain are drawn as rows, all from the right', () => {
    const cowl =
      'Ch 24, join with sl st in first ch to form a ring.\nRnd 1 (RS): Ch 1, sc in each ch around, join with sl st in first sc.\nRnd 2: Ch 1, sc in each st around, join with sl st in first sc.'
    expect(flatChart(cowl).laid.rows.map(({ fromRight }) => fromRight)).toEqual([true, true])
  })
})

function drawnOf(text: string): ReturnType<typeof chartOf> {
  const { ledger, rows } = rowsOf(text)
  return chartOf({ piece: 'Mat', caption: 'Mat, Rnds 1–4', rows }, ledger, dictionaryFor('us'))
}

function figureOf(text: string): Exclude<ReturnType<typeof chartOf>, string> {
  const drawn = drawnOf(text)
  if (typeof drawn === 'string') throw new Error(drawn)
  return drawn
}

describe('a chart as a figure', () => {
  it('has a number for each row, at its beginning', () => {
    const { drawing } = figureOf(`${foundation}Row 2: Ch 1, sc in each st across, turn.`).figure
    expect(drawing.labels.map(({ lines, anchor }) => [lines[0], anchor])).toEqual([
      ['1', 'end'],
      ['2', 'start'],
    ])
  })

  it('explains every symbol once', () => {
    const text = `${foundation}Row 2: Ch 1, sc2tog, hdc in next 2 sts, sc in BLO of next 2 sts, FPdc around next st, tr in next st, ch 2, sk 2 sts, dc in last 2 sts, turn.`
    expect(figureOf(text).figure.key.map(({ words }) => words)).toEqual([
      'ch: chain',
      'sc: single crochet',
      'sc2tog: single crochet 2 together',
      'hdc: half double crochet',
      'sc in front loop in RS rows, in back loop in WS rows',
      'BPdc in RS rows, FPdc in WS rows',
      'tr: treble crochet',
      'dc: double crochet',
      'direction of work: RS rows from right to left',
    ])
  })

  it.each([
    ['rounds', circle, 'direction of work'],
    [
      'rounds that turn',
      'Rnd 1: 8 sc in magic ring, join, turn.\nRnd 2: Ch 1, sc in each st around, join, turn.',
      'direction of work of Rnd 2',
    ],
    [
      'rows whose sides are not told',
      'Foundation: Ch 5.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in each st across, turn.',
      'direction of work',
    ],
  ])('has arrows in the direction of %s', (_, text, words) => {
    const { key, drawing } = figureOf(text).figure
    expect(key.at(-1)?.words).toBe(words)
    // A shaft and its head.
    expect(
      drawing.lines.filter(({ look, path }) => look === 'thin' && path.split('L').length === 3).length,
    ).toBeGreaterThan(0)
  })

  it.each([
    [
      'along both sides of a chain',
      'Ch 8.\nRnd 1: Sc in 2nd ch from hook, sc in next 5 ch, 3 sc in last ch, working along opposite side of foundation chain, sc in next 5 ch, 2 sc in last ch.',
      'both-sides',
    ],
    [
      'that end in the stitch where they began',
      'Ch 8, join with sl st in first ch to form a ring.\nRnd 1: Ch 1, sc in first ch, sc in next 7 ch, sc in first ch, join with sl st in first sc.',
      null,
    ],
  ])('is none of rounds %s', (_, text, expected) => {
    const drawn = drawnOf(text)
    expect(typeof drawn === 'string' ? drawn : null).toBe(expected)
  })

  it('says in words what it shows', () => {
    expect(figureOf(circle).figure.alt).toBe(
      'Stitch chart: Mat, Rnds 1–4. Rnd 1 in the ring: 6 sc. Rnd 2: 2 sc in each of next 6. ' +
        'Rnd 3: sc in next; 2 sc in next; the last 2 steps 5 more times. ' +
        'Rnd 4: sc in each of next 2; 2 sc in next; the last 2 steps 5 more times.',
    )
  })

  it.each([
    [
      'the ring, an opening chain that counts, and where a round is closed',
      square.split('\n').slice(0, 2).join('\n'),
      'Rnd 1 in the ring: ch 3 as dc; 2 dc; ch 2; 3 dc; ch 2; 3 dc; ch 2; 3 dc; ch 2; join.',
    ],
    [
      'loops, decreases and picots, but not the chains that are passed from the hook',
      'Foundation: Ch 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in BLO of next 4 sts, ch 3, sl st in 3rd ch from hook, sc2tog twice, turn.',
      'Row 1: ch 1; sc in each of next 8. Row 2: ch 1; sc in back loop of each of next 4; sc2tog, 2 times; 1 picot.',
    ],
    [
      'slip stitches that hold chains down',
      'Rnd 1: 12 sc in magic ring, join with sl st in first sc.\nRnd 2: *Ch 5, sk 1 sc, sl st in next sc; rep from * around.',
      'Rnd 1 in the ring: 12 sc; join. Rnd 2: ch 5 6 times; skip 12; 6 slip stitches between the chains.',
    ],
  ])('says in words %s', (_, text, words) => {
    expect(figureOf(text).figure.alt).toBe(`Stitch chart: Mat, Rnds 1–4. ${words}`)
  })

  it('shows stitches without a symbol as numbered boxes', () => {
    const text = `## Special stitches\n- **Knot:** a loop drawn up and locked; counts as 1 st.\n- **Loop stitch:** a long loop; counts as 1 st.\n## Mat\n${foundation}Row 2: Ch 1, *knot in next st, loop stitch in next st; rep from * across, turn.`
    const { figure, own } = figureOf(text)
    expect(own).toEqual(['knot', 'loop stitch'])
    expect(figure.key.map(({ symbol }) => symbol.labels[0]?.lines[0])).toEqual([
      undefined,
      undefined,
      '1',
      '2',
      undefined,
    ])
    const boxes = figure.drawing.labels.map(({ lines }) => lines[0]).slice(2)
    expect(boxes).toEqual(Array.from({ length: 6 }, () => ['1', '2']).flat())
  })

  it('keeps within its sheet, and is none where it would be too small', () => {
    const { drawing } = figureOf(square).figure
    const numbers = drawing.lines.flatMap(({ path }) => (path.match(/-?[\d.]+/g) ?? []).map(Number))
    expect(Math.min(...numbers)).toBeGreaterThan(0)
    expect(Math.max(...numbers)).toBeLessThan(Math.max(drawing.width, drawing.height))
    expect(drawnOf('Foundation: Ch 121.\nRow 1: Sc in 2nd ch from hook and in each ch across.')).toBe('too-large')
  })
})
