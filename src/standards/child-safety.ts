/**
 * Published rules and guidance about clothes, toys and covers for children, in our own words. They bind those who sell,
 * differ from country to country and change; what is shown of them sends the reader to the rules of the place.
 */
export interface SafetyRule {
  readonly publisher: string
  readonly document: string
  readonly year: string
  /** `seen`: what is said here was read in an independent copy or summary. Nothing from memory stands here. */
  readonly how: 'seen'
  /** What it covers. */
  readonly about: string
}

export const safetyRules = {
  usCords: {
    publisher: 'US Consumer Product Safety Commission',
    document: '16 CFR 1120.3(b)',
    year: '2011',
    how: 'seen',
    about:
      'children’s upper outerwear: no drawstring in hood or neck, US sizes 2T to 12; at waist and hem, 2T to 16, no more than 3 in outside the channel at its widest, plain ends, sewn down',
  },
  euCords: {
    publisher: 'CEN',
    document: 'EN 14682',
    year: '2014',
    how: 'seen',
    about:
      'clothes up to 14 years: up to 7 no cords at hood and neck, then none with free ends; at the waist free ends up to 14 cm with the garment wide open, fixed in the middle, plain, never at the back. Lengths from a summary of the 2007 edition. Hats, bonnets, gloves, scarves, bibs and shoes are left out',
  },
  euDesign: {
    publisher: 'CEN',
    document: 'CEN/TR 16792',
    year: '2014',
    how: 'seen',
    about: 'safe design of children’s clothes up to 14 years, hats, gloves, scarves and socks among them',
  },
  usSmallParts: {
    publisher: 'US Consumer Product Safety Commission',
    document: '16 CFR 1501',
    year: '1979, amended',
    how: 'seen',
    about: 'toys and other articles for children under three: nothing that comes off may fit a cylinder 1¼ in across',
  },
  euSoftToys: {
    publisher: 'European Union and CEN',
    document: 'Directive 2009/48/EC and EN 71-1',
    year: '2009, 2014',
    how: 'seen',
    about: 'a soft-filled toy with simple features counts as a toy for under three, whatever its label says',
  },
  trims: {
    publisher: 'Australian National Retail Association',
    document: 'Children’s Apparel Product Safety Guidelines',
    year: '2020',
    how: 'seen',
    about: 'buttons, beads, pompoms, tassels and fringe: a pull test and a look at the risk',
  },
  infantSleep: {
    publisher: 'American Academy of Pediatrics',
    document: 'Sleep-Related Infant Deaths: Updated Recommendations',
    year: '2022',
    how: 'seen',
    about: 'first year: no loose covers, pillows or soft toys where an infant sleeps; no hats indoors',
  },
  usNightwear: {
    publisher: 'US Consumer Product Safety Commission',
    document: '16 CFR 1615 and 1616',
    year: 'amended 1996',
    how: 'seen',
    about: 'flammability of children’s sleepwear, US sizes above 9 months to 14',
  },
} as const satisfies Readonly<Record<string, SafetyRule>>

/** What cautions are about; findings go by the same names. */
export type CautionKind =
  | 'child-neck-cord'
  | 'child-hat-ties'
  | 'child-waist-cord'
  | 'child-cord'
  | 'child-small-parts'
  | 'toy-small-parts'
  | 'child-fringe'
  | 'baby-cover'
  | 'baby-hat'
  | 'child-nightwear'

/** A caution for the readers of a pattern. */
export interface CautionText {
  readonly kind: CautionKind
  /** It is for sizes of children younger than this, in months; null where the size tells nothing, as for a toy. */
  readonly untilMonths: number | null
  /** `things` are what the piece carries: `Buttons and pompoms`. */
  readonly says: (things: string) => string
  readonly rules: readonly SafetyRule[]
}

const years = (count: number): number => 12 * count
const { usCords, euCords, euDesign, usSmallParts, euSoftToys, trims, infantSleep, usNightwear } = safetyRules

export const cautionTexts: readonly CautionText[] = [
  {
    kind: 'child-neck-cord',
    untilMonths: years(15),
    says: () =>
      'A cord or tie at the neck or hood can catch and tighten around a child’s neck. American and European rules keep it off young children’s outer clothes. Choose a button, a snap or a snug edge instead, and follow the rules that apply where you live.',
    rules: [usCords, euCords],
  },
  {
    kind: 'child-hat-ties',
    untilMonths: years(15),
    says: () =>
      'Ties under the chin can catch and tighten around a child’s neck. The European rules for cords leave hats and bonnets out, but ask for the same care. Keep ties short and sew them on firmly, take the piece off for sleep, for play and in the car, and follow the rules that apply where you live.',
    rules: [euCords, euDesign],
  },
  {
    kind: 'child-waist-cord',
    untilMonths: years(17),
    says: () =>
      'A cord at the waist or hem of a child’s garment can catch in doors and play equipment. Keep its ends short (American rules: 3 in or 7.6 cm at each end with the garment spread wide; European: 14 cm or 5½ in) and plain, sew it down at the middle, never let it come out at the back, and follow the rules that apply where you live.',
    rules: [usCords, euCords],
  },
  {
    kind: 'child-cord',
    untilMonths: years(15),
    says: () =>
      'Cords and ties on a child’s piece can catch and tighten. Keep them short, sew them down at the middle so that they can’t be pulled out, leave them off at neck and hood, and follow the rules that apply where you live.',
    rules: [usCords, euCords],
  },
  {
    kind: 'child-small-parts',
    untilMonths: years(3),
    says: (things) =>
      `${things} can come off, and a child under three may choke on what comes off. Embroider instead, or leave them off at this age; sew what stays so that it can’t be pulled away, look at it before each use, and follow the rules that apply where you live.`,
    rules: [usSmallParts, euDesign, trims],
  },
  {
    kind: 'toy-small-parts',
    untilMonths: null,
    says: (things) =>
      `${things} can come off, and a soft toy finds its way to babies whatever its label says. For a child under three embroider the features instead; for sale, toys must meet the rules for that age. Follow the rules that apply where you live.`,
    rules: [usSmallParts, euSoftToys],
  },
  {
    kind: 'child-fringe',
    untilMonths: years(7),
    says: (things) =>
      `${things} can wind around small fingers, catch, or be pulled off and swallowed. Leave them off things for babies, keep them short and well knotted for small children, and follow the rules that apply where you live.`,
    rules: [euDesign, trims],
  },
  {
    kind: 'baby-cover',
    untilMonths: years(1),
    says: () =>
      'A crocheted cover is for the time when a baby is awake and watched. Nothing loose belongs where a baby under one year sleeps: keep it out of the cot, and follow the safe-sleep advice and the rules that apply where you live.',
    rules: [infantSleep],
  },
  {
    kind: 'baby-hat',
    untilMonths: years(1),
    says: () =>
      'A baby’s hat is for the cold outdoors. Take it off indoors and for sleep, and follow the safe-sleep advice and the rules that apply where you live.',
    rules: [infantSleep],
  },
  {
    kind: 'child-nightwear',
    untilMonths: years(15),
    says: () =>
      'Nightwear for children must resist fire in many countries, which loose crochet seldom does. Keep this piece for the day unless it meets the rules that apply where you live.',
    rules: [usNightwear],
  },
]
