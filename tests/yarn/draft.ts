import { readDraft } from '../../plugins/read-draft.ts'

/** A draft whose swatch of 100 single crochets weighs 100 g, so that a gram is a stitch. */
export function yarnDraft(facts: string, body: string) {
  const text = `---
title: Trial
sizes: [S, L]
swatch: {in: sc, stitches: 10 per 10 cm, rows: 10 per 10 cm, size: 10 x 10 cm, weight: 100 g}
${facts}
---

${body}`
  const { value, diagnostics } = readDraft('trial.md', 'trial', text).outcome
  const yarn = value?.yarn ?? {}
  const amounts = value?.materials.yarn.map(({ amount }) => amount?.segments.map((segment) => segment.text).join(''))
  return {
    yarn,
    grams: Object.fromEntries(Object.entries(yarn).map(([name, { grams }]) => [name, grams])),
    found: diagnostics,
    codes: diagnostics.map(({ code }) => code),
    amounts,
    note: value?.materials.yarnNote,
  }
}
