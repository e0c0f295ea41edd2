import type { Font, FontCollection } from 'fontkit'

/** It reads any bytes, not only Node's. */
declare module 'fontkit' {
  function create(bytes: Uint8Array): Font | FontCollection
}

/** What PDFKit 0.20 documents or accepts and its published types leave out. */
declare global {
  namespace PDFKit {
    interface PDFOutline {
      addItem(title: string, options: { expanded: boolean; top: number }): PDFOutline
    }
    interface PDFStructureElement {
      /** The element's entries are written when it ends. */
      readonly dictionary: PDFKitReference
    }
  }
  namespace PDFKit.Mixins {
    interface PDFImage {
      openImage(bytes: Uint8Array): OpenedImage
      image(image: OpenedImage, x: number, y: number, options: ImageOption): this
    }
    /** `orientation` is the photo's EXIF value; from 5 on, width and height change places when it is drawn. */
    interface OpenedImage {
      readonly width: number
      readonly height: number
      readonly orientation?: number
    }
    interface AnnotationOption {
      structParent?: PDFStructureElement
    }
    interface StructureElementOptions {
      scope?: 'Row' | 'Column'
      /** Left, top, right, bottom in points from the top left corner of the page. */
      bbox?: [number, number, number, number]
      placement?: 'Block'
    }
  }
}
