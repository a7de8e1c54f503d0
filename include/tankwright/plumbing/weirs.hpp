// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much water falls over an edge at a given height? The named weir formulas, each within its published range.
///
/// `overflow.hpp` builds on them: it answers for any edge, at the small heights of a display, with a band, and
/// backwards.
#pragma once

#include <cmath>

#include <tankwright/core/labelled.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>
#include <tankwright/plumbing/pipe_run.hpp>

namespace tankwright::plumbing {

namespace detail {}

// ---- the edges ------------------------------------------------------------------------------------------------------

/// A level edge over the whole width of the water in front of it: a baffle, an overflow wall.
struct full_width_edge {
  required<length> width;
  required<length> crest_height;   ///< above the floor in front of it
  length thickness = metres(0.0);  ///< of the wall, in the direction of the flow; zero is a sharp edge
};

/// A level edge narrower than the water in front of it: a notch cut into a wall.
struct contracted_edge {
  required<length> width;
  required<length> channel_width;
  required<length> crest_height;
};

/// A comb: gaps between teeth, closed above the teeth. The overall length of a comb never counts, only its gaps do.
struct toothed_edge {
  required<length> gap_width;
  required<int> gaps;  ///< [1] how many
  required<length> tooth_width;
  required<length> gap_height;    ///< above it the gap is closed
  required<length> crest_height;  ///< bottom of the gaps above the floor in front
};

/// A V cut into a wall.
struct v_notch {
  required<angle> opening;
};

/// The open top of an upright pipe, level.
struct standpipe {
  required<pipe_bore> bore;
  bool strainer = false;  ///< a strainer or grate over the top halves it
};

// ---- sources and ranges ---------------------------------------------------------------------------------------------

inline constexpr citation rehbock_1929{
    "Rehbock T.", 1929, "Wassermessung mit scharfkantigen Ueberfallwehren",
    "Zeitschrift des VDI 73:817-823; constants as in Lal, Hydraulic Machines, ex. 4.5", standing::secondary};
inline constexpr citation kindsvater_carter_1957{"Kindsvater C.E., Carter R.W.", 1957,
                                                 "Discharge characteristics of rectangular thin-plate weirs",
                                                 "J. Hydraulics Div. ASCE 83(HY6):1453; coefficients from memory, "
                                                 "within 0.25 % of EPA SWMM Reference Manual II, table 6-2",
                                                 standing::from_memory};
inline constexpr citation francis_1883{"Francis J.B.", 1883, "Lowell hydraulic experiments",
                                       "as printed in Sarkar, Fluid Mechanics and Hydraulic Machines, ex. 5.9",
                                       standing::secondary};
inline constexpr citation bazin_1888{"Bazin H.", 1888, "Experiences nouvelles sur l'ecoulement en deversoir",
                                     "Annales des Ponts et Chaussees; as printed in Sarkar, ex. 5.9, and Lal, ex. 4.5",
                                     standing::secondary};
inline constexpr citation shen_1981{
    "Shen J.", 1981, "Discharge characteristics of triangular-notch thin-plate weirs",
    "USGS Water-Supply Paper 1617-B; coefficient and head correction as coded in the library `fluids`",
    standing::secondary};
inline constexpr citation en_12056_3{
    "CEN", 2000, "EN 12056-3: Gravity drainage systems inside buildings. Roof drainage, layout and calculation",
    "outlet capacity, weir and orifice flow", standing::from_memory};
inline constexpr citation villemonte_1947{
    "Villemonte J.R.", 1947, "Submerged-weir discharge studies",
    "Engineering News-Record 139:866; as printed in EPA SWMM Reference Manual II, eq. 6-26", standing::secondary};

inline constexpr limits weir_width_limits{"width", "m", positive};
inline constexpr limits channel_width_limits{"channel_width", "m", positive};
inline constexpr limits weir_head_limits{"head", "m", not_negative};
inline constexpr limits discharge_coefficient_limits{"discharge_coefficient", "", above_zero_to_one};

inline constexpr limits rehbock_width_limits{"width", "m", positive, {0.3, core::vast}, "Rehbock 1929"};
inline constexpr limits rehbock_crest_limits{"crest_height", "m", positive, {0.1, core::vast}, "Rehbock 1929"};
inline constexpr limits rehbock_head_limits{"head", "m", not_negative, {0.03, 0.75}, "Rehbock 1929"};
inline constexpr limits rehbock_ratio_limits{"head / crest_height", "", not_negative, {0.0, 1.0}, "Rehbock 1929"};

inline constexpr limits kindsvater_width_limits{
    "width", "m", positive, {0.15, core::vast}, "Kindsvater and Carter 1957"};
inline constexpr limits kindsvater_crest_limits{
    "crest_height", "m", positive, {0.1, core::vast}, "Kindsvater and Carter 1957"};
inline constexpr limits kindsvater_head_limits{
    "head", "m", not_negative, {0.03, core::vast}, "Kindsvater and Carter 1957"};
inline constexpr limits kindsvater_ratio_limits{
    "head / crest_height", "", not_negative, {0.0, 2.0}, "Kindsvater and Carter 1957"};
inline constexpr limits width_ratio_limits{"width / channel_width", "", above_zero_to_one};

inline constexpr limits notch_angle_limits{"opening", "deg", {1e-6, 180.0, edge::closed, edge::open}};
inline constexpr limits shen_angle_limits{
    "opening", "deg", {1e-6, 180.0, edge::closed, edge::open}, {20.0, 100.0}, "Shen 1981"};
inline constexpr limits shen_head_limits{"head", "m", not_negative, {0.06, core::vast}, "Shen 1981 (from memory)"};

inline constexpr limits gap_width_limits{"gap_width", "m", positive};
inline constexpr limits thickness_limits{"thickness", "m", not_negative};
inline constexpr limits gaps_limits{"gaps", "", {1.0, core::vast}};
inline constexpr limits tooth_width_limits{"tooth_width", "m", positive};
inline constexpr limits gap_height_limits{"gap_height", "m", positive};
inline constexpr limits toothed_crest_limits{"crest_height", "m", positive};

// ---- kernels --------------------------------------------------------------------------------------------------------

namespace detail {

template <class T>
inline constexpr T sqrt_2g = T(4.428690551393267079595209790049142L);  // g = 9.80665 m/s^2
template <class T>
inline constexpr T two_thirds = T(2) / T(3);

/// Area of a circle.
[[nodiscard]] constexpr double circle(double d) noexcept { return 0.78539816339744830962 * d * d; }

/// (2/3) Cd sqrt(2g) b he^1.5, the form of all rectangular weirs.
template <class T>
[[nodiscard]] inline T weir_flow(T cd, T b, T he) noexcept {
  using std::sqrt;
  return two_thirds<T> * sqrt_2g<T> * cd * b * he * sqrt(he);
}

/// Head with the millimetre that Rehbock and Kindsvater and Carter add for surface tension and viscosity. A constant
/// addition would let water flow at no head; below 5 mm, far below any measurement, it shrinks with the head.
template <class T>
[[nodiscard]] inline T effective_head(T h, T addition) noexcept {
  constexpr T taper = T(0.005L);
  return h >= taper ? h + addition : h * (T(1) + addition / taper);
}

/// The constants of Rehbock's formula: Cd = at_zero + slope h/p, he = h + addition.
template <class T>
struct rehbock_constants {
  T at_zero = T(0.602L);
  T slope = T(0.083L);
  T addition = T(0.0012L);
};

template <class T>
[[nodiscard]] inline T rehbock(T h, T b, T p, rehbock_constants<T> c = {}) noexcept {
  return weir_flow(c.at_zero + c.slope * h / p, b, effective_head(h, c.addition));
}

/// a, a' and K_L of Kindsvater and Carter at b/B = 0, 0.1, ... 1.0; K_L is known at every second ratio only.
inline constexpr double kc_a[] = {0.587, 0.588, 0.589, 0.590, 0.591, 0.592, 0.593, 0.595, 0.597, 0.599, 0.602};
inline constexpr double kc_slope[] = {-0.0023, -0.0021, -0.0018, 0.002, 0.0058, 0.011,
                                      0.018,   0.030,   0.045,   0.064, 0.075};
inline constexpr double kc_width[] = {0.0024, 0.0024, 0.0024, 0.00255, 0.0027, 0.00315,
                                      0.0036, 0.0039, 0.0042, 0.00165, -0.0009};

struct kc_coefficients {
  double a;
  double slope;
  double width;  // K_L
};

[[nodiscard]] inline kc_coefficients kc_at(double ratio) noexcept {
  const double x = 10.0 * ratio;
  const int i = x < 9.0 ? static_cast<int>(x) : 9;
  const double part = x - i;
  const auto between = [&](const double* table) { return table[i] + part * (table[i + 1] - table[i]); };
  return {between(kc_a), between(kc_slope), between(kc_width)};
}

template <class T>
[[nodiscard]] inline T kindsvater_carter(T h, T b, T channel, T p) noexcept {
  const kc_coefficients c = kc_at(static_cast<double>(b / channel));
  return weir_flow(T(c.a) + T(c.slope) * h / p, b + T(c.width), effective_head(h, T(0.001L)));
}

/// (8/15) C sqrt(2g) tan(theta/2) h^2.5
template <class T>
[[nodiscard]] inline T notch_flow(T c, T theta, T h) noexcept {
  using std::sqrt;
  using std::tan;
  return T(8) / T(15) * c * sqrt_2g<T> * tan(theta / T(2)) * h * h * sqrt(h);
}

/// Coefficient and head addition of a thin-plate V-notch at 20, 40, ... 100 degrees.
struct shen_coefficients {
  double c;
  double k;
};
[[nodiscard]] inline shen_coefficients shen_at(double degrees) noexcept {
  constexpr double c[] = {0.59, 0.58, 0.575, 0.575, 0.58};
  constexpr double k[] = {0.0028, 0.0017, 0.0012, 0.0010, 0.0010};
  const double x = degrees / 20.0 - 1.0;
  const int i = x < 3.0 ? static_cast<int>(x) : 3;  // 0 below 20 degrees too
  const double part = x - i;
  return {c[i] + part * (c[i + 1] - c[i]), k[i] + part * (k[i + 1] - k[i])};
}

template <class T>
[[nodiscard]] inline T shen(T h, T theta) noexcept {
  const shen_coefficients s = shen_at(static_cast<double>(theta) / 0.017453292519943295);
  return notch_flow(T(s.c), theta, effective_head(h, T(s.k)));
}

/// EN 12056-3, in its own units inside: litres per second from millimetres.
template <class T>
[[nodiscard]] inline T standpipe_flow(T h, T bore, T k) noexcept {
  using std::sqrt;
  const T h_mm = h * T(1000);
  const T d_mm = bore * T(1000);
  const T litres = h_mm <= d_mm / T(2) ? d_mm * h_mm * sqrt(h_mm) / T(7500) : d_mm * d_mm * sqrt(h_mm) / T(15000);
  return k * litres * T(0.001L);
}

/// All gaps of a comb: each a contracted weir, above its own height an orifice.
template <class T>
[[nodiscard]] inline T toothed_flow(T h, T gap, T n, T tooth, T gap_height, T p) noexcept {
  using std::sqrt;
  const kc_coefficients c = kc_at(static_cast<double>(gap / (gap + tooth)));
  const T over = h > gap_height ? h - gap_height : T(0);
  const T wet = h < gap_height ? h : gap_height;
  return n * two_thirds<T> * sqrt_2g<T> * (T(c.a) + T(c.slope) * wet / p) * gap * (h * sqrt(h) - over * sqrt(over));
}

/// Share of the free flow that is left when the water below stands `ratio` times the head over the crest.
template <class T>
[[nodiscard]] inline T villemonte(T ratio, T n) noexcept {
  using std::pow;
  using std::sqrt;
  if (ratio <= T(0)) return T(1);
  if (ratio >= T(1)) return T(0);
  return pow(T(1) - (n == T(1.5L) ? ratio * sqrt(ratio) : pow(ratio, n)), T(0.385L));
}

}  // namespace detail

// ---- rectangular edges ----------------------------------------------------------------------------------------------

/// Flow over a sharp, level edge across the whole width (Rehbock).
///
///   Q = (2/3) Cd sqrt(2g) b (h + 1.2 mm)^1.5,   Cd = 0.602 + 0.083 h/p
///
/// @param edge   width b [m], 0.3 and more; crest height p [m] above the floor, 0.1 and more; the thickness is not used
/// @param head   h [m] of the still water over the edge, 0.03 to 0.75 and at most p
/// @param policy `extrapolate` to go past these ranges; below 5 mm the 1.2 mm shrink with the head
/// @return       flow [m^3/s]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     about 2 % within the range (from memory); other printings of the constants differ by 0.1 %
/// @source       Rehbock 1929
[[nodiscard]] inline flow_rate rehbock_weir(const full_width_edge& edge, length head,
                                            range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::rehbock_weir";
  const double b = edge.width->value(), p = edge.crest_height->value(), h = head.value();
  core::check(here, rehbock_width_limits, b, policy);
  core::check(here, thickness_limits, edge.thickness.value());
  core::check(here, rehbock_crest_limits, p, policy);
  core::check(here, rehbock_head_limits, h, policy);
  core::check(here, rehbock_ratio_limits, h / p, policy);
  return flow_rate::from_value(detail::rehbock(h, b, p));
}

/// Flow over a sharp, level edge narrower than the channel in front of it (Kindsvater and Carter).
///
///   Q = (2/3) Ce sqrt(2g) (b + K_L) (h + 1 mm)^1.5,   Ce = a + a' h/p;   a, a', K_L tabled against b/B
///
/// @param edge   width b [m], 0.15 and more; channel width B [m], b and more; crest height p [m], 0.1 and more
/// @param head   h [m] of the still water over the edge, 0.03 and more, at most 2 p
/// @param policy `extrapolate` to go past these ranges
/// @return       flow [m^3/s]
/// @throws       invalid_input, out_of_range
/// @accuracy     about 2 % within the range (from memory); the coefficients agree with EPA SWMM table 6-2 to 0.25 %
/// @source       Kindsvater and Carter 1957
[[nodiscard]] inline flow_rate kindsvater_carter_weir(const contracted_edge& edge, length head,
                                                      range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::kindsvater_carter_weir";
  const double b = edge.width->value(), channel = edge.channel_width->value();
  const double p = edge.crest_height->value(), h = head.value();
  core::check(here, kindsvater_width_limits, b, policy);
  core::check(here, channel_width_limits, channel, policy);
  core::check(here, width_ratio_limits, b / channel, policy);
  core::check(here, kindsvater_crest_limits, p, policy);
  core::check(here, kindsvater_head_limits, h, policy);
  core::check(here, kindsvater_ratio_limits, h / p, policy);
  return flow_rate::from_value(detail::kindsvater_carter(h, b, channel, p));
}

/// A level edge with a discharge coefficient of the caller's own.
struct rectangular_weir_input {
  required<length> width;
  required<length> head;
  required<double> discharge_coefficient;               ///< [1]
  double contractions = 0.0;                            ///< [1] ends that do not touch a wall: 0, 1 or 2
  velocity approach_velocity = metres_per_second(0.0);  ///< of the water in front of the edge
};

inline constexpr limits contractions_limits{"contractions", "", {0.0, 2.0}};
inline constexpr limits approach_velocity_limits{"approach_velocity", "m/s", not_negative};
inline constexpr limits effective_width_limits{"width - 0.1 contractions head", "m", positive};

/// Flow over a level edge with a given discharge coefficient, end contractions and approach velocity.
///
///   Q = (2/3) Cd sqrt(2g) (b - 0.1 n h) [(h + hv)^1.5 - hv^1.5],   hv = v^2/2g
///
/// @param weir width b [m] > 0; head h [m] >= 0; Cd, 0 to 1; contractions n, 0 to 2, with 0.1 n h < b;
///             approach velocity v [m/s] >= 0
/// @return     flow [m^3/s]
/// @throws     invalid_input
/// @accuracy   that of the coefficient
/// @source     Francis 1883
[[nodiscard]] inline flow_rate rectangular_weir(const rectangular_weir_input& weir) {
  constexpr std::string_view here = "tankwright::plumbing::rectangular_weir";
  const double b = weir.width->value(), h = weir.head->value(), v = weir.approach_velocity.value();
  core::check(here, weir_width_limits, b);
  core::check(here, weir_head_limits, h);
  core::check(here, discharge_coefficient_limits, weir.discharge_coefficient);
  core::check(here, contractions_limits, weir.contractions);
  core::check(here, approach_velocity_limits, v);
  const double effective_width = b - 0.1 * weir.contractions * h;
  core::check(here, effective_width_limits, effective_width);
  const double hv = v / detail::sqrt_2g<double> * (v / detail::sqrt_2g<double>);
  return flow_rate::from_value(detail::weir_flow<double>(weir.discharge_coefficient, effective_width, h + hv) -
                               detail::weir_flow<double>(weir.discharge_coefficient, effective_width, hv));
}

inline constexpr limits francis_head_limits{
    "head", "m", not_negative, {0.06, core::vast}, "Francis 1883 (limit from memory)"};
inline constexpr limits francis_ratio_limits{
    "head / width", "", not_negative, {0.0, 1.0 / 3.0}, "Francis 1883 (limit from memory)"};

/// A level edge by Francis.
struct francis_weir_input {
  required<length> width;
  required<length> head;
  double contractions = 0.0;                            ///< [1] ends that do not touch a wall: 0, 1 or 2
  velocity approach_velocity = metres_per_second(0.0);  ///< of the water in front of the edge
};

/// Flow over a sharp, level edge by Francis (3.33 in feet).
///
///   Q = 1.838 (b - 0.1 n h) [(h + hv)^1.5 - hv^1.5]   in SI,   hv = v^2/2g
///
/// @param weir   width b [m] > 0; head h [m], 0.06 and more, at most b/3; contractions n, 0 to 2; approach velocity v
/// [m/s]
/// @param policy `extrapolate` to go past these ranges
/// @return       flow [m^3/s]
/// @throws       invalid_input, out_of_range
/// @accuracy     3 % within the range (from memory); below it the formula gives 6 % (20 mm) to 13 % (10 mm) less than
/// Rehbock
/// @source       Francis 1883
[[nodiscard]] inline flow_rate francis_weir(const francis_weir_input& weir,
                                            range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::francis_weir";
  const double b = weir.width->value(), h = weir.head->value();
  core::check(here, weir_width_limits, b);
  core::check(here, francis_head_limits, h, policy);
  core::check(here, francis_ratio_limits, h / b, policy);
  // 3.33 ft^0.5/s at the source's g: (2/3) Cd sqrt(2g) = 1.838 m^0.5/s
  return rectangular_weir({.width = weir.width,
                           .head = weir.head,
                           .discharge_coefficient = 1.838 / (detail::two_thirds<double> * detail::sqrt_2g<double>),
                           .contractions = weir.contractions,
                           .approach_velocity = weir.approach_velocity});
}

inline constexpr limits bazin_head_limits{"head", "m", positive, {0.05, 0.6}, "Bazin 1888"};

/// A level edge by Bazin.
struct bazin_weir_input {
  required<length> width;
  required<length> head;
};

/// Flow over a sharp, level edge across the whole width, by Bazin.
///
///   Q = m b sqrt(2g) h^1.5,   m = 0.405 + 0.003 m / h
///
/// @param weir   width b [m] > 0; head h [m], 0.05 to 0.6
/// @param policy `extrapolate` to go below; m grows without bound there
/// @return       flow [m^3/s]
/// @throws       invalid_input, out_of_range
/// @accuracy     a few per cent (from memory)
/// @source       Bazin 1888
[[nodiscard]] inline flow_rate bazin_weir(const bazin_weir_input& weir, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::bazin_weir";
  const double b = weir.width->value(), h = weir.head->value();
  core::check(here, weir_width_limits, b);
  core::check(here, bazin_head_limits, h, policy);
  return flow_rate::from_value(detail::weir_flow(1.5 * (0.405 + 0.003 / h), b, h));
}

/// Flow through the gaps of a comb. An engineering rule of this library, without a source.
///
///   Q = N (2/3) Ce b sqrt(2g) [h^1.5 - (h - s)^1.5],   the last term only for h > s;
///   Ce of Kindsvater and Carter at b / (b + tooth), without their credit for width and head
///
/// @param edge gap width b [m] > 0; number of gaps N >= 1; tooth width [m] > 0; gap height s [m] > 0;
///             crest height p [m] > 0
/// @param head h [m] >= 0 of the still water over the bottom of the gaps
/// @return     flow [m^3/s]
/// @throws     invalid_input
/// @accuracy   perhaps 20 %; never tested against a comb
/// @source     own rule, after Kindsvater and Carter 1957
[[nodiscard]] inline flow_rate toothed_weir(const toothed_edge& edge, length head) {
  constexpr std::string_view here = "tankwright::plumbing::toothed_weir";
  core::check(here, gap_width_limits, edge.gap_width->value());
  core::check(here, gaps_limits, edge.gaps);
  core::check(here, tooth_width_limits, edge.tooth_width->value());
  core::check(here, gap_height_limits, edge.gap_height->value());
  core::check(here, toothed_crest_limits, edge.crest_height->value());
  core::check(here, weir_head_limits, head.value());
  return flow_rate::from_value(detail::toothed_flow<double>(head.value(), edge.gap_width->value(), edge.gaps.get(),
                                                            edge.tooth_width->value(), edge.gap_height->value(),
                                                            edge.crest_height->value()));
}

// ---- V-notch, standpipe, submergence --------------------------------------------------------------------------------

/// A V-notch with a discharge coefficient of the caller's own.
struct v_notch_weir_input {
  required<angle> opening;
  required<length> head;
  required<double> discharge_coefficient;  ///< [1] about 0.58 to 0.62
};

/// Flow through a V-notch with a given discharge coefficient.
///
///   Q = (8/15) Cd tan(theta/2) sqrt(2g) h^2.5
///
/// @param weir opening angle theta, 0 to 180 degrees; head h [m] >= 0 over the point of the V; Cd, 0 to 1
/// @return     flow [m^3/s]
/// @throws     invalid_input
/// @accuracy   that of the coefficient
/// @source     textbook formula: Sarkar, ex. 5.3; Schaschke, ex. 7.10
[[nodiscard]] inline flow_rate v_notch_weir(const v_notch_weir_input& weir) {
  constexpr std::string_view here = "tankwright::plumbing::v_notch_weir";
  core::check(here, notch_angle_limits, in_degrees(weir.opening));
  core::check(here, weir_head_limits, weir.head->value());
  core::check(here, discharge_coefficient_limits, weir.discharge_coefficient);
  return flow_rate::from_value(
      detail::notch_flow<double>(weir.discharge_coefficient, weir.opening->value(), weir.head->value()));
}

/// Flow through a thin-plate V-notch (Kindsvater and Shen).
///
///   Q = (8/15) Ce tan(theta/2) sqrt(2g) (h + k)^2.5;   Ce and k tabled against theta
///
/// @param edge   opening angle theta, 20 to 100 degrees
/// @param head   h [m] over the point of the V, 0.06 and more
/// @param policy `extrapolate` to go past these ranges
/// @return       flow [m^3/s]
/// @throws       invalid_input, out_of_range
/// @accuracy     about 2 % within the range (from memory)
/// @source       Shen 1981
[[nodiscard]] inline flow_rate shen_weir(const v_notch& edge, length head,
                                         range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::shen_weir";
  core::check(here, shen_angle_limits, in_degrees(edge.opening), policy);
  core::check(here, shen_head_limits, head.value(), policy);
  return flow_rate::from_value(detail::shen(head.value(), edge.opening->value()));
}

/// Flow into the open top of an upright pipe: over its rim like a weir, deeper like an orifice.
///
///   Q = k D h^1.5 / 7500 for h <= D/2,   k D^2 h^0.5 / 15000 above   (litres per second, millimetres);
///   k = 1, with a strainer 0.5
///
/// This is what the top lets in. The pipe below may take less: see `drain.hpp`.
///
/// @param edge bore D [m] > 0 of the pipe; with or without a strainer
/// @param head h [m] >= 0 of the water over the rim
/// @return     flow [m^3/s]
/// @throws     invalid_input
/// @accuracy   not stated in the standard; 15 % is assumed where a band is given
/// @source     EN 12056-3 (from memory)
[[nodiscard]] inline flow_rate standpipe_inlet(const standpipe& edge, length head) {
  constexpr std::string_view here = "tankwright::plumbing::standpipe_inlet";
  core::check(here, bore_limits, edge.bore->diameter().value());
  core::check(here, weir_head_limits, head.value());
  return flow_rate::from_value(
      detail::standpipe_flow(head.value(), edge.bore->diameter().value(), edge.strainer ? 0.5 : 1.0));
}

/// Heads on both sides of a drowned edge.
struct submergence_input {
  required<length> upstream_head;    ///< over the crest
  required<length> downstream_head;  ///< over the crest; zero or less is a free fall
  double exponent = 1.5;             ///< [1] of the weir: 1.5 rectangular, 2.5 V-notch
};

inline constexpr limits upstream_head_limits{"upstream_head", "m", positive};
inline constexpr limits downstream_head_limits{"downstream_head", "m", any_finite};
inline constexpr limits submergence_limits{"downstream_head / upstream_head", "", {-core::vast, 1.0}};
inline constexpr limits weir_exponent_limits{"exponent", "", positive};

/// Share of its free flow that an edge keeps when the water behind it stands above the crest (Villemonte).
///
///   Q/Q0 = [1 - (h2/h1)^n]^0.385
///
/// @param heads upstream head h1 [m] > 0 and downstream head h2 [m] <= h1 over the crest; exponent n > 0
/// @return      a share between 0 and 1
/// @throws      invalid_input
/// @accuracy    about 5 % of the flow (from memory)
/// @source      Villemonte 1947
[[nodiscard]] inline proportion submerged_share(const submergence_input& heads) {
  constexpr std::string_view here = "tankwright::plumbing::submerged_share";
  core::check(here, upstream_head_limits, heads.upstream_head->value());
  core::check(here, downstream_head_limits, heads.downstream_head->value());
  core::check(here, weir_exponent_limits, heads.exponent);
  const double ratio = heads.downstream_head->value() / heads.upstream_head->value();
  core::check(here, submergence_limits, ratio);
  return fraction(detail::villemonte(ratio, heads.exponent));
}

}  // namespace tankwright::plumbing
