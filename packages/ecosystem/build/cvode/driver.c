/* Integrates a model written to model.h with CVODE (Cohen & Hindmarsh 1996, Computers in Physics 10:138):
   BDF, dense direct solver, differences for the Jacobian, restarted at every event.
   Usage: cvode RTOL REPEATS. Prints "seconds steps evaluations", then the states at each sample day. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include "forms.h"
#include "model.h"

static double settings[SETTINGS], gathered[GATHERED], flows[FLUXES > EVENT_FLUXES ? FLUXES : EVENT_FLUXES];

static void scatter(const int* from, const int* to, int count, const double* by, double* y) {
  for (int k = 0; k < count; k++) {
    if (from[k] >= 0) y[from[k]] -= by[k];
    if (to[k] >= 0) y[to[k]] += by[k];
  }
}

static int derivative(realtype t, N_Vector y, N_Vector dy, void* data) {
  (void)t; (void)data;
  rates_all(N_VGetArrayPointer(y), settings, gathered, flows);
  N_VConst(0, dy);
  scatter(flux_from, flux_to, FLUXES, flows, N_VGetArrayPointer(dy));
  return 0;
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
  if (m->event < 0) { take(m); return; }
  double before[SETTINGS];
  memcpy(before, settings, sizeof before);
  take(m);
  memset(flows, 0, sizeof flows);
  event(m->event, y, settings, gathered, flows);
  scatter(event_from, event_to, EVENT_FLUXES, flows, y);
  memcpy(settings, before, sizeof before);
}

static void fail(const char* what, int flag) { fprintf(stderr, "%s: %d\n", what, flag); exit(1); }

int main(int count, char** words) {
  if (count < 3) fail("usage: cvode RTOL REPEATS", count);
  const double rtol = atof(words[1]);
  const int repeats = atoi(words[2]);
  static double kept[SAMPLES + 1][STATES];
  long steps = 0, evaluations = 0;
  struct timespec begin, end;
  SUNContext context;
  SUNContext_Create(NULL, &context);
  clock_gettime(CLOCK_MONOTONIC, &begin);
  for (int repeat = 0; repeat < repeats; repeat++) {
    memcpy(settings, setting_values, sizeof settings);
    N_Vector y = N_VNew_Serial(STATES, context), atol = N_VNew_Serial(STATES, context);
    double* values = N_VGetArrayPointer(y);
    memcpy(values, start_values, STATES * sizeof(double));
    /* Outside accounts have no tolerance of ours; nothing depends on them. */
    for (int i = 0; i < STATES; i++)
      N_VGetArrayPointer(atol)[i] = tolerances[i] > 0 ? tolerances[i] * rtol / 1e-3 : 1e30;
    void* solver = CVodeCreate(CV_BDF, context);
    SUNMatrix matrix = SUNDenseMatrix(STATES, STATES, context);
    SUNLinearSolver linear = SUNLinSol_Dense(y, matrix, context);
    CVodeInit(solver, derivative, 0, y);
    CVodeSVtolerances(solver, rtol, atol);
    CVodeSetLinearSolver(solver, linear, matrix);
    CVodeSetMaxNumSteps(solver, 10000000);
    double day = 0;
    int sample = 0;
    steps = evaluations = 0;
    for (int m = 0; m <= MOMENTS; m++) {
      const double until = m < MOMENTS ? moments[m].day : last_day;
      while (day < until) {
        const double stop = sample < SAMPLES && sample_days[sample] < until ? sample_days[sample] : until;
        if (stop > day) {
          CVodeSetStopTime(solver, stop);
          const int flag = CVode(solver, stop, y, &day, CV_NORMAL);
          if (flag < 0) fail("CVode", flag);
          day = stop;
        }
        while (sample < SAMPLES && sample_days[sample] <= day)
          memcpy(kept[sample++], values, STATES * sizeof(double));
      }
      if (m == MOMENTS) break;
      long own;
      CVodeGetNumSteps(solver, &own);
      steps += own;
      CVodeGetNumRhsEvals(solver, &own);
      evaluations += own;
      happen(&moments[m], values);
      CVodeReInit(solver, day, y);
    }
    long own;
    CVodeGetNumSteps(solver, &own);
    steps += own;
    CVodeGetNumRhsEvals(solver, &own);
    evaluations += own;
    CVodeFree(&solver);
    SUNLinSolFree(linear);
    SUNMatDestroy(matrix);
    N_VDestroy(y);
    N_VDestroy(atol);
  }
  clock_gettime(CLOCK_MONOTONIC, &end);
  printf("%.6f %ld %ld\n", (end.tv_sec - begin.tv_sec + 1e-9 * (end.tv_nsec - begin.tv_nsec)) / repeats, steps, evaluations);
  for (int k = 0; k < SAMPLES; k++)
    for (int i = 0; i < STATES; i++) printf("%.17g%c", kept[k][i], i == STATES - 1 ? '\n' : ' ');
  return 0;
}
