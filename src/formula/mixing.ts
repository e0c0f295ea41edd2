import type { Span } from '../diagnostic/index.ts'
import { excerpt } from './print.ts'
import type { Scope } from './scope.ts'
import { report } from './scope.ts'
import type { Sort } from './sort.ts'
import { isCount, sortNames } from './sort.ts'
import type { Expression } from './tree.ts'

/** A part of a formula with the sort that has been found for it. */
export interface Part {
  readonly node: Expression
  readonly sort: Sort
}

const sayings: Readonly<Record<string, (left: string, right: string) => string>> = {
  '+': (left, right) => `${left} and ${right} cannot be added`,
  '-': (left, right) => `${right} cannot be taken from ${left}`,
  '*': (left, right) => `${left} cannot be multiplied by ${right}`,
  '/': (left, right) => `${left} cannot be divided by ${right}`,
  ',': (left, right) => `${left} and ${right} cannot stand side by side`,
}

/** Reports two parts that do not go together. `operator` is `,` where they only stand side by side. */
export function reportMix(scope: Scope, operator: string, left: Part, right: Part, at: Span): null {
  const say = sayings[operator] ?? ((a: string, b: string) => `${a} cannot be compared with ${b}`)
  const says = say(named(left), named(right))
  const advice = shareFirst(operator, left, right) ?? wayOut(left, right) ?? wayOut(right, left)
  return report(scope, 'kinds-mix', at, { says, wayOut: advice })
}

function named({ node, sort }: Part): string {
  return `\`${excerpt(node)}\` (${sortNames[sort]})`
}

/** Advice for `5 % + bust`: a percentage is taken of what stands before it. */
function shareFirst(operator: string, left: Part, right: Part): string | null {
  if (left.sort !== 'share' || operator !== '+') return null
  const [share, of] = [excerpt(left.node), excerpt(right.node)]
  return `A percentage comes after what it is taken of: \`${of} + ${share}\`.`
}

/** Advice for a count beside a length; null where any advice would be a guess. */
function wayOut(count: Part, length: Part): string | null {
  if (!isCount(count.sort) || (length.sort !== 'length' && length.sort !== 'mass')) return null
  const unit = length.sort === 'length' ? 'cm' : 'g'
  if (count.node.kind === 'number') return `Give the number its unit: \`${excerpt(count.node)} ${unit}\`.`
  if (length.sort === 'mass') return null
  return `Turn stitches into a length with \`width(${excerpt(count.node)})\` and rows with \`height(${excerpt(count.node)})\`, or the length into a count with \`stitches(${excerpt(length.node)})\` or \`rows(${excerpt(length.node)})\`.`
}

/** Reports an argument of the wrong sort, with the way out where there is one. */
export function reportWanted(scope: Scope, wanted: Sort, given: Part, by: string): null {
  const says = `${by} takes ${sortNames[wanted]}, and ${named(given)} is none`
  return report(scope, 'kind-wanted', given.node.at, { says, wayOut: conversion(wanted, given) })
}

function conversion(wanted: Sort, { node, sort }: Part): string | null {
  const text = excerpt(node)
  if (wanted === 'length' && isCount(sort)) {
    return node.kind === 'number'
      ? `Give the number its unit: \`${text} cm\`.`
      : `Turn stitches into a length with \`width(${text})\`, rows with \`height(${text})\`.`
  }
  if (wanted !== 'count' || sort !== 'length') return null
  return `Turn the length into a count with \`stitches(${text})\` or \`rows(${text})\`.`
}
