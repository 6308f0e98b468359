/**
 * Solves A x = b for a symmetric, positive definite matrix given row by row, by Cholesky's factors. Overwrites both; `right`
 * then holds x. False where the matrix is not positive definite.
 */
export function solveSymmetric(matrix: Float64Array, right: Float64Array): boolean {
  const size = right.length;
  if (!factor(matrix, size)) return false;
  for (let row = 0; row < size; row += 1) {
    let sum = right[row] ?? 0;
    for (let column = 0; column < row; column += 1) sum -= (matrix[row * size + column] ?? 0) * (right[column] ?? 0);
    right[row] = sum / (matrix[row * size + row] ?? 1);
  }
  for (let row = size - 1; row >= 0; row -= 1) {
    let sum = right[row] ?? 0;
    for (let below = row + 1; below < size; below += 1) sum -= (matrix[below * size + row] ?? 0) * (right[below] ?? 0);
    right[row] = sum / (matrix[row * size + row] ?? 1);
  }
  return true;
}

/** The lower triangle becomes L, so that L Lᵀ is the matrix. */
function factor(matrix: Float64Array, size: number): boolean {
  for (let column = 0; column < size; column += 1) {
    const own = column * size;
    let diagonal = matrix[own + column] ?? 0;
    for (let k = 0; k < column; k += 1) diagonal -= (matrix[own + k] ?? 0) ** 2;
    if (!(diagonal > 1e-14)) return false;
    const root = Math.sqrt(diagonal);
    matrix[own + column] = root;
    for (let row = column + 1; row < size; row += 1) {
      const at = row * size;
      let sum = matrix[at + column] ?? 0;
      for (let k = 0; k < column; k += 1) sum -= (matrix[at + k] ?? 0) * (matrix[own + k] ?? 0);
      matrix[at + column] = sum / root;
    }
  }
  return true;
}
