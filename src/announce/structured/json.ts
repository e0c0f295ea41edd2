/** Structured data as the text of a script block: no `<` in it can end the block. */
export function scriptText(data: object): string {
  return JSON.stringify(data).replaceAll('<', '\\u003c')
}
