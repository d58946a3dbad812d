/* Matrices in a pattern of columns, factored by KLU (Davis & Palamadai Natarajan 2010, ACM TOMS 37:36) in
   minimum-degree order; the order of pivots is kept while it is good. */
#include <klu.h>

typedef struct { klu_common common; klu_symbolic* order; klu_numeric* factors; } solver;
static long factorizations;

static void factor(solver* s, int* starts, int* of_row, double* values) {
  if (!s->order) {
    klu_defaults(&s->common);
    s->common.ordering = 0;
    s->order = klu_analyze(count, starts, of_row, &s->common);
  }
  factorizations++;
  if (s->factors && klu_refactor(starts, of_row, values, s->order, s->factors, &s->common) &&
      klu_rcond(s->order, s->factors, &s->common) && s->common.rcond > 1e-12) return;
  if (s->factors) klu_free_numeric(&s->factors, &s->common);
  s->factors = klu_factor(starts, of_row, values, s->order, &s->common);
}
static int solve(solver* s, double* right) {
  return s->factors && klu_solve(s->order, s->factors, count, 1, right, &s->common);
}
