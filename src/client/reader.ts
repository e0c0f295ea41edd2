import { startBarHeight } from './bar-height.ts'
import { startChoices } from './choices.ts'
import { startExplained } from './explained.ts'
import { startFindSize } from './find-size.ts'
import { startJustMine } from './just-mine.ts'
import { memoryOf } from './memory.ts'
import { startOwnNumbers } from './own-numbers.ts'
import { startPlace } from './place/index.ts'
import { readData } from './reader-data.ts'
import { startWakeLock } from './wake-lock.ts'

/** What a pattern's page can do with script. Without it the page stays whole. */
const memory = memoryOf(() => localStorage)
const data = readData()
startBarHeight()
startChoices(memory)
startExplained()
startWakeLock(memory)
if (data !== null) {
  const findSize = startFindSize(data, memory)
  const place = startPlace(data, memory)
  const justMine = startJustMine(data)
  startOwnNumbers(data, memory, (own, pattern) => {
    findSize(own ?? data)
    place(own ?? data)
    justMine(own === null ? null : pattern)
  })
}
