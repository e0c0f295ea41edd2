/** Words of the language. Those of the last group are free to be names: they are read only after `as` or `is`. */
const words = {
  /** After `as` and `is`: what a count is rounded to, or asked to be. */
  grid: ['whole', 'even', 'odd', 'multiple'],
  /** After `as` in a placeholder: how a value is printed. */
  format: ['words', 'ordinal', 'skeins'],
  /** These can follow a number and are not units. */
  after: ['as', 'is', 'and', 'or', 'rises', 'falls', 'steady', 'up', 'down', 'to'],
  /** These cannot be names. */
  reserved: ['as', 'is', 'and', 'or', 'not', 'need', 'none', 'total', 'count'],
} as const

export function isWord(group: keyof typeof words, text: string): boolean {
  return words[group].some((word) => word === text)
}
