import type { Reader } from '../reader.ts'
import { attempt, take, takeAll, takeSpecial, takeStitch } from '../reader.ts'

const manners = [
  'standing',
  'chainless',
  'ch-less',
  'chain-less',
  'no-chain',
  'stacked',
  'starting',
  'beginning',
  'beg',
  'opening',
  'linked',
  'reverse',
  'rev',
  'spike',
  'plain',
  'regular',
  'loose',
]

/**
 * Passes how a stitch is made that uses one place and makes one stitch all the same.
 *
 *     standing dc in any corner     chainless starting dc in first st     beg puff in first st
 *     ^^^^^^^^                      ^^^^^^^^^^^^^^^^^^                    ^^^
 */
export function passManner(reader: Reader): void {
  attempt(reader, (inner) => {
    let passed = takeAll(inner, 'ch', '-', 'less') || takeAll(inner, 'chain', '-', 'less')
    while (take(inner, ...manners)) passed = true
    if (!passed) return null
    const at = inner.at
    const names = takeSpecial(inner) !== null || takeStitch(inner) !== null
    inner.at = at
    return names ? true : null
  })
}
