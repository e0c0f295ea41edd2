import type { Code } from '../../src/diagnostic/index.ts'

/**
 * A fault in a short draft: words, what stands there instead with ‹› around the place of the finding, its code, and the
 * names of its sizes. Where the place is elsewhere, ‹› stand in words of their own at the end.
 */
export type ShortFault = readonly [
  draft: string,
  words: string,
  instead: string,
  code: Code,
  sizes?: string,
  elsewhere?: string,
]

const counts: readonly ShortFault[] = [
  ['headband', '({{total}} hdc)', '‹(11 hdc)›', 'count-mismatch', 'Toddler, Child, Adult'],
  ['hotpad', '– 24 sc\n\nRow 2', '‹– 25 sc›\n\nRow 2', 'count-mismatch', 'One size'],
  [
    'granny',
    'ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp',
    'ch 3 (counts as dc), (2 dc, ch 2, 2 dc) in same sp',
    'count-mismatch',
    'Small, Large',
    '(24 dc, 4 ch-2 sps, 4 ch-1 sps)',
  ],
  ['granny', '(36 dc)', '‹(36 dc, 4 ch-1 sps)›', 'count-mismatch', 'Small, Large'],
  ['granny', '(56 sc)', '‹(54 sc)›', 'count-mismatch', 'Large'],
  ['vest-hand', '52 (58, 65, 71, 78) hdc\n\nRow 2', '‹52 (58, 65, 72, 78) hdc›\n\nRow 2', 'count-mismatch', 'L'],
  ['vest-hand', '[44 (48, 53, 57, 62) hdc]', '‹[44 (48, 53, 52, 62) hdc]›', 'count-mismatch', 'L'],
  ['shawl', '(6 dc, 1 ch-2 sp)', '‹(6 dc, 2 ch-2 sp)›', 'count-mismatch', 'Shawlette, Shawl'],
  ['beanie', '(60 sc)', '‹({{crown - 6}} sc)›', 'count-mismatch', 'M, L'],
  ['sleeve', '({{upper + 4}} sc)', '‹({{upper + 5}} sc)›', 'count-mismatch', 'S, M, L'],
  ['sleeve', '({{upper}} sc)', '‹({{wrist}} sc)›', 'count-mismatch', 'S, M, L'],
  ['stars', '(10 sc)', '‹(11 sc)›', 'count-mismatch', 'One size'],
  ['triangle-scarf', '(61)', '‹(60)›', 'count-mismatch', 'Child, Adult'],
  ['mitten-liner', '{{around / 2}} sts', '{{around / 3}} sts', 'count-not-whole', '6 months', 'around / 3'],
]

const steps: readonly ShortFault[] = [
  [
    'ball',
    'Rnd 4: *Sc in next 2 sts, inc; rep from * around',
    'Rnd 4: *Sc in next 3 sts, inc; ‹rep from * around›',
    'repeat-does-not-come-out',
  ],
  [
    'blanket',
    'dc in next 3 ch, 2 dc in next ch; rep from * across',
    'dc in next 4 ch, 2 dc in next ch; ‹rep from * across›',
    'repeat-does-not-come-out',
  ],
  ['stars', 'sk next 2 sc; rep from * around', 'sk next 3 sc; ‹rep from * around›', 'repeat-does-not-come-out'],
  [
    'vest-hand',
    'ch 1, hdc in next 44 (48, 53, 57, 62) sts',
    'ch 1, ‹hdc in next 54 (58, 63, 67, 72) sts›',
    'too-few-stitches',
    'XS, S, M, L, XL',
  ],
  ['scarf-hand', 'hdc in last 2 sts, turn.', '‹hdc in last 3 sts›, turn.', 'too-few-stitches', 'S, M, L'],
  [
    'vest-hand',
    'Row 2: Ch 1, hdc in each st across, turn. 52 (58, 65, 71, 78) hdc',
    'Row 2: Ch 1, hdc in next 50 (56, 63, 69, 76) sts, turn. 50 (56, 63, 69, 76) hdc',
    'stitches-left',
    'XS, S, M, L, XL',
    'Ch 1, hdc in next 50 (56, 63, 69, 76) sts, turn.',
  ],
  [
    'sock',
    'leave rem {{heel}} sts unworked, turn.',
    'turn.',
    'stitches-left',
    'S, M, L',
    'Ch 1, sc in next {{heel}} sts, turn.',
  ],
  ['sock', 'leave rem {{heel}} sts', 'leave rem {{heel + 2}} sts', 'left-otherwise', 'S, M, L'],
  ['mug-rug-uk', '2 tr in next st; rep', '2 trr in next st; rep', 'row-unread', ''],
  ['mug-rug-uk', '5 htr in next st', '5 ‹hdc› in next st', 'word-of-other-terms', ''],
  ['headband', 'hdc BLO in each st across', 'hdc BLO ‹in eech st across›', 'row-unread', ''],
]

const labels: readonly ShortFault[] = [
  ['mug-rug-uk', 'Round 3:', '‹Round 5:›', 'row-number-gap', ''],
  ['sock', 'Rnds 2–20:', '‹Rnds 3–20:›', 'row-number-gap', ''],
  ['stars', 'Rnd 4:', '‹Rnd 6:›', 'row-number-gap', ''],
  ['cuff', 'Rnd 3:', '‹Rnd 2:›', 'row-label-twice', ''],
  ['scarf-hand', 'Rep Rows 2 and 3.', 'Rep Rows 2 and 30.', 'unknown-row-reference', ''],
  ['afghan-two-colour', 'Rep Rows 5–10.', '‹Rep Rows 5–40.›', 'unknown-row-reference', ''],
  ['triangle-scarf', 'Rep Row 3.', '‹Rep Row 31.›', 'unknown-row-reference', ''],
  ['shawl', 'Row 2:', '‹Row 2 (RS):›', 'side-out-of-step', ''],
  ['vest-hand', 'Ch 54 (60, 67, 73, 80)', 'Ch ‹54 (60, 67, 73)›', 'size-list-length', ''],
  ['vest-hand', '80 (90, 100, 110, 120) cm', '‹80 (90, 100, 110)› cm', 'text-list-length', ''],
]

const facts: readonly ShortFault[] = [
  ['cuff', 'hooks: [4 mm]', 'hooks: [‹G-6 5 mm›]', 'hook-sizes-disagree', ''],
  ['scarf-hand', '4.5 mm hook', '‹J-10/4.5 mm› hook', 'hook-sizes-disagree', ''],
  ['cuff', 'category: 3,', 'category: ‹3 worsted›,', 'yarn-category-disagrees', ''],
  ['scarf-hand', 'DK weight yarn (#3)', '‹DK weight yarn (#5)›', 'yarn-category-disagrees', ''],
  ['beanie', 'stitches: 14 per 10 cm', 'stitches: ‹20 per 10 cm›', 'gauge-outside-category', ''],
  ['beanie', 'hooks: [5.5 mm]', 'hooks: [‹2.5 mm›]', 'hook-outside-category', ''],
  ['cuff', '- sk: skip\n', '', 'abbreviation-unlisted', '', 'sk'],
  ['market-bag', 'sk: skip; ', '', 'abbreviation-unlisted', '', 'sk'],
  ['cuff', '- sk: skip', '- sk: skip\n- ‹tr›: treble crochet', 'abbreviation-unused', ''],
  [
    'mitten-liner',
    'sc: single crochet; ',
    'sc: single crochet; ‹picot›: ch 3, sl st in first ch; ',
    'abbreviation-unused',
    '',
  ],
  ['mug-rug-uk', 'tr: treble', '‹tr›: double crochet', 'abbreviation-means-other', ''],
]

const numbers: readonly ShortFault[] = [
  ['blanket', 'waves = [8, 13, 19]', 'waves = [8, 13, 11]', 'measure-falls', 'Lap, Bed', 'width(sts)'],
  ['pullover', '[9, 10, 11, 12] cm', '[12, 13, 14, 15] cm', 'too-narrow-for-head', 'XS, S', 'neck_made'],
  ['pullover', 'need front rises', 'need ‹front falls›', 'need-failed', 'S, M, L'],
  ['pullover', '/ 2) as even\nbust_made', '/ 2)\nbust_made', 'count-not-whole', 'XS, S, M, L', 'front + 1'],
  ['pullover', 'body("bust")', 'body(‹"busst"›)', 'body-measure-unknown', ''],
  ['pullover', '{{front + 1}}', '{{‹frnt› + 1}}', 'name-unknown', ''],
  ['sleeve', 'taper(wrist, upper, sleeve_rows)', '‹taper(wrist, upper, 4)›', 'shaping-rows', 'S, M, L'],
  ['market-bag', '"[50, 60] cm"', '{claims: "‹[50, 72] cm›", over: "[80, 96]"}', 'claims-uneven', 'Large'],
  ['beanie', 'rows: 16 per 10 cm', 'rows: ‹0 per 10 cm›', 'gauge-not-positive', ''],
]

const cautions: readonly ShortFault[] = [
  ['hood-cord', 'Fasten off.', 'Fasten off. Thread a ‹cord› through the hood.', 'child-neck-cord', '4, 6, 8'],
  [
    'mitten-liner',
    'Fasten off, leaving',
    'Thread a ‹cord› through the cuff. Fasten off, leaving',
    'child-cord',
    '3 months, 6 months',
  ],
  [
    'mitten-liner',
    'hooks: [3.5 mm]',
    'hooks: [3.5 mm]\nnotions: [two 10 mm ‹buttons›]',
    'child-small-parts',
    '3 months, 6 months',
  ],
  ['ball', '[toy stuffing', '[‹safety eyes›, toy stuffing', 'toy-small-parts', 'Small, Medium, Large'],
  ['blanket', '[Chair, Lap, Bed]', '[Pram, Lap, Bed]', 'baby-cover', 'Pram', 'Driftline Blanket'],
]

export const shortFaults: readonly ShortFault[] = [...counts, ...steps, ...labels, ...facts, ...numbers, ...cautions]
