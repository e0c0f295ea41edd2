import type { Rewording } from './rewrite.ts'

/** Nouns that `double` and `long` describe, so that they are no stitches there. */
const described =
  '(?:yarn|yarns|strand|strands|strand|thread|threads|wool|wools|cotton|thickness|thicknesses|knit|knitting|stranded|' +
  'ended|pointed|row|rows|rnd|rounds?|border|edge|edges|edging|tail|tails|end|ends|length|lengths|enough|piece|pieces|' +
  'strip|strips|side|sides|colour|color|coloured|layer|layers|fabric|chain|loop|time|sleeve|sleeves|way|as|hole)'
const bare = (name: string): RegExp => new RegExp(`^${name}(?! ${described}\\b)(?! crochets?\\b)(?! trebles?\\b)`)
/** Words before a noun: `1 double`, `a long`, `in the double`. */
const beforeNoun =
  /(?:^|[,;.:–*(] |^[,;.:–*(]|[#]|\b(?:a|one|each|every|next|first|last|the|same|in|into|on|of|work|make|between|miss|skip|plain|and|half|remaining|last|both|half))$/
const number = /(?:#|\b(?:a|one|each|every|next|the|of|on|same))$/

/**
 * Stitches as they were called where double crochet is the lowest of them: `single`, `double`, `long`. A long
 * stitch stands between a treble and a double treble; it is counted as a treble.
 */
export const ukStitches: readonly Rewording[] = [
  { opens: 'double doubles', from: bare('doubles?'), to: 'dc', after: beforeNoun },
  { opens: 'single singles', from: /^singles? (?:crochet|stitch|stitches|sts?)/, to: 'ss' },
  { opens: 'single singles', from: bare('singles?'), to: 'ss', after: beforeNoun },
  { opens: 'long double', from: /^(?:long|double long) (?:trebles?|tr)/, to: 'dtr', after: number },
  { opens: 'long longs', from: /^longs? (?:crochet|stitch|stitches|sts?)/, to: 'tr' },
  { opens: 'long longs', from: bare('longs?'), to: 'tr', after: number },
  { opens: 'plain', from: /^plain (?=dc|double crochet)/, to: '' },
  { opens: 'plain', from: /^plain(?: stitch| stitches| sts?)?(?= in| into| on|[,;.)]|$)/, to: 'dc', after: /#$/ },
  { opens: 'dc double', from: /^(?<stitch>dc|doubles?) plain/, to: 'dc' },
]

/** Where single crochet is the lowest stitch, the old names for the taller ones. */
export const usStitches: readonly Rewording[] = [
  { opens: 'double', from: /^(?:double) (?:stitch|stitches)/, to: 'dc', after: number },
  { opens: 'long', from: /^(?:long) (?:trebles?|tr)/, to: 'dtr', after: number },
  { opens: 'long longs', from: /^longs? (?:crochet|stitch|stitches|sts?)/, to: 'dc', after: number },
  { opens: 'long longs', from: bare('longs?'), to: 'dc', after: number },
]
