import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { slug as slugOf } from 'github-slugger'

/** `sizewright new TITLE`: a draft with its sections ready to be filled, already free of findings. */
export function newDraft(args: readonly string[]): 0 | 2 {
  const title = args.join(' ').trim()
  const slug = slugOf(title)
  if (slug === '') {
    process.stderr.write('Give the pattern a title: sizewright new "Harbour Cowl"\n')
    return 2
  }
  const folder = join('content', 'patterns', slug)
  const path = join(folder, 'index.md')
  if (existsSync(path)) {
    process.stderr.write(`${path} is there already.\n`)
    return 2
  }
  mkdirSync(folder, { recursive: true })
  writeFileSync(path, firstDraft(title))
  process.stdout.write(
    `${path}\n\nSee it while you write:  npm run preview\nProof it:                npm run --silent sizewright -- proof ${path}\n`,
  )
  return 0
}

function firstDraft(title: string): string {
  return `---
title: ${JSON.stringify(title)}
summary: What it is, in a sentence.
edition: "1.0"
skill: easy
terms: us
sizes: [Small, Large]
swatch:
  stitches: 13 per 10 cm
  rows: 15 per 10 cm
  hook: 5.5 mm
yarn: [{as: main, category: 4, fibre: wool, skein: {weight: 100 g, length: 200 m}}]
hooks: [5.5 mm]
notions: [yarn needle]
finished: {Width: width_made, Length: length_made}
---

\`\`\`grading
across      = [20, 30] cm
sts         = stitches(across) as whole
width_made  = width(sts)
length      = 25 cm
last_row    = rows(length) as even
length_made = height(last_row)
need sts rises
\`\`\`

The turning ch-1 does not count as a stitch.

## Square

Foundation: Ch {{sts + 1}}.

Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. ({{sts}} sc)

Rows 2–{{last_row}}: Ch 1, sc in each st across, turn.

Fasten off.
`
}
