import { performance } from 'node:perf_hooks'
import { work } from '../rows/draft.ts'
import { vocabulary } from '../rows/vocabulary.ts'

/**
 * A million short texts, of row words in any order and of letters: none may make the reader throw, and none may take long.
 * `node tests/bench/fuzz.ts [count] [seed]`; a smaller number of such texts is in the test suite.
 */
const count = Number(process.argv[2] ?? 1_000_000)
let state = Number(process.argv[3] ?? 20_260_314)

/** Numbers that are the same in every run: a linear congruential generator (Numerical Recipes, 1992, section 7.1). */
function random(below: number): number {
  state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
  return Math.floor((state / 2 ** 32) * below)
}

function someWords(): string {
  return Array.from({ length: 1 + random(14) }, () => vocabulary[random(vocabulary.length)] ?? '').join(' ')
}

function someLetters(): string {
  return Array.from({ length: 1 + random(30) }, () =>
    String.fromCodePoint(32 + random(random(8) === 0 ? 9_000 : 95)),
  ).join('')
}

const opening = '## A\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n'
let slowest = { milliseconds: 0, text: '' }
const start = performance.now()
for (let made = 0; made < count; made += 1) {
  const text = `${random(4) === 0 ? '## A\n' : opening}${random(6) === 0 ? '' : 'Row 2: '}${random(5) === 0 ? someLetters() : someWords()}`
  const before = performance.now()
  try {
    const { ledger } = work(text, { sizes: random(3) === 0 ? ['S', 'M', 'L'] : ['One'] })
    for (const bySize of ledger.fabric) for (const row of bySize) if (random(50) === 0) row?.trace()
  } catch (error) {
    console.log(JSON.stringify(text))
    throw error
  }
  const milliseconds = performance.now() - before
  if (milliseconds > slowest.milliseconds) slowest = { milliseconds, text }
}
const seconds = (performance.now() - start) / 1000
console.log(`${count} short texts in ${seconds.toFixed(0)} s, none made the reader throw;`)
console.log(`  the slowest took ${slowest.milliseconds.toFixed(1)} ms: ${JSON.stringify(slowest.text)}`)
