import { sections } from '../rows/draft.ts'
const { workRows } = await import(`${process.argv[2] ?? '../..'}/src/rows/index.ts`)
const base = [150, 158, 166, 174, 182, 190, 198, 206, 214, 222, 230, 238]
const holes = { cast: { kind: 'number' as const, bySize: base.map((n) => n + 1) }, half: { kind: 'number' as const, bySize: base.map((n) => n / 2) } }
const parts = ['## Panel', 'Foundation: Ch {{cast}}.', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn.']
for (let row = 2; row <= 200; row++)
  parts.push(
    `Row ${row}: Ch 1, ` +
      [
        '2 sc in first st, sc in each st to last 2 sts, sc2tog, turn. ({{total}} sc)',
        'sc in each st across, turn.',
        '*sc in next st, sc in next st; rep from * across, turn. ({{total}} sc)',
        'sc in next {{half}} sts, sc in each st to end, turn. ({{total}} sc)',
      ][row % 4],
  )
const draft = sections(`${parts.join('\n\n')}\n`, holes)
const settings = { sizes: base.map((n) => `S${n}`), terms: 'us' as const, rowsIn: () => null }
let result
const times = []
for (let i = 0; i < Number(process.argv[3] ?? 15); i++) {
  const t = performance.now()
  result = workRows(draft, settings)
  times.push(performance.now() - t)
}
console.log(result.diagnostics.length, result.value.rows.at(-1).total.join(' '), 'stitches', result.value.rows.reduce((s: number, r: { total: number[] }) => s + r.total.reduce((a, b) => a + b, 0), 0))
console.log('cold', times[0]?.toFixed(1), 'median', times.sort((a, b) => a - b)[times.length >> 1]?.toFixed(1), 'best', times[0]?.toFixed(1))
