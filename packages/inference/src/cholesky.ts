/**
 * Solves A x = b for several b, A symmetric and positive definite, by Cholesky factors.
 *
 * @param matrix      n x n, row after row; overwritten by its factor
 * @param rightSides  each of length n; overwritten by the answers
 */
export function solve(matrix: Float64Array, n: number, rightSides: readonly Float64Array[]): void {
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j]
      for (let k = 0; k < j; k++) sum -= matrix[i * n + k] * matrix[j * n + k]
      if (i === j && !(sum > 0)) throw new Error(`Row ${i} of a covariance is not positive: ${sum}.`)
      matrix[i * n + j] = i === j ? Math.sqrt(sum) : sum / matrix[j * n + j]
    }
  for (const x of rightSides) {
    for (let i = 0; i < n; i++) {
      for (let k = 0; k < i; k++) x[i] -= matrix[i * n + k] * x[k]
      x[i] /= matrix[i * n + i]
    }
    for (let i = n - 1; i >= 0; i--) {
      for (let k = i + 1; k < n; k++) x[i] -= matrix[k * n + i] * x[k]
      x[i] /= matrix[i * n + i]
    }
  }
}
