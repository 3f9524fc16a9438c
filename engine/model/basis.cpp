#include "model/basis.h"

namespace toehold::model {

double load_duration(const Basis& basis) { return basis.load_duration.value_or(1.0); }
double time_effect(const Basis& basis) { return basis.time_effect.value_or(0.8); }
Moisture moisture(const Basis& basis) { return basis.moisture.value_or(Moisture::wet); }
Temperature temperature(const Basis& basis) { return basis.temperature.value_or(Temperature::to_100F); }
DeckingInShear decking_in_shear(const Basis& basis) { return basis.decking_in_shear.value_or(DeckingInShear::gap); }
PlateBehaviour plate_behaviour(const Basis& basis) { return basis.plate.value_or(PlateBehaviour::flexible); }
TorsionWithShear torsion_with_shear(const Basis& basis) { return basis.torsion.value_or(TorsionWithShear::parabolic); }
BearingStress bearing_stress(const Basis& basis) { return basis.bearing.value_or(BearingStress::block); }
PlateStrength plate_strength(const Basis& basis) { return basis.plate_strength.value_or(PlateStrength::lower_bound); }
BuildingCode building_code(const Basis& basis) { return basis.code.value_or(BuildingCode::ibc_2021); }
TubeDiagonal tube_diagonal(const Basis& basis) { return basis.tube_diagonal.value_or(TubeDiagonal::plastic); }
StainlessBending stainless_bending(const Basis& basis) {
    return basis.stainless_bending.value_or(StainlessBending::plastic);
}

}  // namespace toehold::model
