/* Modified Patankar-Runge-Kutta of second order, MPRK22 (Burchard, Deleersnijder & Meister 2003, Appl Numer Math
   47:1, doi:10.1016/S0168-9274(03)00101-6; as recalled): what leaves a state is weighted by what it will hold over what it
   held, so that it stays above zero, and what enters another is the same amount. */
static int *m_start, *m_rows, *diagonal, *entering, *back;

static int m_place(int row, int column) {
  for (int k = m_start[column]; k < m_start[column + 1]; k++) if (m_rows[k] == row) return k;
  return -1;
}

static void make_patankar(void) {
  char* there = calloc((size_t)count * count, 1);
  for (int i = 0; i < count; i++) there[(size_t)i * count + i] = 1;
  for (int k = 0; k < edges; k++)
    if (edge_from[k] >= 0 && edge_to[k] >= 0)
      there[(size_t)edge_from[k] * count + edge_to[k]] = there[(size_t)edge_to[k] * count + edge_from[k]] = 1;
  m_start = calloc(count + 1, sizeof(int));
  m_rows = malloc((size_t)count * count * sizeof(int));
  for (int j = 0, n = 0; j < count; j++, m_start[j] = n)
    for (int i = 0; i < count; i++) if (there[(size_t)j * count + i]) m_rows[n++] = i;
  free(there);
  diagonal = malloc(count * sizeof(int));
  entering = malloc(edges * sizeof(int));
  back = malloc(edges * sizeof(int));
  for (int i = 0; i < count; i++) diagonal[i] = m_place(i, i);
  for (int k = 0; k < edges; k++) {
    const int inner = edge_from[k] >= 0 && edge_to[k] >= 0;
    entering[k] = inner ? m_place(edge_to[k], edge_from[k]) : -1;
    back[k] = inner ? m_place(edge_from[k], edge_to[k]) : -1;
  }
}

/* What the flows make of y in h where what leaves a state goes with what it comes to over `held`. */
static int patankar_stage(const double* y, const double* f, const double* held, double h, double* next) {
  static solver with;
  static double* m;
  if (!m) m = malloc(m_start[count] * sizeof(double));
  memset(m, 0, m_start[count] * sizeof(double));
  memcpy(next, y, count * sizeof(double));
  for (int i = 0; i < count; i++) m[diagonal[i]] = 1;
  for (int k = 0; k < edges; k++) {
    const int ahead = f[k] >= 0, source = ahead ? edge_from[k] : edge_to[k], target = ahead ? edge_to[k] : edge_from[k];
    const double amount = h * fabs(f[k]);
    if (amount == 0) continue;
    if (source < 0) { if (target >= 0) next[target] += amount; continue; }
    const double share = amount / fmax(held[source], 1e-200);
    m[diagonal[source]] += share;
    if (target >= 0) m[ahead ? entering[k] : back[k]] -= share;
  }
  factor(&with, m_start, m_rows, m);
  return solve(&with, next);
}

static double mprk22(const double* y, double h, double* next) {
  static double *f0, *f1, *first;
  if (!f0) {
    f0 = malloc(edges * sizeof(double)); f1 = malloc(edges * sizeof(double)); first = vector();
    make_patankar();
  }
  if (!first_known) { edge_flows(y, f0); evaluations++; first_known = 1; }
  if (!patankar_stage(y, f0, y, h, first)) return INFINITY;
  edge_flows(first, f1);
  evaluations++;
  for (int k = 0; k < edges; k++) f1[k] = (f0[k] + f1[k]) / 2;
  if (!patankar_stage(y, f1, first, h, next)) return INFINITY;
  for (int i = 0; i < count; i++) error_of[i] = next[i] - first[i];
  return worst_error(y, next);
}
