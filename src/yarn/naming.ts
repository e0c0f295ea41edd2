import { colourNames } from '../rows/colours.ts'

/** Where words name a yarn. `verb`: what leads to the name, `with`, `change to`; empty where nothing does. */
export interface Mention {
  /** Position in the list of yarns. */
  readonly yarn: number
  readonly start: number
  readonly end: number
  readonly verb: 'with' | 'change' | ''
}

interface Alias {
  readonly yarn: number
  /** Unmistakable wherever it stands; a weak one needs a verb before it. */
  readonly strong: RegExp | null
  readonly weak: RegExp
}

const colour = '(?:colou?r|yarn|shade)'

function words(pattern: string, flags = 'gi'): RegExp {
  return new RegExp(`(?<![\\w-])(?:${pattern})(?![\\w-])`, flags)
}

function mainAlias(yarn: number): Alias {
  return { yarn, strong: words(`MC|[Mm]ain ${colour}|[Cc]olou?r MC`, 'g'), weak: words('MC|main') }
}

function contrastAlias(yarn: number, number: string): Alias {
  const own = number === '' ? '' : ` ?${number}`
  return {
    yarn,
    strong: words(`CC${own}|[Cc]ontrast(?:ing)? ${colour}${own}`, 'g'),
    weak: words(`CC${own}|contrast(?:ing)?${own}`),
  }
}

function markAlias(yarn: number, mark: string): Alias {
  const own = mark.toUpperCase()
  const short = /^\d$/.test(own) ? `C${own}` : own
  return {
    yarn,
    strong: words(`(?:[Cc]olou?r|[Yy]arn|[Ss]hade) ?${own}${short === own ? '' : `|${short}`}`, 'g'),
    weak: words(short, 'g'),
  }
}

/** What its own name says: `main`, `contrast 2`, `A`, `color 1`, `sea green`. */
function ownAlias(name: string, yarn: number): Alias {
  const plain = name.trim().toLowerCase()
  if (/^(?:main|mc)(?: colou?r| yarn)?$/.test(plain)) return mainAlias(yarn)
  const contrast = /^(?:contrast(?:ing)?|cc)(?: colou?r| yarn)? ?(\d?)$/.exec(plain)
  if (contrast !== null) return contrastAlias(yarn, contrast[1] ?? '')
  const mark = /^(?:(?:colou?r|yarn|shade) ?|c(?=\d))?([a-h]|\d)$/.exec(plain)
  if (mark?.[1] !== undefined) return markAlias(yarn, mark[1])
  const own = words(plain.replace(/[^\p{L}\p{N} ]/gu, '\\$&').replace(/ +/g, '\\s+'))
  return { yarn, strong: isColour(plain) ? own : null, weak: own }
}

/** Colours are mostly named without a verb; a name such as `body` may stand for much else. */
function isColour(name: string): boolean {
  return name.split(' ').some((word) => colourNames.includes(word))
}

/** By the order of the list, as the trade letters its colours: A, B, C; MC and CC; C1, C2. */
function orderAliases(count: number): Alias[] {
  const all = Array.from({ length: Math.min(count, 8) }, (_, yarn) => yarn)
  return [
    mainAlias(0),
    ...(count === 2 ? [contrastAlias(1, '')] : all.slice(1).map((yarn) => contrastAlias(yarn, String(yarn)))),
    ...all.map((yarn) => markAlias(yarn, 'ABCDEFGH'.charAt(yarn))),
    ...all.map((yarn) => markAlias(yarn, String(yarn + 1))),
  ]
}

/** How the words of a draft name its yarns: by their own names first, by the trade's letters where no name takes those. */
export function aliasesOf(names: readonly string[]): readonly Alias[] {
  const own = names.map(ownAlias)
  const taken = new Set(own.map(({ weak }) => weak.source))
  return [...own, ...orderAliases(names.length).filter(({ weak }) => !taken.has(weak.source))]
}

const lead = '(?:the |new |a new )?(?:colou?r |yarn )?$'
const withVerb = new RegExp(
  `(?:\\b(?<!join(?:ed|ing)? )(?:with|using|use|in|holding)|\\bstrands? of|[|:([]) ?${lead}`,
  'i',
)
const changeVerb = new RegExp(
  `\\b(?:to|join(?:ed|ing)? with|join|joining|attach|attaching|change|changing|switch|switching|tie in|pick up|picking up|introduce|introducing|add|adding) ${lead}`,
  'i',
)
/** `White. Sc in each st`, `* C2: sc`: a name with nothing else to it. */
const opensClause = /(?:^|[.;*]) ?$/
const closesClause = /^ ?(?:[.:,]|$)/
const elsewhere =
  /\b(?:fasten(?:ing)? off|fo|drop(?:ping)?|cut(?:ting)?|break(?:ing)? off|break(?:ing)?|carry(?:ing)?|end(?:ing)? off|finish(?:ing)? off|tie off|leave|leaving|from|of|over|around|into|next|each|last|first|same|behind|under|weave in|hide) (?:the |both |off )?$/i
const noun =
  /^ ?(?:sts?|stitch(?:es)?|rows?|rnds?|rounds?|loops?|sections?|ends?|tails?|edges?|edging|sides?|stripes?|squares?|pieces?|balls?|hook)\b/i
const stitch = /^ (?:sc|hdc|dc|tr|htr|dtr|ch|sl st|shells?|puffs?)\b/i

/** Whether what stands around a name makes it a place (`in each MC st`) or an end (`fasten off MC`), not what is worked with. */
function isElsewhere(before: string, after: string): boolean {
  if ((elsewhere.test(before) && !/\bstrands? of $/i.test(before)) || noun.test(after)) return true
  return stitch.test(after) && /\b(?:in|the) $/i.test(before)
}

/** More than any row has; a text with more tells no yarn apart. */
const mostMentions = 300

function verbOf(before: string, after: string): Mention['verb'] {
  if (withVerb.test(before) || (opensClause.test(before) && closesClause.test(after))) return 'with'
  return changeVerb.test(before) ? 'change' : ''
}

/** Every place where a text says with which yarn to work, in order. */
export function mentionsIn(text: string, aliases: readonly Alias[]): readonly Mention[] {
  const found: Mention[] = []
  for (const { yarn, strong, weak } of aliases) {
    for (const pattern of strong === null ? [weak] : [strong, weak]) {
      for (const match of text.matchAll(pattern)) {
        if (found.length === mostMentions) break
        const [start, end] = [match.index, match.index + match[0].length]
        if (found.some((other) => start < other.end && other.start < end)) continue
        const before = text.slice(Math.max(0, start - 40), start).replace(/\s+/g, ' ')
        const after = text.slice(end, end + 20)
        const verb = verbOf(before, after)
        if ((verb === '' && pattern !== strong) || isElsewhere(before, after)) continue
        found.push({ yarn, start, end, verb })
      }
    }
  }
  return found.sort((a, b) => a.start - b.start)
}
