const shortened =
  'ch|chs|tr|dc|sc|hdc|htr|dtr|ttr|st|sts|sp|sps|sl|ss|sk|rep|lp|lps|cl|cls|beg|foll|rem|rnd|rnds|tog|inc|dec|bet|pat|patt|cont|tch'

/** The full stop of an abbreviation inside a sentence: small letters, a mark or, after a chain, its number follow. */
const inside = new RegExp(`(?<![\\p{L}\\d])(\\d*(?:${shortened}))\\.(?=[,;:)]|[ \\t]*\\n?[ \\t]*[a-z])`, 'giu')
/** `ch. 6`, `Ch. 92` at the beginning of a clause; in `each ch. 92 sc.` a sentence ends. */
const beforeNumber = /(?<=(?:^|[,;.:(*–]|\band|\bturn)\s*)(ch|chain|sk)\.(?=\s?\d)/gimu
/** `you should have 18 sts` after a sentence that ends in an abbreviation */
const counts = /^\s*(?:you|there|total|now|should|this|these)\b/i

function startsSentence(text: string, at: number): boolean {
  return /^[ \t]*\n?[ \t]*[A-Z]/.test(text.slice(at, at + 40)) || counts.test(text.slice(at, at + 40))
}

/**
 * Blanks the full stops of abbreviations, so that only those that end a sentence are left. Nothing moves.
 *
 *     1 tr. into next ch., rep. to end. Turn.   →   1 tr  into next ch , rep  to end. Turn.
 */
export function withoutDots(text: string): string {
  if (!text.includes('.')) return text
  const blank = (match: string, word: string, at: number): string =>
    startsSentence(text, at + match.length) ? match : `${word} `
  return text.replace(inside, blank).replace(beforeNumber, '$1 ')
}

/** `d.c.`, `d. c.`, `s c`, `h d c`, `d. tr.`: one stitch name, with its full stops where they end no sentence. */
export const spacedName =
  "(?<![\\p{L}'’])(?:(?:[hdstl](?:\\.\\s?|\\s)){1,2}(?:c|tr)|h(?:\\.\\s?|\\s)tr|s\\.\\s?s|tr(?:\\.\\s?|\\s)c)(?![\\p{L}'’])(?:\\.(?=[ \\t]*(?-i:[a-z,;:)])))?"

/** The name without its full stops and blanks: `dc`. */
export function closedUp(name: string): string {
  return name.replace(/[.\s]/g, '')
}
