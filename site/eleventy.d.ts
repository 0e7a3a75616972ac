/** The little of Eleventy that this project calls; the package brings no types. */
declare module '@11ty/eleventy' {
  export interface UserConfig {
    setTemplateFormats(formats: string[]): void
    setDataFileSuffixes(suffixes: string[]): void
    setFrontMatterParsingOptions(options: {delimiters: [string, string]}): void
    setUseGitIgnore(use: boolean): void
    setIncludesDirectory(folder: string): void
    setDataDirectory(folder: string): void
    addTemplate(
      path: string,
      template:
        | ((data: never) => string)
        | {data: Record<string, unknown>; render: (data: never) => string | Promise<string>},
    ): void
  }

  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: {quietMode: boolean; configPath: false; config: (config: UserConfig) => void},
    )
    disableLogger(): void
    init(): Promise<void>
    write(): Promise<unknown>
  }
}
