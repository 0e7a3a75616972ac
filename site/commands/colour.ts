import type {Severity} from '../../plugins/build-file/problem.ts'

const codes: Record<Severity | 'bold', string> = {
  error: '31',
  fault: '31',
  warning: '33',
  remark: '36',
  bold: '1',
}

/** Colour a word on a terminal that takes colour; elsewhere, or under `NO_COLOR`, leave it as it is. */
export function colour(
  text: string,
  as: Severity | 'bold',
  stream: NodeJS.WriteStream = process.stdout,
): string {
  return stream.isTTY && !process.env.NO_COLOR ? `\u001b[${codes[as]}m${text}\u001b[0m` : text
}
