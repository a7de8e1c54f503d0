// SPDX-License-Identifier: BSL-1.0
// mistake: nitrate where nitrite is expected
// says: conversion from|no viable conversion
#include <tankwright/life/nitrogen.hpp>
namespace tw = tankwright;
void attempt() {
#ifdef MISTAKE
  const tw::life::nitrite_level level = tw::life::nitrate_level::from_nitrogen(tw::milligrams_per_litre(0.1));
#else
  const tw::life::nitrite_level level = tw::life::nitrite_level::from_nitrogen(tw::milligrams_per_litre(0.1));
#endif
  (void)level;
}
