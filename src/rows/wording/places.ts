import type { Rewording } from './rewrite.ts'
import { chainsWord, chainWord, clauseEnd, groupWord, loopWord, stitchName, stitchWord } from './vocabulary.ts'

const opensPlace = 'in into under over on upon round around through within to at above'
const into = '(?:in|into|under|over|on|upon|round|around|through|within|to|at|above)'
const which = '(?:the next|the first|the last|the same|each of the|each|every|the|next|first|last|same|this|that)'
const middle = '(?:centre|center|middle|central|centre-most|midst)'
const one = '(?:one|stitch|st|loop|chain|ch|chains)'
const kind = `(?:${stitchName}|${stitchWord})`

/** Chains and stitches that are named by where they stand among others. */
export const amongOthers: readonly Rewording[] = [
  // `in the middle of 5 chain`
  {
    opens: opensPlace,
    from: new RegExp(`^${into} (?:the )?${middle}(?: ${one})? of (?=# (?:- )?${chainWord})`),
    to: 'in the',
  },
  // `in the centre of the next loop`, `to the middle of the 5 ch`: anywhere in the loop
  {
    opens: opensPlace,
    from: new RegExp(
      `^${into} (?:the )?${middle}(?: ${one})? of (?=(?:the |each |every |next |first |last |same |#th )*(?:# (?:- )?)?(?:${loopWord}|${chainWord}))`,
    ),
    to: 'in',
  },
  {
    opens: opensPlace,
    from: new RegExp(`^${into} (?:the )?${middle} (?:of )?(?=(?:each|every|the next) (?:${loopWord}|# ${chainWord}))`),
    to: 'in',
  },
  // `in the 3rd of each 5 ch`: once in each
  {
    opens: opensPlace,
    from: new RegExp(`^${into} (?:the )?#th(?: ${one})? of (?=(?:each|every|the next|next) # (?:- )?${chainWord})`),
    to: 'in',
  },
  // `in the 3rd of the 5 ch`: of a loop, or of the turning chain
  {
    opens: opensPlace,
    from: new RegExp(
      `^(?<in>${into}) (?:the )?(?<nth>#th)(?: ${one})? of (?:the |these |those )?(?:first |last |turning )?(?<n>#) (?:- )?${chainWord}(?: stitches)?(?: (?:first made|at (?:the )?(?:beginning|commencement)))?`,
    ),
    to: '$in $nth ch of ch - $n',
  },
  {
    opens: opensPlace,
    from: new RegExp(`^(?<in>${into}) (?:the )?(?<nth>#th)(?: ${one})? of (?:the )?turning(?: ${chainWord})?(?! -)`),
    to: '$in $nth ch of turning ch',
  },
  // `in the middle one of the 5 tr`
  {
    opens: opensPlace,
    from: new RegExp(
      `^${into} (?:the )?(?<middle>${middle}|#th)(?: ${one}| ${stitchName})? of (?<each>each |every )?(?:group of |set of |of )?(?:the |these |those |the next |next )?(?<n>#) (?<kind>${kind})`,
    ),
    to: 'in $each middle-of $middle $n $kind',
  },
  {
    opens: opensPlace,
    from: new RegExp(
      `^${into} (?:the )?(?<middle>${middle})(?: ${one}| ${stitchName})? of (?<each>each |every )?(?:the |these |those )?(?:next |first |last )?(?<n>#)${clauseEnd}`,
    ),
    to: 'in $each middle-of $middle $n sts',
  },
  // `on the middle stitch of each scallop`
  {
    opens: opensPlace,
    from: new RegExp(
      `^${into} (?:the )?(?:${middle}|top|tip)(?: ${one}| ${stitchName})? of (?<each>each |every )?(?:the |these |those )?(?:next |first |last |following )?(?=${groupWord}(?! st| of #))`,
    ),
    to: 'in $each middle-of',
  },
]

/** The loops of the row below, by the chains that they are made of. */
export const loops: readonly Rewording[] = [
  {
    opens: 'under over round',
    from: new RegExp(`^(?:under|over|round) (?:this|that) ${chainWord}(?! -)`),
    to: 'in ring',
  },
  // `under each loop of 3 chain`
  {
    opens: opensPlace,
    from: new RegExp(
      `^${into} (?<det>${which}|a) (?:${loopWord}|bar|scallop|picot|${chainWord}) (?:of|formed by|formed of|made by|made with|with) (?:the )?(?<n>#)(?: ${chainsWord})?`,
    ),
    to: 'in $det ch - $n sp',
  },
  // `under every 3 chain`, `into the 5 ch`
  {
    opens: opensPlace,
    from: new RegExp(
      `^${into} (?<det>each|every|the|this|that|same|the same) (?<n>#)(?: -)? ${chainWord}(?! (?:of|from|to)\\b)(?: (?:stitches|sts|${loopWord}))?`,
    ),
    to: 'in $det ch - $n sp',
  },
  // `in next 2 ch. sp`: one of two chains, not two of them
  {
    opens: 'in into under over on',
    from: new RegExp(
      `^(?:in|into|under|over|on) (?<det>(?:the )?(?:next|first|last)) (?<n>#)(?: -)? ${chainWord} (?:sp|space|loop|lp|arch)`,
    ),
    to: 'in $det ch - $n sp',
  },
  {
    opens: 'under over',
    from: new RegExp(`^(?:under|over) (?<det>(?:the )?(?:next|first|last)) (?<n>#) ${chainWord}(?! from)`),
    to: 'in $det ch - $n sp',
    // `dc2tog over next 2 ch` goes into the chains.
    after: /^(?!.*(?:tog|together)$)/,
  },
  // `over each ch 3`
  {
    opens: 'under over in into on',
    from: new RegExp(
      `^(?:under|over|in|into|on) (?<det>${which}) ${chainWord} (?<n>#)(?= make| work|${clauseEnd.slice(3, -1)})`,
    ),
    to: 'in $det ch - $n sp',
  },
  // `2 dc under ch 2`
  { opens: 'under', from: new RegExp(`^under (?:a )?${chainWord} (?<n>#)${clauseEnd}`), to: 'in next ch - $n sp' },
  { opens: 'under', from: new RegExp(`^under (?:one|a) ${chainWord}${clauseEnd}`), to: 'in next ch sp' },
  // `under the chain`, `under each`
  {
    opens: 'under over',
    from: new RegExp(`^(?:under|over) (?<det>${which} )?(?:long )?${chainWord}(?! -| #| sp)(?: stitches)?`),
    to: 'in $det ch sp',
  },
  {
    opens: 'under round around over in into through',
    from: /^(?:under|round|around|over|in|into|through) (?:this|the|it|that) (?:ring|circle)(?: thus (?:formed|made))?/,
    to: 'in ring',
  },
  { opens: 'under', from: new RegExp(`^under (?:this|it)(?= work|${clauseEnd.slice(3, -1)})`), to: 'in ring' },
]

/** `each of 20`, `the others`, `in one`: places whose noun is left out. */
export const withoutNoun: readonly Rewording[] = [
  // `1 in each after`
  {
    opens: 'in into on',
    from: new RegExp(`^(?:in|into|on) (?:each|every)(?: one)? (?:after|following|succeeding|other)${clauseEnd}`),
    to: 'in each st',
  },
  {
    opens: 'each every',
    from: /^(?:each|every) of (?:all )?(?:the |these |those )?(?:others?|rest|remainder|remaining ones|remaining|other|following)(?: (?:stitches|sts|ones))?(?= [,;.:)*]| to| across| round| around| all|$)/,
    to: 'each st',
  },
  {
    opens: 'in into on',
    from: /^(?:in|into|on) (?:all )?(?:the )(?:others|rest|remainder|remaining ones|other stitches)(?= [,;.:)*]| to| of|$)(?: of the (?:row|round|stitches|chain))?/,
    to: 'in each st',
  },
  {
    opens: 'each every',
    from: /^(?:each|every)(?: one)? of (?:the |these |those )?(?:next |following )?(?<n>#)(?: (?:following|succeeding|successive|consecutive|next))?(?! (?:skipped|underarm|unworked|unused|free|held))/,
    to: 'each of next $n',
  },
  { opens: 'in into on', from: new RegExp(`^(?:in|into|on) (?:each|every)(?: one)?${clauseEnd}`), to: 'in each st' },
  {
    opens: 'in into on',
    from: /^(?:in|into|on) (?:each|every)(?: one)? (?=to the end|to end|all|round|around|along|across)/,
    to: 'in each st',
  },
  {
    opens: 'each every',
    from: /^(?<each>each|every) (?:successive|succeeding|following|separate|single|subsequent) (?!crochet)/,
    to: '$each',
  },
  {
    opens: 'in into on',
    from: new RegExp(`^(?:in|into|on) one(?= (?:${stitchWord}|${loopWord}|${chainWord})\\b)`),
    to: 'in next',
  },
  {
    opens: 'in into on',
    from: new RegExp(`^(?:in|into|on) (?:one|the next one|next one)${clauseEnd}`),
    to: 'in next st',
  },
  {
    opens: 'hole holes',
    from: /^holes?/,
    to: 'sp',
    after: /(?:#|\b(?:each|every|next|first|last|same|the|any|alternate))$/,
  },
]

/** `14 tr in the round`: the ring that was made. */
export const intoRound: readonly Rewording[] = [
  {
    opens: 'in into',
    from: /^(?:in|into) the round(?= [,;.]|$)/,
    to: 'in ring',
    after: new RegExp(`# ${stitchName}$`),
  },
]

/** Between the groups or the stitches of the row below. */
export const between: readonly Rewording[] = [
  // `between each pair of long`, `between each two groups of 3 tr`: the pair is the group
  {
    opens: 'between',
    from: new RegExp(`^between (?:each|every) (?:pairs? of ${stitchName}|(?:two |# )?${groupWord} of # ${stitchName})`),
    to: 'in each sp between groups',
  },
  {
    opens: 'between in into',
    from: new RegExp(`^(?:(?:in|into) (?:the )?)?(?:back )?between (?:every|each)(?: #| two)? ${stitchName}`),
    to: 'in each st',
  },
  {
    opens: 'between',
    from: new RegExp(
      `^between (?<each>each|every)(?: # of the| #)?(?: and the next)? (?=${groupWord})(?:${groupWord})`,
    ),
    to: 'in each sp between groups',
  },
]
