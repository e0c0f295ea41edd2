import { cpSync, mkdtempSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'

export const project = resolve(import.meta.dirname, '../..')

/** A folder with the project's packages and nothing else. */
export function emptySite(name: string): string {
  const root = mkdtempSync(join(tmpdir(), `${name}-`))
  symlinkSync(join(project, 'node_modules'), join(root, 'node_modules'))
  cpSync(join(project, 'package.json'), join(root, 'package.json'))
  return root
}

/** A copy of the project that can be built by itself; `content` says what of the content comes along. */
export function copyProject(name: string, content: readonly string[]): string {
  const root = emptySite(name)
  for (const part of ['src', 'plugins', 'public', 'astro.config.mjs', 'tsconfig.json', ...content]) {
    cpSync(join(project, part), join(root, part), { recursive: true })
  }
  return root
}
