import type { Code } from '../../src/diagnostic/index.ts'
import type { Clean, Planted } from './planted.ts'

const names = {
  vest: ['S', 'M', 'L', 'XL'],
  motif: ['One size'],
  jelly: ['Small', 'Large'],
  scarf: ['Narrow', 'Wide'],
  hat: ['Child', 'Woman', 'Man'],
  mitts: ['S', 'M', 'L'],
  blanket: ['Lap', 'Bed'],
  slippers: ['Small', 'Medium', 'Large'],
} as const satisfies Record<Clean, readonly string[]>

/** `sizes`: their names, `all`, or none where the finding is not about sizes. `at`: where it isn't at the mark. */
function plant(
  draft: Clean,
  words: string,
  instead: string,
  code: Code,
  sizes: readonly string[] | 'all' | null,
  at?: string,
): Planted {
  const named = sizes === 'all' ? names[draft] : sizes
  return {
    draft,
    words,
    instead,
    code,
    ...(named === null ? {} : { sizes: named }),
    ...(at === undefined ? {} : { at }),
  }
}

/** Stated counts that differ from those worked: a count that slipped, or a step. */
const counts: readonly Planted[] = [
  plant('vest', '({{half}} hdc)', '‹({{half + 2}} hdc)›', 'count-mismatch', 'all'),
  plant('vest', 'unworked. ({{upper}} hdc)', 'unworked. ‹({{upper + 1}} hdc)›', 'count-mismatch', 'all'),
  plant(
    'vest',
    'to last 2 sts, hdc2tog, turn. ({{upper - 2}} sts)',
    'to last 2 sts, hdc in last 2 sts, turn. ‹({{upper - 2}} sts)›',
    'count-mismatch',
    'all',
  ),
  plant('mitts', '[35 (39, 43)]', '‹[35 (38, 43)]›', 'count-mismatch', ['M']),
  plant(
    'mitts',
    'sts, 2 sc in next st, sc in each st to end, join with sl st in first sc. [33 (37, 41)]',
    'sts, sc in each st to end, join with sl st in first sc. ‹[33 (37, 41)]›',
    'count-mismatch',
    'all',
  ),
  plant('mitts', 'ch 2, sk next 7 sts', 'ch 2, sk next 6 sts', 'count-mismatch', 'all', '[30 (34, 38) sc, 1 ch-2 sp]'),
  plant(
    'mitts',
    '2 sc in ch-2 sp, sc in each st to end, join with sl st in first sc. [32 (36, 40)]',
    '3 sc in ch-2 sp, sc in each st to end, join with sl st in first sc. ‹[32 (36, 40)]›',
    'count-mismatch',
    'all',
  ),
  plant('jelly', '(24 sc)', '‹(25 sc)›', 'count-mismatch', 'all'),
  plant('jelly', '(30 (36) sc)', '‹(30 (35) sc)›', 'count-mismatch', ['Large']),
  plant('jelly', 'Sc in next 4 (5) sts, dec', 'Sc in next 4 (4) sts, dec', 'count-mismatch', ['Large'], '(30 (36) sc)'),
  plant('jelly', '2 sc in 2nd ch from hook', '2 sc in 3rd ch from hook', 'count-mismatch', 'all', '(40 (60) sc)'),
  plant('hat', '(42 (48, 54) sts)', '‹(42 (48, 53) sts)›', 'count-mismatch', ['Man']),
  plant('hat', 'Sc in 2nd ch', 'Sc in 3rd ch', 'count-mismatch', 'all', '(8 sc)'),
  plant('hat', '(18 (21, 24) sts)', '‹(18 (22, 24) sts)›', 'count-mismatch', ['Woman']),
  plant(
    'scarf',
    '({{fans}} fans,\n',
    '‹({{fans + 1}} fans,\n',
    'count-mismatch',
    'all',
    '({{fans + 1}} fans,\n{{fans + 1}} sc)',
  ),
  plant('scarf', '({{fans}} sc, {{fans - 1}} V-sts)', '‹({{fans}} sc, {{fans}} V-sts)›', 'count-mismatch', 'all'),
  plant('motif', '(24 dc, 4 ch-1 sps, 4 ch-2 sps)', '‹(24 dc, 5 ch-1 sps, 4 ch-2 sps)›', 'count-mismatch', 'all'),
  plant('motif', '(56 sc)', '‹(52 sc)›', 'count-mismatch', 'all'),
  plant('blanket', '(96 (132) sts)', '‹(97 (132) sts)›', 'count-mismatch', ['Lap']),
  plant('slippers', '(24 sc)\nRow 11', '‹(28 sc)›\nRow 11', 'count-mismatch', 'all'),
  plant(
    'slippers',
    '2 sc in each st around, join. (16 sc)',
    'sc in each st around, join. ‹(16 sc)›',
    'count-mismatch',
    'all',
  ),
]

/** Repeats that do not come out, or not as often as they are written. */
const repeats: readonly Planted[] = [
  plant('hat', 'rep from * 5 more times', '‹rep from * 6 more times›', 'repeat-does-not-come-out', 'all'),
  plant(
    'hat',
    'sc in next 5 (6, 7) sts, sc2tog; rep from * 5 more times',
    'sc in next 5 (6, 8) sts, sc2tog; ‹rep from * 5 more times›',
    'repeat-does-not-come-out',
    ['Man'],
  ),
  plant(
    'hat',
    'sc in next 7 (8, 9) sts',
    'sc in next 7 (9, 9) sts',
    'repeat-does-not-come-out',
    ['Woman'],
    'rep from * 5 more times',
  ),
  plant(
    'jelly',
    'Sc in next 3 sts, inc; rep from * around',
    'Sc in next 4 sts, inc; ‹rep from * around›',
    'repeat-does-not-come-out',
    'all',
  ),
  plant(
    'scarf',
    'fan in next st, sk next 3 sts, sc in next st; rep from * across',
    'fan in next st, sk next 4 sts, sc in next st; ‹rep from * across›',
    'repeat-does-not-come-out',
    'all',
  ),
  plant(
    'motif',
    'next ch-2 sp; rep from * 2 more times',
    'next ch-2 sp; ‹rep from * 3 more times›',
    'repeat-does-not-come-out',
    'all',
  ),
  plant(
    'slippers',
    '*sc in next st, 2 sc in next st; rep from * around',
    '*sc in next 2 sts, 2 sc in next st; ‹rep from * around›',
    'repeat-does-not-come-out',
    'all',
  ),
  plant(
    'blanket',
    'rep from * 6 (9) more times',
    'rep from * 6 (8) more times',
    'count-mismatch',
    ['Bed'],
    '(96 (132) sts)',
  ),
  plant(
    'jelly',
    'Sc in next st, inc; rep from * around',
    'Sc in next st, inc; rep from * 4 more times',
    'count-mismatch',
    'all',
    '(18 sc)',
  ),
  plant(
    'hat',
    '*sc in next 6 (7, 8) sts, sc2tog; rep from * 5 more times',
    'sc in next 6 (7, 8) sts, sc2tog; ‹rep from * 5 more times›',
    'repeat-without-mark',
    null,
  ),
]

/** More than there is, or less than is used. */
const fabric: readonly Planted[] = [
  plant('vest', 'hdc in next {{strap}} sts, turn', '‹hdc in next {{yoke + 1}} sts›, turn', 'too-few-stitches', 'all'),
  plant(
    'mitts',
    'sc in next 15 (17, 19) sts, ch 2, sk next 7 sts',
    'sc in next 35 (17, 19) sts, ch 2, ‹sk next 7 sts›',
    'too-few-stitches',
    ['S'],
  ),
  plant('slippers', 'sc in next 16 sts', '‹sc in next 26 sts›', 'too-few-stitches', 'all'),
  plant(
    'motif',
    '2 dc in ring, ch 2, *3 dc in ring, ch 2;',
    '2 dc in ring, ch 3, *3 dc in ring, ch 3;',
    'count-mismatch',
    'all',
    '(12 dc, 4 ch-2 sps)',
  ),
  plant('scarf', 'sc in next ch-1 sp; rep', '‹sc in next ch-3 sp›; rep', 'no-such-place', 'all'),
  plant(
    'vest',
    'sts, turn, leaving rem sts unworked. ({{strap}} hdc)',
    'sts, turn. ({{strap}} hdc)',
    'stitches-left',
    'all',
    'Ch 1, hdc in next {{strap}} sts, turn.',
  ),
  plant(
    'slippers',
    'sc in next 16 sts, turn, leave rem sts unworked.',
    'sc in next 16 sts, turn.',
    'stitches-left',
    'all',
    'Ch 1, sc in next 16 sts, turn.',
  ),
  plant(
    'vest',
    'leaving rem {{under}} sts\nunworked',
    'leaving rem {{under + 1}} sts\nunworked',
    'left-otherwise',
    'all',
    'Sl st in first {{under}} sts, ch 1, hdc in next {{upper}} sts, turn, leaving rem {{under + 1}} sts\nunworked.',
  ),
]

/** Words that can't be read, and stitches of other terms. */
const reading: readonly Planted[] = [
  plant('vest', 'hdc in BLO of each st across', 'hdc ‹in blurp of each st across›', 'row-unread', null),
  plant('scarf', 'fan in next st, sk next 3 sts', '‹fann in next st›, sk next 3 sts', 'row-unread', null),
  plant(
    'blanket',
    'Dc in 2nd ch from hook and in each ch across',
    '‹Sc› in 2nd ch from hook and in each ch across',
    'word-of-other-terms',
    null,
  ),
  plant('jelly', 'Inc in each st around', '‹Ink in each st around›', 'row-unread', null),
  plant('scarf', '7 dc in same st', 'a handful of loops', 'special-unread', null, '**Fan (fan):** a handful of loops.'),
  plant(
    'scarf',
    '- **V-stitch (V-st):** (dc, ch 1, dc) in same st.\n',
    '',
    'special-undefined',
    null,
    'V-st in next sc',
  ),
]

/** Lists with too few or too many numbers. */
const lists: readonly Planted[] = [
  plant('mitts', 'sc in next 15 (17, 19) sts, ch 2', 'sc in next ‹15 (17)› sts, ch 2', 'size-list-length', null),
  plant('mitts', '[37 (41, 45)]', '[‹37 (41, 45, 49)›]', 'size-list-length', null),
  plant('jelly', 'Ch 21 (31)', 'Ch ‹21 (31, 41)›', 'size-list-length', null),
  plant('hat', 'Rnds 2–16 (19, 21)', 'Rnds 2–‹16 (19, 21, 23)›', 'size-list-length', null),
  plant('vest', '[5, 6, 8, 10]', '‹[5, 6, 8]›', 'list-length', null),
  plant('scarf', '[20, 30] cm', '‹[20, 30, 40]› cm', 'list-length', null),
]

/** Values and yarn that fall where they should rise, and needs that do not hold. */
const rising: readonly Planted[] = [
  plant('scarf', '[20, 30] cm', '[30, 20] cm', 'need-failed', ['Wide'], 'sts rises'),
  plant(
    'vest',
    'strap       = [10, 11, 11, 12]',
    'strap       = [10, 11, 11, 21]',
    'need-failed',
    ['XL'],
    'neck >= 16',
  ),
  plant(
    'vest',
    'notions: [yarn needle, stitch markers]',
    'finish: [{fringe: {length: 60 cm, strands: [300, 30, 30, 30]}}]',
    'yarn-falls',
    ['M'],
    'main',
  ),
]

/** The draft's own list of abbreviations. */
const abbreviations: readonly Planted[] = [
  plant('motif', '- dc: double crochet\n', '', 'abbreviation-unlisted', null, '2 dc in ring'),
  plant('motif', '- sp: space', '- sp: space\n- ‹tr›: treble crochet', 'abbreviation-unused', null),
  plant('blanket', '| dc | double crochet |', '| ‹dc› | single crochet |', 'abbreviation-of-other-terms', null),
  plant('blanket', '| tr2tog | two trebles together |\n', '', 'abbreviation-unlisted', null, 'tr2tog'),
]

/** Numbers of rows, their sides, and rows that go back to others. */
const labels: readonly Planted[] = [
  plant(
    'mitts',
    'Rnd 15: Ch 1, sc in each st around, join with sl st in first sc. [35 (39, 43)]\n\nRnd 16:',
    '‹Rnd 16:›',
    'row-number-gap',
    null,
  ),
  plant('mitts', 'Rnd 22:', '‹Rnd 21:›', 'row-label-twice', null),
  plant('vest', 'Rows 2–6:', '‹Rows 3–6:›', 'row-number-gap', null),
  plant('jelly', 'Rnd 14 (17):', '‹Rnd 15 (18):›', 'row-number-gap', null),
  plant('vest', 'Rows 2–6:', '‹Rows 6–2:›', 'range-backwards', null),
  plant('blanket', 'Row 1 (RS): Dc in', '‹Row 2 (RS):› Dc in', 'first-row-number', null),
  plant('scarf', 'Rep Rows 3 and 4.', '‹Rep Rows 3 and 14.›', 'unknown-row-reference', null),
  plant('blanket', 'Rep Row 2.', '‹Rep Row 12.›', 'unknown-row-reference', null),
  plant('blanket', 'Rep Row 2.', '‹Rep Rows 2 and 2.›', 'row-named-twice', null),
  plant('blanket', 'Rep Row 2.', '‹Rep Row 1.›', 'repeats-foundation-row', null),
  plant('vest', 'Row {{body_rows + 1}} (RS):', '‹Row {{body_rows + 1}} (WS):›', 'side-out-of-step', null),
  plant('blanket', 'Row 2:', '‹Row 2 (RS):›', 'side-out-of-step', null),
  plant('hat', 'Rnd 19 (22, 24):', '‹Rnd 19 (22, 24) (WS):›', 'side-out-of-step', null),
]

/** Numbers that their own words, or rows like theirs, contradict. */
const words: readonly Planted[] = [
  plant('mitts', 'Rnd 13: Ch 1', 'Rnd 13: ‹Ch 2›', 'opening-unlike', null),
  plant('scarf', 'Ch 3 (counts as dc)', '‹Ch 3 (counts as dc and ch 1)›', 'chain-sum', null),
  plant('scarf', 'sc in top of beg ch-3', 'sc in ‹top of beg ch-4›', 'chain-named', null),
  plant('vest', '2nd ch from hook', '‹2rd› ch from hook', 'ordinal-ending', null),
  plant('motif', '(36 dc, 8\nch-1 sps, 4 ch-2 sps)', '‹(36 dc, 8\nch-1 sps, 8 ch-1 sps)›', 'kind-counted-twice', null),
]

/** Formulas and facts. */
const numbers: readonly Planted[] = [
  plant('vest', 'hdc in next {{upper}} sts', 'hdc in next {{‹uper›}} sts', 'name-unknown', null),
  plant('vest', 'bust") + ease) / 2) as even ', 'bust") + ease) / 2) ', 'count-not-whole', 'all', 'half + 1'),
  plant('vest', '= 8 cm', '= 8', 'kinds-mix', null, '(body("bust") + ease)'),
  plant('scarf', 'width(sts)', 'width(‹across›)', 'kind-wanted', null),
  plant('vest', '36 cm', '36 ‹cn›', 'unknown-unit', null),
  plant('vest', 'neck        = yoke', 'neck        = neck + yoke', 'name-circle', null, 'neck'),
  plant('vest', 'skill: intermediate', 'skill: ‹hard›', 'fact-wrong', null),
  plant('vest', 'notions:', '‹notion›:', 'key-unknown', null),
  plant(
    'hat',
    'fits: {table: head, sizes: [Child, Woman,',
    'fits: {table: head, sizes: [Child, ‹Womman›,',
    'body-column-unknown',
    null,
  ),
  plant('mitts', 'weight: 5 g', 'weight: ‹5 cm›', 'measure-unreadable', null),
  plant('vest', 'finished: {Bust: bust_made, Length: length_made}\n', '', 'section-missing', null, '2026-03-20'),
  plant(
    'hat',
    'yarn: [{as: main, category: 4, skein: {weight: 100 g, length: 190 m}}]\n',
    '',
    'section-missing',
    null,
    '2026-01-16',
  ),
]

/** What may hurt a child, and what page and print-out can't show. */
const cautions: readonly Planted[] = [
  plant('blanket', 'sizes: [Lap, Bed]', 'sizes: [Pram, Cot]', 'baby-cover', ['Pram', 'Cot'], 'Estuary Blanket'),
  plant(
    'hat',
    'Fasten off, and draw',
    'Sew a ‹tie› to each side, under the chin. Fasten off, and draw',
    'child-hat-ties',
    ['Child'],
  ),
  plant('jelly', 'stuff the bell', 'sew on two ‹buttons› as eyes, stuff the bell', 'toy-small-parts', 'all'),
  plant('vest', 'Sew the shoulders', '![The vest](‹./vest.jpg›)\n\nSew the shoulders', 'picture-missing', null),
]

export const plantedFaults: readonly Planted[] = [
  ...counts,
  ...repeats,
  ...fabric,
  ...reading,
  ...lists,
  ...rising,
  ...abbreviations,
  ...labels,
  ...words,
  ...numbers,
  ...cautions,
]
