#pragma once
// The reference values of a wood: the same attributes in a row of the catalog and in a material that a detail brings.
#include "xml/document/element_reader.h"

#include <string_view>

namespace toehold::xml {

/// All in psi, > 0; the least modulus no more than the mean one.
template <class Wood>
void read_wood_values(ElementReader& reader, Wood& wood) {
    const auto stress_psi = [&reader](std::string_view name) {
        return reader.quantity(name, units::Kind::stress, Sign::positive);
    };
    wood.bending_psi = stress_psi("bending");
    wood.tension_psi = stress_psi("tension");
    wood.shear_psi = stress_psi("shear");
    wood.compression_perp_psi = stress_psi("compression-perp");
    wood.compression_psi = stress_psi("compression");
    wood.modulus_psi = stress_psi("modulus");
    wood.modulus_min_psi = stress_psi("modulus-min");
    if (wood.modulus_min_psi > wood.modulus_psi)
        reader.report(format::phrase("modulus-min is more than modulus"), "modulus-min");
}

}  // namespace toehold::xml
