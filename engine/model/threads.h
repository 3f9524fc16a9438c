#pragma once
// Where a bolt's threads lie, as far as its strength across its axis depends on it.

namespace toehold::model {

/// `excluded`: unthreaded shank at every shear plane, and threads over at most a quarter of the bearing length in the
/// wood that holds them (NDS 2018 12.3.7.2).
enum class Threads { included, excluded };

}  // namespace toehold::model
