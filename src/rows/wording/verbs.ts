import type { Rewording } from './rewrite.ts'
import { clauseEnd, roundWord, stitchName } from './vocabulary.ts'

const rowStart = /(?:^|[.:–)]|[.:–)] \*)$/
const rowEnd = '(?= [.;]| , (?:turn|join|fasten|unite|break)| and (?:turn|join|fasten|unite)|$)'
const extent =
  '(?:all round|all along|all the row|throughout|round|around|across|along|without (?:any )?(?:increas|decreas)\\w+|stitch|stitches)'

/** What is done, in other words. */
export const verbs: readonly Rewording[] = [
  { opens: 'pass passing', from: /^(?:pass|passing) (?:over|by)/, to: 'skip' },
  { opens: 'pass passing', from: /^(?:pass|passing) (?=#|one|the next)/, to: 'skip' },
  {
    opens: 'leave leaving',
    from: /^(?:leave|leaving) (?:the )?(?:rest|remainder|others|remaining)(?: stitches)?(?! sts| unworked| stitches)/,
    to: 'leave rem unworked',
  },
  {
    opens: 'leave leaving',
    from: new RegExp(`^(?:leave|leaving) (?:that|it|these|those|them)${clauseEnd}`),
    to: 'leave rem unworked',
  },
  {
    opens: 'leave leaving',
    from: /^(?:leave|leaving) (?=(?:# |the next )(?:\S+ ){0,3}?(?:,|;|\.)|#(?: \S+)?$)(?!(?:\S+ ){0,6}un)/,
    to: 'skip',
  },
  { opens: 'upon onto above beneath underneath', from: /^\S+/, to: 'in' },
  { opens: 'round around', from: /^(?:round|around) it(?= #| work| ,|$)/, to: 'in it' },
  {
    opens: 'round',
    from: /^round (?=the (?!end)|each|every|it\b|this|next)/,
    to: 'around',
    after: /(?:\b(?:dc|sc|tr|hdc|htr|dtr|double|treble|crochet|single|work|long|ss|#)|[,;])$/,
  },
  { opens: 'slip slipping', from: /^(?:slip|slipping) (?=to the|into|along|up|under|on to)/, to: 'ss' },
  { opens: 'slip-stitch slip-stitches', from: /^\S+/, to: 'ss' },
  {
    opens: 'increasing',
    from: /^increasing (?<n>#) (?:in|at) (?:the )?(?:middle|centre|center)(?: of (?:the )?row)?/,
    to: 'increase $n evenly',
  },
  {
    opens: 'decreasing',
    from: /^decreasing (?<n>#) (?:in|at) (?:the )?(?:middle|centre|center)(?: of (?:the )?row)?/,
    to: 'decrease $n evenly',
  },
  { opens: 'to', from: /^to cross(?: over| with)?(?= ,| ;|$)/, to: '' },
  { opens: 'putting', from: /^putting/, to: 'working' },
  {
    opens: ',',
    from: /^, (?:except|excepting) (?:in |on )?the last(?: st| stitch)?(?= [,;.]|$)/,
    to: 'to last st , leave rem unworked',
  },
  {
    opens: '#',
    from: /^# ch(?:ains?)? , (?:#|one|a) (?:ss|single|slip stitch|dc|double)(?: crochet)? (?:in|into|on) (?:the )?(?:first(?: ch| chain| one)? of (?:the |these |those )?(?:#|them|these)(?: ch| chain)?|(?:first|#th)(?: ch| chain| one| stitch)?(?: of (?:the |these )?#(?: ch| chain)?)?(?: for a| forming a| to form a| to make a| making a) (?:purl|picot))/,
    to: 'picot',
  },
  { opens: 'decrease decreasing', from: /^(?:decrease|decreasing) by (?=missing|skipping|skip|miss)/, to: '' },
  {
    opens: 'up along',
    from: /^(?:up|along) (?:the )?(?:next |first )?(?:side of the )?(?:loop|chain)/,
    to: 'in the next loop',
    after: /(?:ss|single|st|stitch)$/,
  },
  {
    opens: 'increase increasing',
    from: /^(?:increase|increasing) by (?:working|making) (?:#|two)(?: \w+)?(?= in every #th)/,
    to: 'increase',
  },
  { opens: 'increase increasing', from: /^(?:increase|increasing) by (?:working|making)/, to: 'work' },
  {
    opens: 'work go continue',
    from: /^(?:work|go|continue)(?: plain| even)? to (?:the )?last (?<n>#)(?: (?:stitches|sts))?(?= ,)/,
    to: 'one in each st to last $n sts',
  },
  { opens: 'put', from: /^put/, to: 'make' },
  { opens: 'closely', from: /^closely/, to: '' },
  {
    opens: 'being taking take',
    from: /^(?:being|taking|take) (?:careful|care)(?: [^ ,;.:()*]+)*/,
    to: '',
    after: /(?:^|[,;.:(])$/,
  },
  { opens: 'to', from: /^to form (?:the )?last (?:lp|loop|sp|space)/, to: '' },
  {
    opens: 'with',
    from: /^with (?:the )?(?:\w+ )?(?:cotton|wool|thread|silk|yarn|colour|color)(?: ,)?(?: and)?(?= make| work| # \w| ch| chain)/,
    to: '',
  },
  { opens: 'singly', from: /^singly/, to: '' },
  { opens: 'turn', from: /^turn (?:the |your )?(?:work |needle )?(?:back )?with (?=#|ch|a ch|one)/, to: 'turn ,' },
  { opens: 'turn', from: /^turn (?:the work|back|on the wrong side|round)(?! -)/, to: 'turn' },
  { opens: 'no', from: /^no (?:\. )?#/, to: '' },
  { opens: 'no', from: new RegExp(`^no (?:increas|decreas)(?:e|es|ing)${clauseEnd}`), to: '', after: /,$/ },
  // `…, for the frill`: what it is made for
  {
    opens: 'for',
    from: new RegExp(
      `^for (?:the |a )?(?:frill|edge|edging|border|heading|scallops?|hem|band|neck|finish|ruffle|fringe|lace|wrist|top|bottom|ends?|outside|outer edge)${clauseEnd}`,
    ),
    to: '',
    after: /,$/,
  },
  { opens: 'and &', from: /^and c \./, to: '.' },
  { opens: 'purl purls', from: /^purls?(?: of (?:#) (?:ch|chain|chains))?/, to: 'picot', after: /#|a|one|,$/ },
  { opens: 'picot a p', from: /^(?:a )?(?:picot|p) (?:of|with) # (?:ch|chain|chains)/, to: 'picot' },
  { opens: 'p', from: /^p(?= ,| and| ;)/, to: 'picot', after: /(?:,|and)$/ },
]

/** Rows that need no more words than the name of their stitch. */
export const plainRows: readonly Rewording[] = [
  { opens: 'open square close', from: /^(?:open|square|close) (?:crochet|work|stitch) :/, to: '', after: rowStart },
  {
    opens: 'dc sc double',
    from: /^(?:dc|sc|double crochet) , (?:working|making) (?=# in|one in)/,
    to: '',
    after: rowStart,
  },
  // `work round without increasing`
  {
    opens: 'work go continue',
    from: new RegExp(
      `^(?:work|go|continue)(?: plain| even| all)?(?: round| around| on| along| back)? without (?:any )?(?:further |more )?(?:increas|decreas)\\w+${rowEnd}`,
    ),
    to: 'one in each st',
    after: rowStart,
  },
  // `Miss every other stitch.`: one in each of the others
  {
    opens: 'skip miss',
    from: /^(?:skip|miss) every (?:other|alternate|second) (?:stitch|st|loop)/,
    to: 'one in every other st',
    after: rowStart,
  },
  {
    opens: 'all a one plain # quite',
    from: new RegExp(`^(?:all |quite |a |one |# )?plain(?: ${roundWord})?(?: ${extent})*${rowEnd}`),
    to: 'one in each st',
    after: rowStart,
  },
  {
    opens: 'without',
    from: new RegExp(`^without (?:any )?(?:increas|decreas)\\w+${rowEnd}`),
    to: 'one in each st',
    after: rowStart,
  },
  {
    opens: 'all only plain quite double treble single half dc tr sc hdc htr dtr ss',
    from: new RegExp(`^(?:all |only |plain |quite )?(?<stitch>${stitchName})(?: ${extent})*${rowEnd}`),
    to: '$stitch in each st',
    after: rowStart,
  },
  {
    opens: 'work one a #',
    from: new RegExp(`^(?:work )?(?:one |a |#)? ?(?:row|round|rnd) (?:of |in )(?:plain )?(?<stitch>${stitchName})`),
    to: '$stitch in each st',
  },
  { opens: 'without', from: /^without (?:any )?(?:increas|decreas)\w+/, to: '' },
]
