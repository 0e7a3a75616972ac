import type {SiteBuild} from '../site-data.ts'

/** The text of a value by its path: as the file wrote it, or as it was assumed; undefined where it is neither. */
export function said({build, plan}: Pick<SiteBuild, 'build' | 'plan'>, path: string): string | undefined {
  let value: unknown = build.values
  for (const key of path.split('.')) value = (value as Record<string, unknown> | undefined)?.[key]
  const text = (value as {text?: unknown} | undefined)?.text
  return typeof text === 'string' ? text : plan.assumptions.find((assumed) => assumed.path === path)?.value
}
