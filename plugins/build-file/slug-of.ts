/** Name a build by its file: `needle-box.md` and `needle-box/index.md` are both `needle-box`. */
export function slugOf(path: string): string {
  const [file = '', folder = ''] = path.split(/[/\\]/).reverse()
  return file === 'index.md' && folder ? folder : file.replace(/\.md$/, '')
}
