/* Rosenbrock methods with the derivatives of the declarations: RODAS3 (Sandu et al. 1997, Atmos Environ 31:3459,
   doi:10.1016/S1352-2310(97)83212-8) wants all of them; ROS34PW2 (Rang & Angermann 2005, BIT 45:761,
   doi:10.1007/s10543-005-0035-y) keeps its order with any matrix, so that those by shared sums may be left out.
   Coefficients from memory; that they are right is seen in the order that is measured. */
typedef struct { double gamma, alpha[4][4], c[4][4], m[4], e[4]; int fresh[4], made; } tableau;

static tableau rodas3_of = {
  .gamma = 0.5,
  .alpha = {{0}, {0}, {2}, {2, 0, 1}},
  .c = {{0}, {4}, {1, -1}, {1, -1, -8.0 / 3}},
  .m = {2, 0, 1, 1},
  .e = {0, 0, 0, 1},
  .fresh = {1, 0, 1, 1},
  .made = 1,
};

/* In the form in which no product with the Jacobian is needed: increments U = Gamma K. */
static void make_ros34pw2(tableau* t) {
  const double g = 4.3586652150845900e-01;
  const double alpha[4][4] = {{0}, {8.7173304301691801e-01}, {8.4457060015369423e-01, -1.1299064236484185e-01}, {0, 0, 1}};
  const double gamma[4][4] = {{g}, {-8.7173304301691801e-01, g}, {-9.0338057013044082e-01, 5.4180672388095326e-02, g},
    {2.4212380706095346e-01, -1.2232505839045147e+00, 5.4526025533510214e-01, g}};
  const double b[4] = {2.4212380706095346e-01, -1.2232505839045147e+00, 1.5452602553351020e+00, g};
  const double b2[4] = {3.7810903145819369e-01, -9.6042292212423178e-02, 0.5, 2.1793326075422950e-01};
  double inverse[4][4] = {{0}};
  for (int j = 0; j < 4; j++)
    for (int i = j; i < 4; i++) {
      double sum = i == j;
      for (int k = j; k < i; k++) sum -= gamma[i][k] * inverse[k][j];
      inverse[i][j] = sum / g;
    }
  t->gamma = g;
  for (int i = 0; i < 4; i++) {
    t->fresh[i] = 1;
    for (int j = 0; j < 4; j++) {
      t->m[j] += b[i] * inverse[i][j];
      t->e[j] += (b[i] - b2[i]) * inverse[i][j];
      if (j < i) t->c[i][j] = -inverse[i][j];
      for (int k = 0; k < 4; k++) t->alpha[i][j] += alpha[i][k] * inverse[k][j];
    }
  }
  t->made = 1;
}

static double rosenbrock(const tableau* t, const double* y, double h, double* next) {
  static solver with;
  static double *jacobian, *matrix, *f, *stage, *u[4];
  if (!f) {
    jacobian = malloc(nonzeros * sizeof(double)); matrix = malloc(nonzeros * sizeof(double));
    f = vector(); stage = vector();
    for (int i = 0; i < 4; i++) u[i] = vector();
  }
  if (!first_known) { derivatives(y, jacobian); jacobians++; first_known = 1; }
  for (int j = 0; j < count; j++)
    for (int k = column_start[j]; k < column_start[j + 1]; k++)
      matrix[k] = (rows[k] == j ? 1 / (h * t->gamma) : 0) - jacobian[k];
  factor(&with, column_start, rows, matrix);
  for (int s = 0; s < 4; s++) {
    if (t->fresh[s]) {
      for (int i = 0; i < count; i++) {
        stage[i] = y[i];
        for (int k = 0; k < s; k++) stage[i] += t->alpha[s][k] * u[k][i];
      }
      slopes_counted(stage, f);
    }
    for (int i = 0; i < count; i++) {
      u[s][i] = f[i];
      for (int k = 0; k < s; k++) u[s][i] += t->c[s][k] / h * u[k][i];
    }
    if (!solve(&with, u[s])) return INFINITY;
  }
  for (int i = 0; i < count; i++) {
    next[i] = y[i];
    error_of[i] = 0;
    for (int s = 0; s < 4; s++) { next[i] += t->m[s] * u[s][i]; error_of[i] += t->e[s] * u[s][i]; }
  }
  return worst_error(y, next);
}

static double rodas3(const double* y, double h, double* next) { return rosenbrock(&rodas3_of, y, h, next); }
static double ros34pw2(const double* y, double h, double* next) {
  static tableau t;
  if (!t.made) make_ros34pw2(&t);
  return rosenbrock(&t, y, h, next);
}
