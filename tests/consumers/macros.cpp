// SPDX-License-Identifier: BSL-1.0
// The library after headers that define everyday words as macros: <windows.h>, Qt's and X11's.
#define near
#define far
#define small char
#define min(a, b) ((a) < (b) ? (a) : (b))
#define max(a, b) ((a) > (b) ? (a) : (b))
#define ERROR 0
#define IN
#define OUT
#define interface struct
#define emit
#define signals public
#define slots
#define foreach(a, b) for (a : b)
#define forever for (;;)
#define Always 2
#define Above 0
#define Below 1
#define Bool int
#define Complex 0
#define False 0
#define None 0L
#define Status int
#define Success 0
#define True 1
#define Unsorted 0

#include <tankwright/tankwright.hpp>
#include <tankwright/text.hpp>
#if defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions.hpp>
#include <tankwright/exchange.hpp>
#endif

int main() {
  const tankwright::length lift = tankwright::text::parse<tankwright::length>("1.45 m");
  return lift > tankwright::metres(1.0) ? 0 : 1;
}
