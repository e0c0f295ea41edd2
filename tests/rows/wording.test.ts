import { describe, expect, it } from 'vitest'
import { inTodaysWords } from '../../src/rows/wording/index.ts'
import { readWords } from '../../src/rows/words.ts'

function modern(text: string, terms: 'us' | 'uk' = 'uk'): string {
  const words = readWords({ at: { start: 0, end: text.length }, text, holes: [] }, 1)
  const source = (at: { start: number; end: number }): string => text.slice(at.start, at.end)
  return inTodaysWords(words, terms, source)
    .map((word) => word.text)
    .join(' ')
}

describe('handbook wording in today’s', () => {
  it.each([
    ['Make a chain of 46, turn', 'make ch 46 , , turn'],
    ['Commence at the heel with 30 chain', '30 chain'],
    ['Begin on a foundation of 54 chain.', 'ch 54 , .'],
    ['Cast on 72 chain', 'ch 72'],
    ['Make a chain the length required, say 85 stitches, turn', 'make ch 85 , turn'],
    ['chain 9, unite in a circle', 'chain 9 , join'],
    ['and close it', 'and join'],
    ['close the neck', 'close the neck'],
    ['7 double under each loop of 5 chain', '7 double in each ch - 5 sp'],
    ['3 dc under every 2 ch of the last round', '3 dc in every ch - 2 sp'],
    ['5 dc over each ch 4', '5 dc in each ch - 4 sp'],
    ['1 tr in each of the 3 ch', '1 tr in each of next 3 ch'],
    ['1 dc in the centre of the next loop', '1 dc in the next loop'],
    ['1 dc in the 4th of each 7 ch', '1 dc in each ch - 7 sp'],
    ['1 tr in the 3rd of the 5 ch', '1 tr in 3rd ch of ch - 5'],
    ['1 dc in the middle one of the 5 tr', '1 dc in middle-of middle 5 tr'],
    ['1 dc in the middle of each scallop', '1 dc in each middle-of scallop'],
    ['1 dc in each of the others', '1 dc in each st'],
    ['2 in each', '2 in each st'],
    ['(20 sts each)', '( 20 sts each )'],
    ['pass over 3 stitches', 'skip 3 stitches'],
    ['1 tr, 2 ch, miss 2, and repeat to the end of the row.', '1 tr , 2 ch , miss 2 , rep .'],
    ['1 in the first, 2 in the second, and so on all round', '1 in the first , 2 in the second , ; rep'],
    ['repeat from * to the end', 'repeat from * to the end'],
    ['repeat 5 times more', 'repeat 5 times more'],
    ['always taking up the back thread', 'in back loops only'],
    ['1 s. c. in the first', '1 ss in the first'],
    ['1 sc in the first', '1 sc in the first'],
    ['Take a brass ring, work 30 dc round the ring', 'form a ring , work 30 dc in ring'],
  ])('%s', (text, expected) => {
    expect(modern(text)).toBe(expected)
  })

  it('keeps the place of every word', () => {
    const text = '1st row: 3 double under every loop of 4 chain, unite.'
    const words = readWords({ at: { start: 0, end: text.length }, text, holes: [] }, 1)
    const found = inTodaysWords(words, 'uk', (at) => text.slice(at.start, at.end))
    const spans = found.map((word) => text.slice(word.at.start, word.at.end))
    const phrase = 'under every loop of 4 chain'
    expect(spans.slice(5)).toEqual([phrase, 'every', phrase, phrase, '4', phrase, ',', 'unite', '.'])
  })
})
