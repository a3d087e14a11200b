/* What the reference LAPACK asks of a Fortran runtime and of whoever is told of a wrong argument. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

void xerbla_(const char *name, const int *argument, size_t length)
{
    fprintf(stderr, "%.*s: argument %d has no valid value\n", (int)length, name, *argument);
    abort();
}

void cblas_xerbla(int argument, const char *name, const char *form, ...)
{
    (void)form;
    fprintf(stderr, "%s: argument %d has no valid value\n", name, argument);
    abort();
}

/* Fortran's a // b: cut or filled with blanks to the length of where it goes. */
void _gfortran_concat_string(size_t length, char *to, size_t length_a, const char *a,
                             size_t length_b, const char *b)
{
    size_t from_a = length_a < length ? length_a : length;
    size_t left = length - from_a;
    size_t from_b = length_b < left ? length_b : left;

    memcpy(to, a, from_a);
    memcpy(to + from_a, b, from_b);
    memset(to + from_a + from_b, ' ', left - from_b);
}
