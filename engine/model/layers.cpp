#include "model/layers.h"

namespace toehold::model {

double thickness_in(const Layers& layers) {
    double total = layers.decking ? layers.decking->thickness_in : 0.0;
    for (const Shim& shim : layers.shims) total += shim.thickness_in;
    return total;
}

}  // namespace toehold::model
