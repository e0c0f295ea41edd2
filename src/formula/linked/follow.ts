import Fraction from 'fraction.js'
import { toBase } from '../../measure/index.ts'
import { evaluateCondition } from '../condition.ts'
import { evaluateGrid } from '../evaluate.ts'
import { nameGiven } from '../functions.ts'
import { sizeByName } from '../scope.ts'
import type { BinaryNode, CallNode, Expression, Grid, RoundNode } from '../tree.ts'
import { addForms, extreme, type Form, fixed, fixedValue, negateForm, onlySum, plain, scaleForm } from './form.ts'
import { add, constant, scale, unknown } from './linear.ts'
import type { Cell, Survey } from './survey.ts'
import { given, isLinked, lose } from './survey.ts'

/** Follows a checked formula to the linked counts in it, for one size. */
export function follow(node: Expression, size: number, survey: Survey): Cell {
  if (!isLinked(node, survey)) return followGiven(node, size, survey)
  switch (node.kind) {
    case 'name':
      return followName(node.name, size, survey)
    case 'withUnit':
      // What a percentage is taken of is not known here, so it must be a number of its own.
      if (node.unit === '%') return lose(node, 'other', survey)
      return mapCell(follow(node.operand, size, survey), (form) => scaleForm(form, toBase(new Fraction(1), node.unit)))
    case 'negate':
      return mapCell(follow(node.operand, size, survey), negateForm)
    case 'binary':
      return followBinary(node, size, survey)
    case 'call':
      return followCall(node, size, survey)
    case 'round':
      return followRound(node, size, survey)
    default:
      return lose(node, 'other', survey)
  }
}

function followGiven(node: Expression, size: number, survey: Survey): Cell {
  const value = given(node, survey)
  if (value === null) return 'lost'
  const cell = value.bySize[size] ?? null
  return cell === null ? 'none' : fixed(cell)
}

function followName(name: string, size: number, survey: Survey): Cell {
  const id = survey.counts.get(name)?.[size]
  if (id !== undefined) return id === null ? 'none' : plain(unknown(id))
  const key = `${size} ${name}`
  const before = survey.followed.get(key)
  if (before !== undefined) return before
  const formula = survey.formulas.get(name)
  const cell = formula === undefined ? 'lost' : follow(formula, size, survey)
  survey.followed.set(key, cell)
  return cell
}

function mapCell(cell: Cell, work: (form: Form) => Cell): Cell {
  return typeof cell === 'string' ? cell : work(cell)
}

/** Works on several cells: one that is lost loses the result, one that does not apply takes it away. */
function joinCells(cells: readonly Cell[], work: (forms: readonly Form[]) => Cell): Cell {
  if (cells.includes('lost')) return 'lost'
  const forms = cells.flatMap((cell) => (typeof cell === 'string' ? [] : [cell]))
  return forms.length < cells.length ? 'none' : work(forms)
}

function followBinary(node: BinaryNode, size: number, survey: Survey): Cell {
  const cells = [follow(node.left, size, survey), follow(node.right, size, survey)]
  return joinCells(cells, ([left, right]) => {
    if (left === undefined || right === undefined) return 'lost'
    if (node.operator === '*') return product(left, right) ?? lose(node, 'product', survey)
    if (node.operator === '/') return quotient(left, right) ?? lose(node.right, 'quotient', survey)
    const share = shareAfter(node.right, right, survey)
    if (share !== null) return scaleForm(left, node.operator === '-' ? share.neg().add(1) : share.add(1))
    const sum = addForms(left, node.operator === '-' ? negateForm(right) : right)
    return sum ?? lose(node, 'extremes', survey)
  })
}

/** A percentage that is taken of what stands before it; null for anything else. */
function shareAfter(node: Expression, form: Form, survey: Survey): Fraction | null {
  return !isLinked(node, survey) && given(node, survey)?.kind === 'share' ? fixedValue(form) : null
}

function product(left: Form, right: Form): Cell | null {
  const [a, b] = [fixedValue(left), fixedValue(right)]
  if (b !== null) return scaleForm(left, b)
  return a === null ? null : scaleForm(right, a)
}

/** A division by zero is reported when the formula is calculated. */
function quotient(left: Form, right: Form): Cell | null {
  const by = fixedValue(right)
  if (by === null) return null
  return by.n === 0n ? 'lost' : scaleForm(left, by.inverse())
}

function followCall(node: CallNode, size: number, survey: Survey): Cell {
  const [first] = node.arguments
  const cells = () => node.arguments.map((argument) => follow(argument, size, survey))
  const largest = (forms: readonly Form[], takes: Form['takes']) =>
    extreme(forms, takes) ?? lose(node, 'extremes', survey)
  switch (node.name) {
    case 'stitches':
    case 'rows':
    case 'width':
    case 'height':
      return first === undefined ? 'lost' : followGauge(node, follow(first, size, survey), survey)
    case 'repeats':
    case 'repeats_width':
      return first === undefined ? 'lost' : followRepeat(node, follow(first, size, survey), survey)
    case 'min':
    case 'max':
      return joinCells(cells(), (forms) => largest(forms, node.name === 'min' ? 'min' : 'max'))
    case 'abs':
      return joinCells(cells(), (forms) => largest([...forms, ...forms.map(negateForm)], 'max'))
    case 'sum':
      return followSum(node, size, survey)
    case 'at':
      return followAt(node, survey)
    case 'if':
      return followChoice(node, size, survey)
    default:
      return lose(node, 'other', survey)
  }
}

function followGauge(node: CallNode, cell: Cell, survey: Survey): Cell {
  const found = survey.scope.environment.gauge(nameGiven(node.arguments[1]))
  const what = node.name === 'stitches' || node.name === 'width' ? 'stitches' : 'rows'
  const perCentimetre = found.kind === 'found' ? found.gauge[what] : null
  if (perCentimetre === null) return 'lost'
  const counts = node.name === 'stitches' || node.name === 'rows'
  return mapCell(cell, (form) => scaleForm(form, counts ? perCentimetre : perCentimetre.inverse()))
}

function followRepeat(node: CallNode, cell: Cell, survey: Survey): Cell {
  const found = survey.scope.environment.repeat(nameGiven(node.arguments[1]) ?? '')
  const across = found.kind === 'found' ? found.across : null
  if (across === null) return 'lost'
  return mapCell(cell, (form) => scaleForm(form, node.name === 'repeats' ? across : across.inverse()))
}

/** As `sum` is calculated: arguments size by size, a list item by item, one value alone across all sizes. */
function followSum(node: CallNode, size: number, survey: Survey): Cell {
  const [only, ...others] = node.arguments
  if (only === undefined) return 'lost'
  if (others.length > 0 || only.kind === 'list') {
    const terms = only.kind === 'list' && others.length === 0 ? only.items : node.arguments
    const cells = terms.map((term) => follow(term, size, survey))
    return joinCells(cells, (forms) => total(forms) ?? lose(node, 'extremes', survey))
  }
  const across = survey.scope.environment.sizes.map((_, each) => follow(only, each, survey))
  if (across.includes('lost')) return 'lost'
  const forms = across.flatMap((cell) => (typeof cell === 'string' ? [] : [cell]))
  return total(forms) ?? lose(node, 'extremes', survey)
}

function total(forms: readonly Form[]): Form | null {
  return forms.reduce<Form | null>((sum, form) => sum && addForms(sum, form), fixed(new Fraction(0)))
}

function followAt(node: CallNode, survey: Survey): Cell {
  const [size, argument] = node.arguments
  if (size?.kind !== 'text' || argument === undefined) return 'lost'
  return follow(argument, sizeByName(survey.scope.environment, size.text), survey)
}

function followChoice(node: CallNode, size: number, survey: Survey): Cell {
  const [condition, yes, no] = node.arguments
  if (condition === undefined || yes === undefined || no === undefined) return 'lost'
  if (isLinked(condition, survey)) return lose(node, 'choice', survey)
  const taken = evaluateCondition(condition, survey.scope)?.bySize[size]
  if (taken === undefined) return 'lost'
  return taken === null ? 'none' : follow(taken ? yes : no, size, survey)
}

/** The rounded count, as a whole number of steps and what is added: `6 × q + 1`. */
function followRound(node: RoundNode, size: number, survey: Survey): Cell {
  return joinCells([follow(node.operand, size, survey)], ([form]) => {
    const sum = form === undefined ? null : onlySum(form)
    if (sum === null) return lose(node, 'extremes', survey)
    const steps = stepsOf(node.to, size, survey)
    if (typeof steps === 'string') return steps === 'linked' ? lose(node, 'other', survey) : steps
    const base = scale(add(sum, constant(steps.plus.neg())), steps.of.inverse())
    const id = survey.unknowns.push({ kind: 'quotient', base, direction: node.direction }) - 1
    return plain(add(scale(unknown(id), steps.of), constant(steps.plus)))
  })
}

interface Steps {
  /** Whole, above 0. */
  readonly of: Fraction
  readonly plus: Fraction
}

/** The steps of a grid for one size; `linked` when they depend on linked counts themselves. */
export function stepsOf(grid: Grid, size: number, survey: Survey): Steps | 'none' | 'lost' | 'linked' {
  if (grid.kind === 'multiple') {
    const parts = grid.plus === null ? [grid.of] : [grid.of, grid.plus]
    if (parts.some((part) => isLinked(part, survey))) return 'linked'
  }
  const steps = evaluateGrid(grid, survey.scope)
  if (steps === null) return 'lost'
  const of = steps.of[size] ?? null
  const plus = steps.plus[size] ?? null
  return of === null || plus === null ? 'none' : { of, plus }
}
