import type { Sample, WrittenSample } from '../../sample.ts'
import { pair } from '../../sample.ts'

/** Two grading blocks with the same text below them, and the same parts beside them. */
export function graded(faulty: string, sound: string, text = '', parts: Omit<WrittenSample, 'body'> = {}): Sample {
  const draft = (lines: string) => `\`\`\`grading\n${lines}\n\`\`\`${text === '' ? '' : `\n\n${text}`}`
  return pair(draft(faulty), draft(sound), parts)
}
