import type { PerSize } from '../measure/value.ts'
import type { Block, RowBlock } from '../pattern/node.ts'
import type { SizeColumns } from './columns.ts'
import type { Setter } from './line.ts'
import type { Look } from './look.ts'
import type { Strip } from './strip.ts'
import type { Tag } from './tag.ts'

export type Strips = readonly Strip[]

/**
 * Where blocks stand, in points from the left edge of the page. Labels, boxes and headings begin at
 * `start`; text has its edge at `text`, so that labels hang in the gutter between the two.
 */
export interface Frame {
  readonly start: number
  readonly text: number
  readonly end: number
}

/** A picture ready to be drawn, with its size in pixels as it will be seen. */
export interface Picture {
  readonly image: PDFKit.Mixins.OpenedImage
  readonly width: number
  readonly height: number
}

/** What sizing a block needs to know. */
export interface Composer extends Setter {
  readonly sizes: readonly string[]
  /** The picture of a source; null where its bytes were not given or are neither PNG nor JPEG. */
  readonly pictureOf: (src: string) => Picture | null
  readonly look: Look
  /** Columns for the numbers of rows, one a size; null where they stand in brackets. */
  readonly columns: SizeColumns | null
  /** How many rows a row of the draft stands for, for each size; a range alone has more than one. */
  readonly timesOf: (block: RowBlock) => PerSize<number>
  readonly frame: Frame
  /** Height of the text area of a page, in points. */
  readonly area: number
  readonly parent: Tag
  /** Level of the heading above. */
  readonly level: number
}

export type SetBlocks = (blocks: readonly Block[], composer: Composer) => Strips
