/**
 * What is kept on the device lies in buckets of the browser's cache, each whole in itself: a pattern with its page, print-outs
 * and all that they need is put in or taken out at once, so that editions never mix.
 */

const prefix = 'sizewright'

/** `kept` is what a reader works from; `next` is a newer edition that waits until they ask for it. */
export type PatternState = 'kept' | 'next'

/** The bucket of a pattern by the path of its folder, `/patterns/tide-line/`. */
export function patternBucket(state: PatternState, folder: string): string {
  return `${prefix} ${state} ${folder}`
}

/** Pages that belong to no pattern, as they were last seen. */
export const seenBucket: string = `${prefix} seen`

/** The page for what is not on the device; each build of the site has its own. */
export function shellBucket(version: string): string {
  return `${prefix} shell ${version}`
}

export function isShellBucket(name: string): boolean {
  return name.startsWith(shellBucket(''))
}

/** The folder whose pattern a bucket keeps; null for any other bucket. */
export function keptFolder(name: string): string | null {
  const start = patternBucket('kept', '')
  return name.startsWith(start) ? name.slice(start.length) : null
}
