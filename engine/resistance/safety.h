#pragma once
// From a nominal strength to one that may be used. Metals carry both factors in their clause; wood has its own.

namespace toehold::resistance {

struct Safety {
    double omega = 0.0;  ///< ASD: allowable strength = nominal / omega
    double phi = 0.0;    ///< LRFD: design strength = phi x nominal
};

}  // namespace toehold::resistance
