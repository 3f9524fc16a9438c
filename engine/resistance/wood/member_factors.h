#pragma once
// What turns a reference design value of sawn lumber into an adjusted one: NDS 2018 Table 4.3.1, one function a factor.
// Factors have no unit. Which apply to what (sawn lumber, visually graded):
//   Fb:      CD CM Ct CL CF Cfu Ci   KF 2.54 phi 0.85 lambda      Fv: CD CM Ct Ci       KF 2.88 phi 0.75 lambda
//   Fc,perp: CM Ct Ci Cb             KF 1.67 phi 0.90             Fc: CD CM Ct CF Ci CP KF 2.40 phi 0.90 lambda
//   Ft:      CD CM Ct CF Ci          KF 2.70 phi 0.80 lambda      E: CM Ct Ci           Emin: CM Ct Ci KF 1.76 phi 0.85
// CD belongs to ASD only; KF, phi and lambda to LRFD only. CF, Cfu and the wet service values of dimension lumber and
// timbers were read in public transcriptions of Tables 4A, 4B and 4D, Ci (0.8, 0.95, 1.0) and lambda 0.8 in public
// copies; every other value here is from memory of the published tables, to be confirmed.

namespace toehold::resistance {

enum class MemberProperty { bending, tension, shear, compression_perp, compression, modulus, modulus_min };

/// Moisture content in service of sawn lumber, NDS 2018 4.1.4; the limit is 19 %, of glued laminated timber 16 %
/// (5.1.4).
enum class MemberMoisture { dry, wet };

/// Which table a reference value stands in, and so which wet service factors go with it; none: no factor.
enum class WetTable { dimension_lumber, timber, glulam, none };

/// Sustained temperature, NDS 2018 Table 2.3.3.
enum class MemberTemperature { to_100F, to_125F, to_150F };

/// CD, NDS 2018 2.3.2: as given, but 1.0 for Fc,perp, E and Emin. Throws std::invalid_argument below 0.
[[nodiscard]] double member_load_duration(MemberProperty property, double load_duration);

/// CM. Dimension lumber, NDS Supplement 2018 Table 4A (and 4B): wet Fb 0.85, Ft 1.0, Fv 0.97, Fc,perp 0.67, Fc 0.8, E
/// and Emin 0.9; but 1.0 for Fb where Fb CF <= 1150 psi and for Fc where Fc CF <= 750 psi. `reference_with_size_psi` is
/// Fb CF or Fc CF; the other properties and tables ignore it. Timber, Table 4D: Fc,perp 0.67, Fc 0.91, the others 1.0.
/// Glued laminated timber, Tables 5A to 5D: Fb and Ft 0.8, Fv 0.875, Fc,perp 0.53, Fc 0.73, E and Emin 0.833.
[[nodiscard]] double member_wet_service(MemberProperty property, MemberMoisture moisture,
                                        double reference_with_size_psi, WetTable table = WetTable::dimension_lumber);

/// Ct, NDS 2018 Table 2.3.3: Ft, E, Emin 1.0, 0.9, 0.9; the others 1.0, 0.8, 0.7 dry and 1.0, 0.7, 0.5 wet.
[[nodiscard]] double member_temperature(MemberProperty property, MemberTemperature temperature,
                                        MemberMoisture moisture);

/// Ci, NDS 2018 Table 4.3.8, incised parallel to grain to 0.4 in deep: E, Emin 0.95; Fc,perp 1.0; the others 0.8.
[[nodiscard]] double member_incising(MemberProperty property, bool incised);

/// CF for Fb of dimension lumber, NDS Supplement 2018 Table 4A, grades No. 3 and better. Actual thickness (narrow face)
/// and width (wide face), in, both > 0, in either order; an odd width takes the row of the next larger nominal width.
/// Not for species whose values include it (Table 4B).
[[nodiscard]] double size_factor_bending(double thickness_in, double width_in);
/// CF for Fb of grade Stud, NDS Supplement 2018 Table 4A: 1.1 to 4 in wide, 1.0 at 5 and 6 in. in, > 0.
[[nodiscard]] double stud_size_factor_bending(double width_in);
/// What values that include CF (NDS Supplement 2018 Table 4B, southern pine) still need: 1.1 for 4 in thick and 8 in
/// and wider, 0.9 for wider than 12 in, else 1.0. Actual sizes, in, in either order, > 0.
[[nodiscard]] double included_size_factor(double thickness_in, double width_in);
/// CF for Fb of timbers, NDS Supplement 2018 Table 4D: (12/d)^(1/9) for a depth over 12 in, else 1.0. in, > 0.
[[nodiscard]] double timber_size_factor(double depth_in);

/// Cfu for Fb of dimension lumber, NDS Supplement 2018 Tables 4A and 4B, load on the wide face; an odd width takes the
/// next smaller nominal width.
[[nodiscard]] double flat_use(double thickness_in, double width_in);

/// CV of glued laminated timber bent about its strong axis, NDS 2018 Eq. 5.3-1: ((21 ft/L)(12/d)(5.125/b))^(1/x) <=
/// 1.0. Breadth and depth in, > 0; `length_in` between points of no moment, 0: not known, taken as 21 ft; `exponent` x
/// is 10, or 20 for southern pine.
[[nodiscard]] double glulam_volume_factor(double breadth_in, double depth_in, double length_in, double exponent);
/// CV of structural composite lumber as its reports give it (NDS 2018 8.3.6): (12/d)^exponent, here never over 1.0,
/// which is on the safe side of reports that let a shallower member have more. in, > 0.
[[nodiscard]] double depth_factor(double depth_in, double exponent);

/// Cb, NDS 2018 3.10.4, Eq. 3.10-2: (lb + 0.375)/lb for a bearing shorter than 6 in along the grain that keeps at least
/// 3 in from the member's end; else 1.0. in, length > 0.
[[nodiscard]] double bearing_area_factor(double length_in, double end_distance_in);

/// le of a beam held against rotation at its ends, NDS 2018 Table 3.3.3, for loads the table does not name (footnote
/// 1): 2.06 lu for lu/d < 7, 1.63 lu + 3 d to 14.3, 1.84 lu beyond. in.
[[nodiscard]] double effective_length_in(double unsupported_length_in, double depth_in);

/// RB, NDS 2018 Eq. 3.3-5: sqrt(le d / b^2). 3.3.3.7 limits it to 50.
[[nodiscard]] double beam_slenderness(double effective_length_in, double depth_in, double breadth_in);

/// FbE, NDS 2018 3.3.3.8: 1.20 Emin' / RB^2, psi.
[[nodiscard]] double critical_buckling_psi(double adjusted_modulus_min_psi, double slenderness);

/// CL, NDS 2018 Eq. 3.3-6. `bending_psi` is Fb*: Fb with every factor but Cfu and CL; both > 0.
[[nodiscard]] double beam_stability(double critical_psi, double bending_psi);

/// KF, NDS 2018 Table N1. 1.0 for E, which has none.
[[nodiscard]] double member_format_conversion(MemberProperty property);
/// phi, NDS 2018 Table N2. 1.0 for E, which has none.
[[nodiscard]] double member_resistance_factor(MemberProperty property);
/// lambda, NDS 2018 Table N3: as given, but 1.0 for Fc,perp, E and Emin. Throws std::invalid_argument below 0.
[[nodiscard]] double member_time_effect(MemberProperty property, double time_effect);

}  // namespace toehold::resistance
