/* Published stiff problems as a method takes them, of the Test Set for IVP Solvers; sources, starts and ends are
   those of stiff/problems.ts, which hands start, end of time and tolerances over. Gains and losses of a state are
   flows by themselves, at or above zero where the states are. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { MOST = 8 };
static int count, edges, nonzeros, column_start[MOST + 1], rows[MOST * MOST], edge_from[2 * MOST], edge_to[2 * MOST];
static double absolute[MOST];
static int above_zero;
static void (*edge_flows)(const double* y, double* f);

static void fail(const char* what, int flag) { fprintf(stderr, "%s: %d\n", what, flag); exit(1); }

static void robertson(const double* y, double* f) {
  f[0] = 0.04 * y[0];
  f[1] = 1e4 * y[1] * y[2];
  f[2] = 3e7 * y[1] * y[1];
}
static void hires(const double* y, double* f) {
  const double light = 280 * y[5] * y[7];
  const double gains[] = {
    0.43 * y[1] + 8.32 * y[2] + 0.0007, 1.71 * y[0], 0.43 * y[3] + 0.035 * y[4], 8.32 * y[1] + 1.71 * y[2],
    0.43 * y[5] + 0.43 * y[6], 0.69 * y[3] + 1.71 * y[4] + 0.69 * y[6], light, 1.81 * y[6]};
  const double losses[] = {1.71 * y[0], 8.75 * y[1], 10.03 * y[2], 1.12 * y[3], 1.745 * y[4], light + 0.43 * y[5], 1.81 * y[6], light};
  memcpy(f, gains, sizeof gains);
  memcpy(f + 8, losses, sizeof losses);
}
static void oregonator(const double* y, double* f) {
  f[0] = 77.27 * (y[1] + y[0]);
  f[1] = y[2] / 77.27;
  f[2] = 0.161 * y[0];
  f[3] = 77.27 * y[0] * (8.375e-6 * y[0] + y[1]);
  f[4] = (1 + y[0]) * y[1] / 77.27;
  f[5] = 0.161 * y[2];
}
static void van_der_pol(const double* y, double* f) {
  f[0] = y[1];
  f[1] = ((1 - y[0] * y[0]) * y[1] - y[0]) / 1e-6;
}

static void gains_and_losses(int states, int with_losses) {
  count = states;
  edges = with_losses ? 2 * states : states;
  for (int i = 0; i < states; i++) {
    edge_from[i] = edge_to[i + states] = -1;
    edge_to[i] = edge_from[i + states] = i;
  }
  above_zero = with_losses;
}

static void choose_problem(const char* name) {
  if (strncmp(name, "Robertson", 9) == 0) {
    count = edges = 3;
    const int from[] = {0, 1, 1}, to[] = {1, 0, 2};
    memcpy(edge_from, from, sizeof from);
    memcpy(edge_to, to, sizeof to);
    above_zero = 1;
    edge_flows = robertson;
  } else if (strcmp(name, "HIRES") == 0) {
    gains_and_losses(8, 1);
    edge_flows = hires;
  } else if (strcmp(name, "OREGO") == 0) {
    gains_and_losses(3, 1);
    edge_flows = oregonator;
  } else {
    gains_and_losses(2, 0);
    edge_flows = van_der_pol;
  }
  for (int j = 0; j <= count; j++) column_start[j] = j * count;
  for (int k = 0; k < count * count; k++) rows[k] = k % count;
  nonzeros = count * count;
}

static void slopes(const double* y, double* dy) {
  double f[2 * MOST];
  edge_flows(y, f);
  memset(dy, 0, count * sizeof(double));
  for (int k = 0; k < edges; k++) {
    if (edge_from[k] >= 0) dy[edge_from[k]] -= f[k];
    if (edge_to[k] >= 0) dy[edge_to[k]] += f[k];
  }
}

/* Differences to both sides, which for products of two states are exact. */
static void derivatives(const double* y, double* values) {
  double shifted[MOST], up[MOST], down[MOST];
  for (int j = 0; j < count; j++) {
    const double step = 1e-4 * fmax(fabs(y[j]), absolute[j]);
    memcpy(shifted, y, count * sizeof(double));
    shifted[j] = y[j] + step;
    slopes(shifted, up);
    shifted[j] = y[j] - step;
    slopes(shifted, down);
    for (int i = 0; i < count; i++) values[column_start[j] + i] = (up[i] - down[i]) / (2 * step);
  }
}
