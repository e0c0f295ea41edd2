import type { Rewording } from './rewrite.ts'
import { stitchName } from './vocabulary.ts'

const number = /(?:#|\b(?:a|one|each|every|next|the|of|on|same))$/

/** `2 plain`, `1 double plain`: the lowest stitch, as a rule. */
export const ukStitches: readonly Rewording[] = [
  { opens: 'plain', from: /^plain crochet/, to: 'dc' },
  {
    opens: 'single',
    from: /^single crochet(?! in (?:each|every)| into (?:each|every))/,
    to: 'ss',
    after: /(?:#|\b(?:by|with|a))$/,
  },
  { opens: 'single', from: /^single crochet (?=to|along|up)/, to: 'ss' },
  { opens: 'plain', from: /^plain (?=dc|double)/, to: '' },
  { opens: 'plain', from: /^plain(?: stitch| stitches| sts?)?(?= in| into| on| [,;.)]|$)/, to: 'dc', after: /#$/ },
  { opens: 'dc double doubles', from: /^(?<stitch>dc|doubles?) plain/, to: 'dc' },
]

/** `2 stitches of double crochet in each` */
export const ofStitch: readonly Rewording[] = [
  {
    opens: '#',
    from: new RegExp(`^(?<n>#) (?:stitches|sts|stitch|st) of (?:plain )?(?<stitch>${stitchName})`),
    to: '$n $stitch',
  },
]

/** Where single crochet is the lowest stitch. */
export const usStitches: readonly Rewording[] = [
  { opens: 'plain', from: /^plain crochet/, to: 'sc' },
  { opens: 'plain', from: /^plain (?=sc|single|dc|double)/, to: '' },
  { opens: 'plain', from: /^plain(?: stitch| stitches| sts?)?(?= in| into| on| [,;.)]|$)/, to: 'sc', after: /#$/ },
  { opens: 'double', from: /^double (?:stitch|stitches)/, to: 'dc', after: number },
  { opens: 'long', from: /^long (?:trebles?|tr)/, to: 'dtr', after: number },
  {
    opens: 'long longs',
    from: /^longs?(?: (?:crochet|stitch|stitches|sts?))?(?= [,;.)]| in| into| on|$)/,
    to: 'dc',
    after: number,
  },
]
