import type { Rewording } from './rewrite.ts'
import { chainWord, stitchName } from './vocabulary.ts'

const stitches = `# ${stitchName}`
const list = `(?<list>${stitches}(?: , # (?:${stitchName}|${chainWord}))+)`
const inRing = '(?:in|into|under) (?:the |this )?(?:ring|circle|round|chain|ch)'
const inOne = '(?:in|into|on|upon|under) (?:each|every|one|the next|next|the ring|the circle|this ring|the corner)'
/** The list is all that its clause says so far. */
const opens = /(?:^|[.:–;*])$/

/** Lists of stitches that go together into a place, or are worked so many times, without brackets. */
export const lists: readonly Rewording[] = [
  // `1 dc, 4 ch, 6 times in the ring`
  {
    opens: '#',
    from: new RegExp(`^${list} ,? ?(?<n>#) times (?=${inRing})`),
    to: '( $list ) $n times',
    after: opens,
  },
  // `2 dc, 3 ch, 2 dc, in each loop`, `1 long, 1 chain, all under one chain`
  { opens: '#', from: new RegExp(`^${list} , (?:all )?(?=${inOne})`), to: '( $list )', after: opens },
  { opens: '#', from: new RegExp(`^${list} all (?=${inOne})`), to: '( $list )', after: opens },
  // `…, 2 tr, 2 ch, 2 tr in every corner`: with chains among them they go together
  {
    opens: '#',
    from: new RegExp(
      `^(?<list>${stitches}(?: , # ${stitchName})* , # ${chainWord}(?: , # ${stitchName})+) (?=(?:in|into|under) (?:each|every|the) corner)`,
    ),
    to: '( $list )',
    after: /,$/,
  },
  // `a tuft of 5 tr in one stitch`
  {
    opens: 'a # one tuft group bunch shell fan',
    from: new RegExp(
      `^(?:(?:a|#|one) )?(?:tuft|group|cluster|bunch|shell|fan) of (?<what>${stitches})(?= in| into| on| under)`,
    ),
    to: '$what',
  },
  // `3 dc in the centre`: of a list without chains the centre stitch
  {
    opens: '#',
    from: new RegExp(`^(?<n>#) (?<stitch>${stitchName}) (?:in|into|on) (?:the )?(?:centre|center|middle)(?= [,;.]|$)`),
    to: '$n $stitch in the next st',
    after: /(?:^|# ,|# st ,|next ,|[.:–;*])$/,
  },
  // `14 dc in the round`: the ring that was made
  {
    opens: '#',
    from: new RegExp(`^(?<n>#) (?<stitch>${stitchName}) in the round(?= [,;.]|$)`),
    to: '$n $stitch in ring',
    after: opens,
  },
  {
    opens: 'increase decrease',
    from: /^(?<which>increase|decrease) (?<n>#) (?:in|on) (?:the |this )(?:round|row)(?= [,;.]|$)/,
    to: '$which $n evenly',
  },
]
