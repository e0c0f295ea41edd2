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
  /**
   * Nor can these functions. All others share their names with values, since only brackets make a call: a draft may have
   * an `ease = 5 cm` of its own beside `ease("classic")`.
   */
  functions: ['stitches', 'rows', 'width', 'height', 'min', 'max', 'abs', 'sum', 'body', 'at', 'if', 'evenly', 'taper'],
} as const

export function isWord(group: keyof typeof words, text: string): boolean {
  return words[group].some((word) => word === text)
}
