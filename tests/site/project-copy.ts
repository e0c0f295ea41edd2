import { spawnSync } from 'node:child_process'
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

/** Builds as a person would at a terminal: what the test runner has set for itself must not reach the site. */
export function build(root: string, environment: Readonly<Record<string, string>> = {}) {
  const { PATH, HOME } = process.env
  return spawnSync(process.execPath, ['src/cli/main.ts', 'build'], {
    cwd: root,
    encoding: 'utf8',
    env: { PATH, HOME, ASTRO_TELEMETRY_DISABLED: '1', ...environment },
  })
}
