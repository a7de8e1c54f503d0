// SPDX-License-Identifier: BSL-1.0
// mistake: a kit's number where it must be said whether it counts nitrogen or the ion
// says: conversion from|no viable conversion
#include <tankwright/life/nitrogen.hpp>
namespace tw = tankwright;
void attempt() {
#ifdef MISTAKE
  const tw::life::nitrate_level level = tw::milligrams_per_litre(70.0);
#else
  const tw::life::nitrate_level level = tw::life::nitrate_level::from_ion(tw::milligrams_per_litre(310.0));
#endif
  (void)level;
}
