import { spawnSync } from 'node:child_process'
import { resolve } from 'node:path'
import rehypeStringify from 'rehype-stringify'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import { VFile } from 'vfile'
import { describe, expect, it } from 'vitest'
import { remarkSizewright } from '../../plugins/remark-sizewright.ts'

const draft = `---
title: Trial Yoke
sizes: [S, M, L]
swatch: {stitches: 17 per 10 cm, rows: 12 per 10 cm}
---

\`\`\`grading
neck   = [46, 50, 54] cm
front  ~ stitches(neck / 3) as odd
sleeve ~ stitches(neck / 6) as even
neck_sts = 2 * front + 2 * sleeve
need neck_sts is multiple of 3
need neck_sts rises
\`\`\`

## Yoke

Foundation: Ch {{neck_sts}}, join with sl st in first ch to form a ring.

Rnd 1 (RS): Ch 1, sc in each ch around, join with sl st in first sc. ({{neck_sts}} sc)
`

function command(...args: readonly string[]) {
  const cwd = resolve(import.meta.dirname, '../..')
  return spawnSync(process.execPath, ['src/cli/main.ts', ...args], { cwd, input: draft, encoding: 'utf8' })
}

describe('a draft that links counts', () => {
  it('is proofed by the command', () => {
    const { status, stdout } = command('proof', '-', '--json')
    const { values, rows } = JSON.parse(stdout)
    expect(status).toBe(0)
    expect(values.front).toEqual({ kind: 'count', unit: null, bySize: [25, 31, 35] })
    expect(rows.at(-1)).toMatchObject({ total: [78, 90, 102], agrees: true })
  })

  it('is counted by the command', () => {
    expect(command('counts', '-').stdout).toContain('Rnd 1,RS,worked,78,90,102')
  })

  it('is resolved in another Markdown pipeline', async () => {
    const site = unified().use(remarkParse).use(remarkGfm).use(remarkSizewright).use(remarkRehype).use(rehypeStringify)
    const html = String(await site.process(new VFile({ value: draft })))
    expect(html).toContain('<span class="s s2">102</span>')
  })
})
