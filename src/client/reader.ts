import { startChoices } from './choices.ts'
import { startExplained } from './explained.ts'
import { startFindSize } from './find-size.ts'
import { memoryOf } from './memory.ts'
import { readData } from './reader-data.ts'

/** What a pattern's page can do with script. Without it the page stays whole. */
const memory = memoryOf(() => localStorage)
const data = readData()
startChoices(memory)
startExplained()
if (data !== null) startFindSize(data, memory)
