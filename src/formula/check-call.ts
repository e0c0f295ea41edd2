import type { Span } from '../diagnostic/index.ts'
import { nearestTo } from '../diagnostic/index.ts'
import { check, wantCondition } from './check.ts'
import { checkAlike, reportSize } from './check-list.ts'
import type { FunctionFact, FunctionName } from './functions.ts'
import { factOf, functions, isFunction, nameGiven, parameterAt } from './functions.ts'
import { reportWanted } from './mixing.ts'
import { excerpt } from './print.ts'
import type { Scope } from './scope.ts'
import { report, sizeByName } from './scope.ts'
import type { Sort } from './sort.ts'
import { isCalculable, isCount } from './sort.ts'
import type { CallNode, Expression } from './tree.ts'

export function checkCall(node: CallNode, scope: Scope): Sort | null {
  const { name } = node
  if (!isFunction(name)) return unknownFunction(node, scope)
  const fact = factOf(name)
  if (!countFits(node, fact)) {
    return report(scope, 'function-arguments', node.at, { name, usage: fact.usage, given: node.arguments.length })
  }
  const sort = checkArguments(node, fact, scope)
  if (sort === null || !checkLookup(name, node, scope)) return null
  return fact.result === 'same' ? sort : fact.result
}

function countFits(node: CallNode, fact: FunctionFact): boolean {
  const given = node.arguments.length
  return given >= fact.required && (given === 0 || parameterAt(fact, given - 1) !== null)
}

function unknownFunction(node: CallNode, scope: Scope): null {
  const nearest = nearestTo(node.name, Object.keys(functions))
  const isValue = scope.names.values.has(node.name) || scope.names.unsound.has(node.name)
  return report(scope, 'function-unknown', node.nameAt, { name: node.name, nearest, isValue })
}

/** The common sort of the arguments that must be alike; `none` where there are none of these. */
function checkArguments(node: CallNode, fact: FunctionFact, scope: Scope): Sort | null {
  let sound = true
  const alike: Expression[] = []
  node.arguments.forEach((argument, position) => {
    const parameter = parameterAt(fact, position)
    if (parameter === 'same') alike.push(argument)
    else if (checkArgument(node, argument, parameter, scope) === null) sound = false
  })
  const sort = node.name === 'sum' ? checkSum(alike, scope) : checkAlike(alike, scope)
  if (sort === null || !sound) return null
  const first = alike[0]
  const calculates = node.name !== 'if' && node.name !== 'at'
  if (first === undefined || !calculates || isCalculable(sort)) return sort
  return reportWanted(scope, 'number', { node: first, sort }, `\`${node.name}\``)
}

/** A list in square brackets is summed item by item, so it may have any length there. */
function checkSum(terms: readonly Expression[], scope: Scope): Sort | null {
  const [only] = terms
  return checkAlike(terms.length === 1 && only?.kind === 'list' ? only.items : terms, scope)
}

function checkArgument(node: CallNode, argument: Expression, parameter: string | null, scope: Scope): unknown {
  const by = `\`${node.name}\``
  if (parameter === 'condition') return wantCondition(argument, scope)
  if (parameter === 'choice') return checkChoice(node, argument, scope)
  if (parameter === 'quoted') return argument.kind === 'text' ? 'text' : wantQuotes(node, argument, scope)
  if (parameter === 'swatch') return nameGiven(argument) ?? wantQuotes(node, argument, scope)
  const sort = check(argument, scope)
  if (sort === null || sort === 'none') return sort
  if (parameter === 'length')
    return sort === 'length' ? sort : reportWanted(scope, 'length', { node: argument, sort }, by)
  return isCount(sort) ? sort : reportWanted(scope, 'count', { node: argument, sort }, by)
}

function checkChoice(node: CallNode, argument: Expression, scope: Scope): unknown {
  if (argument.kind !== 'text') return wantQuotes(node, argument, scope)
  const known = isFunction(node.name) ? factOf(node.name).choices : []
  if (known.includes(argument.text)) return 'text'
  const nearest = nearestTo(argument.text, known)
  return report(scope, 'shaping-word', argument.at, { phrase: node.name, word: argument.text, nearest, known })
}

function wantQuotes(node: CallNode, argument: Expression, scope: Scope): null {
  return report(scope, 'name-in-quotes', argument.at, { name: node.name, found: excerpt(argument) })
}

/** What a function looks up must be there: a size, a measure, a gauge. */
function checkLookup(name: FunctionName, node: CallNode, scope: Scope): boolean {
  const [first, second] = node.arguments
  if (name === 'at') return first?.kind === 'text' && checkSize(first.text, first.at, scope)
  if (name === 'body') return first?.kind === 'text' && checkMeasure(first.text, first.at, scope)
  if (name === 'ease') return first?.kind === 'text' && checkFit(first.text, first.at, scope)
  if (name === 'spaced') return checkStitch(node.arguments[2], scope)
  if (name === 'repeats' || name === 'repeats_width') return checkRepeat(second, node, scope)
  if (name === 'stitches' || name === 'width') return checkGauge('stitches', second, node, scope)
  if (name === 'rows' || name === 'height') return checkGauge('rows', second, node, scope)
  return true
}

function checkSize(size: string, at: Span, scope: Scope): boolean {
  return sizeByName(scope.environment, size) !== -1 || reportSize(scope, { size, at }) !== null
}

/** Whether it is a stitch is seen when the row is read; here only that it can be followed by `2tog`. */
function checkStitch(stitch: Expression | undefined, scope: Scope): boolean {
  if (stitch?.kind !== 'text' || /^\p{L}+$/u.test(stitch.text)) return true
  return report(scope, 'shaping-stitch', stitch.at, { found: stitch.text }) !== null
}

function checkMeasure(measure: string, at: Span, scope: Scope): boolean {
  const found = scope.environment.body(measure)
  if (found.kind === 'unknown') {
    const nearest = nearestTo(measure, found.known)
    report(scope, 'body-measure-unknown', at, { measure, nearest, known: found.known })
  }
  if (found.kind === 'no-table') report(scope, 'body-table-missing', at, { measure })
  return found.kind === 'found'
}

function checkFit(fit: string, at: Span, scope: Scope): boolean {
  const found = scope.environment.ease(fit)
  if (found.kind === 'unknown')
    report(scope, 'fit-unknown', at, { fit, nearest: nearestTo(fit, found.known), known: found.known })
  return found.kind === 'found'
}

function checkGauge(what: 'stitches' | 'rows', swatch: Expression | undefined, node: CallNode, scope: Scope): boolean {
  const name = nameGiven(swatch)
  const found = scope.environment.gauge(name)
  if (found.kind === 'found' && found.gauge[what] !== null) return true
  if (found.kind === 'found') {
    const isRepeat = name !== null && scope.environment.repeat(name).kind === 'found'
    report(scope, 'gauge-missing', node.at, { what, swatch: name, by: node.name, isRepeat })
  }
  if (found.kind === 'unknown') reportSwatch(name, swatch?.at ?? node.at, node.name, scope)
  return false
}

function checkRepeat(repeat: Expression | undefined, node: CallNode, scope: Scope): boolean {
  const name = nameGiven(repeat) ?? ''
  const found = scope.environment.repeat(name)
  if (found.kind === 'found' && found.across !== null) return true
  if (found.kind === 'found') report(scope, 'repeat-without-width', repeat?.at ?? node.at, { name, by: node.name })
  if (found.kind === 'unknown') {
    const { known } = found
    report(scope, 'repeat-unknown', repeat?.at ?? node.at, { name, nearest: nearestTo(name, known), known })
  }
  return false
}

function reportSwatch(name: string | null, at: Span, by: string, scope: Scope): null {
  if (name === null) return report(scope, 'swatch-missing', at, { by })
  const known = scope.environment.swatches
  return report(scope, 'swatch-unknown', at, { swatch: name, nearest: nearestTo(name, known), known })
}
