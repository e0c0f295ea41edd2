import type { Sample, WrittenSample } from '../../sample.ts'
import { pair } from '../../sample.ts'

const twenty = ['## Mat', 'Foundation: Ch 21.', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)']

/** Two drafts of a mat of twenty stitches that differ in what follows its first row. */
export function onMat(
  faulty: readonly string[],
  sound: readonly string[],
  parts: Omit<WrittenSample, 'body'> = {},
): Sample {
  return lines([...twenty, ...faulty], [...twenty, ...sound], parts)
}

/** Two drafts of a paragraph a line. */
export function lines(
  faulty: readonly string[],
  sound: readonly string[],
  parts: Omit<WrittenSample, 'body'> = {},
): Sample {
  return pair(faulty.join('\n\n'), sound.join('\n\n'), parts)
}

/** `Row 2: Ch 1, sc in each st across, turn.` */
export function plain(row: number): string {
  return `Row ${row}: Ch 1, sc in each st across, turn. (20 sc)`
}
