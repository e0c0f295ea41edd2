/** A sound draft of a flat piece: `rows` rows written out, nine sizes, a number for every size in most rows. */
export function generateDraft(number: number, rows = 60): string {
  const parts = [front(number), grading(), prose(), '## Panel', 'Foundation: Ch {{cast + 1}}.', firstRow]
  for (let row = 2; row <= rows; row++) parts.push(laterRow(row))
  parts.push('Fasten off.', '## Finishing', 'Weave in the ends and block to {{width_made}} across.')
  return `${parts.join('\n\n')}\n`
}

function front(number: number): string {
  return `---
title: Panel ${number}
summary: A plain panel that widens by a stitch at each end of every fourth row.
published: 2026-01-15
edition: "1.0"
skill: easy
terms: us
sizes: [XS, S, M, L, XL, 2X, 3X, 4X, 5X]
swatch: {in: sc, stitches: 13 per 10 cm, rows: 15 per 10 cm, hook: 5.5 mm, size: 15 cm x 15 cm, weight: 9 g}
yarn: [{as: main, category: 4, fibre: wool, skein: {weight: 100 g, length: 200 m}}]
hooks: [5.5 mm]
notions: [yarn needle]
finished: {Width: width_made}
---`
}

function grading(): string {
  return `\`\`\`grading
across     = [40, 44, 48, 52, 57, 62, 67, 72, 78] cm
cast       = stitches(across) as even
width_made = width(cast)
half       = cast / 2
need cast rises
\`\`\``
}

function prose(): string {
  return `This panel is worked flat from the lower edge. It is {{width_made}} wide at the foundation, which is {{cast}} stitches,
and has *two more* after every fourth row.

## Notes

- Ch 1 at the beginning of a row does not count as a stitch.
- Numbers are given for all sizes, the smallest first.`
}

const firstRow = 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. ({{cast}} sc)'

function laterRow(row: number): string {
  const made = 2 * Math.floor(row / 4)
  const count = made === 0 ? '{{cast}}' : `{{cast + ${made}}}`
  if (row % 4 === 0) {
    return `Row ${row}: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. (${count} sc)`
  }
  if (row % 4 === 1) return `Row ${row}: Ch 1, sc in each st across, turn. (${count} sc)`
  if (row % 4 === 2) return `Row ${row}: Ch 1, *sc in next st, sc in next st; rep from * across, turn. (${count} sc)`
  return `Row ${row}: Ch 1, sc in next {{half}} sts, sc in each st to end, turn. ({{total}} sc)`
}
