/**
 * Places on a line, each as near as can be to where it would be (least squares), in their order and at least so far apart:
 * the pool-adjacent-violators method (Ayer and others, 1955).
 *
 * @param wanted where each would be
 * @param gaps least distance of each from the one before it; the first is not used
 */
export function spaced(wanted: readonly number[], gaps: readonly number[]): readonly number[] {
  const pools: { sum: number; count: number }[] = []
  let reach = 0
  const reaches = wanted.map((place, at) => {
    reach += at === 0 ? 0 : (gaps[at] ?? 0)
    pools.push({ sum: place - reach, count: 1 })
    pool(pools)
    return reach
  })
  const means = pools.flatMap(({ sum, count }) => new Array<number>(count).fill(sum / count))
  return means.map((mean, at) => mean + (reaches[at] ?? 0))
}

/** Joins the last pools as long as one would come before the one before it. */
function pool(pools: { sum: number; count: number }[]): void {
  for (;;) {
    const [before, last] = [pools.at(-2), pools.at(-1)]
    if (before === undefined || last === undefined || before.sum / before.count <= last.sum / last.count) return
    before.sum += last.sum
    before.count += last.count
    pools.pop()
  }
}

/** Fills in what is not known, evenly between known neighbours; a step of `step` beyond the first and last of them. */
export function filled(places: readonly (number | null)[], step: number): readonly number[] {
  const known = places.flatMap((place, at) => (place === null ? [] : [{ place, at }]))
  return places.map((place, at) => {
    if (place !== null) return place
    const before = known.findLast((each) => each.at < at)
    const after = known.find((each) => each.at > at)
    if (before === undefined) return after === undefined ? at * step : after.place - (after.at - at) * step
    if (after === undefined) return before.place + (at - before.at) * step
    return before.place + ((after.place - before.place) * (at - before.at)) / (after.at - before.at)
  })
}
