import { startOffline } from './offline.ts'

/** What every page does with script; a browser that can't, or may not, keep files does without. */
startOffline().catch(() => undefined)
