import wrapAnsi from 'wrap-ansi'

/** Columns that a report may take. */
export const paperWidth = 80

/** A paragraph broken at its blanks to the width of the paper, every line after the first `hanging` further in. */
export function wrapped(text: string, indent: number, hanging = 0): string {
  const room = paperWidth - indent - hanging
  const [first = '', ...others] = wrapAnsi(text, room, { trim: true, hard: true }).split('\n')
  const further = ' '.repeat(indent + hanging)
  return [' '.repeat(indent) + first, ...others.map((line) => further + line)].join('\n')
}

/** `1 row`, `2 rows`. */
export function plural(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`
}
