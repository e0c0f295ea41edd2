import { startChoices } from './choices.ts'
import { memoryOf } from './memory.ts'

/** What a pattern's page can do with script. Without it the page stays whole. */
startChoices(memoryOf(() => localStorage))
