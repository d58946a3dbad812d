/* Integrates a model with CVODE (Cohen & Hindmarsh 1996, Computers in Physics 10:138): BDF with the derivatives of
   the declarations, solved by KLU (Davis & Palamadai Natarajan 2010, ACM TOMS 37:36) in minimum-degree order,
   restarted at every event.
   Usage: cvode RTOL REPEATS ORDER plain|quick exact|sparse. Prints "seconds (of the processor) steps evaluations jacobians
   nonzeros", then the states at each sample day. plain, quick, exact and sparse: see equations.h; exact checks all
   derivatives against differences, sparse changes no step. */
#include <time.h>
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_klu.h>
#include <sunmatrix/sunmatrix_sparse.h>
#include "equations.h"

static int derivative(realtype t, N_Vector y, N_Vector dy, void* data) {
  (void)t; (void)data;
  slopes(N_VGetArrayPointer(y), N_VGetArrayPointer(dy));
  return 0;
}

static int jacobian(realtype t, N_Vector y, N_Vector dy, SUNMatrix matrix, void* data, N_Vector a, N_Vector b, N_Vector c) {
  (void)t; (void)dy; (void)data; (void)a; (void)b; (void)c;
  const double* in = N_VGetArrayPointer(y);
  for (int i = 0; i < count; i++) whole[state_of[i]] = in[i];
  rates(whole);
  sunindextype *starts = SM_INDEXPTRS_S(matrix), *of = SM_INDEXVALS_S(matrix);
  for (int i = 0; i <= count; i++) starts[i] = column_start[i];
  for (int k = 0; k < nonzeros; k++) of[k] = rows[k];
  fill(whole, SM_DATA_S(matrix));
  return 0;
}

int main(int words, char** word) {
  if (words < 6) fail("usage: cvode RTOL REPEATS ORDER plain|quick exact|sparse", words);
  const double rtol = atof(word[1]);
  const int repeats = atoi(word[2]), order = atoi(word[3]);
  quick = strcmp(word[4], "quick") == 0;
  exact = strcmp(word[5], "exact") == 0;
  static double kept[SAMPLES + 1][STATES];
  long steps = 0, evaluations = 0, jacobians = 0;
  memcpy(settings, setting_values, sizeof settings);
  prepare_all(settings);
  make_pattern();
  if (exact) check_equations(start_values);
  struct timespec begin, end;
  SUNContext context;
  SUNContext_Create(NULL, &context);
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &begin);
  for (int repeat = 0; repeat < repeats; repeat++) {
    memcpy(settings, setting_values, sizeof settings);
    prepare_all(settings);
    N_Vector y = N_VNew_Serial(count, context), atol = N_VNew_Serial(count, context);
    double* values = N_VGetArrayPointer(y);
    memcpy(whole, start_values, STATES * sizeof(double));
    for (int i = 0; i < count; i++) {
      values[i] = whole[state_of[i]];
      N_VGetArrayPointer(atol)[i] = tolerances[state_of[i]] * rtol / 1e-3;
    }
    void* solver = CVodeCreate(CV_BDF, context);
    SUNMatrix matrix = SUNSparseMatrix(count, count, nonzeros, CSC_MAT, context);
    SUNLinearSolver linear = SUNLinSol_KLU(y, matrix, context);
    CVodeInit(solver, derivative, 0, y);
    CVodeSVtolerances(solver, rtol, atol);
    CVodeSetMaxOrd(solver, order);
    SUNLinSol_KLUSetOrdering(linear, 0);
    CVodeSetLinearSolver(solver, linear, matrix);
    CVodeSetJacFn(solver, jacobian);
    CVodeSetMaxNumSteps(solver, 10000000);
    double day = 0, reached = 0;
    int sample = 0;
    steps = evaluations = jacobians = 0;
    for (int m = 0; m <= MOMENTS; m++) {
      const double until = m < MOMENTS ? moments[m].day : last_day;
      while (day < until) {
        const int sampled = sample < SAMPLES && sample_days[sample] < until;
        const double stop = sampled ? sample_days[sample] : until;
        /* A sample is read by the solver's own interpolation; a step ends at an event only. */
        CVodeSetStopTime(solver, until);
        const int flag = CVode(solver, stop, y, &reached, CV_NORMAL);
        if (flag < 0) fail("CVode", flag);
        day = stop;
        while (sample < SAMPLES && sample_days[sample] <= day) {
          for (int i = 0; i < count; i++) kept[sample][state_of[i]] = values[i];
          sample++;
        }
      }
      if (m == MOMENTS) break;
      for (int i = 0; i < count; i++) whole[state_of[i]] = values[i];
      happen(&moments[m], whole);
      for (int i = 0; i < count; i++) values[i] = whole[state_of[i]];
      if (m + 1 < MOMENTS && moments[m + 1].day == day) continue;
      long own;
      CVodeGetNumSteps(solver, &own);
      steps += own;
      CVodeGetNumRhsEvals(solver, &own);
      evaluations += own;
      CVodeGetNumJacEvals(solver, &own);
      jacobians += own;
      CVodeReInit(solver, day, y);
    }
    long own;
    CVodeGetNumSteps(solver, &own);
    steps += own;
    CVodeGetNumRhsEvals(solver, &own);
    evaluations += own;
    CVodeGetNumJacEvals(solver, &own);
    jacobians += own;
    CVodeFree(&solver);
    SUNLinSolFree(linear);
    SUNMatDestroy(matrix);
    N_VDestroy(y);
    N_VDestroy(atol);
  }
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &end);
  printf("%.6f %ld %ld %ld %d\n", (end.tv_sec - begin.tv_sec + 1e-9 * (end.tv_nsec - begin.tv_nsec)) / repeats, steps, evaluations, jacobians, nonzeros);
  for (int k = 0; k < SAMPLES; k++)
    for (int i = 0; i < STATES; i++) printf("%.17g%c", kept[k][i], i == STATES - 1 ? '\n' : ' ');
  return 0;
}
