#include "review/memory/values.h"

namespace toehold::review {
namespace {

using format::phrase;
using Values = std::vector<FromMemory>;

Values of_wood() {
    return {
        {"resistance/wood/member_factors.h",
         phrase(
             "bearing area and temperature factors of members, volume and moisture factors of glued laminated timber, "
             "format conversion"),
         "NDS 2018 4.3, NDS Supplement 2018",
         {"member-bending", "member-shear", "support-bearing", "bearing-framing"}},
        {"model/lumber_size.cpp", phrase("dressed sizes of timbers over 6 in"), "NDS Supplement 2018 Table 1A", {}},
        {"resistance/wood/member_strength.h",
         phrase("shear at fasteners five depths from the end or more"),
         "NDS 2018 Eq. 3.4-7",
         {}},
        {"resistance/wood/member_strength.h",
         phrase("torsion constant of a rectangle"),
         "Roark's Formulas for Stress and Strain",
         {"member-torsion", "member-shear-torsion"}},
        {"resistance/wood/member_strength.h",
         phrase("torsional strength of wood, and its interaction with shear"),
         "Wood Handbook 2010 ch. 5; EN 1995-1-1 6.1.8 with the German annex",
         {"member-torsion", "member-shear-torsion"}},
        {"resistance/wood/member_strength.h",
         phrase("loads held below the neutral axis, and what a light load is"),
         "NDS 2018 Table 12.5.1C footnote 2",
         {}},
        {"resistance/wood/yield_limit.h",
         phrase("yield limit equations, as far as Table 12K does not show them"),
         "NDS 2018 Table 12.3.1A",
         {"anchor-lateral", "deck-sideways"}},
        {"resistance/wood/yield_limit.h",
         phrase("dowel equations with a gap between the members"),
         "AWC Technical Report 12",
         {}},
        {"resistance/wood/fastener_placement.h", phrase("placement of fasteners under 1/4 in"), "NDS Commentary", {}},
        {"resistance/wood/dowel_properties.h",
         phrase("bearing strength of aluminum under a dowel"),
         "Aluminum Design Manual",
         {}},
        {"resistance/wood/dowel_properties.h", phrase("length of a bolt's thread"), "ASME B18.2.1", {"bolt-too-short"}},
        {"resistance/wood/single_shear.h", phrase("where a toe-nail starts, and its slope"), "NDS 2018 12.1.6.3", {}},
        {"resistance/wood/washer_bearing.h",
         phrase("how far a plate spreads a bearing pressure"),
         "EN 1993-1-8 6.2.5",
         {}},
        {"resistance/wood/withdrawal.h",
         phrase("thread of a short lag screw: to 1/4 in under its head"),
         "NDS 2018 Table L2",
         {"anchor-penetration"}},
    };
}

Values of_metal() {
    return {
        {"resistance/steel/bolt.h",
         phrase("that the nominal bolt stresses of 2010 stand in the edition of 2016"),
         "AISC 360-16 Table J3.2",
         {"anchor-steel-tension", "anchor-steel-shear", "anchor-steel-combined"}},
        {"resistance/steel/bolt.h",
         phrase("largest standard hole from 1 in on, and oversize holes"),
         "AISC 360-16 Table J3.3",
         {}},
        {"resistance/steel/bolt.cpp", phrase("play of an oversize hole by size"), "AISC 360-16 Table J3.3", {}},
        {"resistance/steel/shear.h",
         phrase("shear of tubes, and local yielding of their walls"),
         "AISC 360-16 G4, G5, J10.2",
         {"post-overlap"}},
        {"resistance/steel/stainless.h", phrase("wall limits of stainless tubes"), "AISC 370", {}},
        {"resistance/aluminum/connection.h",
         phrase("fillet welds and holes in aluminum"),
         "Aluminum Design Manual 2020 J",
         {}},
        {"resistance/aluminum/member.h",
         phrase("bending of aluminum plates and tubes"),
         "Aluminum Design Manual 2020 F",
         {}},
        {"resistance/aluminum/bar.h", phrase("bending of aluminum bars"), "Aluminum Design Manual 2020 F.4", {}},
        {"resistance/aluminum/local_buckling.h",
         phrase("local buckling of aluminum walls"),
         "Aluminum Design Manual 2020 B.5",
         {}},
    };
}

Values of_checks() {
    return {
        {"checks/anchor/anchors_in_member.cpp",
         phrase("area of a row of fasteners across the grain"),
         "NDS 2018 11.3.6",
         {}},
        {"checks/connection/side_angle_leg.cpp",
         phrase("area of a row of fasteners across the grain"),
         "NDS 2018 11.3.6",
         {}},
        {"checks/anchor/rows_apart.cpp",
         phrase("that steel detailed for shrinkage lifts the 5 in limit"),
         "NDS 2018 12.5.1.3",
         {"fastener-rows-apart"}},
        {"checks/anchor/placement_rules.cpp", phrase("placement of wood screws under 1/4 in"), "NDS Commentary", {}},
        {"checks/anchor/nut_bearing.cpp",
         phrase("how far a backing plate spreads its pressure"),
         "EN 1993-1-8 6.2.5",
         {}},
        {"checks/anchor/lower_plate.cpp",
         phrase("how far a lower plate spreads its pressure"),
         "EN 1993-1-8 6.2.5",
         {"lower-plate-bearing", "lower-plate-bending"}},
        {"checks/anchor/lower_plate_section.cpp", phrase("bending of an aluminum lower plate"), "ADM 2015 F.2", {}},
        {"checks/connection/toe_nails.cpp",
         phrase("that toe-nails in withdrawal are spared the wet service factor"),
         "NDS 2018 12.5.4.1",
         {}},
        {"checks/member/end_shear.cpp",
         phrase("shear at fasteners five depths from the end or more"),
         "NDS 2018 Eq. 3.4-7",
         {}},
        {"checks/member/lifting.cpp",
         phrase("no concentrated load below the neutral axis"),
         "NDS 2018 Table 12.5.1C footnote 2",
         {}},
        {"checks/member/plate_pressure.h",
         phrase("the stress block a bearing pressure is held as"),
         "EN 1993-1-8 6.2.5",
         {"bearing-framing", "bearing-decking"}},
        {"checks/member/shear_torsion.cpp",
         phrase("interaction of shear and torsion"),
         "Wood Handbook 2010 ch. 5; DIN EN 1995-1-1/NA NCI to 6.1.9",
         {"member-shear-torsion"}},
        {"checks/plate/bending_steps.h", phrase("bending of aluminum plates"), "Aluminum Design Manual 2020 F.2", {}},
        {"checks/plate/bending_steps.cpp", phrase("bending of aluminum plates"), "Aluminum Design Manual 2020 F.2", {}},
        {"checks/plate/ligaments.cpp", phrase("shear through aluminum plates"), "Aluminum Design Manual 2020 G", {}},
        {"checks/plate/holes.cpp", phrase("bearing at holes in aluminum"), "Aluminum Design Manual 2020 J.3", {}},
        {"checks/post/metal_strength.h", phrase("strength of aluminum and stainless posts"), "AISC 370", {}},
        {"checks/post/metal_strength.cpp", phrase("strength of aluminum and stainless posts"), "AISC 370", {}},
        {"checks/post/shoe.cpp", phrase("bending of an aluminum shoe"), "Aluminum Design Manual 2020 F.2", {}},
        {"checks/post/stub.cpp", phrase("shear and bearing of an aluminum stub"), "Aluminum Design Manual 2020 G", {}},
        {"checks/post/weld_strength.h",
         phrase("welds in aluminum and in stainless steel"),
         "Aluminum Design Manual 2020 J.2",
         {}},
        {"checks/post/weld_strength.cpp", phrase("safety of welds in stainless steel"), "AISC Design Guide 27", {}},
    };
}

Values of_findings() {
    return {
        {"checks/findings/buildable/hole_oversize.cpp",
         phrase("standard and oversize holes"),
         "AISC 360-16 Table J3.3",
         {"hole-oversize"}},
        {"checks/findings/buildable/holes_too_close.cpp",
         phrase("metal left between holes"),
         "AISC 360-16 J3.3",
         {"holes-too-close"}},
        {"checks/findings/buildable/wrench_clearance.cpp",
         phrase("outside diameter of sockets"),
         "makers' tables",
         {"wrench-clearance"}},
        {"checks/findings/corrosion.cpp",
         phrase("which fasteners in treated wood must be coated"),
         "IRC R317.3",
         {"corrosion-not-stated", "corrosion-too-little"}},
        {"checks/findings/evidence.cpp",
         phrase("the standard composite boards are labeled by"),
         "ASTM D7032",
         {"composite-evidence"}},
        {"checks/findings/guard_and_post.cpp",
         phrase("exception 1 on the height of a dwelling's guard"),
         "IBC 1015.3",
         {"guard-height"}},
        {"checks/findings/hardware.cpp",
         phrase("clause on washers under heads and nuts"),
         "NDS 2018 12.1",
         {"bolt-without-washer"}},
        {"checks/findings/load_path.cpp",
         phrase("withdrawal from end grain"),
         "NDS 2018 12.2.3, 12.5.2",
         {"end-grain-withdrawal"}},
        {"checks/findings/weld.cpp",
         phrase("which filler belongs to which metal"),
         "AISC 360-16 J2.6; Aluminum Design Manual 2020 J.2",
         {"filler-does-not-match"}},
    };
}

Values of_demand_and_lookup() {
    return {
        {"demand/anchor_stiffness.h",
         phrase("that pressure across the grain spreads 1:1"),
         "van der Put, Derivation of the bearing strength perpendicular to the grain",
         {"washer-bearing"}},
        {"demand/framing/support_stiffness.cpp",
         phrase("1/8 in of movement at a connector's allowable load"),
         "ASTM D7147",
         {"member-end-connection"}},
        {"catalog/resolve_fastener.cpp",
         phrase("two thirds of a wood screw's length is thread"),
         "NDS 2018 Table L3",
         {"anchor-penetration"}},
        {"model/building_code.h", phrase("clause numbers marked so"), "IBC, IRC", {"guard-loads", "guard-height"}},
        {"model/building_code.cpp",
         phrase("editions and clause numbers marked so"),
         "IBC, IRC, ASCE 7",
         {"guard-loads", "guard-height"}},
        {"review/assumptions.cpp",
         phrase("that lambda = 1.25 of impact is not for connections"),
         "NDS 2018 Table N3",
         {"anchor-lateral"},
         Concerns::lrfd},
    };
}

}  // namespace

const std::vector<FromMemory>& from_memory() {
    static const Values all = [] {
        Values values = of_wood();
        for (Values (*more)() : {of_metal, of_checks, of_findings, of_demand_and_lookup}) {
            for (FromMemory& value : more()) values.push_back(std::move(value));
        }
        return values;
    }();
    return all;
}

}  // namespace toehold::review
