/* Integer kernels of PARI (ZM_ker, one thread) and FLINT (fmpz_mat_nullspace) on the matrices that equation.ts writes,
 * timed the same way: each matrix once per round, the best of the rounds. Reads "count", then for each matrix "rows columns"
 * and the entries; prints "pari <ns>" and "flint <ns>" per matrix. Only for the bench; built with
 *   cc -O2 equation-kernels.c -o equation-kernels -lpari -lflint -lgmp
 */
#include <flint/flint.h>
#include <flint/fmpz_mat.h>
#include <pari/pari.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return t.tv_sec * 1e9 + t.tv_nsec;
}

int main(int argc, char **argv) {
  int rounds = argc > 1 ? atoi(argv[1]) : 5;
  long count;
  if (scanf("%ld", &count) != 1) return 1;
  pari_init(512L << 20, 2);
  setdefault("nbthreads", "1", 0);
  GEN *pari = malloc(count * sizeof *pari);
  fmpz_mat_struct *flint = malloc(count * sizeof *flint);
  static char text[1 << 16];
  for (long n = 0; n < count; n++) {
    long rows, columns;
    if (scanf("%ld %ld", &rows, &columns) != 2) return 1;
    GEN m = zeromatcopy(rows, columns);
    fmpz_mat_init(&flint[n], rows, columns);
    for (long i = 1; i <= rows; i++) {
      for (long j = 1; j <= columns; j++) {
        if (scanf("%65535s", text) != 1) return 1;
        gcoeff(m, i, j) = gp_read_str(text);
        fmpz_set_str(fmpz_mat_entry(&flint[n], i - 1, j - 1), text, 10);
      }
    }
    pari[n] = m;
  }
  double best = 1e300;
  for (int r = 0; r < rounds; r++) {
    double start = now();
    for (long n = 0; n < count; n++) {
      pari_sp av = avma;
      ZM_ker(pari[n]);
      avma = av;
    }
    double spent = (now() - start) / count;
    if (spent < best) best = spent;
  }
  printf("pari %.0f\n", best);
  best = 1e300;
  for (int r = 0; r < rounds; r++) {
    double start = now();
    for (long n = 0; n < count; n++) {
      fmpz_mat_t kernel;
      fmpz_mat_init(kernel, fmpz_mat_ncols(&flint[n]), fmpz_mat_ncols(&flint[n]));
      fmpz_mat_nullspace(kernel, &flint[n]);
      fmpz_mat_clear(kernel);
    }
    double spent = (now() - start) / count;
    if (spent < best) best = spent;
  }
  printf("flint %.0f\n", best);
  return 0;
}
