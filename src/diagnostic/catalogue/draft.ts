import { entry } from '../entry.ts'

/** Findings about the file and its front matter. */
export const draftFindings = {
  'draft-empty': entry<Record<never, never>>({
    severity: 'error',
    says: () => 'This draft is empty.',
    hint: () => 'Start with a front matter block that gives at least `title` and `sizes`.',
  }),
} as const
