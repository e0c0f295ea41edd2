import type { Facts, SwatchFacts } from './facts.ts'
import { hookText, inBothSystems } from './materials.ts'
import type { GaugeLine } from './pattern.ts'

/** `12 stitches and 8 rows = 10 cm (4 in) in single crochet with a 6.5 mm (US K-10½) hook`, a line a swatch. */
export function gaugeLines({ swatch }: Facts): GaugeLine[] {
  return Object.entries(swatch).flatMap(([name, written]) => {
    const text = [counted(written), within(written), withHook(written)].filter((part) => part !== '').join(' ')
    return text === '' ? [] : [{ name: name === '' ? null : name, text }]
  })
}

function counted({ stitches, rows }: SwatchFacts): string {
  const across = stitches === undefined ? null : rate(stitches, 'stitches')
  const up = rows === undefined ? null : rate(rows, 'rows')
  if (across !== null && up !== null && across.over === up.over)
    return `${across.count} and ${up.count} = ${across.over}`
  return [across, up].flatMap((part) => (part === null ? [] : [`${part.count} = ${part.over}`])).join(', ')
}

/** `12 per 10 cm` as its two halves, the length in both systems. */
function rate(text: string, noun: string): { count: string; over: string } {
  const [count = '', over = ''] = text.split(/\s+(?:per|to|over|in|=)\s+/)
  return { count: `${count.replace(/\s*[a-z]+$/i, '')} ${noun}`, over: inBothSystems(over) }
}

function within(swatch: SwatchFacts): string {
  return swatch.in === undefined ? '' : `in ${swatch.in}`
}

function withHook({ hook }: SwatchFacts): string {
  return hook === undefined ? '' : `with a ${hookText(hook)} hook`
}
