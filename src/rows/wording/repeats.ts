import type { Rewording } from './rewrite.ts'
import { clauseEnd, roundWord, stitchName } from './vocabulary.ts'

const theRow = `(?:the |this )?(?:${roundWord}|chain|line|work)`
const toEnd = `(?:to|till|until|unto) (?:the )?end(?: of ${theRow})?`
const fromStart = `from (?:the )?(?:beginning|commencement|start|first)(?: of ${theRow})?`
const wholeWay =
  '(?:all (?:the way |the )?(?:round|around|along|row|across)|right round|quite round|all round the (?:work|circle|ring)|round|around|throughout|across|to correspond|in the same (?:way|manner)|in (?:this|like) manner|to the end)'

/** Repetitions without a mark to go back to. */
export const repeats: readonly Rewording[] = [
  {
    opens: 'and so',
    from: new RegExp(
      `^(?:and )?so on(?: (?:${toEnd}|${wholeWay}|for the (?:whole )?${roundWord}|for the rest))*${clauseEnd}`,
    ),
    to: '; rep',
  },
  {
    opens: 'alternately alternating',
    from: new RegExp(`^(?:alternately|alternating)(?: ${toEnd}| ${wholeWay})*${clauseEnd}`),
    to: '; rep',
  },
  {
    opens: 'and repeat rep repeating repeated',
    from: new RegExp(
      `^(?:and )?(?:repeat|rep|repeating|repeated)(?: (?:the same|the whole|this|these|it|again|as before|so))*(?: (?:${toEnd}|${fromStart}|${wholeWay}|in (?:each|every) (?:loop|stitch|space|chain)))*${clauseEnd}`,
    ),
    to: 'rep',
  },
  { opens: 'all', from: new RegExp(`^all (?:round|along|around)${clauseEnd}`), to: 'rep', after: /,$/ },
  {
    opens: 'all right the quite entirely along throughout',
    from: new RegExp(
      `^(?:all the way (?:round|along|around)|all (?:the )?(?:row|round)|right round|quite round|entirely round|the whole (?:length|way round|round|row|of the ${roundWord})|along the (?:row|chain|whole|edge)|throughout)${clauseEnd}`,
    ),
    to: 'around',
  },
  {
    opens: 'the',
    from: new RegExp(`^the last (?:one|${stitchName})(?: to (?:come|be|go|be worked))? (?=in|on|into)`),
    to: 'ending with one',
    after: /,$/,
  },
  { opens: '#', from: new RegExp(`^(?<n>#) times${clauseEnd}`), to: 'rep a total of $n times', after: /[^)*\]#] ,$/ },
  // `3 dc, picot, 3 dc, into every loop`: the place of the list
  {
    opens: ',',
    from: new RegExp(
      `^, (?=(?:in|into|under|over|on) (?:each|every) (?:(?:st|stitch|loop|lp|sp|space|arch|hole)|ch - # sp)${clauseEnd})`,
    ),
    to: 'all',
  },
  // `repeat from * on every arch`
  {
    opens: 'on in under over',
    from: /^(?:on|in|under|over) (?:each|every) (?:loop|arch|scallop|point|side|leaf|shell|space)(?= [,;.]|$)/,
    to: '',
    after: /from \*$/,
  },
  {
    opens: 'for to until till',
    from: /^(?:for|to|until|till) (?:the )?(?:length|size|depth) (?:required|desired|wanted|wished|needed|necessary)/,
    to: 'to desired length',
  },
  {
    opens: 'till until to',
    from: /^(?:till|until|to) (?:the )?last (?:, )?(?:and )?(?<n>#) (?:in|into|on) (?:that|it|this)/,
    to: 'to last st , $n in last st',
  },
  { opens: 'to', from: /^to (?:the )?last (?:(?:stitch|st) )?but one/, to: 'to last st' },
  {
    opens: 'finishing finish terminating terminate concluding conclude and end ending',
    from: /^(?:and )?(?:finishing|finish|terminating|terminate|concluding|conclude|end|ending)(?: off| each row| the row| the round)? (?:with|by)(?: working| making)?/,
    to: 'ending with',
  },
]

const rowStart = /(?:^|[.:–)])$/

/** Rows that are worked as others. */
export const references: readonly Rewording[] = [
  {
    opens: 'like',
    from: new RegExp(`^like (?=(?:the )?(?:#th|first|last|previous|preceding) ${roundWord})`),
    to: 'as',
    after: rowStart,
  },

  // `repeat from the 2nd row for the length required`: that row comes next
  {
    opens: 'repeat rep',
    from: /^(?:repeat|rep) from (?:the )?(?<a>#th) (?:row|rnd|round)(?: (?:for|to|until|till) (?:the )?(?:whole |full )?(?:length|size)(?: \w+)?)?(?= [.;]|$)/,
    to: 'rep row $a',
    after: rowStart,
  },
  // `same as the 2nd row, working 1 tr under each ch`: what follows says how
  {
    opens: 'the same as like',
    from: new RegExp(
      `^(?:the )?(?:same as|as|like) (?:the )?(?:#th|last|previous|preceding) ${roundWord} , (?:but )?(?:only )?(?:working|work|with)(?= #| a| one)`,
    ),
    to: '',
    after: rowStart,
  },
  {
    opens: 'like as repeat rep same the work similar',
    from: /^(?:work )?(?:the )?(?:like|as|repeat|rep|repeat as|same as|similar to)(?: in)? (?:the )?(?<a>#th)(?:(?<and> and) (?:the )?(?<b>#th))?(?= [.;]|$)/,
    to: 'rep row $a $and $b',
    after: rowStart,
  },
  {
    opens: 'the same as',
    from: new RegExp(
      `^(?:(?:the )?same(?: as (?:the )?(?:last|previous|preceding)(?: ${roundWord})?)?|as (?:the )?(?:last|previous|preceding)(?: ${roundWord})?)(?= [.;]|$)`,
    ),
    to: 'rep last row',
    after: rowStart,
  },
]
