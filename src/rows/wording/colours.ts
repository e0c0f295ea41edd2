import { colourNames } from '../colours.ts'
import type { Rewording } from './rewrite.ts'
import { stitchName } from './vocabulary.ts'

const shade =
  '(?:same|next|first|last|middle|medium|light|dark|pale|bright|deep|lightest|darkest|lighter|darker|palest|deepest|other|#th)'
const noun = '(?:shade|colour|color|tint|wool|silk|cotton|yarn|thread)'
const name = `(?:${colourNames.filter((each) => !/^(?:main|contrast|contrasting|natural)$/.test(each)).join('|')})`
const colour = `(?:(?:${shade} )*${name}(?: ${noun})?|(?:${shade} )+${noun})`
const ends = '(?= [,;.:)*]| and|$)'
const opensColour = `all the in same next first last middle medium light dark pale bright deep lightest darkest lighter darker palest deepest other #th ${colourNames.join(' ')}`

/** The colour or shade that a row, or some of its stitches, is worked in, where it stands before or after them alone. */
export const colours: readonly Rewording[] = [
  // `Black. 1 dc in each`, `Next shade. 2 dc in each`, `* White, 2 dc`
  {
    opens: opensColour,
    from: new RegExp(`^(?:all )?(?:in )?(?:the )?${colour}(?: again)? [.,;:]`),
    to: '',
    after: /(?:^|[.:–)*;])$/,
  },
  // `3 dc black`
  { opens: opensColour, from: new RegExp(`^${colour}${ends}`), to: '', after: new RegExp(`# ${stitchName}$`) },
  // `3 claret, 2 steel`: stitches of the row
  { opens: '#', from: new RegExp(`^(?<n>#) ${colour}(?: (?:stitches|sts|ones))?${ends}`), to: '$n coloured' },
  { opens: 'in', from: new RegExp(`^in ${stitchName}(?= [;.)]|$)`), to: '', after: /coloured ,?$/ },
]
