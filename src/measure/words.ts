const small = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
] as const

const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'] as const

/** A whole number in words up to 999,999, `seventy-two`; in digits beyond. */
export function inWords(number: number): string {
  if (number < 0) return `minus ${inWords(-number)}`
  if (number < 100) return belowHundred(number)
  if (number < 1000) return joined(number, 100, 'hundred', ' ')
  return number < 1_000_000 ? joined(number, 1000, 'thousand', ' ') : String(number)
}

function belowHundred(number: number): string {
  const ten = tens[Math.floor(number / 10)]
  const one = small[number < 20 ? number : number % 10] ?? String(number)
  if (number < 20 || ten === undefined) return one
  return number % 10 === 0 ? ten : `${ten}-${one}`
}

function joined(number: number, by: number, name: string, between: string): string {
  const rest = number % by
  const head = `${inWords(Math.floor(number / by))} ${name}`
  return rest === 0 ? head : `${head}${between}${inWords(rest)}`
}

/** `1st`, `2nd`, `3rd`, `4th`, `11th`, `22nd`. */
export function asOrdinal(number: number): string {
  const lastTwo = Math.abs(number) % 100
  if (lastTwo >= 11 && lastTwo <= 13) return `${number}th`
  const endings: Readonly<Record<number, string>> = { 1: 'st', 2: 'nd', 3: 'rd' }
  return `${number}${endings[lastTwo % 10] ?? 'th'}`
}
