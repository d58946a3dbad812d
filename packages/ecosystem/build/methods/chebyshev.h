/* The stabilised methods: RKC2 as in packages/ecosystem/src/integrate/chebyshev.ts, at one rate for all, and ROCK2
   (Abdulle & Medovikov 2001, Numer Math 90:1, doi:10.1007/s002110100292; as recalled). */

/* Fastest decay near a state: power iteration on rates, and no slower than any state empties, with a fifth more. */
static double fastest_decay(const double* y, const double* f0) {
  static double *along, *shifted, *f;
  if (!along) {
    along = vector(); shifted = vector(); f = vector();
    for (int i = 0; i < count; i++) along[i] = (i % 2 ? -0.7 : 1) * absolute[i];
  }
  double emptying = 0;
  for (int i = 0; i < count; i++) f[i] = 0;
  edge_flows(y, flow);
  for (int k = 0; k < edges; k++) {
    const int end = flow[k] > 0 ? edge_from[k] : edge_to[k];
    if (end >= 0) f[end] += fabs(flow[k]);
  }
  for (int i = 0; above_zero && i < count; i++) emptying = fmax(emptying, f[i] / fmax(y[i], 0.01 * absolute[i]));
  double radius = 0;
  for (int iteration = 0; iteration < 40; iteration++) {
    double size = 0;
    for (int i = 0; i < count; i++) size += along[i] * along[i] / (weight(y[i], i) * weight(y[i], i));
    const double scale = 0.01 / sqrt(size);
    for (int i = 0; i < count; i++) shifted[i] = y[i] + scale * along[i];
    slopes_counted(shifted, f);
    size = 0;
    for (int i = 0; i < count; i++) {
      along[i] = f[i] - f0[i];
      size += along[i] * along[i] / (weight(y[i], i) * weight(y[i], i));
    }
    const double next = sqrt(size) / 0.01;
    const int settled = iteration > 1 && fabs(next - radius) <= 0.02 * next;
    radius = next;
    if (settled || !(radius > 0)) break;
  }
  return 1.2 * fmax(radius, emptying);
}

static double decay_found, *first_slope;
static int accepted_since, first_known;

/* Rates at the start of a step, and how fast they decay. */
static void begin_stabilised(const double* y) {
  if (!first_slope) first_slope = vector();
  if (!first_known) slopes_counted(y, first_slope);
  first_known = 1;
  if (accepted_since >= 25 || decay_found == 0 || doubtful) {
    decay_found = fastest_decay(y, first_slope);
    accepted_since = 0;
    doubtful = 0;
  }
}

static double rkc2(const double* y, double h, double* next) {
  static double *last, *before, *f;
  if (!last) { last = vector(); before = vector(); f = vector(); }
  begin_stabilised(y);
  int s = 1 + (int)sqrt(1 + 1.54 * h * decay_found);
  if (s < 2) s = 2;
  if (s > 2000) return INFINITY;
  const double w0 = 1 + 2.0 / 13 / (s * (double)s);
  double t[2001], dt[2001], ddt[2001], b[2001];
  t[0] = 1; dt[0] = ddt[0] = ddt[1] = 0; t[1] = w0; dt[1] = 1;
  for (int j = 2; j <= s; j++) {
    t[j] = 2 * w0 * t[j - 1] - t[j - 2];
    dt[j] = 2 * t[j - 1] + 2 * w0 * dt[j - 1] - dt[j - 2];
    ddt[j] = 4 * dt[j - 1] + 2 * w0 * ddt[j - 1] - ddt[j - 2];
  }
  const double w1 = dt[s] / ddt[s];
  for (int j = 2; j <= s; j++) b[j] = ddt[j] / (dt[j] * dt[j]);
  b[0] = b[1] = b[2];
  for (int i = 0; i < count; i++) { before[i] = 0; last[i] = b[1] * w1 * h * first_slope[i]; }
  for (int j = 2; j <= s; j++) {
    const double mu = 2 * b[j] * w0 / b[j - 1], nu = -b[j] / b[j - 2], mt = 2 * b[j] * w1 / b[j - 1], gt = -(1 - b[j - 1] * t[j - 1]) * mt;
    for (int i = 0; i < count; i++) next[i] = y[i] + last[i];
    slopes_counted(next, f);
    for (int i = 0; i < count; i++) {
      const double change = mu * last[i] + nu * before[i] + h * (mt * f[i] + gt * first_slope[i]);
      before[i] = last[i];
      last[i] = change;
    }
  }
  for (int i = 0; i < count; i++) next[i] = y[i] + last[i];
  slopes_counted(next, f);
  for (int i = 0; i < count; i++) error_of[i] = 0.8 * (y[i] - next[i]) + 0.4 * h * (first_slope[i] + f[i]);
  memcpy(pending_slope, f, count * sizeof(double));
  return worst_error(y, next);
}

/* ROCK2's polynomials are not tabled here but worked out: w P, with P orthogonal for the weight w^2 / sqrt(1 - x^2)
   and the two complex zeros of w chosen so that the order is two and the largest value 0.95. The zeros' place along the
   axis is the one parameter left; 3 / s^2 from the end reaches 0.76 to 0.81 s^2. */
enum { MOST_STAGES = 250 };
typedef struct { double d, a0, a[MOST_STAGES], b[MOST_STAGES], p[MOST_STAGES], sigma, tau; } rock;

/* Value and derivatives of w P at x over those at x = a0 are asked for; P's recurrence is scaled by 2 each degree. */
static void rock_at(const rock* r, int m, double alpha, double beta, double x, double out[3]) {
  double p0 = 0, p1 = 1, d0 = 0, d1 = 0, e0 = 0, e1 = 0;
  for (int k = 0; k < m; k++) {
    const double p2 = 2 * ((x - r->a[k]) * p1 - 2 * r->b[k] * p0), d2 = 2 * (p1 + (x - r->a[k]) * d1 - 2 * r->b[k] * d0),
                 e2 = 2 * (2 * d1 + (x - r->a[k]) * e1 - 2 * r->b[k] * e0);
    p0 = p1; p1 = p2; d0 = d1; d1 = d2; e0 = e1; e1 = e2;
  }
  const double w = (x - alpha) * (x - alpha) + beta * beta, w1 = 2 * (x - alpha);
  out[0] = w * p1; out[1] = w1 * p1 + w * d1; out[2] = 2 * p1 + 2 * w1 * d1 + w * e1;
}

/* How far order two and the largest value are missed by an end a0 = 1 + q0 / s^2 and zeros at beta = q1 / s^2. */
static void rock_off(rock* r, int s, double alpha, const double q[2], double off[2]) {
  const int m = s - 2, n = m + 6;
  const double beta = q[1] / s / s;
  double x[MOST_STAGES + 6], w[MOST_STAGES + 6], p0[MOST_STAGES + 6], p1[MOST_STAGES + 6], before = 1, at[3], end[3], most = 0;
  for (int i = 0; i < n; i++) {
    x[i] = cos((2 * i + 1) * M_PI / (2 * n));
    w[i] = pow((x[i] - alpha) * (x[i] - alpha) + beta * beta, 2);
    p0[i] = 0; p1[i] = 1;
  }
  for (int k = 0; k < m; k++) {
    double norm = 0, mean = 0;
    for (int i = 0; i < n; i++) { norm += w[i] * p1[i] * p1[i]; mean += w[i] * x[i] * p1[i] * p1[i]; }
    r->a[k] = mean / norm;
    r->b[k] = k > 0 ? norm / before / 4 : 0;
    before = norm;
    for (int i = 0; i < n; i++) {
      const double p2 = 2 * ((x[i] - r->a[k]) * p1[i] - 2 * r->b[k] * p0[i]);
      p0[i] = p1[i]; p1[i] = p2;
    }
  }
  r->a0 = 1 + q[0] / s / s;
  rock_at(r, m, alpha, beta, r->a0, end);
  for (int k = 0; k <= 40 * s; k++) {
    rock_at(r, m, alpha, beta, cos(k * M_PI / (40 * s)), at);
    most = fmax(most, fabs(at[0] / end[0]));
  }
  r->d = end[1] / end[0];
  off[0] = end[2] / end[0] / (r->d * r->d) - 1;
  off[1] = most - 0.95;
  const double norm = (r->a0 - alpha) * (r->a0 - alpha) + beta * beta;
  r->sigma = (r->a0 - alpha) / (r->d * norm);
  r->tau = 1 / (r->d * r->d * norm);
}

static const rock* rock_of(int s) {
  static rock* made[MOST_STAGES];
  if (made[s]) return made[s];
  rock* r = made[s] = calloc(1, sizeof(rock));
  const double alpha = 1 - 3.0 / s / s;
  double q[2] = {0.3, 3.4}, off[2], moved[2], by[2][2];
  for (int iteration = 0; iteration < 30; iteration++) {
    rock_off(r, s, alpha, q, off);
    if (fabs(off[0]) + fabs(off[1]) < 1e-10) break;
    for (int k = 0; k < 2; k++) {
      double other[2] = {q[0], q[1]};
      other[k] *= 1 + 1e-6;
      rock_off(r, s, alpha, other, moved);
      for (int i = 0; i < 2; i++) by[i][k] = (moved[i] - off[i]) / (other[k] - q[k]);
    }
    const double det = by[0][0] * by[1][1] - by[0][1] * by[1][0];
    q[0] -= fmax(-0.5 * q[0], fmin(0.5 * q[0], (by[1][1] * off[0] - by[0][1] * off[1]) / det));
    q[1] -= fmax(-0.5 * q[1], fmin(0.5 * q[1], (by[0][0] * off[1] - by[1][0] * off[0]) / det));
  }
  rock_off(r, s, alpha, q, off);
  if (!(fabs(off[0]) + fabs(off[1]) < 1e-7)) fail("no coefficients of ROCK2 for stages", s);
  double p0 = 0, p1 = 1;
  r->p[0] = 1;
  for (int k = 0; k < s - 2; k++) {
    const double p2 = 2 * ((r->a0 - r->a[k]) * p1 - 2 * r->b[k] * p0);
    p0 = p1; p1 = p2;
    r->p[k + 1] = p1;
  }
  return r;
}

static double rock2(const double* y, double h, double* next) {
  static double *g0, *g1, *g2, *f, *f2;
  if (!g0) { g0 = vector(); g1 = vector(); g2 = vector(); f = vector(); f2 = vector(); }
  begin_stabilised(y);
  int s = 1 + (int)sqrt(h * decay_found / 0.76);
  if (s < 3) s = 3;
  if (s >= MOST_STAGES) return INFINITY;
  const rock* r = rock_of(s);
  memcpy(g1, y, count * sizeof(double));
  for (int k = 0; k < s - 2; k++) {
    const double up = 2 * r->p[k] / r->p[k + 1], mu = up / r->d, kappa = up * (r->a0 - r->a[k]), nu = k > 0 ? -4 * r->b[k] * r->p[k - 1] / r->p[k + 1] : 0;
    if (k > 0) slopes_counted(g1, f);
    const double* slope = k > 0 ? f : first_slope;
    for (int i = 0; i < count; i++) {
      const double g = h * mu * slope[i] + kappa * g1[i] + nu * g0[i];
      g0[i] = g1[i];
      g1[i] = g;
    }
  }
  slopes_counted(g1, f);
  for (int i = 0; i < count; i++) g2[i] = g1[i] + h * r->sigma * f[i];
  slopes_counted(g2, f2);
  for (int i = 0; i < count; i++) {
    error_of[i] = h * r->sigma * (1 - r->tau / (r->sigma * r->sigma)) * (f2[i] - f[i]);
    next[i] = g2[i] + h * r->sigma * f2[i] - error_of[i];
  }
  return worst_error(y, next);
}
