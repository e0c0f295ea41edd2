import { dirname } from 'node:path'
import ts from 'typescript'

/**
 * Holds structured data against schema.org's vocabulary, release by release in the types of the package `schema-dts`: a property that a
 * type has not, or a value that a property does not take, is a fault. Gives the compiler's own words.
 */
export function vocabularyFaults(
  blocks: readonly { readonly type: string; readonly json: string }[],
): readonly string[] {
  const types = [...new Set(blocks.map(({ type }) => type))]
  const lines = blocks.map(({ type, json }, index) => `export const block${index}: WithContext<${type}> = ${json}`)
  const text = [`import type { ${[...types, 'WithContext'].join(', ')} } from 'schema-dts'`, ...lines].join('\n')
  const name = `${dirname(import.meta.dirname)}/announce/blocks.ts`
  const options: ts.CompilerOptions = {
    strict: true,
    noEmit: true,
    skipLibCheck: true,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    types: [],
  }
  const host = ts.createCompilerHost(options)
  const { getSourceFile, fileExists } = host
  host.getSourceFile = (file, ...rest) =>
    file === name ? ts.createSourceFile(file, text, ts.ScriptTarget.ESNext) : getSourceFile(file, ...rest)
  host.fileExists = (file) => file === name || fileExists(file)
  const program = ts.createProgram([name], options, host)
  return ts.getPreEmitDiagnostics(program).map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'))
}
