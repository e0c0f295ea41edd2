import type { Rewording } from './rewrite.ts'
import { chainWord, clauseEnd, loopWord, roundWord, stitchName, stitchWord } from './vocabulary.ts'

const freeLoops = /(?:free|unused|remaining|back|front|unworked) \S+$/

/** What is said of a place beside what it is. */
export const asides: readonly Rewording[] = [
  {
    opens: 'of in on from',
    from: new RegExp(`^(?:of|in|on|from) (?:the )?(?:last|previous|preceding|former|foregoing) ${roundWord}`),
    to: '',
    after: new RegExp(
      `^(?!.*${freeLoops.source}).*\\b(?:${chainWord}|${stitchWord}|${loopWord}|${stitchName}|each|every|ring|circle|#)$`,
    ),
  },
  {
    opens: 'of',
    from: /^of (?:the )?(?:foundation chain|foundation|commencement chain|first chain)/,
    to: '',
    after:
      /^(?!.*(?:free|unused|remaining|opposite|other|side|edge) ?\S*$).*\b(?:st|sts|stitch|stitches|ch|chain|chains|loop|loops)$/,
  },
  {
    opens: 'in into on',
    from: new RegExp(
      `^(?:in|into|on) (?:each|every) (?:${chainWord}|${stitchWord})(?: of (?:the )?(?:chain|foundation))? (?:, )?(?:beginning|commencing|starting) (?:with|at|in) (?:the )?(?<n>#th)(?: ${chainWord}| ${stitchWord})?`,
    ),
    to: 'in $n ch from hook and in each ch',
  },
  {
    opens: 'in into',
    from: /^(?:in|into) (?:the )?(?:joining stitch|joining st|joining|join)(?= [,;.:)]| and|$)/,
    to: 'in same st',
  },
  {
    opens: 'between',
    from: new RegExp(`^between(?: them| these| each| the (?:loops|scallops))?${clauseEnd}`),
    to: '',
    after: new RegExp(`(?:the|each|every) ${stitchName}$`),
  },
  { opens: 'top', from: /^top (?:st|stitch|loop|chain|ch) of/, to: 'top of' },
  { opens: 'first', from: /^first made/, to: '', after: /#$/ },
  {
    opens: 'ss sl slip',
    from: new RegExp(
      `^(?:ss|sl st|slip stitch) (?:in|into|on|to) (?:the )?(?:top of )?(?:the )?(?:last|same|first of these) (?:${stitchName}|${stitchWord})(?: just)? made`,
    ),
    to: 'picot',
  },
  { opens: 'made', from: /^made/, to: '', after: new RegExp(`(?:first|same|the) (?:${stitchName}|${stitchWord})$`) },
  { opens: 'of in on from', from: new RegExp(`^(?:of|in|on|from) (?:the )?(?<n>#th) ${roundWord}`), to: 'of row $n' },
  {
    opens: 'st sts stitch stitches',
    from: new RegExp(`^${stitchWord} of (?:the )?${chainWord}${clauseEnd}`),
    to: 'ch',
    after: /(?:each|every|#)$/,
  },
  { opens: ',', from: /^, (?:and )?(?=all (?:in|into|under|on|over) )/, to: '' },
  { opens: 'on', from: /^on (?:this|it|them)(?: chain| foundation| ring)?(?= work| make| crochet)/, to: '' },
  { opens: 'of', from: /^of (?:the )?turning(?= [,;.:)*]|$)/, to: 'of turning ch' },
  {
    opens: 'of',
    from: /^of (?:the )?(?:ring|circle)/,
    to: '',
    after: new RegExp(`(?:${chainWord}|${stitchWord}|${loopWord})$`),
  },
  { opens: 'in at', from: /^(?:in|at) (?:the )?back(?: of (?:the )?work)?(?: ,)?(?= between| around)/, to: '' },
  { opens: 'from', from: /^from (?:the |your )?needle/, to: 'from hook' },
  {
    opens: '#th',
    from: new RegExp(`^(?<n>#th) ${stitchWord} of (?:the )?${chainWord}(?= from|${clauseEnd.slice(3, -1)})`),
    to: '$n ch',
  },
  { opens: '#th', from: new RegExp(`^(?<n>#th) ${stitchWord} (?=from hook|from the|from needle)`), to: '$n ch' },
]

const back = '(?<side>back|front)'

/** Which loop of a stitch is taken up. */
export const threads: readonly Rewording[] = [
  {
    opens: 'taking take always and working inserting',
    from: new RegExp(
      `^(?:and )?(?:always )?(?:taking|take|working|inserting the (?:needle|hook))(?: (?:up|in|into|through|only|always))* (?:the )?${back} (?:thread|threads|loop|loops|part|half|side|edge|edges)(?: (?:of|in) (?:the|each|every) (?:stitch|stitches|loop|loops|chain|edge))?(?: only)?`,
    ),
    to: 'in $side loops only',
  },
  {
    opens: 'in into on through at',
    from: new RegExp(
      `^(?:in|into|on|through|at) (?:the )?${back}(?: (?:thread|part|half|side|edge))? of (?=each|every|the|next|#|all|it)`,
    ),
    to: 'in $side loop of',
  },
]
