import { toString as plainText } from 'mdast-util-to-string'
import { bodyNodes, type Draft } from '../draft.ts'

/*
 * Which finished measures go around a closed edge that a head must pass, by the draft's own words. Where the words leave
 * it open, it is taken not to.
 */

/** What is pulled over a head, or sits on it, whole. A bonnet is open in front. */
const overHead =
  /\b(?:hats?|beanies?|caps?(?! sleeves?)|berets?|toques?|tuques?|balaclavas?|head ?bands?|ear ?warmers?|cowls?|snoods?|neck ?warmers?|gaiters?)\b/i

/** What is open in front, or closed with something. */
const opens =
  /\b(?:cardigans?|cardis?|jackets?|coats?|boleros?|shrugs?|kimonos?|waistcoats?|gilets?|shawls?|wraps?|capes?|capelets?|bonnets?|dusters?|hoodies?)\b/i

/** What opens a neck. */
const fastening =
  /\b(?:buttons?|button ?holes?|button ?bands?|buttoned|zips?|zippers?|snaps?|poppers?|press[- ]?studs?|toggles?|hooks? and eyes?|plackets?|keyholes?|open(?:s|ing)? (?:at|in) (?:the )?(?:front|back)|open front|(?:front|back|shoulder) opening|ties? (?:at|in|on) (?:the )?(?:back|front|neck|side|shoulders?))\b/gi

/** `There are no buttons`: said just before, in the same sentence. */
const denied = /\b(?:no|without|nor|not|never)\b[^.;:]*$/i

const idle = [
  'finished',
  'actual',
  'full',
  'total',
  'the',
  'at',
  'of',
  'closed',
  'inner',
  'lower',
  'upper',
  'edge',
  'around',
]
const girths = ['circumference', 'around', 'girth']
const necks = ['neck', 'neckline', 'neckband']

/** A label whose words are all of some, and one of which tells. */
function saysOnly(label: string, telling: readonly string[], beside: readonly string[]): boolean {
  const words = label.toLowerCase().match(/\p{L}+/gu) ?? []
  const known = new Set([...telling, ...beside, ...idle])
  return words.every((word) => known.has(word)) && words.some((word) => telling.includes(word))
}

const neckWords = [...girths, 'opening']
const hatWords = [...girths, 'rim', 'brim', 'head', 'opening', 'band']
const hatNames = ['hat', 'beanie', 'cap', 'beret', 'cowl', 'snood', 'headband', 'top', 'bottom']

/** Whether words say that a measure goes around, and can be no width of a piece that lies flat. */
export function saysAround(label: string): boolean {
  return new RegExp(`\\b(?:${girths.join('|')})\\b`, 'i').test(label)
}

/** Of some labels those of closed edges. */
export function closedEdges(draft: Draft, labels: readonly string[]): ReadonlySet<string> {
  const { title, kind } = draft.facts.facts
  const piece = kind.length > 0 ? kind : [title]
  if ([...piece, title].some((words) => opens.test(words))) return new Set()
  const isHat = piece.every((words) => overHead.test(words))
  const found = labels.filter(
    (label) => saysOnly(label, necks, neckWords) || (isHat && saysOnly(label, hatWords, hatNames)),
  )
  return new Set(found.length === 0 || isFastened(draft) ? [] : found)
}

/** Whether anything in the draft says that the piece is closed with something. */
function isFastened(draft: Draft): boolean {
  const { notions, finish } = draft.facts.facts
  const carried = finish.flatMap((item) => (typeof item === 'string' ? item : Object.keys(item)))
  const body = bodyNodes(draft).flatMap((node) => (node.type === 'code' ? [] : plainText(node)))
  return [...notions, ...carried, ...body].some(isSaid)
}

function isSaid(text: string): boolean {
  return [...text.matchAll(fastening)].some(({ index }) => !denied.test(text.slice(Math.max(0, index - 60), index)))
}
