import type { Point } from '../path.ts'

/**
 * The plane of a chart, in chain stitches, upwards. A place is so far along a row, in the direction in which right-side
 * rounds are worked, and so far up: above the lower edge, or from the middle.
 */
export interface Frame {
  readonly place: (along: number, up: number, cornered: boolean) => Point
  /** How long one step along is, so far up. */
  readonly stretch: (up: number, cornered: boolean) => number
  /** How far along one comes round again; null for rows. */
  readonly turn: number | null
}

export const flatFrame: Frame = {
  place: (along, up) => ({ x: along, y: up }),
  stretch: () => 1,
  turn: null,
}

/** Rounds go counter-clockwise from the top. */
function circleFrame(): Frame {
  return {
    place: (along, up) => ({ x: up * Math.cos(along + Math.PI / 2), y: up * Math.sin(along + Math.PI / 2) }),
    stretch: (up) => Math.max(up, 0.1),
    turn: 2 * Math.PI,
  }
}

/** One step along is one side: corners lie at whole numbers. Rounds without corners are circles. */
function polygonFrame(corners: number): Frame {
  const sector = (2 * Math.PI) / corners
  // On a level side; the first corner is the one nearest to the upper right.
  const level = -Math.PI / 2 + sector / 2
  const first = level + sector * Math.round((Math.PI / 4 - level) / sector)
  const around = (along: number, radius: number): Point => ({
    x: radius * Math.cos(first + along * sector),
    y: radius * Math.sin(first + along * sector),
  })
  return {
    place: (along, up, cornered) => {
      if (!cornered) return around(along, up)
      const side = Math.floor(along)
      const outer = up / Math.cos(sector / 2)
      const [from, to] = [around(side, outer), around(side + 1, outer)]
      const part = along - side
      return { x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part }
    },
    stretch: (up, cornered) => Math.max(up, 0.1) * (cornered ? 2 * Math.tan(sector / 2) : sector),
    turn: corners,
  }
}

/** Rounds around a middle: with so many corners, or 0 for a circle. */
export function roundFrame(corners: number): Frame {
  return corners === 0 ? circleFrame() : polygonFrame(corners)
}
