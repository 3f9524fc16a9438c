#include "model/basis.h"

namespace toehold::model {

double load_duration(const Basis& basis) { return basis.load_duration.value_or(1.0); }
double time_effect(const Basis& basis) { return basis.time_effect.value_or(0.8); }
Moisture moisture(const Basis& basis) { return basis.moisture.value_or(Moisture::wet); }
Temperature temperature(const Basis& basis) { return basis.temperature.value_or(Temperature::to_100F); }
bool incised(const Basis& basis) { return basis.incised.value_or(true); }
DeckingInShear decking_in_shear(const Basis& basis) { return basis.decking_in_shear.value_or(DeckingInShear::gap); }
PlateBehaviour plate_behaviour(const Basis& basis) { return basis.plate.value_or(PlateBehaviour::flexible); }
BuildingCode building_code(const Basis& basis) { return basis.code.value_or(BuildingCode::ibc_2021); }

}  // namespace toehold::model
