import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { HtmlValidate, StaticConfigLoader } from 'html-validate'
import { expect, test } from 'vitest'
import { everyPage, siteFolder } from '../browser/site.ts'

const validator = new HtmlValidate(
  new StaticConfigLoader({
    root: true,
    extends: ['html-validate:standard', 'html-validate:a11y', 'html-validate:document'],
    rules: {
      // A list without marks is announced as a list in Safari only when its role is said.
      'no-redundant-role': 'off',
      // Everything comes from the site itself.
      'require-sri': ['error', { target: 'crossorigin' }],
    },
  }),
)

test.each(['/404.html', ...everyPage])('%s is sound HTML', async (path) => {
  const file = path.endsWith('/') ? `${path}index.html` : path
  const { results } = await validator.validateString(readFileSync(join(siteFolder, file), 'utf8'), path)
  const told = results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line, column }) => `${line}:${column} ${ruleId}: ${message}`),
  )
  expect(told).toEqual([])
})
