/* What all methods share: the norm of the error, and steps that follow it. */
static double relative_tolerance, *error_of, *pending_slope, *flow;
static long evaluations, jacobians, steps, rejected;
static int doubtful;

static double* vector(void) { return calloc(count, sizeof(double)); }
static void slopes_counted(const double* y, double* dy) { evaluations++; slopes(y, dy); }
/* Absolute tolerances are those of the usual relative one, 1e-3, and go with it. */
static double weight(double value, int i) { return absolute[i] * relative_tolerance / 1e-3 + relative_tolerance * fabs(value); }
static double worst_error(const double* y, const double* next) {
  double worst = 0;
  for (int i = 0; i < count; i++) {
    const double error = fabs(error_of[i]) / weight(fmax(fabs(y[i]), fabs(next[i])), i);
    if (!(error <= worst)) worst = error;
  }
  return worst;
}
