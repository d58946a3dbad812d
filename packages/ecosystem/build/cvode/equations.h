/* A model written to model.h as any solver takes it: what the states inside change by, exact derivatives in a
   pattern of columns, and what events do. Outside accounts are left out: nothing depends on them, and a solver
   tuned for speed would not carry them. `quick` works out once what parameters and settings give, and otherwise
   evaluates the formulas as they are declared. `exact` has all derivatives; without it those by sums that
   processes share (food of grazers, cover of a stand) are left out: they change few steps and cost several times the rest. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include "forms.h"
#include "model.h"

static double settings[SETTINGS], gathered[GATHERED], flows[FLUXES > EVENT_FLUXES ? FLUXES : EVENT_FLUXES];
static double whole[STATES], change_of[STATES];
static double direct[DIRECT + 1], by_sum[BY_SUM + 1], sums[SUMS + 1], inner[INNER + 1];
static int quick, exact, count, row_of[STATES], state_of[STATES];

/* The pattern: columns of sorted rows, and where each derivative is added. */
static int nonzeros, column_start[STATES + 1], *rows;
static int *direct_from, *direct_to;
/* By sum: the states that it moves, the states that it is made of, and where each pair is. */
static int sum_rows[GATHERED], sum_columns[GATHERED], *sum_row[GATHERED], *sum_column[GATHERED], *sum_place[GATHERED];
static int *by_sum_from, *by_sum_to, *sums_column, *inner_column[INNER + 1];
static double *moved[GATHERED], *made_of[GATHERED];

static void fail(const char* what, int flag) { fprintf(stderr, "%s: %d\n", what, flag); exit(1); }

static void scatter(const int* from, const int* to, int n, const double* by, double* y) {
  for (int k = 0; k < n; k++) {
    if (from[k] >= 0) y[from[k]] -= by[k];
    if (to[k] >= 0) y[to[k]] += by[k];
  }
}

static void rates(const double* y) {
  if (quick) rates_quick(y, settings, gathered, flows);
  else rates_all(y, settings, gathered, flows);
}

/* What the states inside change by, of their values in the order of the pattern. */
static void slopes(const double* in, double* out) {
  for (int i = 0; i < count; i++) whole[state_of[i]] = in[i];
  rates(whole);
  memset(change_of, 0, sizeof change_of);
  scatter(flux_from, flux_to, FLUXES, flows, change_of);
  for (int i = 0; i < count; i++) out[i] = change_of[state_of[i]];
}

static int index_in(const int* list, int length, int value) {
  for (int k = 0; k < length; k++) if (list[k] == value) return k;
  return -1;
}
static int place(int row, int column) {
  for (int k = column_start[column]; k < column_start[column + 1]; k++) if (rows[k] == row) return k;
  return -1;
}
static void add_once(int* list, int* length, int value) {
  if (index_in(list, *length, value) < 0) list[(*length)++] = value;
}
static int inside(int state) { return state < 0 ? -1 : row_of[state]; }

static void make_pattern(void) {
  count = 0;
  for (int i = 0; i < STATES; i++) {
    row_of[i] = tolerances[i] > 0 ? count : -1;
    if (tolerances[i] > 0) state_of[count++] = i;
  }
  for (int g = 0; g < GATHERED; g++) {
    sum_row[g] = malloc(STATES * sizeof(int));
    sum_column[g] = malloc(STATES * sizeof(int));
  }
  for (int e = 0; e < SUMS; e++) add_once(sum_column[sum_slot[e]], &sum_columns[sum_slot[e]], inside(sum_state[e]));
  for (int e = 0; e < INNER; e++)
    for (int c = 0; c < sum_columns[inner_by[e]]; c++)
      add_once(sum_column[inner_slot[e]], &sum_columns[inner_slot[e]], sum_column[inner_by[e]][c]);
  for (int e = 0; e < BY_SUM; e++) {
    if (!exact) break;
    const int g = gathered_slot[e], from = inside(flux_from[gathered_flux[e]]), to = inside(flux_to[gathered_flux[e]]);
    if (from >= 0) add_once(sum_row[g], &sum_rows[g], from);
    if (to >= 0) add_once(sum_row[g], &sum_rows[g], to);
  }
  char* there = calloc((size_t)count * count, 1);
#define THERE(row, column) there[(size_t)(column) * count + (row)]
  for (int i = 0; i < count; i++) THERE(i, i) = 1;
  for (int e = 0; e < DIRECT; e++) {
    const int column = inside(direct_state[e]), from = inside(flux_from[direct_flux[e]]), to = inside(flux_to[direct_flux[e]]);
    if (from >= 0) THERE(from, column) = 1;
    if (to >= 0) THERE(to, column) = 1;
  }
  for (int g = 0; g < GATHERED; g++)
    for (int r = 0; r < sum_rows[g]; r++)
      for (int c = 0; c < sum_columns[g]; c++) THERE(sum_row[g][r], sum_column[g][c]) = 1;
  rows = malloc((size_t)count * count * sizeof(int));
  for (int column = 0; column < count; column++) {
    column_start[column] = nonzeros;
    for (int row = 0; row < count; row++) if (THERE(row, column)) rows[nonzeros++] = row;
  }
  column_start[count] = nonzeros;
  free(there);
  direct_from = malloc((DIRECT + 1) * sizeof(int));
  direct_to = malloc((DIRECT + 1) * sizeof(int));
  for (int e = 0; e < DIRECT; e++) {
    const int column = inside(direct_state[e]), from = inside(flux_from[direct_flux[e]]), to = inside(flux_to[direct_flux[e]]);
    direct_from[e] = from < 0 ? -1 : place(from, column);
    direct_to[e] = to < 0 ? -1 : place(to, column);
  }
  by_sum_from = malloc((BY_SUM + 1) * sizeof(int));
  by_sum_to = malloc((BY_SUM + 1) * sizeof(int));
  for (int e = 0; e < BY_SUM; e++) {
    const int g = gathered_slot[e];
    by_sum_from[e] = index_in(sum_row[g], sum_rows[g], inside(flux_from[gathered_flux[e]]));
    by_sum_to[e] = index_in(sum_row[g], sum_rows[g], inside(flux_to[gathered_flux[e]]));
  }
  sums_column = malloc((SUMS + 1) * sizeof(int));
  for (int e = 0; e < SUMS; e++) sums_column[e] = index_in(sum_column[sum_slot[e]], sum_columns[sum_slot[e]], inside(sum_state[e]));
  for (int e = 0; e < INNER; e++) {
    const int g = inner_slot[e], by = inner_by[e];
    inner_column[e] = malloc((sum_columns[by] + 1) * sizeof(int));
    for (int c = 0; c < sum_columns[by]; c++) inner_column[e][c] = index_in(sum_column[g], sum_columns[g], sum_column[by][c]);
  }
  for (int g = 0; g < GATHERED; g++) {
    moved[g] = malloc((sum_rows[g] + 1) * sizeof(double));
    made_of[g] = malloc((sum_columns[g] + 1) * sizeof(double));
    sum_place[g] = malloc((sum_rows[g] * sum_columns[g] + 1) * sizeof(int));
    for (int r = 0; r < sum_rows[g]; r++)
      for (int c = 0; c < sum_columns[g]; c++) sum_place[g][r * sum_columns[g] + c] = place(sum_row[g][r], sum_column[g][c]);
  }
}

/* The derivatives of the last rates, added up into the values of the pattern. */
static void fill(const double* y, double* values) {
  jacobian_all(y, settings, gathered, direct, by_sum, sums, inner);
  memset(values, 0, nonzeros * sizeof(double));
  for (int e = 0; e < DIRECT; e++) {
    if (direct_from[e] >= 0) values[direct_from[e]] -= direct[e];
    if (direct_to[e] >= 0) values[direct_to[e]] += direct[e];
  }
  for (int g = 0; g < GATHERED; g++) {
    memset(moved[g], 0, sum_rows[g] * sizeof(double));
    memset(made_of[g], 0, sum_columns[g] * sizeof(double));
  }
  for (int e = 0; e < BY_SUM; e++) {
    double* of = moved[gathered_slot[e]];
    if (by_sum_from[e] >= 0) of[by_sum_from[e]] -= by_sum[e];
    if (by_sum_to[e] >= 0) of[by_sum_to[e]] += by_sum[e];
  }
  for (int e = 0; e < SUMS; e++) made_of[sum_slot[e]][sums_column[e]] += sums[e];
  for (int e = 0; e < INNER; e++)
    for (int c = 0; c < sum_columns[inner_by[e]]; c++)
      made_of[inner_slot[e]][inner_column[e][c]] += inner[e] * made_of[inner_by[e]][c];
  for (int g = 0; g < GATHERED; g++)
    for (int r = 0; r < sum_rows[g]; r++)
      for (int c = 0; c < sum_columns[g]; c++) values[sum_place[g][r * sum_columns[g] + c]] += moved[g][r] * made_of[g][c];
}

/* Both ways of evaluating against each other, and the derivatives against differences: a wrong derivative would
   only be slow, and nobody would see it. */
static void check_equations(const double* y) {
  static double plain[FLUXES], base[STATES], shifted[STATES], moved_to[STATES];
  rates_all(y, settings, gathered, plain);
  rates_quick(y, settings, gathered, flows);
  for (int k = 0; k < FLUXES; k++)
    if (fabs(flows[k] - plain[k]) > 1e-9 * (fabs(plain[k]) + 1e-6)) fail("quick rate differs from plain one of flow", k);
  double* values = malloc(nonzeros * sizeof(double));
  fill(y, values);
  memset(base, 0, sizeof base);
  scatter(flux_from, flux_to, FLUXES, plain, base);
  memcpy(shifted, y, sizeof shifted);
  int off = 0;
  for (int column = 0; column < count; column++) {
    const int j = state_of[column];
    const double step = 1e-6 * fmax(fabs(y[j]), 1e-2);
    shifted[j] = y[j] + step;
    rates_all(shifted, settings, gathered, flows);
    shifted[j] = y[j];
    memset(moved_to, 0, sizeof moved_to);
    scatter(flux_from, flux_to, FLUXES, flows, moved_to);
    for (int k = column_start[column]; k < column_start[column + 1]; k++) {
      const int i = state_of[rows[k]];
      const double difference = (moved_to[i] - base[i]) / step;
      if (fabs(difference - values[k]) > 1e-3 * fabs(difference) + 1e-9 * fabs(base[i]) / step + 1e-6) off++;
    }
  }
  /* A bend at the very state gives another side's derivative. */
  if (off > nonzeros / 100) fail("derivatives that differ from differences", off);
  free(values);
}

static void take(const moment* m) {
  for (int k = m->first; k < m->first + m->count; k++) {
    double* slot = &settings[changes[k].slot];
    if (changes[k].sign == '+') *slot = positive(*slot + changes[k].value);
    else if (changes[k].sign == '*') *slot *= changes[k].value;
    else *slot = changes[k].value;
  }
}

static void happen(const moment* m, double* y) {
  if (m->event < 0) { take(m); prepare_all(settings); return; }
  double before[SETTINGS];
  memcpy(before, settings, sizeof before);
  take(m);
  memset(flows, 0, sizeof flows);
  event(m->event, y, settings, gathered, flows);
  scatter(event_from, event_to, EVENT_FLUXES, flows, y);
  memcpy(settings, before, sizeof before);
}
