export { isLinkAddress } from './address.ts'
export { toMdast } from './mdast.ts'
export { type OutlineEntry, outline } from './outline.ts'
export { segmentClass, sizeClass } from './sizes.ts'
