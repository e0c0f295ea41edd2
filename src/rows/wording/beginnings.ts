import type { Rewording } from './rewrite.ts'
import { chainsWord, chainWord, clauseEnd, stitchName } from './vocabulary.ts'

const place =
  '(?:(?: (?:in|at|from|on|by|with) (?:the |one )?(?!#|a )(?:\\w+ )?(?:centre|center|middle|neck|top|toe|bottom|point|waist|edge|corner|crown|heel|end|side|back|front|wrist|foot|head|border|brim))?(?: ,)?)'
const begins = '(?:commence|commenced|commencing|begin|begun|beginning|began|start|started|starting)'
const foundation = '(?:foundation chain|foundation|base chain|chain)'
const required =
  '(?:(?:of )?(?:the|any) (?:\\w+ )?(?:length|size)(?: (?:required|desired|wanted|wished|needed|necessary|you require))?|slightly longer than (?:desired|required)(?: \\. \\( multiple of # (?:plus #)?)?|as long as (?:required|desired|wished))'
const say = '(?:say|for trial|for example|for instance|as|here|in the model)'

/** How a piece is begun: all that leads up to its chain goes, and `a chain of 50` is `ch 50`. */
export const beginnings: readonly Rewording[] = [
  // `make a foundation chain the length required (say 97 stitches)`
  {
    opens: 'a foundation chain',
    from: new RegExp(
      `^(?:a )?(?:foundation )?${chainWord} ${required}(?: [,;(:])*(?: ${say})* (?<n>#)(?: ${chainsWord}| stitches| sts)?(?: \\))?`,
    ),
    to: 'ch $n',
  },
  {
    opens: 'commence commenced commencing begin begun beginning began start started starting',
    from: new RegExp(
      `^${begins}${place}(?: (?:with|on|by making|by working|by)) (?=(?:a |# )?(?:long )?(?:ch|chain|foundation|length)|#)`,
    ),
    to: '',
  },
  {
    opens: 'foundation',
    from: new RegExp(
      `^foundation(?: ${chainWord})? \\. (?:– )?(?=(?:make|work|begin|commence)? ?(?:with )?(?:a )?(?:${chainWord}|#))`,
    ),
    to: '',
    after: /^$/,
  },
  {
    opens: 'start starting begin beginning',
    from: new RegExp(`^${begins}${place} (?:and )?(?=(?:work |make )?(?:ch|chain|foundation) #|# ${chainWord})`),
    to: '',
  },
  { opens: 'begin commence start', from: new RegExp(`^(?:begin|commence|start)${place} and (?=work|make)`), to: '' },
  { opens: 'commence commenced commencing', from: /^(?:commence|commenced|commencing)/, to: 'begin' },
  { opens: 'cast', from: new RegExp(`^cast on (?<n>#)(?: ${chainsWord}| stitches| sts| loops)?`), to: 'ch $n' },
  {
    opens: 'a the foundation base chain length ch on over upon',
    from: new RegExp(
      `^(?:(?:on|over|upon|with) )?(?:a |the )?(?:long )?${foundation} of (?<n>#)(?: ${chainsWord}| stitches| sts| loops)?`,
    ),
    to: 'ch $n ,',
    after: /^(?!.*\b(?:each|every|next|the|this|first|last|same|loop|space)$)/,
  },
  // `1 long into every stitch of a foundation chain of 73`
  {
    opens: '# one a',
    from: new RegExp(
      `^(?<what>(?:#|one|a) ${stitchName}) (?:in|into|on) (?:each|every) (?:stitch|st|chain|ch|loop)(?: of (?:a |the ))(?:foundation chain|foundation|chain) of (?<n>#)(?: ${chainsWord}| stitches| sts)?`,
    ),
    to: 'ch $n , $what in each ch',
  },
  // `make 81 chain stitches`, `chain 100 stitches`
  { opens: 'chain ch', from: /^(?:chain|ch) (?<n>#) (?:stitches|sts|loops)(?= [,;.:)]| and|$)/, to: 'ch $n' },
  { opens: '#', from: new RegExp(`^(?<n>#) ${chainWord} (?:stitches|sts|loops)${clauseEnd}`), to: 'ch $n' },
]

const ring = '(?:ring|circle|round|loop)'
const closing =
  '(?: (?:it|them|the (?:ends?|work|chain|round|circle|ring)|up|both ends|ends)| together|,? (?:in|into|to form|and form|so as to form|to make) (?:a |the )?(?:ring|circle|round|loop)| round)*'

/** Rings, of chains or not. */
export const rings: readonly Rewording[] = [
  {
    opens: 'a ring circle',
    from: new RegExp(`^(?:a )?(?:ring|circle|round) (?:of|with) (?<n>#) ${chainsWord}`),
    to: 'ch $n , join',
    after: /^(?!.*\b(?:the|in|into|under)$)/,
  },
  { opens: 'take', from: /^take (?:a|the|one)(?: \w+)? ring/, to: 'form a ring' },
  {
    opens: 'wind twist wrap',
    from: /^(?:wind|twist|wrap) (?:the |your )?(?:cotton|thread|wool|silk|yarn)(?: (?:# times|twice|once|several times))? (?:round|around|over) (?:the |your |a )?(?:\w+ )?(?:finger|fingers|thumb|pencil|mesh)/,
    to: 'form a ring',
  },
]

/** How a chain becomes a ring and a round is closed. */
export const joins: readonly Rewording[] = [
  { opens: 'unite united uniting', from: new RegExp(`^(?:unite|united|uniting)${closing}`), to: 'join' },
  {
    opens: 'close',
    from: new RegExp(
      `^close${closing}(?= [,;.:)]| with| by| and(?! fasten)| to the| in the| into the| under| work| turn|$)`,
    ),
    to: 'join',
    after: /(?:^|[,;.:)]|\band)$/,
  },
  {
    opens: 'join',
    from: /^join (?:it |the ends |both ends )?(?:round|in a round|into a round|in the round)/,
    to: 'join',
  },
  {
    opens: 'form connect make',
    after: /^(?!.*\bto$)/,
    from: new RegExp(`^(?:form|connect|make) (?:it |this |these )?(?:into a |in a |a )?${ring}${clauseEnd}`),
    to: 'join',
  },
  {
    opens: 'form connect make',
    after: /^(?!.*\bto$)/,
    from: new RegExp(`^(?:form|connect|make) (?:it|this|these) (?:into |in )?(?:a )?(?:${ring})`),
    to: 'join',
  },
  {
    opens: 'to',
    from: /^to (?:make|form|complete|close) (?:a |the |into a )?(?:ring|circle|round)/,
    to: 'to form a ring',
  },
  { opens: 'fasten', from: /^fasten (?=to the|with a|in the first|into the first|on the first)/, to: 'join' },
  { opens: 'fasten', from: /^fasten (?:on |in )?(?:the |your )?(?:thread|cotton|wool|silk|yarn)/, to: 'join yarn' },
]
