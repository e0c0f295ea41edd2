/** `1 stitch`, `3 stitches`. */
export function plural(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : one.endsWith('ch') ? 'es' : 's'}`
}
